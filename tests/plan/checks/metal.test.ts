import { describe, test } from "vitest";
import { lathe, type Row } from "../../support/job.js";
import { judged } from "./judged.js";

const inches = "units: in\nbar: { diameter: 5/8, out: 1-1/2 }";
const centre = "do: centre drill";
const drilled = (diameter: number, depth: number) => [centre, `do: drill, diameter: ${diameter}, depth: ${depth}`];
const turn = (to: number, length: number) => `do: turn, to: ${to}, length: ${length}`;

describe("what stands there, against what is said to", () => {
  test.each<Row>([
    {
      name: "begins below what stands there",
      steps: ["do: turn, from: 12, to: 10, length: 5"],
      found: ["refused: thicker-than-said at 1"],
      says: /begins at 12 mm, but the work is still 16 mm there: a first cut would be too deep; begin from what stands there.*\(from:\)/,
    },
    {
      name: "begins a hundredth below what stands there",
      steps: ["do: turn, from: 15.99, to: 10, length: 5"],
      found: ["refused: thicker-than-said at 1"],
    },
    {
      name: "begins above what stands there",
      steps: [turn(14, 20), "do: turn, from: 15, to: 12, length: 10"],
      found: ["take care: thinner-than-said at 2"],
      says: /begins at 15 mm, but the work is only 14 mm there/,
    },
    { name: "begins at what stands there", steps: [turn(14, 20), "do: turn, from: 14, to: 12, length: 10"] },
    {
      name: "runs over a shoulder that is still thick",
      steps: [turn(12, 10), "do: turn, from: 12, to: 11, length: 10.5"],
      found: ["refused: thicker-than-said at 2"],
    },
    {
      name: "in inches",
      head: inches,
      steps: ["do: turn, from: 9/16, to: 1/2, length: 0.5"],
      found: ["refused: thicker-than-said at 1"],
      says: /begins at 9\/16 in \(14\.288 mm\), but the work is still 5\/8 in \(15\.875 mm\)/,
    },
    { name: "in inches, as it stands", head: inches, steps: ["do: turn, from: 5/8, to: 1/2, length: 0.5"] },
    {
      name: "a taper larger than the stock",
      steps: [turn(12, 20), "do: taper, large: 12.11, small: 10, length: 10"],
      found: ["refused: beyond-the-stock at 2"],
      says: /needs 12\.11 mm where it is large, and the work is 12 mm there/,
    },
    {
      name: "a taper that is larger by no more than a tolerance",
      steps: [turn(12, 20), "do: taper, large: 12.1, small: 10, length: 10"],
    },
    { name: "a taper as large as the stock", steps: [turn(12, 20), "do: taper, large: 12, small: 10, length: 10"] },
    {
      name: "a taper that is large where the work is thin already, towards the end",
      steps: [turn(12, 20), "do: taper, large: 14, small: 10, at: 10, length: 15, smallAt: chuck"],
      found: ["refused: beyond-the-stock at 2"],
    },
    {
      name: "a blade that meets another diameter than the file gives",
      steps: [turn(14, 30), "do: part, diameter: 16, length: 20, blade: 2"],
      found: ["take care: other-diameter at 2"],
      says: /gives 16 mm at the blade, and the work is 14 mm there/,
    },
    {
      name: "a blade that meets what the file gives",
      steps: [turn(14, 30), "do: part, diameter: 14, length: 20, blade: 2"],
    },
    {
      name: "a knurl over a step",
      steps: [turn(14, 20), "do: knurl, at: 15, length: 8, pitch: 0.8, pinched: true"],
      found: ["take care: uneven at 2"],
      says: /more than one diameter; knurl one cylinder/,
    },
    {
      name: "a knurl up to the step",
      steps: [turn(14, 20), "do: knurl, at: 12, length: 8, pitch: 0.8, pinched: true"],
    },
  ])("$name", judged);
});

