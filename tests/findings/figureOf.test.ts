import { expect, test } from "vitest";
import { figureOf } from "../../src/findings/settingWords.js";
import { inMm } from "../../src/quantity/length.js";
import { exercises } from "../../src/student/exercises.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const thousandths = (value: number) => ({
  labelWorth: inMm(0.001, "in"),
  chosen: { unit: "in", divisionValue: inMm(value, "in") } as const,
});

test.each([
  [0.01, 0.584, "584"],
  [0.002, 0.0602, "60.2"],
  [0.0025, 0.06025, "60.25"],
  [0.0005, 0.06005, "60.05"],
  [0.1, 0.58, "580"],
])("of divisions of %f in a tenth is told, and no place more", (division, inches, figure) => {
  expect(figureOf(thousandths(division), inMm(inches, "in"))).toBe(figure);
});

test("a line is told as it stands on the dial", () => {
  expect(figureOf(thousandths(0.002), inMm(0.06, "in"), 1)).toBe("60");
  expect(figureOf(thousandths(0.0025), inMm(0.0625, "in"), 1)).toBe("62.5");
});

test("a carriage in hundredths of an inch numbered in thousandths: no tenth of a thousandth on its sheets", () => {
  const findings = findingsOf(
    "name: C\nunits: in\nhandwheels: [{ name: Carriage, travel: 14, feed: 0.9163 in, dial: { shape: face, outside: 3, inside: 2.25, divisions: 0.01 in, closure: true }, distances: [1.5] }]\n",
  );
  const [wheel] = findings.handwheels;
  expect((wheel?.dial?.labelWorth ?? 0) / 25.4).toBeCloseTo(0.001, 9);
  // 1.5 in are one turn of 0.9163 and 0.5837, which is read as 0.584.
  expect(textsOf(findings, "turns")).toMatch(/\b584\b/);
  expect(textsOf(findings, "turns")).not.toContain("584.0");
  for (const { answer } of exercises(findings, "turning")) expect(answer).not.toMatch(/says \d+\.0/);
});
