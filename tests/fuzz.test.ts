import { expect, test } from "vitest";
import { fuzz } from "../scripts/fuzz/fuzz.js";

// A fixed part of what `npm run fuzz` does with other seeds and a hundred thousand inputs.
test("2000 hostile files and command lines: messages with a place, pages drawn with numbers, and nothing else", async () => {
  const { reached, printed, commanded, faults } = await fuzz(2000, { seed: "fixed" });
  expect(faults.map(({ target, seed, what }) => `${target} ${seed}: ${what}`)).toEqual([]);
  expect(reached).toBe(2000);
  expect(printed).toBeGreaterThan(50);
  expect(commanded).toBeGreaterThan(20);
});
