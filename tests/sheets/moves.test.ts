import { expect, test } from "vitest";
import { findingsOf, textsOf } from "../support/sheets.js";

// Named the wrong way round on purpose: only what the file says tells them apart.
const findings = findingsOf(`
name: L
kind: lathe stood on end
drive: { motor: { speed: 1425 }, stages: [{ name: belt, steps: [{ driver: 50, driven: 100 }] }] }
handwheels:
  - { name: Quill, moves: across, travel: 60, feed: 3 mm, dial: { shape: drum, diameter: 38, width: 9 } }
  - { name: Cross slide, moves: angled, travel: 50, feed: 2 mm }
  - { name: Top slide, moves: barrel, travel: 40, feed: 5 mm }
tapers:
  - { name: spigot, large: 20, small: 17.5, length: 25 }
`);

test("the tapers sheet goes by the wheels that the file says swivel and go across", () => {
  const words = textsOf(findings, "tapers");
  // The only turns of that table: 25.03 mm along a slide that goes 2 mm a turn.
  expect(words).toMatch(/To cut and to prove them.*turns of the cross slide.*spigot 20\.00, 17\.50 12\.52 25\.03/);
  // 5 mm of rise in 100 mm, by 3 mm a turn.
  expect(words).toMatch(/turns of the quill for that rise.*\b5\.000 1\.67\b/);
});

test("the drilling card tells depth by the wheel that the file says is the barrel", () =>
  expect(textsOf(findings, "drilling-card")).toMatch(/Depth by turns of the top slide/));

test("a student learns on the wheel that the file says goes across, and to drill on the barrel's", () => {
  const words = textsOf(findings, "student");
  expect(words.match(/One turn of the [a-z ]+ is [\d.]+/g)).toEqual([
    "One turn of the quill is 3.00",
    "One turn of the top slide is 5.00",
  ]);
  expect(words.match(/A round part gets thinner by twice that/g)).toHaveLength(1);
});
