import fc from "fast-check";
import { expect, test } from "vitest";
import { choicesFor } from "../../src/dial/choices.js";
import { graduations } from "../../src/dial/graduations.js";
import { compoundForDivisions } from "../../src/dividing/compound.js";
import { differentials } from "../../src/dividing/differential.js";
import { gearIndexes, gearPairIndexes } from "../../src/dividing/gearIndex.js";
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

const anyHead = fc.record({
  ratio: fc.constantFrom(5, 40, 60),
  plates: fc.array(fc.uniqueArray(fc.integer({ min: 3, max: 30 }), { minLength: 1, maxLength: 3 }), {
    minLength: 1,
    maxLength: 2,
  }),
});

test("property: marks that are met one by one are on the circle whose worst mark is least off, of equals the first named", () => {
  const ticks = fc.uniqueArray(fc.integer({ min: 0, max: 719 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(anyHead, ticks, (anyOne, halves) => {
      const marks = halves.map((half) => ({ angle: (half / 360) * Math.PI }));
      const { nearest } = ringIndexing(marks, undefined, anyOne, []);
      // In whole numbers: a mark asks half × ratio ÷ 720 turns; off by |holes × 720 − half × ratio × circle| ÷ (720 × circle).
      const worst = (circle: number) =>
        Math.max(
          ...halves.map((half) => {
            const over = (half * anyOne.ratio * circle) % 720;
            return Math.min(over, 720 - over);
          }),
        ) / circle;
      const circles = anyOne.plates.flat();
      const best = circles.reduce((least, circle) => (worst(circle) < worst(least) - 1e-9 ? circle : least));
      expect(nearest?.circle).toBe(best);
      expect(nearest?.worst).toBeCloseTo(worst(best) / 720, 11);
      expect(nearest?.moves).toHaveLength(marks.length);
    }),
    { numRuns: 150 },
  );
});

test("property: what is simple is not told in a harder way; what is harder is what each way finds by itself", () => {
  const gearsOf = fc.uniqueArray(fc.integer({ min: 16, max: 80 }), { minLength: 0, maxLength: 5 });
  fc.assert(
    fc.property(anyHead, gearsOf, fc.integer({ min: 2, max: 90 }), (anyOne, gears, equal) => {
      const marks = Array.from({ length: equal }, (_, at) => ({ angle: (at / equal) * 2 * Math.PI }));
      const found = ringIndexing(marks, equal, anyOne, gears);
      const exact = anyOne.plates.flat().some((circle) => (circle * anyOne.ratio) % equal === 0);
      expect(found.simple.length > 0).toBe(exact);
      expect(found.nearest === undefined).toBe(exact);
      const circles = [...new Set(anyOne.plates.flat())];
      expect(found.differential).toEqual(exact ? [] : differentials(anyOne.ratio, equal, circles, gears));
      expect(found.compound).toEqual(exact ? [] : compoundForDivisions(anyOne.ratio, equal, anyOne.plates));
      expect(found.gears).toEqual(gearIndexes(equal, gears));
      expect(found.gearPairs).toEqual(found.gears.length > 0 ? [] : gearPairIndexes(equal, gears));
    }),
    { numRuns: 100 },
  );
});

test("300 divisions: 50 and 12 teeth together where neither can alone; a single gear that can leaves pairs untold", () => {
  expect(ringIndexing([], 300, undefined, [50, 12])).toMatchObject({ gears: [], gearPairs: [{ gears: [50, 12] }] });
  expect(ringIndexing([], 60, undefined, [60, 40])).toMatchObject({
    gears: [{ teeth: 60, detents: 1 }, {}],
    gearPairs: [],
  });
});

test("a head whose plates name no circle is no head: only gears are told", () => {
  const none = ringIndexing([{ angle: 1 }], 12, { ratio: 40, plates: [[]] }, [24]);
  expect(none).toEqual({
    simple: [],
    compound: [],
    differential: [],
    gears: [{ teeth: 24, step: 2, detents: 1 }],
    gearPairs: [],
  });
});

test("marks all over a simple ring keep to whole turns and holes: 6 divisions at 40 to 1 on 18, each 6 turns and 12 on", () => {
  expect(positionsOf({ turns: 6, holes: 12, circle: 18 }, 4)).toEqual([
    { turns: 0, holes: 0, circle: 18 },
    { turns: 6, holes: 12, circle: 18 },
    { turns: 13, holes: 6, circle: 18 },
    { turns: 20, holes: 0, circle: 18 },
  ]);
});

test("a movement of whole turns is written as their number alone", () => {
  expect(movementWritten(40, 20)).toBe("2");
  expect(movementWritten(60, 90)).toBe("2/3 (0.666667)");
});
