import { expect, test } from "vitest";
import { leftWords } from "../../src/working/left.js";

test("an error that would print as nought is told as right, others by their length", () => {
  expect(leftWords(0, "mm")).toBe("right to 0.001 mm");
  expect(leftWords(-0.0004, "mm")).toBe("right to 0.001 mm");
  expect(leftWords(0.0006, "mm")).toBe("which leaves 0.001 mm");
  expect(leftWords(0.001, "in")).toBe("right to 0.0001 in");
  expect(leftWords(-0.0127, "in")).toBe("which leaves −0.0005 in");
});
