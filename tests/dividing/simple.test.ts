import fc from "fast-check";
import { expect, test } from "vitest";
import { nearestMove, simpleMoves, turnsForSeconds, turnsPerDivision } from "../../src/dividing/simple.js";

const circleLists = fc.uniqueArray(fc.integer({ min: 2, max: 60 }), { minLength: 1, maxLength: 6 });

test("property: an exact circle is one on which the parts of a turn come out whole; fewest holes first, holes less than a turn", () => {
  fc.assert(
    fc.property(
      circleLists,
      fc.integer({ min: 2, max: 120 }),
      fc.integer({ min: 1, max: 90 }),
      (circles, divisions, ratio) => {
        const wanted = [...circles]
          .sort((a, b) => a - b)
          .filter((circle) => (circle * ratio) % divisions === 0)
          .map((circle) => ({ circle, all: (circle * ratio) / divisions }))
          .map(({ circle, all }) => ({ turns: (all - (all % circle)) / circle, holes: all % circle, circle }));
        expect(simpleMoves(turnsPerDivision(ratio, divisions), circles)).toEqual(wanted);
      },
    ),
  );
});

test("property: no hole of any circle is nearer than the nearest, and none as near has fewer holes", () => {
  fc.assert(
    fc.property(
      circleLists,
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 2, max: 127 }),
      (circles, above, below) => {
        const found = nearestMove(above / below, circles);
        // In whole numbers: |holes × below − above × circle| ÷ (circle × below), every hole up to beyond what is wanted.
        const off = (holes: number, circle: number) => Math.abs(holes * below - above * circle);
        const mine = off(found.turns * found.circle + found.holes, found.circle);
        for (const circle of circles)
          for (let holes = 0; holes <= (above / below + 1) * circle; holes++) {
            const theirs = off(holes, circle) * found.circle;
            expect(theirs).toBeGreaterThanOrEqual(mine * circle);
            if (theirs === mine * circle) expect(circle).toBeGreaterThanOrEqual(found.circle);
          }
        expect(found.holes).toBeLessThan(found.circle);
        expect(found.error).toBeCloseTo(found.turns + found.holes / found.circle - above / below, 12);
      },
    ),
    { numRuns: 60 },
  );
});

test("half a turn is met by every even circle: the one of fewest holes is told, wherever it stands in the list", () => {
  for (const circles of [
    [8, 20, 6],
    [6, 8, 20],
    [20, 6, 8],
  ])
    expect(nearestMove(0.5, circles)).toEqual({ turns: 0, holes: 3, circle: 6, error: 0 });
});

test("90 degrees at 40 to 1 are ten turns of the crank, one second 1/32400 of one", () => {
  expect(turnsForSeconds(40, 90 * 3600)).toEqual({ numerator: 10, denominator: 1 });
  expect(turnsForSeconds(40, 1)).toEqual({ numerator: 1, denominator: 32_400 });
});
