import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  figureWithin,
  formatFixed,
  formatLength,
  formatUncertain,
  plural,
  trimmed,
} from "../../src/quantity/format.js";
import { fromMm, inMm, parseLength } from "../../src/quantity/length.js";
import { parseNumber } from "../../src/quantity/number.js";

const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const places = fc.integer({ min: 0, max: 6 });
const unit = fc.constantFrom("mm" as const, "in" as const);

test.each([
  [-0.0004, 3, "0.000"],
  [-0, 1, "0.0"],
  [-1.5, 1, "−1.5"],
  [2.5, 0, "3"],
  [25, 2, "25.00"],
])("%d with %d places is %s", (number, count, text) => {
  expect(formatFixed(number, count)).toBe(text);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e21])("%d is refused", (number) => {
  expect(() => formatFixed(number, 2)).toThrow(RangeError);
});

test.each([
  [0.02, 4, "0.02"],
  [25, 3, "25"],
  [100, 0, "100"],
  [1.5875, 6, "1.5875"],
  [-0.00001, 3, "0"],
  [0.1 + 0.2, 6, "0.3"],
])("%d in at most %d places is %s", (number, count, text) => {
  expect(trimmed(number, count)).toBe(text);
});

test.each([
  [3 / 32, 4, "0.0938"],
  [5 / 32, 4, "0.1563"],
  [0.1875, 3, "0.188"],
  [-0.1875, 3, "−0.188"],
  [1.005, 2, "1.01"],
  [1.4999999999, 0, "1"],
  [8.345, 2, "8.35"],
  [5e-7, 6, "0.000001"],
])("a half goes away from zero: %d with %d places is %s", (number, count, text) => {
  expect(formatFixed(number, count)).toBe(text);
});

test("any decimal is rounded as its digits are, half away from zero", () => {
  const digits = fc.tuple(
    fc.boolean(),
    fc.bigInt({ min: 0n, max: 10n ** 9n }),
    fc.integer({ min: 0, max: 6 }),
    fc.integer({ min: 0, max: 6 }),
  );
  fc.assert(
    fc.property(digits, ([minus, whole, given, asked]) => {
      const scaled = String(whole).padStart(given + 1, "0");
      const text = `${minus ? "-" : ""}${scaled.slice(0, scaled.length - given)}${given > 0 ? `.${scaled.slice(-given)}` : ""}`;
      // In whole numbers, which are exact.
      const by = 10n ** BigInt(Math.max(0, given - asked));
      const rounded = ((whole + (by > 1n ? by / 2n : 0n)) / by) * 10n ** BigInt(Math.max(0, asked - given));
      const padded = String(rounded).padStart(asked + 1, "0");
      const wanted = `${padded.slice(0, padded.length - asked)}${asked > 0 ? `.${padded.slice(-asked)}` : ""}`;
      expect(formatFixed(Number(text), asked)).toBe(minus && rounded > 0n ? `−${wanted}` : wanted);
    }),
  );
});

test("lengths are written in either unit", () => {
  expect(formatLength(1.27, "mm")).toBe("1.270 mm");
  expect(formatLength(1.27, "in")).toBe("0.0500 in");
  expect(formatLength(1.27, "in", 3)).toBe("0.050 in");
  expect(formatLength(-1.27, "mm", 1)).toBe("−1.3 mm");
});

describe("uncertainty to two significant digits, the value to the same place (GUM 7.2.6)", () => {
  test.each([
    // GUM 7.2.2: "m_S = 100.021 47 g with (a combined standard uncertainty) u_c = 0.35 mg", written from memory
    [100.02147, 0.00035, "100.02147", "0.00035"],
    [2.1123, 0.0047, "2.1123", "0.0047"],
    [2.1123, 0.00996, "2.112", "0.010"],
    [10, 0.25, "10.00", "0.25"],
    [1234, 123, "1230", "120"],
    [1234.56, 12.3, "1235", "12"],
    [-1.5, 0.5, "−1.50", "0.50"],
    [1.5875, 0, "1.5875", "0"],
  ])("%d ± %d", (number, uncertainty, valueText, uncertaintyText) => {
    expect(formatUncertain(number, uncertainty)).toEqual({ value: valueText, uncertainty: uncertaintyText });
  });
  test("both stand at the same place, and the uncertainty has two digits", () => {
    fc.assert(
      fc.property(value, fc.double({ min: 1e-8, max: 9, noNaN: true }), (number, uncertainty) => {
        const text = formatUncertain(number, uncertainty);
        const decimals = (written: string) => written.split(".")[1]?.length ?? 0;
        expect(decimals(text.value)).toBe(decimals(text.uncertainty));
        expect(text.uncertainty.replace(".", "").replace(/^0+/, "")).toHaveLength(2);
      }),
    );
  });
});

test("plurals", () => {
  expect(plural(1, "turn")).toBe("1 turn");
  expect(plural(0, "turn")).toBe("0 turns");
  expect(plural(2, "inch", "inches")).toBe("2 inches");
});

describe("what is written reads back the same", () => {
  test("numbers, to half of the last place", () => {
    fc.assert(
      fc.property(value, places, (number, count) => {
        const back = parseNumber(formatFixed(number, count));
        expect(Math.abs((back ?? Number.NaN) - number)).toBeLessThanOrEqual(0.5 * 10 ** -count * (1 + 1e-6) + 1e-9);
        expect(formatFixed(back ?? Number.NaN, count)).toBe(formatFixed(number, count));
        expect(parseNumber(trimmed(number, count))).toBe(back);
      }),
    );
  });
  test("lengths, in either unit and whatever the units of the file", () => {
    fc.assert(
      fc.property(value, unit, unit, (mm, written, file) => {
        const text = formatLength(mm, written);
        expect(formatLength(parseLength(text, file) ?? Number.NaN, written)).toBe(text);
      }),
    );
  });
  test("mm and inches there and back", () => {
    fc.assert(
      fc.property(value, unit, (mm, there) => {
        expect(inMm(fromMm(mm, there), there)).toBeCloseTo(mm, 8);
      }),
    );
  });
});

describe("a finished size within its tolerance", () => {
  test("keeps its figures: 7.985 within 0.02 is not 7.99, and 8 mm within 0.05 keeps its place in inches", () => {
    expect(figureWithin(7.985, 0.02, "mm")).toBe("7.985");
    expect(figureWithin(7.985, undefined, "mm")).toBe("7.985");
    expect(figureWithin(8, 0.05, "in")).toBe("0.3150");
    expect(figureWithin(8, 0.005, "in")).toBe("0.31496");
    expect(figureWithin(8, undefined, "mm")).toBe("8.00");
  });
  test("is never rounded by more than a tenth of it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 400, noNaN: true }),
        fc.double({ min: 0.001, max: 2, noNaN: true }),
        fc.constantFrom("mm", "in"),
        (mm, tolerance, unit) => {
          const shown = inMm(Number(figureWithin(mm, tolerance, unit)), unit);
          expect(Math.abs(shown - mm)).toBeLessThanOrEqual(tolerance / 10 + 1e-9);
        },
      ),
    );
  });
});
