import { describe, expect, test } from "vitest";
import { overview } from "../../../src/cli/overview.js";
import { inLanguage } from "../../../src/words/language.js";
import { findingsOf, textsOf } from "../../support/sheets.js";

const lathe = (increases: string) =>
  findingsOf(
    `name: L\nhandwheels: [{ name: Top slide, travel: 50, feed: 1.5, dial: { shape: drum, diameter: 40, width: 9${increases} } }]\n`,
  );

describe("which way the numbers of a dial grow, where the file does not say it", () => {
  test("is told where its piece is explained, in either language", () => {
    expect(textsOf(lathe(""), "dial")).toContain(
      "Which way the numbers grow the file does not say: clockwise is taken.",
    );
    expect(inLanguage("de", () => textsOf(lathe(""), "dial"))).toContain("angenommen ist im Uhrzeigersinn.");
  });

  test("is told by check, with the wheel's name", () =>
    expect(overview(lathe("")).join("\n").replace(/\s+/g, " ")).toContain(
      "Top slide: numbers grow clockwise, since the file does not say which way",
    ));

  test.each(["clockwise", "anticlockwise"])("is not told where it does: %s", (sense) => {
    const told = lathe(`, increases: ${sense}`);
    expect(textsOf(told, "dial")).not.toContain("does not say");
    expect(overview(told).join("\n")).not.toContain("does not say");
  });
});
