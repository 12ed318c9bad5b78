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
  expect(so(half).words.join("; ")).toMatch(/lost motion so far.*: 0\.50* /);
  expect(so(out.map((travel, row) => (row < 7 ? undefined : travel + 0.5)) as number[]).words.join()).not.toMatch(
    /lost/,
  );
  expect(so(out.map((travel) => travel + 5)).words.join("; ")).toMatch(/lost motion of "this wheel" would be 5\.0* mm/);
});

test("a lost motion that the way back tells only in part is said to be so, as the file's own remark says", () => {
  const half = out.map((travel, row) => (row < 4 ? undefined : travel + 0.5)) as number[];
  const [told] = so(half).words.filter((words) => words.includes("lost motion"));
  expect(told).toMatch(/^lost motion so far, by 4 of 8 places; on paper once all are read: 0\.50/);
});

/** Readings of an inch machine, as far as they go. */
const inches = (travel: readonly number[], back: readonly number[] = []) =>
  readingsSoFar({
    ...{ units: "in", gauge: "0.001", gaugeError: "", temperature: "" },
    rows: travel.map((far, row) => ({ turns: String(row), travel: String(far), back: String(back[row] ?? "") })),
  }).words;

test("readings that settle no feed say so in place of the figure, and nothing that would halve its ±", () => {
  for (const travel of [
    [0, 3.1, 0.2, 4],
    [0, 0, 0, 0],
  ]) {
    const words = inches(
      travel,
      travel.map((far) => far + 0.02),
    );
    expect(words[0]).toBe("these readings tell no feed yet");
    expect(words.join("; ")).not.toMatch(/1 turn =|± \d|halve|lost motion/);
  }
  expect(inches([0, 0.1, 0.201, 0.3])[0]).toMatch(/^1 turn = 0\.1/);
});

test("a turn too many leaves no feed, as in the file; what contradicts itself is not said to get better by more of the same", () => {
  const words = so([]).words;
  expect(words[0]).toBe("1 turn = 2.0000 ± 0.0011 mm");
  const miscounted = readingsSoFar({
    ...{ units: "mm", gauge: "0.01", gaugeError: "", temperature: "" },
    rows: turns.map((turn, row) => ({
      turns: String(turn),
      travel: String((out[row] ?? 0) + (row > 3 ? 2 : 0)),
      back: "",
    })),
  }).words;
  expect(miscounted[0]).toBe("these readings tell no feed yet");
  expect(miscounted).toContain("the marked readings do not belong to the others: read them again");
  const odd = so(out.map((travel) => travel - 0.5)).words.join("; ");
  expect(odd).toContain("lost motion: not told by these readings");
  expect(odd).not.toContain("halve");
});
