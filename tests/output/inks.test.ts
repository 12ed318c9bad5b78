import { expect, test } from "vitest";
import { inkRgb } from "../../src/output/inks.js";

test("a warning in red keeps five dots of six on a printer of black alone", () => {
  const [red, green, blue] = inkRgb.accent;
  // Grey as printing systems reckon it (the weights of NTSC, from memory).
  expect(0.3 * red + 0.59 * green + 0.11 * blue).toBeLessThan(0.18);
  expect(red).toBeGreaterThan(0.5);
});
