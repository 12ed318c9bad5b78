import { describe, expect, test } from "vitest";
import { planOf } from "../../../src/plan/plan.js";
import { jobOf, lathe, planFor, type Row, verdicts } from "../../support/job.js";
import { judged } from "./judged.js";

const face = "do: face, depth: 0.5";
const centred = ["do: centre drill", "do: hold, held: chuck and centre, out: 60"];
const inches = "units: in\nbar: { diameter: 5/8, out: 1-1/2 }";

describe("clear of what holds the work", () => {
  test.each<Row>([
    { name: "just clear: 38 of 40, 2 mm to the jaws", steps: ["do: turn, to: 14, length: 38"] },
    {
      name: "a tenth nearer than clear",
      steps: ["do: turn, to: 14, length: 38.1"],
      found: ["refused: into-the-jaws at 1"],
      says: /reaches 38\.1 mm along the work, and the jaws begin at 40 mm: less than 2 mm clear; let 0\.5 mm more stand out/,
    },
    {
      name: "a tenth into the jaws, with nothing to keep clear of",
      head: "bar: { diameter: 16, out: 40 }\nclear: 0.01",
      steps: ["do: turn, to: 14, length: 40.1"],
      found: ["refused: into-the-jaws at 1"],
      says: /the tool runs into them; let 0\.5 mm more/,
    },
    {
      name: "what is faced off lies before the lengths",
      steps: [face, "do: turn, to: 14, length: 37.6"],
      found: ["refused: into-the-jaws at 2"],
      says: /the jaws begin at 39\.5 mm/,
    },
    {
      name: "parting: the part is clear, the blade is not",
      steps: ["do: part, length: 37, blade: 2"],
      found: ["refused: into-the-jaws at 1"],
      says: /reaches 39 mm.*let 1 mm more/,
    },
    {
      name: "in inches the bar is let out to a hundredth, not to what computing gives",
      head: `${inches}\nclear: 5/64`,
      steps: ["do: turn, to: 0.5, length: 1.725625"],
      found: ["refused: into-the-jaws at 1"],
      says: /let 0\.31 in (\(7\.874 mm\) )?more stand out/,
    },
    { name: "parting with the blade just clear", steps: ["do: part, length: 36, blade: 2"] },
    {
      name: "a face close to the jaws",
      head: "bar: { diameter: 16, out: 2.4 }",
      steps: [face],
      found: ["refused: into-the-jaws at 1"],
    },
    { name: "a face just clear of them", head: "bar: { diameter: 16, out: 2.5 }", steps: [face] },
    {
      name: "a die",
      head: "bar: { diameter: 5.9, out: 20 }",
      steps: ["do: die, thread: M6, length: 18.1"],
      found: ["refused: into-the-jaws at 1"],
    },
    { name: "a die just clear", head: "bar: { diameter: 5.9, out: 20 }", steps: ["do: die, thread: M6, length: 18"] },
    {
      name: "a knurl",
      steps: ["do: knurl, at: 30, length: 8.1, pitch: 0.8, pinched: true"],
      found: ["refused: into-the-jaws at 1"],
    },
    { name: "a knurl just clear", steps: ["do: knurl, at: 30, length: 8, pitch: 0.8, pinched: true"] },
    {
      name: "the driver between centres is no jaw",
      head: "bar: { diameter: 16, out: 40, held: between centres }",
      steps: ["do: turn, to: 14, length: 38.1"],
      found: ["refused: into-the-jaws at 1", "take care: no-centre-hole at 1"],
      says: /the driver begins at 40 mm: less than 2 mm clear/,
    },
    {
      name: "a bore may go on inside the jaws",
      steps: [face, "do: centre drill", "do: drill, diameter: 6, depth: 45"],
    },
    {
      name: "in inches",
      head: inches,
      steps: ["do: turn, to: 9/16, length: 1.43"],
      found: ["refused: into-the-jaws at 1"],
      says: /reaches 1\.43 in \(36\.322 mm\) along the work, and the jaws begin at 1 1\/2 in/,
    },
    { name: "in inches, just clear", head: inches, steps: ["do: turn, to: 9/16, length: 1.42"] },
  ])("$name", judged);
});

