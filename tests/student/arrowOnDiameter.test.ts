import { expect, test } from "vitest";
import { exercises } from "../../src/student/exercises.js";
import { findingsOf } from "../support/sheets.js";

const asked = (reads: string, units = "mm"): string => {
  const found = findingsOf(
    `name: L\nunits: ${units}\nhandwheels: [{ name: Cross slide, reads: ${reads}, travel: 40 mm, feed: 2 mm, dial: { shape: drum, diameter: 38 mm, width: 9 mm } }]\n`,
  );
  return exercises(found, "turning")
    .map(({ question }) => question)
    .find((question) => question.includes("arrow")) as string;
};

test("what a dial reads at the arrow is asked for on diameter where it reads that, as it is elsewhere", () => {
  expect(asked("diameter")).toMatch(/in mm on diameter\?$/);
  expect(asked("diameter", "in")).toMatch(/in inches on diameter\?$/);
  expect(asked("travel")).toMatch(/in mm\?$/);
});
