import fc from "fast-check";
import { expect, test } from "vitest";
import { dot, regress } from "../../src/feed/regress.js";

const x = [0, 1, 2, 3, 4, 5, 6, 7];
const powers = (most: number) => Array.from({ length: most + 1 }, (_, power) => x.map((one) => one ** power));

test("a polynomial is found again, every coefficient of it, and leaves nothing over", () => {
  const some = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(some, (wanted) => {
      const y = x.map((one) => wanted.reduce((sum, c, power) => sum + c * one ** power, 0));
      const found = regress(powers(wanted.length - 1), y);
      for (const [power, c] of wanted.entries()) expect(found?.coefficients[power]).toBeCloseTo(c, 6);
      expect(Math.sqrt(found?.residualSquares ?? 1)).toBeLessThan(1e-6 * (1 + Math.max(...y.map(Math.abs))));
      expect(found?.degreesOfFreedom).toBe(8 - wanted.length);
    }),
  );
});

test("what is left over stands square to every column: the normal equations", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 8, maxLength: 8 }), (y) => {
      const columns = powers(2);
      const found = regress(columns, y);
      for (const column of columns) expect(Math.abs(dot(column, found?.residuals ?? [1]))).toBeLessThan(1e-9);
      const fitted = x.map((_, i) =>
        columns.reduce((sum, c, k) => sum + (c[i] ?? 0) * (found?.coefficients[k] ?? 0), 0),
      );
      for (const [i, one] of y.entries()) expect((fitted[i] ?? 0) + (found?.residuals[i] ?? 0)).toBeCloseTo(one, 9);
      const squares = [...(found?.residuals ?? [])].reduce((sum, one) => sum + one * one, 0);
      expect(found?.residualSquares).toBeCloseTo(squares, 9);
      expect(found?.deviation).toBeCloseTo(Math.sqrt(squares / 5), 9);
      // The weights of the last give it back.
      expect(dot(found?.weightsOfLast ?? [], y)).toBeCloseTo(found?.coefficients[2] ?? Number.NaN, 9);
    }),
  );
});

test("a straight line is as well known at a turn as any text has it: 1/n + (turn − mean)² / Σ(turn − mean)²", () => {
  const turns = [1, 2, 4, 8, 9];
  const mean = 24 / 5;
  const spread = turns.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const found = regress([turns.map(() => 1), turns], [3, 1, 4, 1, 5]);
  for (const turn of [-3, 0, 1, mean, 20])
    expect(found?.spreadOf([1, turn])).toBeCloseTo(1 / 5 + (turn - mean) ** 2 / spread, 9);
  expect(found?.spreadOf([0, 1])).toBeCloseTo(1 / spread, 12);
  // Of three columns: the variance of any of the fitted values adds up to their number.
  const bent = regress(powers(2), x);
  const leverages = x.map((one) => bent?.spreadOf([1, one, one * one]) ?? Number.NaN);
  expect(leverages.reduce((sum, one) => sum + one)).toBeCloseTo(3, 9);
});

test("columns that are nearly alike lose few digits: a line over turns far from zero", () => {
  const far = x.map((one) => 1e7 + one);
  const found = regress(
    [far.map(() => 1), far],
    far.map((one) => 3 + 2 * (one - 1e7)),
  );
  expect(found?.coefficients[1]).toBeCloseTo(2, 6);
  expect(found?.residualSquares).toBeLessThan(1e-12);
  const basis = regress(
    [far.map(() => 1), far],
    x.map((one) => one % 2),
  );
  expect(
    Math.abs(
      dot(
        basis?.residuals ?? [1],
        far.map(() => 1),
      ),
    ),
  ).toBeLessThan(1e-12);
});

test("a column that adds nothing, columns of unequal length, and too few rows", () => {
  expect(regress([x.map(() => 1), x, x.map((one) => 3 - 2 * one)], x)).toBeUndefined();
  expect(regress([x.map(() => 0)], x)).toBeUndefined();
  expect(() => regress([x, [1, 2]], x)).toThrow("unequal length");
  expect(() => regress([x.slice(0, 2), [1, 1]], [1, 2])).toThrow("2 readings cannot carry 2 coefficients");
  expect(
    regress(
      [
        [1, 1, 1],
        [0, 1, 2],
      ],
      [0, 1, 2],
    )?.degreesOfFreedom,
  ).toBe(1);
});
