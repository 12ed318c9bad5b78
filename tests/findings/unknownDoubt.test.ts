import { expect, test } from "vitest";
import { overview } from "../../src/cli/overview.js";
import { readingsSoFar } from "../../src/page/work/readingsSoFar.js";
import { findingsOf } from "../support/sheets.js";

const turns = [0, 1, 2, 3, 4];
const checked = (travel: readonly number[], gauge = "") =>
  overview(
    findingsOf(
      `name: L\nhandwheels: [{ name: S, feed: { readings: { ${gauge} turns: [${turns}], travel: [${travel}] } } }]\n`,
    ),
  )
    .join(" ")
    .replaceAll(/\s+/g, " ");
const inPage = (travel: readonly number[], gauge = "") =>
  readingsSoFar({
    ...{ units: "mm", gauge, gaugeError: "", temperature: "" },
    rows: turns.map((turn, at) => ({ turns: String(turn), travel: String(travel[at]), back: "" })),
  }).words.join(" ");

test("readings without any scatter and without a gauge tell no ±, and check and the page say so", () => {
  const exact = [0, 2, 4, 6, 8];
  const words = "± not known: the readings show no scatter, and no gauge is given";
  expect(checked(exact)).toContain(`S: ${words}`);
  expect(inPage(exact)).toContain(words);
  for (const told of [checked([0, 2, 4.01, 6, 8]), checked(exact, "gauge: 0.01,"), inPage(exact, "0.01")]) {
    expect(told).not.toContain("not known");
    expect(told).toMatch(/± 0\.\d/);
  }
});