describe("cuts that take nothing", () => {
  test.each<Row>([
    {
      name: "turned to what it is already",
      steps: [turn(14, 20), turn(14, 10)],
      found: ["refused: cuts-air at 2"],
      says: /cuts nothing: the work is 14 mm there already; mind the order of steps/,
    },
    { name: "turned a tenth further along", steps: [turn(14, 20), turn(14, 20.1)] },
    {
      name: "a bore no wider than its hole",
      steps: [...drilled(8, 20), "do: bore, to: 8, depth: 10"],
      found: ["refused: cuts-air at 3"],
      says: /the hole there is 8 mm already/,
    },
    {
      name: "a drill through a hole that is there",
      steps: [...drilled(8, 20), "do: drill, diameter: 5, depth: 20"],
      found: ["refused: cuts-air at 3"],
    },
    { name: "a smaller drill that goes on deeper", steps: [...drilled(8, 20), "do: drill, diameter: 5, depth: 25"] },
    {
      name: "a face where no metal is left",
      head: "bar: { diameter: 16, out: 40, length: 60 }",
      steps: ["do: face, length: 60"],
      found: ["refused: cuts-air at 1"],
      says: /no metal stands before that face/,
    },
    {
      name: "a face to just less",
      head: "bar: { diameter: 16, out: 40, length: 60 }",
      steps: ["do: face, length: 59.9"],
    },
    {
      name: "a groove no deeper than its place",
      steps: [turn(12, 20), "do: groove, at: 10, width: 2, to: 12, blade: 2"],
      found: ["refused: cuts-air at 2"],
    },
    { name: "a groove a tenth deeper", steps: [turn(12, 20), "do: groove, at: 10, width: 2, to: 11.8, blade: 2"] },
    {
      name: "a blade beyond the end of the work",
      head: "bar: { diameter: 16, out: 24 }",
      steps: ["do: part, length: 20, blade: 2", "do: turn round, out: 10", "do: part, length: 20.1, blade: 2"],
      found: ["refused: into-the-jaws at 3", "refused: cuts-air at 3"],
    },
  ])("$name", judged);
});

