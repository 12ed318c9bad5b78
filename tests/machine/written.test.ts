import { expect, test } from "vitest";
import { asGiven, asOnPaper, figureAsGiven, unitWritten, writtenAs } from "../../src/machine/written.js";
import { inLanguage } from "../../src/words/language.js";

test.each([
  ["1/8 in", "mm", "1/8 in"],
  ['1/8"', "mm", "1/8 in"],
  ["1/8″", "mm", "1/8 in"],
  ["1/8 in.", "mm", "1/8 in"],
  ["1/8 Inches", "mm", "1/8 in"],
  ["0.5 inch", "mm", "0.5 in"],
  ["1/8", "in", "1/8 in"],
  ["1/8", "mm", "1/8 mm"],
  [" 1-1/2 in ", "mm", "1-1/2 in"],
  ["5 thou", "mm", "5 thou"],
  ["12 mm", "in", "12 mm"],
  ["12mm", "in", "12 mm"],
  ["3.5", "mm", undefined],
  ["12", "in", undefined],
  ["5.", "mm", undefined],
] as const)("%j in a file in %s is shown as %s", (text, units, shown) => expect(writtenAs(text, units)).toBe(shown));

test.each([
  [{ unit: "tpi" }, "mm", "in"],
  [{ unit: "file" }, "mm", "mm"],
  [{ unit: "file" }, "in", "in"],
  [{ unit: "mm", text: "3 mm" }, "in", "mm"],
  [{ unit: "mm", text: '3"' }, "mm", "in"],
  [{ unit: "mm", text: "3 thou" }, "mm", "in"],
  [{ unit: "mm", text: "3 thousandths" }, "mm", "in"],
  [{ unit: "mm", text: "3 ft" }, "mm", "in"],
  [{ unit: "mm", text: "1 foot" }, "mm", "in"],
  [{ unit: "mm", text: "3 FEET" }, "mm", "in"],
  [{ unit: "mm", text: "3 cm" }, "in", "mm"],
  [{ unit: "file", text: "3" }, "in", "in"],
  [{ unit: "file", text: "1/8" }, "in", "in"],
  [{ unit: "file", text: "1/8" }, "mm", "mm"],
] as const)("%o in a file in %s is told in %s", (given, units, told) => expect(unitWritten(given, units)).toBe(told));

test("a size is shown as it was given, else in the file's unit", () => {
  const written = new Map([[3.175, "1/8 in"]]);
  expect(asGiven(3.175, { units: "mm", written })).toBe("1/8 in");
  expect(asGiven(3.2, { units: "mm", written })).toBe("3.2 mm");
  expect(asGiven(3.2, { units: "mm" })).toBe("3.2 mm");
  expect(asGiven(1 / 3, { units: "mm" })).toBe("0.333 mm");
  expect(asGiven(1 / 3, { units: "mm" }, 1)).toBe("0.3 mm");
  expect(asGiven(25.4 / 3, { units: "in" })).toBe("0.3333 in");
});

test("where a heading holds the unit its own is left out, another stays", () => {
  const written = new Map([
    [3.175, "1/8 in"],
    [5, "5 mm"],
  ]);
  expect(figureAsGiven(3.175, { units: "in", written })).toBe("1/8");
  expect(figureAsGiven(3.175, { units: "mm", written })).toBe("1/8 in");
  expect(figureAsGiven(5, { units: "in", written })).toBe("5 mm");
  expect(figureAsGiven(5, { units: "mm", written })).toBe("5");
  expect(figureAsGiven(1 / 3, { units: "mm" }, 2)).toBe("0.33");
});

test("decimal marks and the inch are those of the paper's language", () => {
  expect(asOnPaper("2,5 mm")).toBe("2.5 mm");
  expect(asOnPaper(undefined)).toBeUndefined();
  expect(asOnPaper("12.5.6")).toBe("12.5.6");
  inLanguage("de", () => {
    expect(asOnPaper("0.125 in")).toBe("0,125 Zoll");
    expect(asOnPaper("1/8 in")).toBe("1/8 Zoll");
    expect(asOnPaper("in 5 mm")).toBe("in 5 mm");
    expect(figureAsGiven(25.4, { units: "in" })).toBe("1");
    expect(figureAsGiven(3.175, { units: "in", written: new Map([[3.175, "1/8 in"]]) })).toBe("1/8");
  });
});

test("a mixed number is written one way on paper, however the file joins it", () => {
  expect(asOnPaper("1-1/2 in")).toBe("1 1/2 in");
  expect(asOnPaper("1 1/2 in")).toBe("1 1/2 in");
  expect(asOnPaper("-1/2 in")).toBe("-1/2 in");
});
