import { expect, test } from "vitest";
import { drawnStages } from "../../src/blocks/work/drawnStages.js";
import { jobOf, lathe, planFor, verdicts } from "../support/job.js";
import { textsOf } from "../support/sheets.js";

const sound = ["do: turn, to: 14, length: 30", "do: shoulder, to: 10, length: 15", "do: chamfer, size: 1"];
const numbers = (steps: readonly string[]) => drawnStages(planFor(steps)).drawn.map(({ number }) => number);

test("a refused cut that takes away what sound steps make is not drawn, and paper says so", () => {
  // Into the jaws, and thinner than all before it.
  const steps = [...sound, "do: turn, to: 8, length: 39"];
  expect(verdicts(planFor(steps))).toContain("refused: into-the-jaws at 4");
  expect(numbers(steps)).toEqual([1, 2, 3]);
  const words = textsOf({ ...lathe(), job: jobOf(steps) }, "plan").replace(/\s+/g, " ");
  expect(words).toContain("ø14");
  expect(words).toContain("Refused, and not drawn: step 4.");
});

test("what hides nothing is drawn, refused or not", () => {
  expect(numbers(sound)).toEqual([1, 2, 3]);
  const beside = ["do: turn, to: 14, length: 39", "do: shoulder, to: 10, length: 15"];
  expect(verdicts(planFor(beside))).toContain("refused: into-the-jaws at 1");
  expect(numbers(beside)).toEqual([1, 2]);
  expect(textsOf({ ...lathe(), job: jobOf(beside) }, "plan")).not.toContain("not drawn");
});

test("a drill wider than the work leaves the part to be seen", () => {
  const steps = [...sound, "do: centre drill", "do: drill, diameter: 18, depth: 20"];
  expect(verdicts(planFor(steps))).toContain("refused: wider-than-the-work at 5");
  expect(numbers(steps)).toEqual([1, 2, 3, 4]);
});
