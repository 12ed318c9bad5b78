import { expect, test } from "vitest";
import { choiceLines } from "../../../src/cli/choiceLines.js";
import { findingsOf, textsOf } from "../../support/sheets.js";

/** A screw that 100 divisions of 0.002 in do not fit, on a dial that reads `reads`: it is out by 0.0004 in each turn. */
const slide = (reads: string, more = "travel: 3, ") =>
  findingsOf(
    `name: O\nunits: in\nrevision: 1\nhandwheels:\n  - { name: Cross slide, reads: ${reads}, ${more}feed: { perTurn: 0.0998, nominal: 0.1, uncertainty: 0.0001 }, dial: { shape: drum, diameter: 1.5, width: 0.375, closure: even, divisions: ${reads === "diameter" ? "0.002 in" : "0.0005 in"}, vernier: 5 } }\n`,
  );

/** Over what an error is told, wherever one is: "over 3 in", "over 6.00 in on the dial". */
const overs = (words: string): string[] =>
  [...new Set(words.match(/over \d+(\.\d+)? in( on the dial| of travel)?/g) ?? [])].sort();

test("an error on diameter is told over the way that the dial counts, on strip, list, command line and report", () => {
  const findings = slide("diameter");
  const dial = textsOf(findings, "dial");
  expect(overs(dial)).toEqual(["over 6 in on the dial"]);
  expect(dial).toMatch(/reads [\d.]+ in too much over 6 in on the dial/);
  expect(overs(textsOf(findings, "dial-choices"))).toEqual(["over 6 in on the dial"]);
  expect(overs(choiceLines(findings).join("\n"))).toEqual(["over 6.00 in on the dial"]);
  expect(overs(findings.handwheels[0]?.dial?.chosen.remarks.join("; ") ?? "")).toEqual(["over 6 in on the dial"]);
  const unstated = slide("diameter", "").handwheels[0]?.dial?.chosen.remarks.join("; ") ?? "";
  expect(unstated).toContain("over 2 in on the dial (no travel stated)");
});

test("one that reads travel tells the slide's way as ever", () => {
  const findings = slide("travel");
  expect(overs(textsOf(findings, "dial"))).toEqual(["over 3 in"]);
  expect(overs(choiceLines(findings).join("\n"))).toEqual(["over 3.00 in"]);
  expect(findings.handwheels[0]?.dial?.chosen.remarks.join("; ")).toMatch(/over 3 in of travel/);
});
