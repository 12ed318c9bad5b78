import fc from "fast-check";
import { expect, test } from "vitest";
import { type CompoundMove, compoundForDivisions, compoundMoves } from "../../src/dividing/compound.js";
import { usualPlates } from "../../src/dividing/plates.js";
import { fraction } from "../../src/quantity/fraction.js";

type Counted = readonly [one: number, holes: number, other: number, second: number];

const counted = ({ first, second }: CompoundMove): Counted => [first.circle, first.holes, second.circle, second.holes];
const counting = ([one, holes, other, second]: Counted) => holes / one + Math.abs(second) / other;

/** All that can be done on two circles, tried hole by hole and judged in whole numbers: what is over by, in parts of a turn of
 *  `below × one × other`. Back or forward on the second circle by less than a turn. */
function tried(above: number, below: number, one: number, other: number) {
  const found: { move: Counted; over: number }[] = [];
  for (let second = 1 - other; second < other; second++)
    for (let holes = 1; holes <= one * (Math.ceil(above / below) + 1); holes++)
      if (second !== 0)
        found.push({
          move: [one, holes, other, second],
          over: (holes * other + second * one) * below - above * one * other,
        });
  return found;
}

const pairsOf = (plates: readonly (readonly number[])[]) =>
  plates.flatMap((circles) =>
    circles.flatMap((one) => circles.filter((other) => other !== one).map((other) => [one, other] as const)),
  );

/** Least of what is over first; of exact ones the least counting, then the first circle of fewest holes. */
const byWorth = (a: { move: Counted; over: number }, b: { move: Counted; over: number }) => {
  const off = ({ move: [one, , other], over }: { move: Counted; over: number }) => Math.abs(over) / (one * other);
  const near = (x: number, y: number) => (Math.abs(x - y) > 1e-9 ? x - y : 0);
  return near(off(a), off(b)) || near(counting(a.move), counting(b.move)) || a.move[0] - b.move[0];
};

const smallPlates = fc.array(fc.uniqueArray(fc.integer({ min: 2, max: 13 }), { minLength: 1, maxLength: 3 }), {
  minLength: 1,
  maxLength: 2,
});

test("property: exact double movements are all that trying every hole of both circles finds, least counting first", () => {
  fc.assert(
    fc.property(
      smallPlates,
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 2, max: 40 }),
      (plates, above, below) => {
        const wanted = pairsOf(plates)
          .flatMap(([one, other]) => tried(above, below, one, other))
          .filter(({ over }) => over === 0)
          .sort(byWorth);
        const found = compoundMoves(fraction(above, below), plates, 100_000).filter(({ error }) => error === 0);
        expect(found.map(counted).sort()).toEqual(wanted.map(({ move }) => move).sort());
        expect(found.map(counted).map((move) => [counting(move).toFixed(9), move[0]])).toEqual(
          wanted.map(({ move }) => [counting(move).toFixed(9), move[0]]),
        );
      },
    ),
    { numRuns: 150 },
  );
});

test("property: of two circles with nothing exact the nearest is taken, and the nearest of all stands first", () => {
  fc.assert(
    fc.property(
      smallPlates,
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 41, max: 97 }),
      (plates, above, below) => {
        const each = pairsOf(plates).map(([one, other]) => tried(above, below, one, other).sort(byWorth));
        const found = compoundMoves(fraction(above, below), plates, 100_000);
        const least = (all: readonly { move: Counted; over: number }[]) =>
          Math.abs(all[0]?.over ?? 0) / (below * (all[0]?.move[0] ?? 1) * (all[0]?.move[2] ?? 1));
        for (const pair of each) {
          const here = found.filter(
            (move) => counted(move)[0] === pair[0]?.move[0] && counted(move)[2] === pair[0]?.move[2],
          );
          const best = pair[0]?.over === 0 ? 0 : least(pair);
          expect(here.length).toBeGreaterThanOrEqual(1);
          for (const { first, second, error } of here) {
            expect(Math.abs(error)).toBeCloseTo(best, 12);
            expect(first.holes / first.circle + second.holes / second.circle - error).toBeCloseTo(above / below, 12);
          }
        }
        const errors = found.map(({ error }) => Math.abs(error));
        for (const [at, error] of errors.entries()) expect(error).toBeGreaterThanOrEqual((errors[at - 1] ?? 0) - 1e-12);
      },
    ),
    { numRuns: 80 },
  );
});

