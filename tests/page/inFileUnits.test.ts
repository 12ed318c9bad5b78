import { expect, test } from "vitest";
import { readJob } from "../../src/job/read.js";
import { hint } from "../../src/page/app/form/hint.js";
import { placeWords } from "../../src/page/app/form/placeWords.js";
import { drawn, inFileUnits } from "../../src/page/app/form/units.js";
import { jobSchema, schemaAt } from "../../src/page/schema.js";

test("what is taken where a field is left out is told in the file's unit", () => {
  expect(inFileUnits("Width of the strip; 8 mm when left out", "mm")).toBe("Width of the strip; 8 mm when left out");
  expect(inFileUnits("Width of the strip; 8 mm when left out", "in")).toBe(
    "Width of the strip; 0.315 in when left out",
  );
  // Round in each unit.
  expect(inFileUnits("Left for the last cut; 0.1 mm (0.004 in) when left out", "in")).toBe(
    "Left for the last cut; 0.004 in when left out",
  );
  // An example says its own unit.
  expect(inFileUnits("Divisions: 0.02 mm", "in")).toBe("Divisions: 0.02 mm");
});

test("a printer's name is told as its owner wrote it", () =>
  expect(placeWords(["printers", "Shop LX", "across"], { words: () => "" })).toBe("printers “Shop LX” across"));

test("what is taken is told in one unit alone where a hint says it in both", () => {
  const words = "Largest depth of cut; 0.5 mm (0.02 in) when left out";
  expect(inFileUnits(words, "mm")).toBe("Largest depth of cut; 0.5 mm when left out");
  expect(inFileUnits(words, "in")).toBe("Largest depth of cut; 0.02 in when left out");
});

test("examples of a size are those of the file's unit, and each may be written so", () => {
  const { properties = {} } = schemaAt(jobSchema, ["steps", 0], () => ({})) ?? {};
  const hints = Object.values(properties).flatMap(({ description }) => description ?? []);
  const all = (units: "mm" | "in") => hints.map((one) => hint(one, units)).join("\n");
  expect(all("mm")).toContain("12, 12 h7, 12 ± 0.02, 11.98 to 12.00");
  expect(all("in")).toContain(".375, .375 h7, .375 ± .002, .374 to .375");
  expect(all("in")).toContain("reamer (5/16 H7)");
  expect(all("in")).not.toMatch(/\d mm\b|\b12\b/);
  const steps = drawn.map(([, inches]) =>
    inches.includes("H") ? `do: ream, depth: 0.2, diameter: ${inches}` : `do: turn, length: 1, to: ${inches}`,
  );
  const { job, problems } = readJob(
    `name: J\nunits: in\nmaterial: brass\nbar: { diameter: 1, out: 2 }\nsteps:\n${steps.map((one) => `  - { ${one} }\n`).join("")}`,
  );
  expect(problems).toEqual([]);
  expect(job?.steps).toHaveLength(drawn.length);
});
