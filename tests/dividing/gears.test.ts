import fc from "fast-check";
import { expect, test } from "vitest";
import { gearIndexes, gearPairIndexes } from "../../src/dividing/gearIndex.js";

const teethOf = fc.uniqueArray(fc.integer({ min: 3, max: 24 }), { minLength: 1, maxLength: 4 });

test("property: one gear and up to four detents, as found by dividing; fewest detents, then fewest teeth, each gear once", () => {
  fc.assert(
    fc.property(teethOf, fc.integer({ min: 2, max: 60 }), (gears, divisions) => {
      const wanted = [1, 2, 3, 4].flatMap((detents) =>
        [...gears]
          .sort((a, b) => a - b)
          .filter((teeth) => Number.isInteger((teeth * detents) / divisions))
          .filter(
            (teeth) => ![1, 2, 3].some((fewer) => fewer < detents && Number.isInteger((teeth * fewer) / divisions)),
          )
          .map((teeth) => ({ teeth, step: (teeth * detents) / divisions, detents })),
      );
      expect(gearIndexes(divisions, gears)).toEqual(wanted);
    }),
    { numRuns: 300 },
  );
});

test("four detents are used, and no fifth", () => {
  expect(gearIndexes(100, [25, 20])).toEqual([{ teeth: 25, step: 1, detents: 4 }]);
});

test("of two gears that need as many detents the smaller stands first, of two detents' numbers the lower", () => {
  expect(gearIndexes(12, [36, 24, 6, 8]).map(({ teeth, detents }) => [teeth, detents])).toEqual([
    [24, 1],
    [36, 1],
    [6, 2],
    [8, 3],
  ]);
});

/** Fewest teeth of two gears for one division, by trying all. */
function fewest(a: number, b: number, divisions: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let x = 1 - a; x < a; x++)
    for (let y = 1 - b; y < b; y++)
      if (divisions * (x * b + y * a) === a * b) least = Math.min(least, Math.abs(x) + Math.abs(y));
  return least;
}

test("property: pairs of gears count the fewest teeth that trying all of both finds, the least of them first", () => {
  fc.assert(
    fc.property(teethOf, fc.integer({ min: 2, max: 80 }), (gears, divisions) => {
      const wanted = gears
        .flatMap((a, at) => gears.slice(at + 1).map((b) => fewest(a, b, divisions)))
        .filter(Number.isFinite)
        .sort((a, b) => a - b);
      const found = gearPairIndexes(divisions, gears, 100);
      expect(found.map(({ first, second }) => Math.abs(first) + Math.abs(second))).toEqual(wanted);
      for (const { gears: pair, first, second } of found) {
        expect(divisions * (first * pair[1] + second * pair[0])).toBe(pair[0] * pair[1]);
        expect(gears.indexOf(pair[0])).toBeLessThan(gears.indexOf(pair[1]));
      }
    }),
    { numRuns: 200 },
  );
});

test("three pairs are told unless more are asked", () => {
  const gears = [20, 30, 40, 50, 60];
  expect(gearPairIndexes(2, gears)).toHaveLength(3);
  expect(gearPairIndexes(2, gears, 1)).toHaveLength(1);
  expect(gearPairIndexes(2, gears, 100)).toHaveLength(10);
});
