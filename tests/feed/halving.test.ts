import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { readingsToHalve } from "../../src/feed/halving.js";
import { compute } from "../../src/findings/compute.js";
import type { Readings } from "../../src/machine/machine.js";
import { readMachine } from "../../src/machine/read.js";
import { readingsSoFar } from "../../src/page/work/readingsSoFar.js";

/** The doubt that the program tells of readings, mm per turn. */
function doubt(readings: Readings): number {
  const found = feedPerTurn({ from: "readings", ...readings });
  if ("tooFew" in found || found.uncertainty === undefined) throw new Error("no doubt is told");
  return found.uncertainty;
}
function toHalve(readings: Readings, most?: number): number | undefined {
  const found = feedPerTurn({ from: "readings", ...readings });
  if ("tooFew" in found || found.fit === undefined) throw new Error("no fit");
  return readingsToHalve(found.fit, readings, most);
}
/** So many on the line, a step apart: what the gauge cannot see is all that is in doubt, and it stays the same however many come. */
const onLine = (count: number, step: number, more: Partial<Readings> = {}): Readings => {
  const turns = Array.from({ length: count }, (_, index) => index * step);
  return { gauge: 0.01, ...more, turns, travel: turns.map((turn) => 2 * turn) };
};

describe("so many more readings as are told", () => {
  test("halve the doubt, and one less does not: by the program's own doubt of the readings with them", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 30 }),
        fc.integer({ min: 1, max: 6 }),
        fc.constantFrom({}, { gaugeError: 0.02 }, { temperature: 21 }, { gaugeError: 0.005, temperature: 24 }),
        (count, step, known) => {
          const now = doubt(onLine(count, step, known));
          const more = toHalve(onLine(count, step, known), 200);
          if (more === undefined) {
            expect(doubt(onLine(count + 200, step, known))).toBeGreaterThan(now / 2);
            return;
          }
          expect(doubt(onLine(count + more, step, known))).toBeLessThanOrEqual((now / 2) * (1 + 1e-9));
          if (more > 1) expect(doubt(onLine(count + more - 1, step, known))).toBeGreaterThan(now / 2);
        },
      ),
    );
  });

  test("the gauge's own error goes only by the length gone over, so that many more are wanted; warmth stays", () => {
    const plain = toHalve(onLine(8, 2), 200) ?? Number.NaN;
    expect(toHalve(onLine(8, 2, { gaugeError: 0.1 }), 200)).toBeGreaterThan(plain);
    expect(toHalve(onLine(8, 2, { temperature: 35 }), 200)).toBeUndefined();
  });

  test("where nothing is in doubt, or two places tell nothing, none are told", () => {
    const { gauge: _, ...sharp } = onLine(8, 2);
    expect(toHalve(sharp)).toBeUndefined();
    expect(toHalve({ ...onLine(3, 1), turns: [0, 4, 4], travel: [0, 8, 8.01] })).toBeUndefined();
  });
});

test("the grid tells the doubt that the file's own check tells, whatever is known of the gauge and the warmth", () => {
  const turns = [0, 4, 8, 12, 16, 20];
  const travel = [0, 7.98, 15.97, 23.93, 31.91, 39.9];
  const { words } = readingsSoFar({
    ...{ units: "mm", gauge: "0.01", gaugeError: "0.02", temperature: "26" },
    rows: turns.map((turn, index) => ({ turns: String(turn), travel: String(travel[index]), back: "" })),
  });
  const { machine } = readMachine(
    `name: L\nhandwheels: [{ name: S, feed: { readings: { gauge: 0.01, gaugeError: 0.02, temperature: 26, turns: [${turns}], travel: [${travel}] } } }]\n`,
  );
  const feed = machine && compute(machine).handwheels[0]?.feed;
  const told = Number(/± ([\d.]+)/.exec(words[0] ?? "")?.[1]);
  expect(told / (feed?.uncertainty ?? Number.NaN)).toBeGreaterThan(0.97);
  expect(told / (feed?.uncertainty ?? Number.NaN)).toBeLessThan(1.1);
  const without = readingsSoFar({
    ...{ units: "mm", gauge: "0.01", gaugeError: "", temperature: "" },
    rows: turns.map((turn, index) => ({ turns: String(turn), travel: String(travel[index]), back: "" })),
  });
  expect(without.words[0]).not.toBe(words[0]);
});
