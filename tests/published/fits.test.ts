import { describe, expect, test } from "vitest";
import { fitDeviations, isHoleFit, looksLikeFit } from "../../src/part/fits.js";

/** What the tables hold is recomputed from the formulas of ISO 286-1, which are from memory as they are. */

/** Nominal sizes from one to the next are of one range; the first is reckoned from 1 though it begins above 0. There the standard
 *  leaves its formulas, and prints rounder or closer figures: those stand below as they are remembered. */
const ends = [1, 3, 6, 10, 18, 30, 50, 80, 120];
const ranges = ends.slice(1).map((to, index) => {
  const from = ends[index] as number;
  return { from, to, mean: Math.sqrt(from * to) };
});
const byFormula = ranges.slice(1);

/** Within the standard's own rounding: formulas were rounded by hand, to whole µm where small, further where large, and evened out
 *  along the row; so a µm, or a twentieth. */
const rounded = (formula: number): number => Math.max(1, 0.05 * formula);

const microns = (fit: string, size: number) => {
  const found = fitDeviations(fit, size);
  return found && { upper: Math.round(found.upper * 1e4) / 10, lower: Math.round(found.lower * 1e4) / 10 };
};

describe("grades: i = 0.45 ∛D + 0.001 D µm, D the geometric mean of the range (ISO 286-1, from memory)", () => {
  const multiples = { 5: 7, 6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100 };
  test.each(Object.entries(multiples))("IT%s is %d i above 3 mm", (grade, multiple) => {
    for (const { mean, to } of byFormula) {
      const formula = multiple * (0.45 * Math.cbrt(mean) + 0.001 * mean);
      const found = microns(`h${grade}`, to);
      expect(found?.upper).toBe(0);
      expect(Math.abs(-(found?.lower ?? 0) - formula), `up to ${to}`).toBeLessThanOrEqual(rounded(formula));
    }
  });

  test("up to 3 mm they are 4, 6, 10, 14, 25, 40, 60: the formula, rounded up by as much as 16 %", () => {
    const printed = [4, 6, 10, 14, 25, 40, 60];
    expect(Object.keys(multiples).map((grade) => -(microns(`h${grade}`, 3)?.lower ?? 0))).toEqual(printed);
    const unit = 0.45 * Math.cbrt(Math.sqrt(3)) + 0.001 * Math.sqrt(3);
    for (const [index, multiple] of Object.values(multiples).entries()) {
      expect(printed[index]).toBeGreaterThan(multiple * unit);
      expect(printed[index]).toBeLessThan(1.16 * multiple * unit);
    }
  });
});

describe("letters (ISO 286-1, from memory)", () => {
  test.each([
    ["d", 16, 0.44],
    ["e", 11, 0.41],
    ["f", 5.5, 0.41],
    ["g", 2.5, 0.34],
  ])("%s lies %d D^%d below, its hole as much above", (letter, factor, power) => {
    for (const { mean, to } of byFormula) {
      const formula = factor * mean ** power;
      const shaft = microns(`${letter}7`, to);
      expect(Math.abs(-(shaft?.upper ?? 0) - formula), `up to ${to}`).toBeLessThanOrEqual(rounded(formula));
      const hole = microns(`${letter.toUpperCase()}7`, to);
      expect(hole).toEqual({ upper: -(shaft?.lower ?? 0), lower: -(shaft?.upper ?? 0) });
    }
  });

  test.each([
    ["n", 5, 0.34],
    ["k", 0.6, 1 / 3],
  ])("%s lies %d D^%d above", (letter, factor, power) => {
    for (const { mean, to } of byFormula) {
      const formula = factor * mean ** power;
      const found = microns(`${letter}6`, to)?.lower ?? Number.NaN;
      expect(Math.abs(found - formula), `up to ${to}`).toBeLessThanOrEqual(rounded(formula));
    }
  });

  test("m lies IT7 − IT6 above, over 3 mm", () => {
    for (const { to } of byFormula)
      expect(microns("m6", to)?.lower, `up to ${to}`).toBe(
        (microns("H7", to)?.upper ?? 0) - (microns("H6", to)?.upper ?? 0),
      );
  });

  test("up to 3 mm: d −20, e −14, f −6, g −2, k 0, m +2, n +4, p +6", () => {
    expect(["d7", "e7", "f7", "g7"].map((fit) => microns(fit, 3)?.upper)).toEqual([-20, -14, -6, -2]);
    expect(["k7", "m7", "n7", "p7"].map((fit) => microns(fit, 3)?.lower)).toEqual([0, 2, 4, 6]);
    expect(["K7", "N7", "P7"].map((fit) => microns(fit, 3)?.upper)).toEqual([0, -4, -6]);
  });

  test("p lies above the largest H7 hole, by no more than 5 µm: IT7 and 0 to 5, above 3 mm", () => {
    for (const { to } of byFormula) {
      const above = (microns("p6", to)?.lower ?? 0) - (microns("H7", to)?.upper ?? 0);
      expect(above).toBeGreaterThanOrEqual(0);
      expect(above).toBeLessThanOrEqual(5);
    }
  });

  test("K7, N7 and P7 lie below by k, n and p, less Δ = IT7 − IT6, above 3 mm", () => {
    for (const { to } of byFormula) {
      const widths = [microns("h7", to), microns("h6", to)].map((one) => -(one?.lower ?? 0));
      const delta = (widths[0] ?? 0) - (widths[1] ?? 0);
      for (const letter of ["k", "n", "p"])
        expect(microns(`${letter.toUpperCase()}7`, to)?.upper, `${letter} up to ${to}`).toBe(
          delta - (microns(`${letter}6`, to)?.lower ?? Number.NaN),
        );
    }
  });

  test("js and JS lie half to either side", () => {
    for (const { to } of ranges)
      for (const grade of [5, 6, 7, 8, 9, 10, 11]) {
        const width = -(fitDeviations(`h${grade}`, to)?.lower ?? 0);
        for (const letters of ["js", "JS"])
          expect(fitDeviations(`${letters}${grade}`, to)).toEqual({ upper: width / 2, lower: -width / 2 });
      }
  });
});