describe("a centre at the free end", () => {
  const supported = "bar: { diameter: 16, out: 60, held: chuck and centre }";
  test.each<Row>([
    ...[
      "do: face, depth: 1",
      "do: centre drill, diameter: 4",
      "do: drill, diameter: 6, depth: 5",
      "do: chamfer, size: 0.3, side: bore",
    ].map(
      (step): Row => ({
        name: `is in the way of "${step}"`,
        steps: [...centred, step],
        head: "bar: { diameter: 16, out: 60 }",
        found: ["refused: centre-in-the-way at 3"],
        says: /do it before the centre is brought up/,
      }),
    ),
    {
      name: "closes on the parting blade",
      head: "bar: { diameter: 16, out: 60 }",
      steps: [...centred, "do: part, length: 50, blade: 2"],
      found: ["refused: centre-in-the-way at 3"],
      says: /closes on the blade; hold it in the chuck alone/,
    },
    {
      name: "is not in the way of turning",
      head: "bar: { diameter: 16, out: 60 }",
      steps: [...centred, "do: turn, to: 14, length: 50"],
    },
    {
      name: "without a hole is told once, not at every step",
      head: supported,
      steps: ["do: turn, to: 14, length: 50", "do: turn, to: 12, length: 20"],
      found: ["take care: no-centre-hole at 1"],
      says: /no step makes the centre hole in its free end/,
    },
    {
      name: "between centres the other end wants one too",
      head: "bar: { diameter: 16, out: 60, length: 80 }",
      steps: ["do: centre drill", "do: hold, held: between centres, out: 60", "do: turn, to: 14, length: 50"],
      found: ["take care: no-centre-hole at 2"],
      says: /in its other end/,
    },
    {
      name: "both ends centred",
      head: "bar: { diameter: 16, out: 60, length: 80 }",
      steps: [
        "do: centre drill",
        "do: turn round, out: 60",
        "do: centre drill",
        "do: hold, held: between centres, out: 60",
        "do: turn, to: 14, length: 50",
      ],
    },
    {
      name: "the end is turned down to its hole",
      head: "bar: { diameter: 16, out: 60 }",
      steps: ["do: centre drill, diameter: 4", centred[1] as string, "do: turn, to: 8.5, length: 10"],
      found: ["refused: into-the-centre at 3", "refused: thin-wall at 3"],
      says: /turns the end to 8\.5 mm, and the centre hole is 8\.5 mm wide/,
    },
    {
      name: "the end is turned so near that the tool hardly passes: 1.15 of 2 mm",
      head: "bar: { diameter: 16, out: 60 }",
      steps: ["do: centre drill, diameter: 4", centred[1] as string, "do: turn, to: 10.7, length: 10"],
      found: ["take care: near-the-centre at 3"],
      says: /beside a centre hole of 8\.5 mm: hardly room for the tool; use a cut-away centre/,
    },
    {
      name: "the end with just room for the tool",
      head: "bar: { diameter: 16, out: 60 }",
      steps: ["do: centre drill, diameter: 4", centred[1] as string, "do: turn, to: 10.8, length: 10"],
    },
    {
      name: "a tailstock set over slants nothing in the chuck",
      steps: ["do: taper, large: 16, small: 15, length: 20, by: tailstock"],
      found: ["refused: not-between-centres at 1"],
      says: /the chuck alone holds the work: nothing slants/,
    },
    {
      name: "a tailstock set over bends what the chuck holds",
      head: "bar: { diameter: 16, out: 60 }",
      steps: [...centred, "do: taper, large: 16, small: 15, length: 20, by: tailstock"],
      found: ["refused: not-between-centres at 3"],
    },
    {
      name: "a tailstock set over between centres is how it is done",
      head: "bar: { diameter: 16, out: 60, held: between centres }",
      steps: ["do: taper, large: 16, small: 15, length: 20, by: tailstock"],
      found: ["take care: no-centre-hole at 1"],
    },
    {
      name: "a headstock that is swung leaves the centre",
      head: "bar: { diameter: 16, out: 60 }",
      on: lathe("angleScales: [{ name: H, part: headstock, radius: 60 }]"),
      steps: [...centred, "do: taper, large: 16, small: 15, length: 20, by: headstock"],
      found: ["refused: centre-out-of-line at 3"],
    },
    {
      name: "a headstock that is swung with the chuck alone",
      on: lathe("angleScales: [{ name: H, part: headstock, radius: 60 }]"),
      steps: ["do: taper, large: 16, small: 15, length: 20, by: headstock"],
    },
  ])("$name", judged);
});

