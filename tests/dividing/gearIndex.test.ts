import fc from "fast-check";
import { expect, test } from "vitest";
import { compoundForDivisions } from "../../src/dividing/compound.js";
import { degreesMinutesSeconds, writeDegrees } from "../../src/dividing/degrees.js";
import { gearIndexes, gearPairIndexes } from "../../src/dividing/gearIndex.js";
import { usualPlates } from "../../src/dividing/plates.js";
import { nearestMove, simpleMoves, turnsPerDivision } from "../../src/dividing/simple.js";
import { quotient } from "../../src/quantity/fraction.js";

test("a gear of 60 divides 12 by every fifth tooth; 40 divides 80 with two detents", () => {
  expect(gearIndexes(12, [40, 60])).toEqual([
    { teeth: 60, step: 5, detents: 1 },
    { teeth: 40, step: 10, detents: 3 },
  ]);
  expect(gearIndexes(80, [40])).toEqual([{ teeth: 40, step: 1, detents: 2 }]);
  expect(gearIndexes(127, [40, 60, 100])).toEqual([]);
});

test("gears of 40 and 45 together divide 360 though neither does: 1/40 less 1/45 is one of 360", () => {
  expect(gearPairIndexes(360, [40, 45])).toEqual([{ gears: [40, 45], first: 1, second: -1 }]);
});

test("property: what two gears are said to do adds up exactly", () => {
  const teeth = fc.uniqueArray(fc.integer({ min: 16, max: 90 }), { minLength: 2, maxLength: 5 });
  fc.assert(
    fc.property(teeth, fc.integer({ min: 2, max: 400 }), (gears, divisions) => {
      for (const {
        gears: [a, b],
        first,
        second,
      } of gearPairIndexes(divisions, gears))
        expect(divisions * (first * b + second * a)).toBe(a * b);
      for (const { teeth: one, step, detents } of gearIndexes(divisions, gears))
        expect(step * divisions).toBe(one * detents);
    }),
    { numRuns: 60 },
  );
});

test("property: a simple movement repeated comes round to the ratio exactly; the nearest hole is never half a hole off", () => {
  const circles = usualPlates.flat();
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 500 }), fc.constantFrom(40, 60, 72, 90), (divisions, ratio) => {
      const turns = turnsPerDivision(ratio, divisions);
      for (const { turns: whole, holes, circle } of simpleMoves(turns, circles))
        expect(divisions * (whole * circle + holes)).toBe(ratio * circle);
      const near = nearestMove(quotient(turns), circles);
      expect(near.turns + near.holes / near.circle - near.error).toBeCloseTo(ratio / divisions, 12);
      expect(Math.abs(near.error)).toBeLessThanOrEqual(0.5 / 49 + 1e-12);
    }),
    { numRuns: 60 },
  );
});

test("property: what compound indexing says is its error, and it comes to every division", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 300 }), (divisions) => {
      for (const { first, second, divisionsAtOnce, error } of compoundForDivisions(40, divisions, usualPlates)) {
        const moved = first.holes / first.circle + second.holes / second.circle;
        expect(moved - error).toBeCloseTo((divisionsAtOnce * 40) / divisions, 10);
        const met = new Set(Array.from({ length: divisions }, (_, i) => (i * divisionsAtOnce) % divisions));
        expect(met.size).toBe(divisions);
      }
    }),
    { numRuns: 12 },
  );
});

test("angles in degrees, minutes and seconds carry over and come back", () => {
  expect(writeDegrees((2 * Math.PI) / 127)).toBe("2° 50′ 04.7″");
  expect(writeDegrees((59.999999 / 180) * Math.PI)).toBe("60° 00′ 00.0″");
  fc.assert(
    fc.property(fc.double({ min: 0, max: 6.28, noNaN: true }), (angle) => {
      const { degrees, minutes, seconds } = degreesMinutesSeconds(angle, 2);
      expect(minutes < 60 && seconds < 60).toBe(true);
      const back = ((degrees + minutes / 60 + seconds / 3600) / 180) * Math.PI;
      expect(Math.abs(back - angle)).toBeLessThan((0.006 / 3600 / 180) * Math.PI);
    }),
  );
});
