import { expect, test } from "vitest";
import { dialWords } from "../../src/blocks/dial/dialWords.js";
import { explainTurns } from "../../src/working/turns.js";
import { findingsOf } from "../support/sheets.js";

const notes = (wheel: string) =>
  explainTurns(findingsOf(`name: L\nunits: mm\nhandwheels: [{ name: S, ${wheel} }]\n`)).map(({ name, explain }) => {
    const working = explain();
    return `${name}: ${"notes" in working ? working.notes?.join("; ") : ""}`;
  });
const dial = "dial: { shape: drum, diameter: 58, width: 12, divisions: 1, closure: true }";

test("no distance is told as right to less than its feed is known to", () => {
  const [one = ""] = notes(`feed: { perTurn: 80 mm, uncertainty: 2 mm }, distances: [40], ${dial}`);
  expect(one).toMatch(/known to ± 1\.0/);
  expect(one).not.toContain("right to");
  expect(
    notes(`feed: { screw: { pitch: 2 } }, distances: [2], ${dial.replace("divisions: 1", "divisions: 0.1")}`)[0],
  ).toContain("right to 0.001 mm");
});

test("a distance beyond the travel is told as such, and none of those is assumed", () => {
  expect(notes("feed: 2, travel: 4, distances: [10]")[0]).toContain("beyond its travel of 4 mm");
  expect(notes("feed: 2, travel: 4").map((one) => one.split(":")[0])).toEqual(["S, 1 mm"]);
  // Ten of diameter are five of travel.
  expect(notes("feed: 2, travel: 4, reads: diameter").length).toBe(1);
  expect(notes("feed: 2, travel: 5, reads: diameter").length).toBe(2);
});

test("what a dial's sheet says of its doubt is what explain says: on the diameter, over the way that the dial counts", () => {
  const text = `name: L\nhandwheels: [{ name: S, reads: diameter, travel: 50, feed: { perTurn: 2.1, uncertainty: 0.001 }, dial: { shape: drum, diameter: 40, width: 9 } }]\n`;
  const [wheel] = findingsOf(text).handwheels;
  if (wheel?.dial === undefined) throw new Error("no dial");
  const about = /the feed itself is known to ± [\d.]+ mm on diameter over 100 mm on the dial/i;
  expect(dialWords(wheel, wheel.dial, "mm")).toMatch(about);
  expect(wheel.dial.chosen.remarks.join("; ")).toMatch(about);
});
