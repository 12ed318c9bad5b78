import { expect, test } from "vitest";
import { studentT95 } from "../../src/feed/studentT.js";
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

test("what is to spare is called by what it counts: readings of one run, places of several; of all together nothing is counted", () => {
  const gone = [0, 10.01, 20, 30.02, 40.01];
  const report = (runs: readonly (readonly number[])[], more: string) =>
    textsOf(
      findingsOf(`name: L
handwheels: [{ name: Slide, feed: { readings: { gauge: 0.01, ${more}turns: [${runs.map(() => "0, 5, 10, 15, 20").join()}], travel: [${runs.flat().join()}] } } }]
`),
      "measured-report",
    );
  const once = report([gone], "");
  expect(once).toContain("readings to spare: 3");
  expect(once).not.toMatch(/(places|repeats) to spare|as with/);
  const thrice = report([gone, gone.map((mm) => mm + 0.01), gone], "gaugeError: 0.02, temperature: 28, ");
  expect(thrice).toContain("places to spare: 3");
  expect(thrice).toContain("repeats to spare: 8");
  expect(thrice).not.toContain("readings to spare");
  // The factor is Student's for what it says: 2.048 for 28, by any table.
  const [, factor, degrees] = /× ([\d.]+) \(as with (\d+) to spare\)/.exec(thrice) ?? [];
  expect(Number(factor)).toBeCloseTo(studentT95(Number(degrees)), 3);
  expect(Number(degrees)).toBeGreaterThan(3);
});
