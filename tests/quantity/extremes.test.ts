import fc from "fast-check";
import { expect, test } from "vitest";
import { largestOf, smallestOf } from "../../src/quantity/extremes.js";

test("they are what Math has, also of no values and of what is no number", () => {
  fc.assert(
    fc.property(fc.array(fc.double()), (values) => {
      expect(smallestOf(values)).toBe(Math.min(...values));
      expect(largestOf(values)).toBe(Math.max(...values));
    }),
  );
});

test("of more values than the stack holds", () => {
  const values = Array.from({ length: 1_000_000 }, (_, index) => (index * 7919) % 1_000_003);
  expect(() => Math.max(...values)).toThrow(RangeError);
  expect([smallestOf(values), largestOf(values)]).toEqual([0, 1_000_002]);
});
