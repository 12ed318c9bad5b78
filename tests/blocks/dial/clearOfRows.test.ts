import { expect, test } from "vitest";
import { measurePage } from "../../support/measurePage.js";
import { findingsOf, printOf } from "../../support/sheets.js";

/** Invented: dials of several rows that are short of room. */
const wheels: Readonly<Record<string, string>> = {
  "a rack in three rows":
    "feed: { rack: { pitch: 16 DP, teeth: 14 } }, dial: { shape: drum, diameter: 160, width: 14, closure: rows }",
  "a cone in two rows, in inches":
    "feed: 16 tpi, dial: { shape: bevel, diameter: 1.5 in, smallDiameter: 1.2 in, width: 0.4 in, divisions: 0.001 in, closure: rows }",
  "a drum of two scales": "feed: 2 mm, dial: { shape: drum, diameter: 50, width: 10, second: 0.001 in }",
};

test.each(Object.entries(wheels))("%s: figures, words and brackets stand clear of the rows' lines", (_, wheel) => {
  const { pages } = printOf(findingsOf(`name: L\nhandwheels: [{ name: Slide, travel: 180, ${wheel} }]\n`), "dial");
  const found = pages.flatMap(({ drawing }) => measurePage(drawing));
  expect(found.filter(({ kind }) => kind === "ink at a row's line")).toEqual([]);
});
