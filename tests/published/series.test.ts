import { describe, expect, test } from "vitest";
import { geometricSpeeds, geometricStep } from "../../src/drive/geometricStep.js";
import { preferredNumbers } from "../../src/drive/preferredNumbers.js";

describe("speeds in even ratio", () => {
  test("G1: five speeds for 25 to 200 mm at 25 m/min: 40, 67, 113, 189, 318 rpm (a student's exercise page; read)", () => {
    const found = geometricSpeeds(25_000 / (Math.PI * 200), 25_000 / (Math.PI * 25), 5);
    expect(found.map(Math.round)).toEqual([40, 67, 113, 189, 318].map((rpm) => expect.closeTo(rpm, -0.01)));
  });

  test("G3: eleven speeds from 72 to 720 rpm (a homework page, whose later terms drift up to 0.7 %; read)", () => {
    const published = [72, 91, 114, 144, 181, 228, 287, 362, 457, 576, 720];
    for (const [index, rpm] of geometricSpeeds(72, 720, 11).entries())
      expect(Math.abs(rpm / (published[index] ?? 1) - 1)).toBeLessThan(0.0075);
  });

  test.each([
    [5, 1.585],
    [10, 1.259],
    [20, 1.122],
    [40, 1.059],
  ])("the step of R%i is %d (Wikipedia, Renard series; read)", (count, step) => {
    expect(geometricStep(1, 10, count + 1)).toBeCloseTo(step, 3);
  });
});

describe("preferred numbers", () => {
  test("R5 (Wikipedia, Renard series; read)", () => {
    expect(preferredNumbers("R5", 1, 10)).toEqual([1, 1.6, 2.5, 4, 6.3, 10]);
  });

  test.each([
    ["R5", 5],
    ["R10", 10],
    ["R20", 20],
    ["R40", 40],
  ] as const)("%s lies within +1.26 % and −1.01 % of the exact series (limits of ISO 3, memory)", (series, count) => {
    const numbers = preferredNumbers(series, 1, 9.99);
    expect(numbers).toHaveLength(count);
    for (const [index, number] of numbers.entries()) {
      const off = number / 10 ** (index / count) - 1;
      expect(off).toBeLessThan(0.01265);
      expect(off).toBeGreaterThan(-0.01015);
    }
  });

  test("each series holds the coarser one", () => {
    expect(preferredNumbers("R40", 1, 1000)).toEqual(expect.arrayContaining(preferredNumbers("R20", 1, 1000)));
    expect(preferredNumbers("R20", 1, 1000)).toEqual(expect.arrayContaining(preferredNumbers("R10", 1, 1000)));
    expect(preferredNumbers("R10", 100, 400)).toEqual([100, 125, 160, 200, 250, 315, 400]);
  });
});
