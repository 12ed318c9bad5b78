import { expect, test } from "vitest";
import type { SpeedFinding } from "../../src/drive/finding.js";
import { heldByLimit, measureFirst, overLimit } from "../../src/findings/limits.js";

const limits = { chuckRpm: 1800, spindleRpm: 2400 };
const speed = (slowestRpm: number, rpm: number) => ({ slowestRpm, rpm, highestRpm: rpm }) as SpeedFinding;

test("the lower limit holds; a speed that only rounding brings over it may be used", () => {
  expect(overLimit(1800 * (1 + 1e-12), limits)).toBe(false);
  expect(overLimit(1800.01, limits)).toBe(true);
  expect(overLimit(1e6, {})).toBe(false);
});

test("a variable motor's position is held in part, one of a fixed speed wholly or not at all", () => {
  expect(heldByLimit(speed(400, 1700), limits)).toBeUndefined();
  expect(heldByLimit(speed(400, 1900), limits)).toBe("in part");
  expect(heldByLimit(speed(1900, 1900), limits)).toBe("wholly");
});

test("the highest speed that may be true decides, turned down as far as it may be higher", () => {
  expect(heldByLimit({ slowestRpm: 900, rpm: 900, highestRpm: 1801 }, limits)).toBe("wholly");
  expect(heldByLimit({ slowestRpm: 300, rpm: 900, highestRpm: 1801 }, limits)).toBe("in part");
  expect(heldByLimit({ slowestRpm: 300, rpm: 900, highestRpm: 5399 }, limits)).toBe("in part");
  expect(heldByLimit({ slowestRpm: 300, rpm: 900, highestRpm: 5500 }, limits)).toBe("wholly");
});

test("measure first: within 5 % below the limit, where nobody measured", () => {
  expect(measureFirst({ from: "ratio", highestRpm: 1711 }, limits)).toBe(true);
  expect(measureFirst({ from: "ratio", highestRpm: 1700 }, limits)).toBe(false);
  expect(measureFirst({ from: "ratio", highestRpm: 1801 }, limits)).toBe(false);
  expect(measureFirst({ from: "measured", highestRpm: 1711 }, limits)).toBe(false);
  expect(measureFirst({ from: "ratio", highestRpm: 1711 }, {})).toBe(false);
});
