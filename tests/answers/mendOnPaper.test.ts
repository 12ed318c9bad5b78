import { expect, test } from "vitest";
import { verified } from "../../src/answers/verified.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const lathe = (size: string, units: string) =>
  findingsOf(
    `name: L\nunits: ${units}\npaper: { size: ${size} }\nhandwheels: [{ name: Slide, travel: 100 mm, feed: 2 mm, dial: { shape: drum, diameter: 30 mm, width: 9 mm, increases: clockwise } }]\n`,
  );

test.each([
  ["A5", "mm", "94.8 mm"],
  ["A4", "mm", "94.8 mm"],
  ["Letter", "in", "94.8 mm"],
])("on %s, %s, verify asks for bars that the printer check on that paper has", (size, units, measured) => {
  const findings = lathe(size, units);
  const { mend } = verified(findings, { handwheel: "Slide", measured });
  const check = textsOf(findings, "printer-check");
  for (const side of [mend?.level, mend?.upright]) {
    const [, nominal] = / of (\d+)/.exec(side?.bar ?? "") ?? [];
    expect(nominal).toBeDefined();
    expect(check).toMatch(new RegExp(`\\bof ${nominal}\\b|\\b${nominal} (mm|in)\\b`));
  }
});
