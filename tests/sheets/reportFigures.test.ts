import { expect, test } from "vitest";
import { findingsOf, textsOf } from "../support/sheets.js";

/** A quill of a drill, read at eighths of its one turn, mm (invented). */
const quill = (turns: string, travel: string) =>
  textsOf(
    findingsOf(`name: D
kind: drill
handwheels: [{ name: Quill wheel, travel: 80, feed: { nominal: 100 mm, readings: { gauge: 0.05, turns: [${turns}], travel: [${travel}] } } }]
`),
    "measured-report",
  );
const eighths = quill("0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75", "0, 12.52, 25.05, 37.55, 50.10, 62.60, 75.10");

test("readings within a turn are not said to be missing where they only do not tell enough", () => {
  expect(eighths).toContain("Not known: that takes more readings within a turn");
  expect(eighths).not.toContain("no readings within the turn");
  const whole = quill("0, 1, 2, 3, 4, 5", "0, 100.1, 200.2, 300.3, 400.4, 500.5");
  expect(whole).toContain("Not measured: no readings within the turn.");
});

test("figures go no further than they are known", () => {
  // Two figures of a ±, and of a feed known to some hundredths no ten-thousandths.
  expect(eighths).toMatch(/= ± \d\d µm per turn/);
  expect(eighths).toMatch(/100 mm per turn: a dial made for that is out by 0\.\d\d mm per turn/);
  expect(eighths).toMatch(/Readings of an even feed look like this \d+ times in 100\./);
});
