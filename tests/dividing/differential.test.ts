import fc from "fast-check";
import { expect, test } from "vitest";
import { type Differential, differentialRatio, differentials } from "../../src/dividing/differential.js";

type Pairs = readonly (readonly [driver: number, driven: number])[];

/** Turns of the plate for one of the spindle, as a fraction that is not shortened. */
const plate = (ratio: number, divisions: number, circle: number, holes: number) =>
  [circle * ratio - divisions * holes, circle] as const;

/** Every way to set so many pairs of different gears that turn the plate as wanted, judged in whole numbers. */
function trains(above: number, below: number, gears: readonly number[], pairs: 1 | 2): Pairs[] {
  const one = gears.flatMap((driver) =>
    gears.filter((driven) => driven !== driver).map((driven) => [driver, driven] as const),
  );
  const all: Pairs[] =
    pairs === 1
      ? one.map((pair) => [pair])
      : one.flatMap((pair) =>
          one.filter((other) => !other.some((teeth) => pair.includes(teeth))).map((other) => [pair, other] as const),
        );
  return all.filter((train) => {
    const [drivers, driven] = [0, 1].map((side) => train.reduce((product, pair) => product * (pair[side] ?? 0), 1));
    return (drivers ?? 0) * below === (driven ?? 0) * Math.abs(above);
  });
}

/** Of small factors, so that many trains do. */
const gearsOf = fc.shuffledSubarray([6, 8, 9, 10, 12, 14, 15, 16, 18, 20, 21, 24, 27, 30, 32, 36, 40], {
  minLength: 2,
  maxLength: 7,
});
const circlesOf = fc.uniqueArray(fc.integer({ min: 3, max: 24 }), { minLength: 1, maxLength: 3 });

/** Moves of whole holes near plain indexing: the slowest plate first, of equal ones the smaller circle. */
const movesNear = (ratio: number, divisions: number, circles: readonly number[]) =>
  circles
    .flatMap((circle) => {
      const whole = Math.floor((circle * ratio) / divisions);
      return [whole - 1, whole, whole + 1, whole + 2]
        .filter((holes) => holes >= 1 && circle * ratio !== divisions * holes)
        .map((holes) => ({ circle, holes }));
    })
    .sort((a, b) => {
      const speed = ({ circle, holes }: typeof a) => Math.abs(plate(ratio, divisions, circle, holes)[0]);
      return speed(a) * b.circle - speed(b) * a.circle || a.circle - b.circle;
    });

const move = ({ circle, holes }: Pick<Differential, "circle" | "holes">) => `${holes} on ${circle}`;

test("property: trains that are found are those that trying every gear in every place finds: simple first, then the slowest plate", () => {
  fc.assert(
    fc.property(
      circlesOf,
      gearsOf,
      fc.oneof(fc.integer({ min: 2, max: 60 }), fc.integer({ min: 2, max: 130 })),
      fc.constantFrom(5, 40, 60),
      (circles, gears, divisions, ratio) => {
        const moves = movesNear(ratio, divisions, circles);
        const can = (pairs: 1 | 2) =>
          moves.filter(({ circle, holes }) => {
            const [above, below] = plate(ratio, divisions, circle, holes);
            return trains(above, below, gears, pairs).length > 0;
          });
        const simple = can(1).map(move);
        const wanted = [
          ...simple,
          ...can(2)
            .map(move)
            .filter((one) => !simple.includes(one)),
        ];
        const found = differentials(ratio, divisions, circles, gears, 100);
        expect(found.map(move)).toEqual(wanted);
        expect(differentials(ratio, divisions, circles, gears)).toEqual(found.slice(0, 2));
        for (const { circle, holes, ratio: turns, drivers, driven } of found) {
          const product = (teeth: readonly number[]) => teeth.reduce((all, one) => all * one, 1);
          expect(product(drivers) * turns.denominator).toBe(product(driven) * Math.abs(turns.numerator));
          expect(turns).toEqual(differentialRatio(ratio, divisions, circle, holes));
          expect(new Set([...drivers, ...driven]).size).toBe(drivers.length * 2);
          expect([...drivers, ...driven].every((teeth) => gears.includes(teeth))).toBe(true);
        }
      },
    ),
    { numRuns: 250 },
  );
});

test("a train of four gears where no two do: 319 by 4 on 29 with 72, 64, 24 and 48, as published (Practical Treatise on Milling)", () => {
  const found = differentials(40, 319, [29], [24, 48, 64, 72], 10).find(({ holes }) => holes === 4);
  expect(found?.drivers).toHaveLength(2);
  expect([...(found?.drivers ?? [])].sort((a, b) => a - b)).toEqual([64, 72]);
  expect([...(found?.driven ?? [])].sort((a, b) => a - b)).toEqual([24, 48]);
});

test("the smallest driver that does is taken, in whatever order the gears are listed, and a gear listed twice is one", () => {
  // 9/7 on 21: 27 driving 21, 36 driving 28 and 45 driving 35 would all do.
  for (const gears of [
    [45, 35, 28, 36, 27, 21],
    [27, 45, 35, 21, 28, 36, 36],
  ])
    expect(differentials(40, 271, [21], gears, 1)).toMatchObject([{ holes: 3, drivers: [27], driven: [21] }]);
});

test("where the plain movement is exact no gears are told for it", () => {
  // 40/20: 2 turns, 30 holes on 15; one hole less or more asks 4/3.
  const found = differentials(40, 20, [15], [20, 24, 32], 10);
  expect(found.map(({ holes }) => holes)).toEqual([29, 31]);
});
