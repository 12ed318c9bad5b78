import { expect, test } from "vitest";
import { findingsOf, textsOf } from "../support/sheets.js";

test("what the signs mean stands before the first of them", () => {
  const words = textsOf(
    findingsOf(`name: L
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 80, driven: 50 }, { label: B, driver: 50, driven: 80 }] }]
handwheels: [{ name: Leadscrew, travel: 300, feed: 3 }]
`),
    "hand-feed",
  );
  const key = words.search(/turns? takes? /);
  // A count in a cell, and a speed by ratio.
  for (const sign of [/ [\d¼½] : \d+ s/, /\d ~/]) {
    const first = words.search(sign);
    expect(first, String(sign)).toBeGreaterThan(0);
    expect(words.indexOf("~ by ratio")).toBeLessThan(words.search(/\d ~/));
    expect(key).toBeGreaterThan(0);
  }
  expect(key).toBeLessThan(words.indexOf("Leadscrew"));
});
