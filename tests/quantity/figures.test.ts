import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  capital,
  figureWithin,
  formatBound,
  formatDoubted,
  formatFixed,
  formatLength,
  formatSize,
  formatUncertain,
  placesOf,
  plural,
  sizeAmount,
  sizeFigure,
  trimmed,
  trimmedSize,
  unitName,
} from "../../src/quantity/format.js";
import { inLanguage } from "../../src/words/language.js";

test.each([
  [120.17, "mm", "120.17 mm", "120.17"],
  [120.17, "in", "4.731 in", "4.731"],
  [-25.4, "in", "−1.000 in", "−1.000"],
] as const)("%d mm as a size in %s: %s", (mm, unit, size, figure) => {
  expect(formatSize(mm, unit)).toBe(size);
  expect(sizeFigure(mm, unit)).toBe(figure);
});

test("places of a size are told in mm; in inches it has one more", () => {
  expect(formatSize(1 / 3, "mm", 1)).toBe("0.3 mm");
  expect(formatSize(25.4 / 3, "in", 1)).toBe("0.33 in");
  expect(trimmedSize(12.5, "mm")).toBe("12.5 mm");
  expect(trimmedSize(12.7, "in")).toBe("0.5 in");
  expect(trimmedSize(25.4 / 3, "in")).toBe("0.333 in");
  expect(trimmedSize(1 / 3, "mm", 4)).toBe("0.3333 mm");
});

test("what is there is never told as nothing, and nothing is", () => {
  expect(sizeAmount(-0.05, "mm")).toBe("0.0500 mm");
  expect(sizeAmount(0.00002, "mm")).toBe("0.000020 mm");
  expect(sizeAmount(-0.00002, "in")).toBe("0.00000079 in");
  expect(sizeAmount(0.0001, "mm")).toBe("0.0001 mm");
  expect(sizeAmount(0, "mm")).toBe("0.0000 mm");
});

test.each([
  [1.5, 3, 1],
  [25, 3, 0],
  [0.02, 4, 2],
  [1 / 3, 5, 5],
  [100, 0, 0],
])("%d in at most %d places has %d", (value, most, places) => expect(placesOf(value, most)).toBe(places));

test("zeros before the point stay: 100 is no 1", () => {
  expect(trimmed(100, 2)).toBe("100");
  expect(trimmed(100, 0)).toBe("100");
  expect(trimmed(0.5, 0)).toBe("1");
  expect(trimmed(1200.5, 3)).toBe("1200.5");
});

test("German writes a comma, and an inch is a Zoll", () => {
  inLanguage("de", () => {
    expect(formatFixed(-1.25, 2)).toBe("−1,25");
    expect(trimmed(0.5, 3)).toBe("0,5");
    expect(placesOf(0.25, 3)).toBe(2);
    expect(formatLength(25.4, "in")).toBe(`1,0000 ${unitName("in")}`);
    expect(unitName("in")).toBe("Zoll");
  });
  expect([unitName("mm"), unitName("in")]).toEqual(["mm", "in"]);
});

test("usual places: 0.001 mm, 0.0001 in; with a doubt those of the doubt", () => {
  expect(formatLength(1 / 3, "mm")).toBe("0.333 mm");
  expect(formatLength(25.4 / 3, "in")).toBe("0.3333 in");
  expect(formatDoubted(2.11267, 0.00094, "mm")).toBe("2.11267 ± 0.00094 mm");
  expect(formatDoubted(25.4, 0.254, "in")).toBe("1.000 ± 0.010 in");
  expect(formatDoubted(2.11267, undefined, "mm")).toBe("2.113 mm");
  expect(formatDoubted(2.11267, undefined, "mm", 1)).toBe("2.1 mm");
  expect(formatBound(0.00372, "mm")).toBe("0.0037 mm");
  expect(formatBound(0.0254, "in")).toBe("0.0010 in");
  expect(formatBound(0, "mm")).toBe("0 mm");
});

describe("an uncertainty as large as whole numbers (GUM 7.2.6)", () => {
  test.each([
    [1234, 99, "1234", "99"],
    [1234, 100, "1230", "100"],
    [98765, 4321, "98800", "4300"],
    [98765, 25, "98765", "25"],
    [9.87, 1.06, "9.9", "1.1"],
    [0.5, 1e-14, "0.500000000000", "0.000000000000"],
    [-5678, 340, "−5680", "340"],
    [-2.5, 12, "−3", "12"],
  ])("%d ± %d", (value, doubt, shown, shownDoubt) =>
    expect(formatUncertain(value, doubt)).toEqual({ value: shown, uncertainty: shownDoubt }),
  );
  test("property: never rounded by more than half a step of its second digit", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e5, noNaN: true }),
        (value, doubt) => {
          const text = formatUncertain(value, doubt);
          const step = 10 ** (Math.floor(Math.log10(doubt)) - 1);
          expect(Math.abs(Number(text.value.replace("−", "-")) - value)).toBeLessThanOrEqual(step * 5.0001);
          expect(Math.abs(Number(text.uncertainty) - doubt)).toBeLessThanOrEqual(step * 0.5001);
        },
      ),
    );
  });
});

describe("a finished size", () => {
  test.each([
    [8, undefined, "mm", "8.00"],
    [8.125, undefined, "mm", "8.125"],
    [8.1256, undefined, "mm", "8.13"],
    [25.4 * 0.12345, undefined, "in", "0.12345"],
    [25.4 * 0.123456, undefined, "in", "0.1235"],
    [8, 0.05, "mm", "8.00"],
    [8, 0.049, "mm", "8.000"],
    [8, 0.005, "mm", "8.000"],
    [8, 0.0049, "mm", "8.0000"],
    [8, 5e-14, "mm", "8.000000000000"],
  ] as const)("%d mm within %s, in %s: %s", (mm, tolerance, unit, text) =>
    expect(figureWithin(mm, tolerance, unit)).toBe(text),
  );
});

describe("halves go away from zero however the double lies", () => {
  test.each([
    [12.7 / 0.4, 1, "31.8"],
    [1.45, 1, "1.5"],
    [-1.45, 1, "−1.5"],
    [1.4499999, 1, "1.4"],
    [0.05, 1, "0.1"],
    [0.0499999, 1, "0.0"],
    [5e-8, 7, "0.0000001"],
    [123456789.5, 0, "123456790"],
    [2 ** 52 + 0.5, 0, "4503599627370496"],
    [9.5, 0, "10"],
    [-0.5, 0, "−1"],
    [1e20, 1, "100000000000000000000.0"],
    [-1e20, 0, "−100000000000000000000"],
  ])("%d with %d places is %s", (value, places, text) => expect(formatFixed(value, places)).toBe(text));
  test.each([Number.NEGATIVE_INFINITY, -1e21, 2e21])("%d is refused by name", (value) =>
    expect(() => formatFixed(value, 0)).toThrow(`${value} cannot be written as a number`),
  );
});

test("words: a capital, one or many", () => {
  expect(capital("übermaß")).toBe("Übermaß");
  expect(capital("")).toBe("");
  expect([plural(1, "turn"), plural(2.5, "turn"), plural(1, "inch", "inches"), plural(-1, "inch", "inches")]).toEqual([
    "1 turn",
    "2.5 turns",
    "1 inch",
    "−1 inches",
  ]);
});
