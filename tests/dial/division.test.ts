import fc from "fast-check";
import { expect, test } from "vitest";
import { divideEvenly, divideInRows, divideTruly, evenError, MOST_ROWS } from "../../src/dial/division.js";
import { feeds, values } from "./dials.js";

test.each([
  [0.99, 0.01, 99],
  [1.27, 0.01, 127],
  [0.3, 0.1, 3],
  [4.225, 0.025, 169],
  [2.54, 0.0254, 100],
  [0.7, 0.01, 70],
])("%d mm in divisions of %d mm closes on %d whatever binary fractions make of it", (turn, value, divisions) => {
  for (const divide of [divideEvenly, divideTruly, divideInRows]) {
    expect(divide(turn, value)).toEqual({ divisions, rows: 1, leftOver: 0, errorPerTurn: 0, exact: true });
  }
});

test("25.4 mm in divisions of 20 mm: one even division gains nothing but loses 5.4 mm; one true division and a short one", () => {
  expect(divideEvenly(25.4, 20)).toMatchObject({ divisions: 1, exact: false });
  expect(divideEvenly(25.4, 20).errorPerTurn).toBeCloseTo(-5.4, 12);
  expect(divideTruly(25.4, 20)).toMatchObject({ divisions: 2, errorPerTurn: 0 });
  expect(divideTruly(25.4, 20).leftOver).toBeCloseTo(5.4, 12);
});

test("a tie goes up, so that the dial reads too much and the work stays too large", () => {
  expect(divideEvenly(1.5875, 0.0254)).toMatchObject({ divisions: 63 });
  expect(divideEvenly(1.5875, 0.0254).errorPerTurn).toBeCloseTo(0.0127, 12);
  expect(divideEvenly(0.625, 0.01).divisions).toBe(63);
});

test("0.99 mm does not close on 0.02 mm in one turn; in two it does", () => {
  expect(divideEvenly(0.99, 0.02).exact).toBe(false);
  expect(divideInRows(0.99, 0.02)).toMatchObject({ divisions: 99, rows: 2, exact: true, errorPerTurn: 0 });
});

test("where no number of rows closes, the nearest is given with its error", () => {
  const nearest = divideInRows(Math.PI, 0.1);
  const errors = [1, 2, 3, 4, 5, 6].map(
    (rows) => Math.abs(evenError(rows * Math.PI, 0.1, Math.round(rows * 10 * Math.PI))) / rows,
  );
  expect(nearest.exact).toBe(false);
  expect(Math.abs(nearest.errorPerTurn)).toBeCloseTo(Math.min(...errors), 12);
});

test("a tolerance lets fewer rows close, and never more error through", () => {
  expect(divideInRows(4.2253, 0.05)).toMatchObject({ exact: false });
  expect(divideInRows(4.2253, 0.05, 0.0006)).toMatchObject({ rows: 2, divisions: 169 });
});

test("property: whole divisions and what is left over make the turn again", () => {
  fc.assert(
    fc.property(feeds, values, (turn, value) => {
      const truly = divideTruly(turn, value);
      expect((truly.divisions - (truly.exact ? 0 : 1)) * value + truly.leftOver).toBeCloseTo(turn, 9);
      expect(truly.leftOver).toBeGreaterThanOrEqual(0);
      expect(truly.leftOver).toBeLessThan(value);
      const even = divideEvenly(turn, value);
      expect(even.divisions * value - even.errorPerTurn).toBeCloseTo(turn, 9);
      expect(Math.abs(even.errorPerTurn)).toBeLessThanOrEqual(turn < value ? value : value / 2 + 1e-9);
      const rows = divideInRows(turn, value);
      expect(rows.rows).toBeLessThanOrEqual(MOST_ROWS);
      expect((rows.divisions * value) / rows.rows - rows.errorPerTurn).toBeCloseTo(turn, 9);
      expect(Math.abs(rows.errorPerTurn)).toBeLessThanOrEqual(Math.abs(even.errorPerTurn) + 1e-9);
    }),
  );
});

test("property: a turn made of whole divisions over k turns closes in k rows or a divisor of k", () => {
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 400 }), fc.integer({ min: 1, max: MOST_ROWS }), values, (n, k, value) => {
      const rows = divideInRows((n * value) / k, value);
      expect(rows.exact).toBe(true);
      expect(k % rows.rows).toBe(0);
    }),
  );
});
