import fc from "fast-check";
import { expect, test } from "vitest";
import { choicesFor } from "../../src/dial/choices.js";
import { graduations } from "../../src/dial/graduations.js";
import { differentials } from "../../src/dividing/differential.js";
import { usualPlates } from "../../src/dividing/plates.js";
import { movementWritten, positionsOf, readingError, ringIndexing } from "../../src/dividing/ringCutting.js";
import { drum } from "../dial/dials.js";

const head = { ratio: 40, plates: usualPlates };

/** Marks of a dial that the file forces. */
function ring(perTurn: number, divisions: number, closure: "even" | "true") {
  const wish = drum(40, { divisions, closure });
  const [choice] = choicesFor({ perTurn, from: "stated" }, "travel", wish, { stripLength: 120, units: "mm" });
  if (choice === undefined) throw new Error("no dial");
  return graduations(choice, perTurn)[0] ?? [];
}

test("100 divisions: 2/5 of a turn on circles of 15 and 20, and the hundredth movement is a whole turn of the work", () => {
  const marks = ring(2, 0.02, "even");
  const { simple, compound, nearest } = ringIndexing(marks, marks.length, head, []);
  expect(simple.map(({ holes, circle }) => `${holes}/${circle}`)).toEqual(["6/15", "8/20"]);
  expect([compound, nearest]).toEqual([[], undefined]);
  const [move] = simple;
  const positions = positionsOf(move as NonNullable<typeof move>, 101);
  expect(positions[100]).toEqual({ turns: 40, holes: 0, circle: 15 });
  positions.slice(0, 100).forEach(({ turns, holes, circle }, index) => {
    expect(turns + holes / circle).toBeCloseTo(((marks[index]?.angle ?? 0) / (2 * Math.PI)) * 40, 9);
  });
  expect(movementWritten(40, 100)).toBe("2/5 (0.400000)");
});

test("127 divisions have no circle: each mark goes to its nearest hole, and no error gathers", () => {
  const marks = ring(1.27, 0.01, "even");
  const { simple, compound, nearest } = ringIndexing(marks, 127, head, []);
  expect(simple).toEqual([]);
  expect(nearest?.moves).toHaveLength(127);
  for (const [index, { turns, holes, circle, error }] of (nearest?.moves ?? []).entries()) {
    expect(turns + holes / circle - error).toBeCloseTo((index * 40) / 127, 9);
    expect(Math.abs(error)).toBeLessThanOrEqual(0.5 / circle + 1e-12);
  }
  // The best double movement must beat half a hole by far, or it would not be worth the counting.
  expect(Math.abs(compound[0]?.error ?? 1)).toBeLessThan(1e-4);
  // Half a hole of 49 at 40 to 1 on a 1.27 mm feed is 0.0003 mm of travel.
  expect(readingError(0.5 / 49, 40, 1.27)).toBeCloseTo(0.000324, 6);
});

test("a ring with a short last division is cut by positions alone", () => {
  const marks = ring(1.5875, 0.02, "true");
  const { simple, compound, nearest, gears } = ringIndexing(marks, undefined, head, [40, 80]);
  expect([simple, compound, gears]).toEqual([[], [], []]);
  expect(nearest?.moves.at(-1)).toMatchObject({ turns: 39 });
});

test("without a head, gears alone: 50 of 100 teeth", () => {
  const marks = ring(1, 0.02, "even");
  expect(ringIndexing(marks, 50, undefined, [100])).toMatchObject({
    simple: [],
    gears: [{ teeth: 100, step: 2, detents: 1 }],
  });
});

test("property: differential gears from the list divide exactly, and their plate turns the way that is said", () => {
  const gears = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];
  const circles = usualPlates.flat();
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 400 }), (divisions) => {
      for (const { circle, holes, ratio, drivers, driven } of differentials(40, divisions, circles, gears)) {
        const product = (teeth: readonly number[]) => teeth.reduce((all, one) => all * one, 1);
        const plate = Math.sign(ratio.numerator) * (product(drivers) / product(driven));
        // One move: the crank goes holes/circle against the plate while the spindle's 1/N turns the plate itself.
        expect(holes / circle + plate / divisions).toBeCloseTo(40 / divisions, 9);
        expect(new Set([...drivers, ...driven]).size).toBe(drivers.length + driven.length);
      }
    }),
    { numRuns: 40 },
  );
});

test("271 divisions with change gears in common use: exact, on a simple train (common practice; 72 driving 56 on 21 is published)", () => {
  const [train] = differentials(40, 271, [21], [24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100]);
  expect(train).toMatchObject({ circle: 21, holes: 3, drivers: [72], driven: [56] });
});
