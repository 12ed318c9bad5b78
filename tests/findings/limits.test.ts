import { expect, test } from "vitest";
import type { SpeedFinding } from "../../src/drive/finding.js";
import { heldByLimit, overLimit } from "../../src/findings/limits.js";

const limits = { chuckRpm: 1800, spindleRpm: 2400 };
const speed = (slowestRpm: number, rpm: number) => ({ slowestRpm, rpm }) as SpeedFinding;

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