describe("held anew", () => {
  const blank = (out: number, length: number) => `bar: { diameter: 16, out: ${out}, length: ${length} }`;
  const parted = ["do: turn, to: 14, length: 22", "do: turn, to: 10, length: 12", "do: part, length: 22, blade: 2"];
  const short = "bar: { diameter: 16, out: 30 }";
  test.each<Row>([
    {
      name: "nothing holds what was parted off",
      head: short,
      steps: ["do: part, length: 20, blade: 2", "do: drill, diameter: 3, depth: 5"],
      found: ["refused: loose at 2"],
      says: /nothing holds the part; turn it round and hold it again.*\(\{ do: turn round/,
    },
    {
      name: "parted off and held again",
      head: short,
      steps: ["do: part, length: 20, blade: 2", "do: turn round, out: 8", "do: face, length: 19.5"],
    },
    {
      name: "a bar of unknown length is turned round",
      steps: [face, "do: turn round, out: 20"],
      found: ["refused: length-unknown at 2"],
      says: /part it off first, or give the blank's length \(bar: length:\)/,
    },
    { name: "a blank of known length is turned round", head: blank(40, 60), steps: [face, "do: turn round, out: 20"] },
    {
      name: "let out further than it is long",
      head: short,
      steps: [...parted, "do: turn round, out: 22"],
      found: ["refused: no-grip at 4"],
      says: /leaves 22 mm out of work that is only 22 mm long/,
    },
    {
      name: "a blank of which the chuck has nothing, before any step says so",
      head: blank(40, 40),
      steps: [face],
      found: ["refused: no-grip at 1"],
    },
    {
      name: "a blank of which the chuck has just less than half a diameter",
      head: blank(40, 47.9),
      steps: [face],
      found: ["take care: little-grip at 1"],
      says: /hold only 7\.9 mm of 16 mm diameter; 8 mm is the least/,
    },
    { name: "a blank of which the chuck has half a diameter", head: blank(40, 48), steps: [face] },
    {
      name: "the jaws close on the thin end with the shoulder behind",
      head: short,
      steps: [...parted, "do: hold, out: 4"],
      found: ["refused: uneven-grip at 4"],
      says: /would close on 10 mm for 8 mm alone, with 14 mm behind it/,
    },
    {
      name: "the jaws close on the thin end for a whole diameter before the shoulder",
      head: short,
      steps: [...parted, "do: hold, out: 2"],
      found: ["take care: uneven-grip at 4"],
      says: /see that their inner ends stay clear of the thicker part/,
    },
    {
      name: "the jaws close on a thin end, 5 of 10",
      head: short,
      steps: [...parted, "do: turn round, out: 17"],
    },
    {
      name: "the jaws close on a thin end, 4.9 of 10",
      head: short,
      steps: [...parted, "do: turn round, out: 17.1"],
      found: ["take care: little-grip at 4"],
    },
    {
      name: "the jaws bridge a narrow groove at their mouth",
      head: blank(40, 60),
      steps: ["do: groove, at: 30, width: 2, to: 12, blade: 2", "do: hold, out: 30"],
    },
    {
      name: "the jaws do not bridge a wide one",
      head: blank(40, 60),
      steps: ["do: groove, at: 30, width: 8, to: 12, blade: 2", "do: hold, out: 30"],
      found: ["refused: uneven-grip at 2"],
      says: /would close on 12 mm for 8 mm alone, with 16 mm behind it/,
    },
    {
      name: "the jaws over a narrow groove close on its shoulder, and not on its floor, whatever is thicker behind",
      head: "bar: { diameter: 16, out: 45, length: 80 }",
      steps: ["do: turn, to: 14, length: 40", "do: groove, at: 12, width: 3, to: 11, blade: 3", "do: hold, out: 13"],
      found: ["take care: uneven-grip at 3"],
      says: /close on 14 mm for 25 mm, and 16 mm follows behind it/,
    },
    {
      name: "where nothing holds there, the nearest place is named that does",
      head: "bar: { diameter: 16, out: 45, length: 80 }",
      steps: ["do: turn, to: 12, length: 38", "do: hold, out: 30"],
      found: ["refused: uneven-grip at 2"],
      says: /close on 12 mm for 8 mm alone, with 16 mm behind it.*; let 38 mm stand out, where the jaws close on 16 mm for 42 mm; or hold the other end/,
    },
    {
      name: "what is named leaves room for what is cut next, and holds a whole diameter before a short one that is nearer",
      head: "bar: { diameter: 16, out: 45, length: 80 }",
      steps: ["do: turn, to: 12, length: 38", "do: hold, out: 30", "do: turn, to: 14, at: 38, length: 12"],
      found: ["refused: uneven-grip at 2", "refused: into-the-jaws at 3"],
      says: /let 6[04](\.0)? mm stand out/,
    },
    {
      name: "what is named can be set by a rule, in half millimetres",
      head: "bar: { diameter: 16, out: 45, length: 80 }",
      steps: ["do: turn, to: 12, length: 38.3", "do: hold, out: 30"],
      found: ["refused: uneven-grip at 2"],
      says: /let 38\.5 mm stand out, where the jaws close on 16 mm for 41\.5 mm/,
    },
    {
      name: "in inches in hundredths",
      head: `${inches.replace("1-1/2", "2, length: 3-1/2")}`,
      steps: ["do: turn, to: 0.5, length: 1.5078", "do: hold, out: 1.2"],
      found: ["refused: uneven-grip at 2"],
      says: /let 1\.51 in [^;]*stand out/,
    },
    {
      name: "what is named spoils no thread",
      head: "bar: { diameter: 16, out: 45, length: 80 }",
      steps: [
        "do: turn, to: 9.9, length: 20",
        "do: die, thread: M10, length: 15",
        "do: part, length: 40, blade: 2",
        "do: turn round, out: 17",
        "do: face, length: 39",
      ],
      found: ["refused: no-grip at 4"],
      says: /let (4|12) mm stand out, where the jaws close on 16 mm/,
    },
    {
      name: "a thin wall under the jaws",
      head: "bar: { diameter: 20, out: 30, length: 60, bore: 14 }",
      steps: [face],
      found: ["take care: thin-under-jaws at 1"],
      says: /a wall of 3 mm round the bore of 14 mm/,
    },
    { name: "a stout one", head: "bar: { diameter: 20, out: 30, length: 60, bore: 13 }", steps: [face] },
    {
      name: "a groove further in does not end the grip",
      head: blank(40, 60),
      steps: ["do: groove, at: 33, width: 3, to: 11, blade: 3", "do: hold, out: 30"],
    },
    {
      name: "a taper in the jaws",
      head: short,
      steps: [
        "do: taper, large: 16, small: 13, length: 12",
        "do: part, length: 22, blade: 2",
        "do: turn round, out: 10.5",
      ],
      found: ["take care: little-grip at 3"],
      says: /a cone at 15\.875 mm/,
    },
    {
      name: "the jaws on a thread",
      head: short,
      steps: [
        "do: turn, to: 5.9, length: 10",
        "do: die, thread: M6, length: 6",
        "do: part, length: 20, blade: 2",
        "do: turn round, out: 12",
      ],
      found: ["take care: spoilt-surface at 4"],
      says: /would lie on the thread M6; hold it elsewhere, or in a split sleeve/,
    },
    {
      name: "the jaws on a knurl",
      head: short,
      steps: [
        "do: knurl, at: 0, length: 10, pitch: 0.8, pinched: true",
        "do: part, length: 20, blade: 2",
        "do: turn round, out: 8",
      ],
      found: ["take care: spoilt-surface at 3"],
      says: /lie on the knurl/,
    },
    {
      name: "the jaws beside the thread",
      head: short,
      steps: [
        "do: turn, to: 5.9, length: 10",
        "do: die, thread: M6, length: 6",
        "do: part, length: 24, blade: 2",
        "do: turn round, out: 5",
        "do: face, length: 23.8",
      ],
    },
    {
      name: "a bar that is pushed back into the chuck over its thread",
      head: "bar: { diameter: 5.9, out: 20 }",
      steps: ["do: die, thread: M6, length: 18", "do: hold, out: 10"],
      found: ["take care: spoilt-surface at 2"],
    },
  ])("$name", judged);
});

describe("slender work", () => {
  test.each<Row>([
    { name: "4 times: 64 of 16, when it is faced", head: "bar: { diameter: 16, out: 64.5 }", steps: [face] },
    {
      name: "just over 4 times, faced",
      head: "bar: { diameter: 16, out: 64.6 }",
      steps: [face],
      found: ["take care: slender at 1"],
      says: /64\.1 mm stands out at 16 mm diameter, 4\.0 times as long as thick, with nothing at its free end; more than 4 times/,
    },
    // Of 40 mm that stand out, the first a at d and the rest at 16: it bends as 40³ / 3 over 10⁴ (4 times) or 5⁴ (8 times) where
    // a³ (1 / d⁴ − 1 / 16⁴) is 40³ (1 / 10⁴ or 1 / 5⁴ − 1 / 16⁴): a is 19.28 for 6 mm and 4 times, 29.65 for 4 mm and 8 times.
    { name: "thin after the cut, just 4 times", steps: ["do: turn, to: 6, length: 19.2"] },
    {
      name: "thin after the cut, just over",
      steps: ["do: turn, to: 6, length: 19.4"],
      found: ["take care: slender at 1"],
      says: /hold its end with a centre/,
    },
    {
      name: "thin after the cut, just 8 times",
      steps: ["do: turn, to: 4, length: 29.6"],
      found: ["take care: slender at 1"],
    },
    {
      name: "thin after the cut, just over 8 times",
      steps: ["do: turn, to: 4, length: 29.7"],
      found: ["refused: slender at 1"],
      says: /more than 8 times whips, and climbs over the tool/,
    },
    {
      name: "told once, and once more where it comes to be refused",
      steps: ["do: turn, to: 6, length: 33", "do: turn, to: 5.5, length: 33", "do: turn, to: 4, length: 33"],
      found: ["refused: slender at 3", "take care: slender at 1"],
    },
    // 2 mm at its driven end, where it hardly bends, are left thicker.
    {
      name: "held by a centre, just over 12 times",
      head: "bar: { diameter: 6, out: 20 }",
      steps: ["do: centre drill", "do: hold, held: chuck and centre, out: 60.1", "do: turn, to: 5, length: 58"],
      found: ["take care: slender at 3"],
      says: /60\.1 mm is free between what holds it, at 5 mm to 6 mm diameter, as stiff as a bar 12\.0 times.*needs a steady/,
    },
    {
      name: "held by a centre, just 12 times",
      head: "bar: { diameter: 6, out: 20 }",
      steps: ["do: centre drill", "do: hold, held: chuck and centre, out: 60", "do: turn, to: 5, length: 58"],
    },
    {
      name: "parted far from the jaws",
      steps: ["do: part, length: 13.9, blade: 2"],
      found: ["take care: far-from-the-jaws at 1"],
      says: /parts off 24\.1 mm from the jaws/,
    },
    { name: "parted just near enough: a diameter and a half", steps: ["do: part, length: 14, blade: 2"] },
    {
      name: "in inches, just over 4 times",
      head: "units: in\nbar: { diameter: 1/2, out: 2.01 }",
      steps: ["do: face, depth: 0.005"],
      found: ["take care: slender at 1"],
      says: /2\.005 in .*stands out at 1\/2 in/,
    },
    {
      name: "in inches, just 4 times",
      head: "units: in\nbar: { diameter: 1/2, out: 2.005 }",
      steps: ["do: face, depth: 0.005"],
    },
  ])("$name", judged);
});

test("nothing is said of a job that is centred, drawn out to a centre, and pushed back to be parted", () => {
  const job = jobOf(
    [
      "do: face, depth: 0.5",
      "do: centre drill",
      "do: hold, held: chuck and centre, out: 60",
      "do: turn, to: 14 ± 0.1, length: 40",
      "do: chamfer, size: 1",
      "do: hold, out: 44",
      "do: part, length: 36, blade: 2",
    ],
    "bar: { diameter: 16, out: 30 }",
  );
  expect(verdicts(planOf(job, lathe()))).toEqual([]);
});

test("the plan names the diameter that the jaws close on, not the floor of a groove at their mouth", () => {
  const plan = planFor(
    ["do: groove, at: 30, width: 2, to: 12, blade: 2", "do: hold, out: 30"],
    "bar: { diameter: 16, out: 40, length: 60 }",
  );
  expect(plan.steps.at(-1)?.title).toMatch(/16 mm/);
  expect(plan.steps.at(-1)?.title).not.toMatch(/12 mm/);
  expect(plan.steps.at(-1)?.notes.join(" ")).toMatch(/close all round from 32 mm behind the free end/);
});
