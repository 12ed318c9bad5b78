import { expect, test } from "vitest";
import { compute } from "../../src/findings/compute.js";
import { readMachine } from "../../src/machine/read.js";
import { readingsSoFar } from "../../src/page/work/readingsSoFar.js";
import { formatDoubted } from "../../src/quantity/format.js";

const turns = [0, 1, 2, 3, 4, 5, 6, 7];
const out = turns.map((turn) => turn * 2);
const so = (back: readonly number[]) =>
  readingsSoFar({
    ...{ units: "mm", gauge: "0.01", gaugeError: "", temperature: "" },
    rows: turns.map((turn, row) => ({ turns: String(turn), travel: String(out[row]), back: String(back[row] ?? "") })),
  });

test("the lost motion is told with its ±, as it is everywhere", () => {
  const back = out.map((travel, row) => travel + 0.5 + 0.01 * (row % 3));
  const text = `name: L\nhandwheels: [{ name: S, feed: { readings: { gauge: 0.01, turns: [${turns}], travel: [${out}], return: [${back}] } } }]\n`;
  const { machine } = readMachine(text);
  const lost = machine && compute(machine).handwheels[0]?.feed?.lostMotion;
  expect(lost?.uncertainty).toBeGreaterThan(0);
  expect(so(back).words).toContain(`lost motion ${formatDoubted(lost?.travel ?? 0, lost?.uncertainty, "mm")}`);
});

test("a wrong reading on the way back is marked at its row, and no lost motion is told by it", () => {
  const back = out.map((travel, row) => travel + 0.5 + (row === 3 ? 1.4 : 0.01 * (row % 2)));
  const { places, words } = so(back);
  expect(places.flatMap(({ row, back: off }) => (off === undefined ? [] : [row]))).toEqual([3]);
  expect(places.every(({ doubted }) => !doubted)).toBe(true);
  expect(words.join("; ")).not.toMatch(/lost motion [\d.]/);
  expect(words).toContain("the marked readings do not belong to the others: read them again");
});

test("a lost motion of more than half a turn is none", () => {
  const { words } = so(out.map((travel) => travel + 5));
  expect(words).toContain("lost motion: not told by these readings");
});

test("lost motion is told while the way back is still being read, and why it is not told where it cannot be", () => {
  const half = out.map((travel, row) => (row < 4 ? undefined : travel + 0.5)) as number[];
  expect(so(half).words.join("; ")).toMatch(/lost motion 0\.50* /);
  expect(so(out.map((travel, row) => (row < 7 ? undefined : travel + 0.5)) as number[]).words.join()).not.toMatch(
    /lost/,
  );
  expect(so(out.map((travel) => travel + 5)).words.join("; ")).toMatch(/lost motion of "this wheel" would be 5\.0* mm/);
});
