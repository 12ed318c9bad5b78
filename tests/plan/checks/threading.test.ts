import { describe, test } from "vitest";
import type { Row } from "../../support/job.js";
import { judged } from "./judged.js";

const inches = "units: in\nbar: { diameter: 5/8, out: 1-1/2 }";
const drilled = (diameter: number | string, depth: number | string) => [
  "do: centre drill, diameter: 1.6 mm",
  `do: drill, diameter: ${diameter}, depth: ${depth}`,
];
const rod = (to: number, length: number) => `do: turn, to: ${to}, length: ${length}`;

describe("a tap and its hole", () => {
  test.each<Row>([
    {
      name: "none was made: the centre hole is not so deep",
      steps: ["do: centre drill", "do: tap, thread: M6, depth: 8"],
      found: ["refused: no-hole at 2"],
      says: /taps 8 mm deep, and the hole is not so deep; drill first, to the tapping size/,
    },
    {
      name: "none at all",
      steps: ["do: tap, thread: M6, depth: 8"],
      found: ["refused: no-hole at 1"],
      says: /wants a hole from 4\.701 mm \(full thread\) to less than 6 mm; none was made/,
    },
    {
      name: "as wide as the thread",
      steps: [...drilled(6, 20), "do: tap, thread: M6, depth: 8"],
      found: ["refused: wrong-hole at 3"],
      says: /wants a hole .*less than 6 mm; the last one is 6 mm; drill 5\.03 mm or near it/,
    },
    {
      name: "narrower than its core",
      steps: [...drilled(4.7, 20), "do: tap, thread: M6, depth: 8"],
      found: ["refused: wrong-hole at 3"],
    },
    {
      name: "so narrow that a tap breaks in it: 88 %",
      steps: [...drilled(4.85, 20), "do: tap, thread: M6, depth: 8"],
      found: ["take care: tight-hole at 3"],
      says: /the hole of 4\.85 mm gives 89 % of full thread: a tap turned by hand may break in it/,
    },
    { name: "just wide enough: 84.7 %", steps: [...drilled(4.9, 20), "do: tap, thread: M6, depth: 8"] },
    { name: "just narrow enough: 50 %", steps: [...drilled(5.35, 20), "do: tap, thread: M6, depth: 8"] },
    {
      name: "so wide that it strips: 46 %",
      steps: [...drilled(5.4, 20), "do: tap, thread: M6, depth: 8"],
      found: ["take care: loose-hole at 3"],
      says: /gives 46 % of full thread: it strips easily/,
    },
    { name: "as the tables have it", steps: [...drilled(5, 20), "do: tap, thread: M6, depth: 8"] },
    {
      name: "in inches",
      head: inches,
      steps: [...drilled("1/4", "3/4"), "do: tap, thread: 1/4-20 UNC, depth: 3/8"],
      found: ["refused: wrong-hole at 3"],
      says: /to less than 1\/4 in \(6\.35 mm\)/,
    },
    {
      name: "in inches, as the tables have it",
      head: inches,
      steps: [...drilled(0.201, 0.75), "do: tap, thread: 1/4-20 UNC, depth: 3/8"],
    },
    {
      name: "with hardly any metal round it",
      steps: [...drilled(5, 25), rod(6.5, 10), "do: tap, thread: M6, depth: 8"],
      found: ["refused: thin-wall at 4", "take care: thin-wall at 3"],
      says: /leaves 0\.25 mm of wall round the thread: it splits/,
    },
    { name: "with enough metal round it", steps: [...drilled(5, 25), rod(7, 10), "do: tap, thread: M6, depth: 8"] },
  ])("$name", judged);
});

describe("the tap's room below the thread: 2 threads of its lead, and what the standard asks", () => {
  test.each<Row>([
    {
      name: "1.9 mm for M6: on the floor",
      steps: [...drilled(5, 11.9), "do: tap, thread: M6, depth: 10"],
      found: ["refused: tap-on-the-floor at 3"],
      says: /leaves 1\.9 mm of hole below 10 mm of thread: the tap's lead alone needs 2 mm, and it breaks on the floor; drill 15\.1 mm deep/,
    },
    {
      name: "deeper than the full diameter, within the drill's point: the point does not count",
      steps: [...drilled(5, 10.5), "do: tap, thread: M6, depth: 10"],
      found: ["refused: tap-on-the-floor at 3"],
      says: /leaves 0\.5 mm of hole/,
    },
    {
      name: "2 mm: just enough for a bottoming tap",
      steps: [...drilled(5, 12), "do: tap, thread: M6, depth: 10"],
      found: ["take care: short-below at 3"],
      says: /leaves 2 mm of hole below 10 mm of thread; DIN 76-1 \(from memory\) asks 5\.1 mm; drill 15\.1 mm deep/,
    },
    {
      name: "just less than the standard asks",
      steps: [...drilled(5, 15), "do: tap, thread: M6, depth: 10"],
      found: ["take care: short-below at 3"],
    },
    { name: "as the standard asks", steps: [...drilled(5, 15.1), "do: tap, thread: M6, depth: 10"] },
    {
      name: "through a tube there is no floor",
      head: "bar: { diameter: 16, out: 10, length: 30, bore: 5 }",
      steps: ["do: tap, thread: M6, depth: 28"],
    },
    {
      name: "all but through a blank there is one",
      head: "bar: { diameter: 16, out: 10, length: 30 }",
      steps: [...drilled(5, 29), "do: tap, thread: M6, depth: 28"],
      found: ["refused: tap-on-the-floor at 3", "take care: through-the-back at 2"],
    },
    {
      name: "a wide mouth does not matter, the narrow part does",
      steps: [...drilled(5, 15.1), "do: chamfer, size: 0.5, side: bore", "do: tap, thread: M6, depth: 10"],
    },
    {
      name: "in inches: 0.099 for 20 threads an inch",
      head: inches,
      steps: [...drilled(0.201, 0.474), "do: tap, thread: 1/4-20 UNC, depth: 3/8"],
      found: ["refused: tap-on-the-floor at 3"],
      says: /leaves 0\.099 in .*lead alone needs 0\.1 in/,
    },
    {
      name: "in inches: 0.1",
      head: inches,
      steps: [...drilled(0.201, 0.4751), "do: tap, thread: 1/4-20 UNC, depth: 3/8"],
      found: ["take care: short-below at 3"],
    },
  ])("$name", judged);
});

