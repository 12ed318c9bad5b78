import { describe, expect, test } from "vitest";
import { overview } from "../../src/cli/overview.js";
import { remarks } from "../../src/findings/remarks.js";
import { findingsOf, textsOf } from "../support/sheets.js";

/** A slide of 60 mm, 2 mm a turn, read at every second turn but the last; `off`: how far it stands ahead there. */
const slide = (off: (turn: number) => number) => {
  const turns = Array.from({ length: 15 }, (_, index) => 2 * index);
  return findingsOf(
    `name: D\nhandwheels: [{ name: Cross slide, reads: diameter, travel: 60, feed: { readings: { gauge: 0.01, zeroAt: front, turns: [${turns}], travel: [${turns.map((turn) => (2 * turn + off(turn)).toFixed(2))}] } }, dial: { shape: drum, diameter: 40, width: 9 } }]\n`,
  );
};
const bent = slide((turn) => -0.2 * Math.sin((Math.PI * turn) / 28));
const told = (findings: ReturnType<typeof findingsOf>) =>
  remarks(findings).filter(({ code }) => code === "doubtful-dial");

describe("a slide of which all was measured, and whose wear is more than a division", () => {
  test("is not to be measured more: nothing but living with it helps, and the dial is had for asking", () => {
    const [found] = told(bent);
    expect(found?.remedy).toMatch(/^that is wear.*closure:.*rule/);
    expect(found?.remedy).not.toMatch(/measure over more|measuring-form/);
    // The doubt is of the diameter, and so is the way it is told over.
    expect(found?.what).toMatch(/in doubt by [\d.]+ mm over 120 mm on the dial/);
    const line = overview(bent).join(" ").replaceAll(/\s+/g, " ");
    expect(line).toContain("that is wear: ask for one with closure: and mind its ±");
    expect(line).not.toContain("measure over more");
  });

  test("nor is a finer gauge asked for on its form", () => {
    const words = textsOf(bent, "measuring-form");
    expect(words).toContain("that is wear, which no finer gauge and no more readings take away");
    expect(words).not.toContain("takes a finer gauge");
  });
});

test("one of which little was measured still is", () => {
  const few = findingsOf(
    "name: D\nhandwheels: [{ name: S, travel: 100, feed: { readings: { gauge: 0.01, turns: [0, 1, 2, 3], travel: [0, 2.01, 4, 6.02] } }, dial: { shape: drum, diameter: 40, width: 9 } }]\n",
  );
  expect(told(few)[0]?.remedy).toMatch(/^measure over more of the travel/);
});
