import { expect, test } from "vitest";
import { placeWords } from "../../src/page/app/form/placeWords.js";
import { inFileUnits } from "../../src/page/app/form/units.js";

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
