import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Fit } from "../../src/feed/finding.js";
import { fit } from "../../src/feed/fit.js";

/** y, x as NIST prints them. */
const rows = readFileSync("tests/published/data/norris.csv", "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => line.split(",").map(Number) as [number, number]);

/** NIST/ITL Statistical Reference Datasets, linear regression, Norris.dat: certified values, 15 figures. */
const certified = {
  intercept: -0.262323073774029,
  interceptError: 0.232818234301152,
  slope: 1.00211681802045,
  slopeError: 0.429796848199937e-3,
  residualDeviation: 0.884796396144373,
} as const;

const agreeingDigits = (value: number, truth: number): number => -Math.log10(Math.abs(value - truth) / Math.abs(truth));

describe("NIST StRD, linear regression, Norris (J. Norris, Calibration of Ozone Monitors)", () => {
  const line = () =>
    fit(
      rows.map(([, x]) => x),
      rows.map(([y]) => y),
    ) as Fit;

  test("36 observations, 34 degrees of freedom", () => {
    expect(line().readings).toBe(36);
    expect(line().degreesOfFreedom).toBe(34);
  });

  test.each(Object.entries(certified))("%s as certified, to more than 11 digits", (key, value) => {
    expect(agreeingDigits(line()[key as keyof typeof certified], value)).toBeGreaterThan(11);
  });
});
