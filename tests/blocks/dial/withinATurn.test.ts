import { describe, expect, test } from "vitest";
import { choiceLines } from "../../../src/cli/choiceLines.js";
import { findingsOf, textsOf } from "../../support/sheets.js";

/** A quill that one turn moves by 60.3 mm, in true marks of 0.5, of so much travel. */
const quill = (travel: number, dial = "") =>
  findingsOf(
    `name: D\nhandwheels: [{ name: Quill, moves: quill, travel: ${travel}, feed: 60.3, dial: { shape: drum, diameter: 60, width: 12, divisions: 0.5, closure: true${dial} } }]\n`,
  );

describe("a quill that is at its end before its dial has gone once round", () => {
  test.each(["", ", second: 0.02 in"])("does not begin again each turn, nor has it turns to count%s", (second) => {
    const words = textsOf(quill(50, second), "dial");
    expect(words).not.toMatch(/begins again|count whole turns|last division/);
    expect(words).toContain("error over 50 mm");
  });

  test("nor among the ways to divide it, on paper and on the command line", () => {
    const told = textsOf(quill(50), "dial-choices");
    expect(told).not.toMatch(/begins again|count whole turns/);
    expect(told).toContain("the travel ends before the dial has gone once round");
    const lines = choiceLines(quill(50)).join("\n");
    expect(lines).not.toContain("count whole turns");
    expect(lines).toContain("the travel ends before the dial has gone once round");
    expect(quill(50).handwheels[0]?.dial?.chosen.remarks.join("; ")).not.toContain("starts again");
  });
});

test("one of more than a turn does, and says so", () => {
  expect(textsOf(quill(90), "dial")).toContain("error: begins again each turn");
  expect(textsOf(quill(90), "dial")).toContain("count whole turns");
  expect(choiceLines(quill(90)).join("\n")).toContain("count whole turns");
});