test("a circle is no pair with itself; one of a single hole, all whole turns, is never the second of two", () => {
  expect(compoundMoves(fraction(3, 7), [[21], [35]])).toEqual([]);
  expect(compoundMoves(fraction(3, 7), [[3, 1]]).map(counted)).toEqual([[1, 1, 3, -2]]);
});

test("a movement that one circle makes alone is not half of a double one; a whole turn back is none either", () => {
  // 1/2 on 2 is 2/4 on 4: what is left for the other circle must still be a hole or more, and less than a turn.
  const found = compoundMoves(fraction(3, 2), [[2, 4]], 100).map(counted);
  expect(found).toContainEqual([4, 4, 2, 1]);
  expect(found.every(([, , other, second]) => second !== 0 && Math.abs(second) < other)).toBe(true);
});

test("no more are told than are of use: five, or as many as are asked", () => {
  expect(compoundMoves(fraction(40, 69), usualPlates)).toHaveLength(5);
  expect(compoundMoves(fraction(40, 69), usualPlates, 2)).toHaveLength(2);
  expect(compoundForDivisions(40, 69, usualPlates)).toHaveLength(5);
});

test("77 divisions: 9 on 21 and 3 on 33 is among the exact ones (textbook example; 9/21 + 3/33 = 40/77)", () => {
  const found = compoundForDivisions(40, 77, usualPlates);
  expect(found.every(({ error, divisionsAtOnce }) => error === 0 && divisionsAtOnce === 1)).toBe(true);
  expect(compoundMoves(fraction(40, 77), usualPlates, 100).map(counted)).toContainEqual([21, 9, 33, 3]);
  expect(9 * 33 * 77 + 3 * 21 * 77).toBe(40 * 21 * 33);
});

test("property: going on by several divisions at once, none that is nearer is passed over, nor an equal one by fewer", () => {
  fc.assert(
    fc.property(
      smallPlates,
      fc.integer({ min: 2, max: 60 }),
      fc.constantFrom(5, 40, 60),
      (plates, divisions, ratio) => {
        const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
        const atOnce = [1, 2, 3, 4, 5, 6, 7].filter((at) => at < divisions && common(at, divisions) === 1);
        const wanted = atOnce.flatMap((at) =>
          compoundMoves(fraction(at * ratio, divisions), plates, 100_000).map(
            ({ error }) => [Math.abs(error), at] as const,
          ),
        );
        const order = ([a, x]: readonly [number, number], [b, y]: readonly [number, number]) =>
          Math.abs(a - b) > 1e-12 ? a - b : x - y;
        const best = [...wanted].sort(order).slice(0, 5);
        const found = compoundForDivisions(ratio, divisions, plates);
        expect(found.map(({ divisionsAtOnce }) => divisionsAtOnce)).toEqual(best.map(([, at]) => at));
        for (const [at, { error }] of found.entries()) expect(Math.abs(error)).toBeCloseTo(best[at]?.[0] ?? 1, 11);
      },
    ),
    { numRuns: 100 },
  );
});

test("two divisions go on by one at a time; more at once than all of them is none", () => {
  const found = compoundForDivisions(5, 2, [[3, 4]], 7);
  expect(found.length).toBeGreaterThan(0);
  expect(found.every(({ divisionsAtOnce }) => divisionsAtOnce === 1)).toBe(true);
  // Two at once is the last that may be asked for here, and counts.
  const onlyByTwo = compoundForDivisions(1, 3, [[4, 7]], 2).map(({ divisionsAtOnce }) => divisionsAtOnce);
  expect(onlyByTwo).toContain(2);
});
