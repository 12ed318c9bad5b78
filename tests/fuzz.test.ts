import { expect, test } from "vitest";
import { fuzz } from "../scripts/fuzz/fuzz.js";

// A fixed part of what `npm run fuzz` does with other seeds and a hundred thousand inputs.
test("2000 hostile files: messages with a place, pages drawn with numbers, and nothing else", () => {
  const { reached, printed, faults } = fuzz(2000, { seed: "fixed" });
  expect(faults.map(({ target, seed, what }) => `${target} ${seed}: ${what}`)).toEqual([]);
  expect(reached).toBe(2000);
  expect(printed).toBeGreaterThan(50);
});