describe("limits that every handbook prints (ISO 286-2, from memory)", () => {
  test.each([
    [25, "H7", 21, 0],
    [25, "g6", -7, -20],
    [20, "f7", -20, -41],
    [10, "h7", 0, -15],
    [50, "js6", 8, -8],
    [30, "k6", 15, 2],
    [40, "n6", 33, 17],
    [12, "p6", 29, 18],
    [25, "K7", 6, -15],
    [20, "N7", -7, -28],
    [16, "P7", -11, -29],
    [40, "H8", 39, 0],
    [80, "H11", 190, 0],
    [18, "h6", 0, -11],
    [18.001, "h6", 0, -13],
    [3, "h6", 0, -6],
    [10, "e8", -25, -47],
    [60, "d9", -100, -174],
    [100, "m6", 35, 13],
    [8, "F8", 35, 13],
    [6, "D10", 78, 30],
  ])("%d %s: %d/%d µm", (size, fit, upper, lower) => expect(microns(fit, size)).toEqual({ upper, lower }));
});

test("every fit that is known has its upper limit above its lower", () => {
  const letters = [..."defghkmnp", "js"].flatMap((letter) => [letter, letter.toUpperCase()]);
  const known = letters.flatMap((letter) =>
    [4, 5, 6, 7, 8, 9, 10, 11, 12].flatMap((grade) =>
      ranges.flatMap(({ to }) => fitDeviations(`${letter}${grade}`, to) ?? []),
    ),
  );
  // 6 kinds of shaft and of hole in 7 grades, k in 3, m n p in 7, and three tight holes; each in 8 ranges.
  expect(known).toHaveLength(8 * (2 * 6 * 7 + 3 + 3 * 7 + 3));
  for (const { upper, lower } of known) expect(upper).toBeGreaterThan(lower);
});

test.each([
  ["H3", 20],
  ["z9", 20],
  ["h7", 200],
  ["h7", 120.1],
  ["k8", 20],
  ["K8", 20],
  ["M7", 20],
  ["h7", 0],
  ["h7", -5],
  ["h7", Number.NaN],
  ["", 20],
  ["h", 20],
  ["7", 20],
  ["h07", 20],
  ["jS7", 20],
  ["hh7", 20],
  ["h7 h7", 20],
])("%s at %d mm is not known", (fit, size) => expect(fitDeviations(fit, size)).toBeUndefined());

test("spaces about a fit are nothing", () => expect(fitDeviations(" h7 ", 20)).toEqual(fitDeviations("h7", 20)));

test("a capital is given to holes", () => {
  expect(["H7", "JS6", " P7"].map(isHoleFit)).toEqual([true, true, true]);
  expect(["h7", "js6", " p6"].map(isHoleFit)).toEqual([false, false, false]);
});

test("what looks like a fit, known or not", () => {
  expect(["h7", " H11 ", "z9", "JS6"].map(looksLikeFit)).toEqual([true, true, true, true]);
  expect(["12", "h", "M6x1", "2BA", "12 h7"].map(looksLikeFit)).toEqual([false, false, false, false, false]);
});
