import { expect, test } from "vitest";
import { evenlyRound } from "../../src/blocks/dial/nearZero.js";
import type { Mark } from "../../src/drawing/drawing.js";
import { findingsOf, printOf } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

const ring = (outside: number, inside: number, feed = 1.5, more = "") =>
  printOf(
    findingsOf(
      `name: L\nhandwheels:\n  - { name: Top slide, travel: 60, feed: ${feed}, dial: { shape: face, outside: ${outside}, inside: ${inside} } }\n${more}`,
    ),
    "dial",
  );
/** Marks in groups of that name, over all pages. */
function inGroups(print: ReturnType<typeof ring>, name: string): number {
  const within = (marks: readonly Mark[]): number =>
    marks.reduce(
      (sum, mark) =>
        mark.kind !== "group" ? sum : sum + (mark.name === name ? mark.marks.length : within(mark.marks)),
      0,
    );
  return print.pages.reduce((sum, { drawing }) => sum + within(drawing.marks), 0);
}

test("a narrow ring has no line of words that its numbers would run into: what it lacks is told outside the cut", () => {
  expect(wordsOf(ring(44, 30))).toContain("no room on it for: Top slide");
  expect(wordsOf(ring(44, 30))).not.toContain("1 turn = 1.5");
  expect(wordsOf(ring(60, 40))).not.toContain("no room on it for");
});

test("no arrow stands alone in the hole of a whole ring, and no words speak of one", () => {
  expect(inGroups(ring(60, 40), "arrow")).toBe(0);
  expect(wordsOf(ring(60, 40))).not.toContain("arrow");
  const drum = "  - { name: Cross slide, feed: 2, dial: { shape: drum, diameter: 38, width: 9 } }\n";
  expect(inGroups(ring(60, 40, 1.5, drum), "arrow")).toBeGreaterThan(0);
  expect(wordsOf(ring(60, 40, 1.5, drum))).toContain("the arrow points");
});

test("round the picture of a dial numbers stand evenly, in a part that goes into all of them", () => {
  const seen = Array.from({ length: 15 }, (_, at) => ({
    degrees: at > 7 ? at * 24 - 360 : at * 24,
    rank: 1 as const,
    label: String(at),
  }));
  const shown = (perRadian: number) => evenlyRound(seen, perRadian).map(({ label }) => Number(label));
  const sorted = (list: number[]) => [...list].sort((a, b) => a - b);
  expect(sorted(shown(50))).toEqual(seen.map((_, at) => at));
  expect(sorted(shown(7))).toEqual([0, 3, 6, 9, 12]);
  expect(evenlyRound([], 10)).toEqual([]);
});
