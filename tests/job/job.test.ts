import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readJob } from "../../src/job/read.js";
import { everyBadFile } from "../support/badFiles.js";

everyBadFile("tests/job/bad", (text) => readJob(text).problems);

test("the demo's job reads without a remark", () => {
  expect(readJob(readFileSync("templates/jobs/deck-pin.yaml", "utf8")).problems).toEqual([]);
});

test("a material that burns is refused with its caution, and the name that is known", () => {
  const remedy = (material: string) =>
    readJob(`name: Try\nmaterial: ${material}\nbar: { diameter: 10, out: 20 }\nsteps: [{ do: face, depth: 1 }]\n`)
      .problems.map(({ remedy }) => remedy)
      .join();
  expect(remedy("titanum")).toMatch(/did you mean "titanium"\?; mind: Titanium dust and fine chips catch fire/);
  expect(remedy("Ti grade 2")).toMatch(/known are .*titanium.*; mind: Titanium dust/);
  expect(remedy("titanium alloy")).toBe("");
});