describe("a die and its rod", () => {
  test.each<Row>([
    {
      name: "too thick a rod",
      steps: ["do: die, thread: M6, length: 8"],
      found: ["refused: wrong-rod at 1"],
      says: /wants a rod of about 5\.9 mm for 8 mm; the work is 16 mm; turn it to 5\.9 mm first/,
    },
    {
      name: "a hundredth too thick",
      steps: [rod(6.01, 12), "do: die, thread: M6, length: 8"],
      found: ["refused: wrong-rod at 2"],
    },
    { name: "just as thick as the thread", steps: [rod(6, 12), "do: die, thread: M6, length: 8"] },
    { name: "a quarter of a pitch too thin", steps: [rod(5.65, 12), "do: die, thread: M6, length: 8"] },
    {
      name: "thinner than that",
      steps: [rod(5.64, 12), "do: die, thread: M6, length: 8"],
      found: ["refused: wrong-rod at 2"],
    },
    {
      name: "a chamfer to lead it on is no fault",
      steps: [rod(5.9, 12), "do: chamfer, size: 0.6", "do: die, thread: M6, length: 8"],
    },
    {
      name: "a rod that is turned on too short a length",
      steps: [rod(5.9, 7), "do: die, thread: M6, length: 8"],
      found: ["refused: wrong-rod at 2"],
      says: /the work is 5\.9 mm to 16 mm/,
    },
    {
      name: "in inches",
      head: inches,
      steps: ["do: turn, to: 0.26, length: 3/4", "do: die, thread: 1/4-20 UNC, length: 3/8"],
      found: ["refused: wrong-rod at 2"],
      says: /about 0\.245 in .* for 3\/8 in/,
    },
    {
      name: "in inches, right",
      head: inches,
      steps: ["do: turn, to: 0.245, length: 3/4", "do: die, thread: 1/4-20 UNC, length: 3/8"],
    },
    {
      name: "a rod with too large a hole in it",
      steps: [...drilled(4.2, 20), rod(5.9, 12), "do: die, thread: M6, length: 8"],
      found: ["refused: thin-wall at 4", "take care: thin-wall at 3"],
      says: /leaves 0\.25 mm of wall between the thread's root and the bore of 4\.2 mm: it collapses/,
    },
    {
      name: "a rod with a hole that leaves enough",
      steps: [...drilled(3.9, 20), rod(5.9, 12), "do: die, thread: M6, length: 8"],
    },
  ])("$name", judged);
});

describe("a die against a shoulder: its lead of 2 threads, and the run-out or undercut of the standard", () => {
  const undercut = (width: number, to: number) => `do: groove, at: ${12 - width}, width: ${width}, to: ${to}, blade: 1`;
  const m6 = (length: number, ...before: string[]) => [
    rod(5.9, 12),
    ...before,
    `do: die, thread: M6, length: ${length}`,
  ];
  test.each<Row>([
    {
      name: "up to the shoulder",
      steps: m6(12),
      found: ["refused: die-on-the-shoulder at 2"],
      says: /ends 0 mm before a shoulder: the die's lead leaves about 2 mm unfinished.*end it 2\.5 mm before the shoulder, or cut a groove 2\.1 mm wide to 4\.4 mm there/,
    },
    { name: "1.9 before it", steps: m6(10.1), found: ["refused: die-on-the-shoulder at 2"] },
    {
      name: "2 before it",
      steps: m6(10),
      found: ["take care: short-run-out at 2"],
      says: /ends 2 mm before a shoulder; end it 2\.5 mm before.*or turn the die over for the last turns/,
    },
    { name: "2.4 before it", steps: m6(9.6), found: ["take care: short-run-out at 2"] },
    { name: "2.5 before it", steps: m6(9.5) },
    { name: "with an undercut as the standard has it", steps: m6(9.9, undercut(2.1, 4.4)) },
    {
      name: "with one that is narrower, up to it: the groove is counted once",
      steps: m6(10.9, undercut(1.1, 4.4)),
      found: ["refused: die-on-the-shoulder at 3"],
    },
    {
      name: "with one that is a little narrower, up to it",
      steps: m6(10, undercut(2, 4.4)),
      found: ["take care: short-run-out at 3"],
    },
    {
      name: "with one that is not down to the core",
      steps: m6(9.9, undercut(2.1, 4.8)),
      found: ["take care: short-run-out at 3"],
    },
    {
      name: "a shoulder no thicker than the thread is none",
      head: "bar: { diameter: 16, out: 30 }",
      steps: [rod(6, 20), rod(5.9, 12), "do: die, thread: M6, length: 12"],
    },
  ])("$name", judged);
});
