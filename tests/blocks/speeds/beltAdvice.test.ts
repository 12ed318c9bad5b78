import { expect, test } from "vitest";
import { findingsOf, textsOf } from "../../support/sheets.js";

const treeWith = (belt: string) =>
  textsOf(
    findingsOf(`name: T
drive:
  motor: { speed: 1420 rpm }
  belt: ${belt}
  stages: [{ name: belt, centres: 300 mm, steps: [{ label: A, driver: 60, driven: 120 }, { label: B, driver: 80, driven: 100 }] }]
`),
    "speed-tree",
  );

test.each([
  ["a vee belt is endless", "vee, A", /vee belt is bought endless, by the length of its pitch line: \d/],
  ["a flat belt is cut and joined", "flat, 2 mm\n  stretch: 0.02", /Cut a belt joined end to end to \d/],
  ["of unknown stretch, less that", "round, 5 mm", /A belt joined end to end: \d/],
  ["a toothed one has its teeth", "toothed, 5 mm", /bought by its teeth/],
])("%s", (_, belt, says) => {
  const words = treeWith(belt);
  expect(words).toMatch(says);
  expect(words.match(/joined end to end|bought endless|bought by its teeth/g)).toHaveLength(1);
});
