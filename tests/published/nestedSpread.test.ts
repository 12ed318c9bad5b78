import { expect, test } from "vitest";
import { levelsOf, spreadOf } from "../../src/feed/levels.js";

/** Mean and standard deviation of five readings on each of ten days, µV above 10 V. */
const days = [
  [172, 60],
  [116, 77],
  [13, 111],
  [144, 101],
  [106, 67],
  [31, 93],
  [60, 80],
  [125, 73],
  [163, 88],
  [41, 86],
] as const;

test("what repeats and what does not, parted as in the Guide to the Expression of Uncertainty in Measurement, H.5, table H.9 (memory)", () => {
  // Any five readings with that mean and deviation: the sum of squares of −2 … 2 is 10, over 4.
  const values = days.flatMap(([mean, deviation]) =>
    [-2, -1, 0, 1, 2].map((k) => mean + (k * deviation) / Math.sqrt(2.5)),
  );
  const middle = values.reduce((sum, value) => sum + value, 0) / values.length;
  // Days stand for places, each read five times in a row: one run.
  const levels = levelsOf(days.flatMap((_, day) => [day, day, day, day, day]));
  const { single, degreesOfFreedom, repeat } = spreadOf(
    values.map((value) => value - middle),
    levels,
    0,
  );
  expect(Math.round(middle)).toBe(97);
  expect(degreesOfFreedom).toBe(9);
  expect(repeat?.degreesOfFreedom).toBe(40);
  // Printed: s(V̄) between the days 57 µV, pooled within them 85 µV.
  expect(Math.round(repeat?.deviation ?? 0)).toBe(85);
  expect(Math.round(Math.sqrt(single ** 2 - (4 / 5) * (repeat?.deviation ?? 0) ** 2))).toBe(57);
});
