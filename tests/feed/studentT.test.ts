import { describe, expect, test } from "vitest";
import { studentT95 } from "../../src/feed/studentT.js";

describe("Student's t, two-sided 95 %", () => {
  /** Computed at 60 digits from the finite sums of Abramowitz & Stegun 26.7.3 and 26.7.4, cut to 12 figures. */
  test.each([
    [1, 12.7062047362],
    [2, 4.30265272975],
    [3, 3.18244630528],
    [9, 2.2621571628],
    [10, 2.22813885199],
    [29, 2.04522964213],
    [30, 2.0422724563],
  ])("%i degrees of freedom: %d, to 11 figures", (degreesOfFreedom, value) => {
    expect(Math.abs(studentT95(degreesOfFreedom) / value - 1)).toBeLessThan(1e-11);
  });

  test("1 and 2 degrees of freedom in closed form: tan(0.475 π) and √(2 · 0.95² / (1 − 0.95²))", () => {
    expect(studentT95(1)).toBeCloseTo(Math.tan(0.475 * Math.PI), 11);
    expect(studentT95(2)).toBeCloseTo(Math.sqrt((2 * 0.95 ** 2) / (1 - 0.95 ** 2)), 12);
  });

  test("falls with every further degree of freedom, across the change from sums to series too, and stays above 1.95996", () => {
    const values = Array.from({ length: 2100 }, (_, i) => studentT95(i + 1));
    for (let i = 1; i < values.length; i++) expect(values[i]).toBeLessThan(values[i - 1] as number);
    expect(values.at(-1)).toBeGreaterThan(1.959963984540054);
  });

  test.each([0, -1, 2.5, Number.NaN])("%d degrees of freedom mean nothing", (degreesOfFreedom) => {
    expect(() => studentT95(degreesOfFreedom)).toThrow(RangeError);
  });
});
