import { describe, expect, test } from "vitest";
import { chanceOfRatio, chanceOfT, incompleteBeta, logWays, powerOf, sizeShown } from "../../src/feed/chance.js";
import { normal, seeded } from "./screws.js";

describe("Fisher's variance ratio and Student's t: limits that every table prints (from memory)", () => {
  test.each([
    [4.96, 1, 10, 0.05],
    [10.04, 1, 10, 0.01],
    [3.33, 5, 10, 0.05],
    [2.16, 10, 30, 0.05],
    [161.4, 1, 1, 0.05],
    [99.4, 10, 2, 0.01],
    [3.29, 6, 40, 0.01],
  ])("a ratio of %d with %i and %i degrees is exceeded in %d of all cases", (ratio, over, under, chance) =>
    expect(chanceOfRatio(ratio, over, under) / chance).toBeCloseTo(1, 1),
  );

  test.each([
    [12.706, 1, 0.05],
    [2.228, 10, 0.05],
    [3.169, 10, 0.01],
    [2.042, 30, 0.05],
    [1.98, 120, 0.05],
  ])("%d with %i degrees: %d, both sides", (t, freedom, chance) =>
    expect(chanceOfT(t, freedom)).toBeCloseTo(chance, 4),
  );

  test("two degrees over: (1 + 2 ratio / under) to the power −under / 2, in closed form", () => {
    for (const ratio of [0, 0.01, 0.5, 3, 40])
      for (const under of [1, 2, 7, 50])
        expect(chanceOfRatio(ratio, 2, under)).toBeCloseTo((1 + (2 * ratio) / under) ** (-under / 2), 12);
  });
});

test("the incomplete beta in closed form: xᵃ for b = 1, its mirror for a = 1, the binomial tail for whole numbers", () => {
  for (const x of [0.001, 0.2, 0.5, 0.77, 0.999]) {
    for (const a of [0.5, 1, 3, 40]) {
      expect(incompleteBeta(x, a, 1)).toBeCloseTo(x ** a, 12);
      expect(incompleteBeta(x, 1, a)).toBeCloseTo(1 - (1 - x) ** a, 12);
    }
    // At least 3 of 7 cases of chance x.
    const ways = [1, 7, 21, 35, 35, 21, 7, 1];
    const tail = ways.reduce((sum, way, k) => sum + (k < 3 ? 0 : way * x ** k * (1 - x) ** (7 - k)), 0);
    expect(incompleteBeta(x, 3, 5)).toBeCloseTo(tail, 12);
    // Half a circle's area: the arc sine law.
    expect(incompleteBeta(x, 0.5, 0.5)).toBeCloseTo((2 / Math.PI) * Math.asin(Math.sqrt(x)), 11);
  }
  expect([-1, 0, 1, 2].map((x) => incompleteBeta(x, 2, 3))).toEqual([0, 0, 1, 1]);
});

test("ways to pick some of all: Pascal's triangle", () => {
  for (const [all, some, ways] of [
    [5, 0, 1],
    [5, 2, 10],
    [12, 6, 924],
    [52, 5, 2598960],
  ] as const)
    expect(Math.exp(logWays(all, some)) / ways).toBeCloseTo(1, 10);
});

describe("how often an effect is called real", () => {
  const effect = { taken: 4, left: 1, over: 3, under: 12 };

  test("without an effect as often as the false alarm", () => {
    for (const alarm of [0.01, 0.05]) expect(powerOf(0, alarm, effect)).toBeCloseTo(alarm, 8);
  });

  test("as drawn: ratios of squares of normal scatter, shifted by the effect, above the 1 % limit", () => {
    // The 1 % limit with 3 and 12 degrees is 5.953 (tables, memory).
    expect(chanceOfRatio(5.953, 3, 12)).toBeCloseTo(0.01, 5);
    const random = seeded(31);
    for (const size of [1, 2, 3]) {
      let real = 0;
      for (let i = 0; i < 6000; i++) {
        const squares = (count: number, shift: number) => {
          let sum = 0;
          for (let k = 0; k < count; k++) sum += (normal(random) + (k === 0 ? shift : 0)) ** 2;
          return sum;
        };
        if (squares(3, 2 * size) / 3 / (squares(12, size) / 12) > 5.953) real++;
      }
      // Three standard deviations of a count of 6000 are 0.02 at most.
      expect(Math.abs(real / 6000 - powerOf(size, 0.01, effect)), `size ${size}`).toBeLessThan(0.02);
    }
  });

  test("the size that is shown in so many cases is called real in as many; what swells the scatter as much, never", () => {
    for (const power of [0.5, 0.8, 0.95]) {
      const size = sizeShown(power, 0.01, effect) ?? Number.NaN;
      expect(powerOf(size, 0.01, effect)).toBeCloseTo(power, 6);
    }
    expect(sizeShown(0.8, 0.01, { ...effect, left: 4 })).toBeUndefined();
  });
});