describe("how deep a cut is", () => {
  test.each<Row>([
    // 0.04 in is 1.016 mm: the bound of a job in inches is round in inches.
    {
      name: "as deep as a light machine bears, in inches",
      head: inches,
      steps: ["do: turn, to: 1/2, length: 0.5, cut: 0.04"],
    },
    {
      name: "deeper than that",
      head: inches,
      steps: ["do: turn, to: 1/2, length: 0.5, cut: 0.041"],
      found: ["refused: too-deep at 1"],
      says: /bears 0\.04 in \(1\.016 mm\) .*; cut 0\.04 in .*\(cut:/,
    },
    {
      name: "the least a tool takes, in inches",
      head: inches,
      steps: ["do: turn, to: 1/2, length: 0.5, finish: 0.001"],
    },
    {
      name: "less than that",
      head: inches,
      steps: ["do: turn, to: 1/2, length: 0.5, finish: 0.0009"],
      found: ["take care: rubs at 1"],
      says: /0\.001 in/,
    },
    {
      name: "deeper than a light machine bears",
      steps: ["do: turn, to: 10, length: 20, cut: 1.01"],
      found: ["refused: too-deep at 1"],
      says: /cuts 1\.01 mm deep; this machine bears 1 mm \(what a light one usually bears, common practice\); cut 1 mm deep or less.*\(cut:, work: /,
    },
    { name: "as deep as it bears", steps: ["do: turn, to: 10, length: 20, cut: 1"] },
    {
      name: "a firm one bears twice that",
      on: lathe("work: { firmness: firm }"),
      steps: ["do: turn, to: 10, length: 20, cut: 2"],
    },
    {
      name: "work: deepest",
      on: lathe("work: { deepest: 0.4 }"),
      steps: ["do: turn, to: 10, length: 20, cut: 0.41"],
      found: ["refused: too-deep at 1"],
      says: /bears 0\.4 mm \(work: deepest\)/,
    },
    {
      name: "as deep as work: deepest",
      on: lathe("work: { deepest: 0.4 }"),
      steps: ["do: turn, to: 10, length: 20, cut: 0.4"],
    },
    { name: "a deep face", steps: ["do: face, depth: 2, cut: 1.5"], found: ["refused: too-deep at 1"] },
  ])("$name", judged);
});

describe("holes", () => {
  test.each<Row>([
    {
      name: "a drill as wide as the work",
      steps: [turn(8, 20), ...drilled(8, 10)],
      found: ["refused: wider-than-the-work at 3"],
      says: /drills 8 mm into work of 8 mm; take a smaller drill, or drill it before/,
    },
    { name: "a drill with a wall of a millimetre left", steps: [turn(8, 20), ...drilled(6, 10)] },
    {
      name: "on a plain face",
      steps: ["do: face, depth: 0.5", "do: drill, diameter: 3.1, depth: 10"],
      found: ["take care: no-start at 2"],
      says: /where a drill wanders; centre drill it first \(\{ do: centre drill \}\)/,
    },
    { name: "a small drill on a plain face", steps: ["do: face, depth: 0.5", "do: drill, diameter: 3, depth: 10"] },
    {
      name: "a bore without a hole",
      steps: ["do: bore, to: 9, depth: 5"],
      found: ["refused: no-hole at 1"],
      says: /bores where no hole was made; drill first, to the full depth and a little more/,
    },
    {
      name: "a bore deeper than its hole: the drill's point does not count",
      steps: [...drilled(8, 20), "do: bore, to: 10, depth: 22.5"],
      found: ["refused: no-hole at 3"],
      says: /bores 22\.5 mm deep, and the hole is not so deep/,
    },
    { name: "a bore as deep as its hole", steps: [...drilled(8, 20), "do: bore, to: 10, depth: 20"] },
    {
      name: "a bore that begins in a narrower hole than said",
      steps: [...drilled(8, 20), "do: bore, from: 8.5, to: 10, depth: 20"],
      found: ["refused: narrower-than-said at 3"],
      says: /begins in a hole of 8\.5 mm, and it is 8 mm/,
    },
    {
      name: "a bore that begins in the hole that is there",
      steps: [...drilled(8, 20), "do: bore, from: 8, to: 10, depth: 20"],
    },
    {
      name: "a bore as wide as the work",
      steps: [
        "do: centre drill, diameter: 2.5",
        "do: drill, diameter: 8, depth: 20",
        turn(10, 20),
        "do: bore, to: 10, depth: 20",
      ],
      found: ["refused: wider-than-the-work at 4"],
      says: /bores 10 mm into work of 10 mm/,
    },
    {
      name: "a boring tool more than 5 holes long",
      steps: [...drilled(6, 31), "do: bore, to: 7, depth: 30.1"],
      found: ["take care: slender-bar at 3"],
      says: /bores 30\.1 mm deep in a hole of 6 mm/,
    },
    { name: "a boring tool 5 holes long", steps: [...drilled(6, 31), "do: bore, to: 7, depth: 30"] },
    {
      name: "a reamer without a hole",
      steps: [centre, "do: ream, diameter: 8, depth: 5"],
      found: ["refused: no-hole at 2"],
      says: /wants a hole a little under 8 mm/,
    },
    {
      name: "a reamer in a hole larger than itself",
      steps: [...drilled(9, 10), "do: ream, diameter: 8, depth: 5"],
      found: ["refused: no-hole at 3"],
      says: /wants a hole a little under 8 mm; the hole is 9 mm; drill first, a little smaller and deeper/,
    },
    {
      name: "a reamer in a hole as large",
      steps: [...drilled(8, 10), "do: ream, diameter: 8, depth: 5"],
      found: ["refused: no-hole at 3"],
    },
    {
      name: "a reamer on into the drill's point",
      steps: [...drilled(7.8, 10), "do: ream, diameter: 8, depth: 10.5"],
      found: ["refused: no-hole at 3"],
      says: /a little under 8 mm for its whole depth; the hole is 6\.14 mm/,
    },
    {
      name: "a reamer so much wider than its hole that it jams",
      steps: [...drilled(7, 10), "do: ream, diameter: 8, depth: 5"],
      found: ["refused: no-hole at 3"],
      says: /the hole is 7 mm/,
    },
    { name: "a reamer in its hole", steps: [...drilled(7.8, 11.5), "do: ream, diameter: 8, depth: 10"] },
    {
      name: "a reamer whose lead has no room below",
      steps: [...drilled(7.8, 11.4), "do: ream, diameter: 8, depth: 10"],
      found: ["take care: short-below at 3"],
      says: /leaves 1\.4 mm of hole below the reamed depth, where the reamer's lead ends; drill 0\.1 mm deeper, or ream less/,
    },
    {
      name: "a reamer through a tube: no floor",
      head: "bar: { diameter: 16, out: 10, length: 30, bore: 7.8 }",
      steps: ["do: ream, diameter: 8, depth: 30"],
    },
    {
      name: "a reamer with too much to take: 3 % of 12",
      steps: [...drilled(11.6, 20), "do: ream, diameter: 12, depth: 15"],
      found: ["take care: much-to-ream at 3"],
      says: /takes 0\.4 mm off a hole of 11\.6 mm.*about 0\.36 mm.*to 11\.64 mm or a little more/,
    },
    { name: "a reamer with just enough", steps: [...drilled(11.7, 20), "do: ream, diameter: 12, depth: 15"] },
    { name: "a small reamer with three tenths", steps: [...drilled(4.7, 20), "do: ream, diameter: 5, depth: 15"] },
    {
      name: "a small reamer with more",
      steps: [...drilled(4.65, 20), "do: ream, diameter: 5, depth: 15"],
      found: ["take care: much-to-ream at 3"],
    },
    {
      name: "a tube needs no drill",
      head: "bar: { diameter: 16, out: 40, bore: 10 }",
      steps: ["do: bore, to: 11, depth: 20"],
    },
    {
      name: "in inches, a bore that is not so deep",
      head: inches,
      steps: [centre, "do: drill, diameter: 5/16, depth: 3/4", "do: bore, to: 3/8, depth: 7/8"],
      found: ["refused: no-hole at 3"],
      says: /bores 7\/8 in \(22\.225 mm\) deep/,
    },
  ])("$name", judged);
});

describe("what an earlier step made", () => {
  const tapped = [...drilled(6.8, 25), "do: tap, thread: M8, depth: 15"];
  const threaded = [turn(9.9, 20), "do: die, thread: M10, length: 15"];
  test.each<Row>([
    {
      name: "a larger drill down a thread",
      steps: [...tapped, "do: drill, diameter: 10, depth: 20"],
      found: ["refused: spoils-a-thread at 4"],
      says: /takes the thread M8 away, which an earlier step made; make this cut before the thread M8, or make it smaller or shorter/,
    },
    {
      name: "a bore through it",
      steps: [...tapped, "do: bore, to: 9, depth: 20"],
      found: ["refused: spoils-a-thread at 4"],
    },
    { name: "a counterbore at its mouth", steps: [...tapped, "do: drill, diameter: 10, depth: 4"] },
    {
      name: "a counterbore over most of it",
      steps: [...tapped, "do: drill, diameter: 10, depth: 7"],
      found: ["refused: spoils-a-thread at 4"],
    },
    { name: "a chamfer at its mouth", steps: [...tapped, "do: chamfer, side: bore, size: 1"] },
    {
      name: "a rod turned down where its thread is",
      steps: [...threaded, turn(8, 15)],
      found: ["refused: spoils-a-thread at 3"],
    },
    { name: "its end turned down", steps: [...threaded, turn(8, 4)] },
    { name: "a groove in it", steps: [...threaded, "do: groove, at: 12, width: 2, blade: 2, to: 8"] },
    {
      name: "a knurl turned away",
      steps: ["do: knurl, length: 20, pitch: 0.8, pinched: true", turn(12, 20)],
      found: ["refused: spoils-a-thread at 2"],
      says: /takes the knurl away/,
    },
    {
      name: "the end of a knurl turned down",
      steps: ["do: knurl, length: 20, pitch: 0.8, pinched: true", turn(12, 8)],
    },
  ])("$name", judged);
});

describe("edges and blades", () => {
  test.each<Row>([
    {
      name: "a chamfer where no edge is",
      steps: ["do: chamfer, at: 10, size: 0.5"],
      found: ["refused: no-edge at 1"],
      says: /there is no edge at 10 mm; where the edge lies counts from the free end; 0 is the end itself \(at:\)/,
    },
    { name: "a chamfer at the end", steps: ["do: chamfer, size: 0.5"] },
    { name: "a chamfer at a shoulder", steps: [turn(14, 20), "do: chamfer, at: 20, size: 0.5"] },
    {
      name: "a chamfer larger than its shoulder",
      steps: [turn(14, 20), "do: chamfer, at: 20, size: 1.1"],
      found: ["refused: larger-than-the-edge at 2"],
      says: /takes 1\.1 mm off an edge that stands only 1 mm high; make it 1 mm or less/,
    },
    { name: "a chamfer as large as its shoulder", steps: [turn(14, 20), "do: chamfer, at: 20, size: 1"] },
    {
      name: "a chamfer in a hole that was not made",
      steps: ["do: chamfer, size: 0.5, side: bore"],
      found: ["refused: no-edge at 1"],
      says: /edge of a hole that was not made/,
    },
    { name: "a chamfer in a hole", steps: [...drilled(6, 10), "do: chamfer, size: 0.5, side: bore"] },
    {
      name: "a blade too slender for its depth",
      steps: ["do: part, length: 30, blade: 0.79"],
      found: ["take care: slender-blade at 1"],
      says: /goes 8 mm deep with a blade 0\.79 mm wide, more than 10 times its width.*0\.8 mm or wider/,
    },
    { name: "a blade just wide enough", steps: ["do: part, length: 30, blade: 0.8"] },
    {
      name: "a slender blade for a groove",
      steps: ["do: groove, at: 20, width: 2, to: 8, blade: 0.39"],
      found: ["take care: slender-blade at 1"],
    },
    { name: "a blade for a groove", steps: ["do: groove, at: 20, width: 2, to: 8, blade: 0.4"] },
    {
      name: "through a tube a blade goes less deep",
      head: "bar: { diameter: 16, out: 40, bore: 10 }",
      steps: ["do: part, length: 30, blade: 0.5"],
    },
  ])("$name", judged);
});

describe("a tool that cannot get in, or comes out", () => {
  const behind = (at: number, length = 10) => `do: turn, to: 12, at: ${at}, length: ${length}`;
  const blank = "bar: { diameter: 16, out: 10, length: 30 }";
  test.each<Row>([
    {
      name: "turned behind a collar",
      steps: [behind(10)],
      found: ["take care: behind-a-collar at 1"],
      says: /begins at 10 mm behind 16 mm: the tool has to plunge in there, which a knife tool does not; cut a groove there first.*\(\{ do: groove/,
    },
    {
      name: "a shoulder behind a collar",
      steps: ["do: shoulder, to: 12, at: 10, length: 10"],
      found: ["take care: behind-a-collar at 1"],
    },
    {
      name: "a taper behind a collar",
      steps: ["do: taper, large: 16, small: 14, at: 10, length: 10"],
      found: ["take care: behind-a-collar at 1"],
    },
    {
      name: "a taper that begins as thick as what stands before it",
      steps: ["do: taper, large: 16, small: 14, at: 10, length: 10, smallAt: chuck"],
    },
    { name: "turned behind what is as thin", steps: [turn(12, 10), behind(10)] },
    {
      name: "turned behind what is a tenth thicker",
      steps: [turn(12.1, 10), behind(10)],
      found: ["take care: behind-a-collar at 2"],
    },
    { name: "turned from a groove", steps: ["do: groove, at: 9, width: 2, to: 12, blade: 2", behind(10)] },
    { name: "turned from the end", steps: [behind(0)] },
    {
      // The point of a 118° drill is 0.3 of its diameter long: one of 5 mm comes out from 28.5 mm on.
      name: "a drill whose point comes out behind a blank",
      head: blank,
      steps: drilled(5, 28.6),
      found: ["take care: through-the-back at 2"],
      says: /its point goes to 30\.1\d* mm, and the work is 30 mm long; see that nothing stands behind it/,
    },
    {
      name: "a stop in the spindle stands behind it",
      head: `${blank}\nspindleStop: true`,
      steps: drilled(5, 28.6),
      found: ["take care: through-the-back at 2"],
      says: /keep the stop in the spindle clear of the drill/,
    },
    { name: "a drill whose point stays inside", head: blank, steps: drilled(5, 28.4) },
    {
      name: "a bar that goes on into the spindle has no back",
      head: "bar: { diameter: 16, out: 10 }",
      steps: drilled(5, 44),
    },
    {
      name: "a last cut that rubs",
      steps: ["do: turn, to: 15, length: 10, finish: 0.019"],
      found: ["take care: rubs at 1"],
      says: /leaves 0\.019 mm for the last cut: the tool rubs instead of cutting; leave 0\.02 mm or more for it \(finish:\)/,
    },
    { name: "a last cut that just cuts", steps: ["do: turn, to: 15, length: 10, finish: 0.02"] },
  ])("$name", judged);
});

describe("the wall that is left", () => {
  const tube = (bore: number) => `bar: { diameter: 16, out: 40, bore: ${bore} }`;
  test.each<Row>([
    { name: "a millimetre", head: tube(10), steps: [turn(12, 20)] },
    {
      name: "less than a millimetre",
      head: tube(10),
      steps: [turn(11.9, 20)],
      found: ["take care: thin-wall at 1"],
      says: /leaves a wall of 0\.95 mm at 0 mm along the work; take light cuts last/,
    },
    { name: "three tenths", head: tube(10), steps: [turn(10.6, 20)], found: ["take care: thin-wall at 1"] },
    {
      name: "less than three tenths",
      head: tube(10),
      steps: [turn(10.5, 20)],
      found: ["refused: thin-wall at 1"],
      says: /leaves a wall of 0\.25 mm.*less than 0\.3 mm does not stand the cut/,
    },
    {
      name: "none: a groove over a drilled hole",
      steps: [...drilled(8, 20), "do: groove, at: 10, width: 2, to: 7, blade: 2"],
      found: ["refused: thin-wall at 3"],
      says: /breaks through the wall at 10 mm along the work/,
    },
    {
      name: "a groove beyond the hole's point",
      steps: [...drilled(8, 20), "do: groove, at: 23, width: 2, to: 7, blade: 2"],
    },
    {
      name: "bored from inside",
      steps: [...drilled(8, 25), turn(12, 20), "do: bore, to: 10.1, depth: 20"],
      found: ["take care: thin-wall at 4"],
    },
    {
      name: "a taper that meets the hole",
      steps: [...drilled(8, 25), "do: taper, large: 12, small: 8.4, length: 10"],
      found: ["refused: thin-wall at 3"],
    },
    {
      name: "is told of the step that thins it, and not of those after it",
      head: tube(10),
      steps: [turn(11.9, 20), "do: turn, to: 14, length: 30"],
      found: ["take care: thin-wall at 1"],
    },
  ])("$name", judged);
});

describe("on a drill: of its work nothing is known but the holes", () => {
  const drill = lathe("kind: drill");
  const none = "parts: 2";
  test.each<Row>([
    {
      name: "nothing is said of a good job",
      head: none,
      on: drill,
      steps: [
        "do: drill, diameter: 5, depth: 12",
        "do: tap, thread: M6, depth: 6",
        "do: drill, diameter: 7.8, depth: 12",
      ],
    },
    {
      name: "holes beside each other, each begun anew",
      head: none,
      on: drill,
      steps: [
        "do: drill, diameter: 8, depth: 12",
        "do: drill, diameter: 3.3, depth: 12",
        "do: tap, thread: M4, depth: 6",
      ],
    },
    {
      name: "a hole that is drilled up",
      head: none,
      on: drill,
      steps: [
        "do: drill, diameter: 3, depth: 12",
        "do: drill, diameter: 5, depth: 12",
        "do: tap, thread: M6, depth: 6",
      ],
    },
    {
      name: "a tap in a drill's hole that is too narrow",
      head: none,
      on: drill,
      steps: ["do: drill, diameter: 4.5, depth: 12", "do: tap, thread: M6, depth: 6"],
      found: ["refused: wrong-hole at 2"],
    },
    {
      name: "a reamer in a hole as large as itself",
      head: none,
      on: drill,
      steps: ["do: drill, diameter: 8, depth: 12", "do: ream, diameter: 8, depth: 6"],
      found: ["refused: no-hole at 2"],
    },
  ])("$name", judged);
});
