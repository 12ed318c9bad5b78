import { describe, expect, test } from "vitest";
import { remedyInFile } from "../../../src/plan/finding.js";
import { planOf } from "../../../src/plan/plan.js";
import { jobOf, lathe, planFor, type Row, verdicts } from "../../support/job.js";
import { findingsOf } from "../../support/sheets.js";
import { judged } from "./judged.js";

const drilled = (diameter: number, depth: number) => [
  "do: centre drill",
  `do: drill, diameter: ${diameter}, depth: ${depth}`,
];
const coarse = (slide: string) =>
  findingsOf(`name: L
limits: { chuck: 2000 rpm }
drive: { motor: { speed: 1425 rpm }, stages: [{ name: b, steps: [{ driver: 20, driven: 200 }] }] }
handwheels:
  - ${slide}
  - { name: Carriage, feed: 18 mm }
`);
const crossAlone = findingsOf(`name: L
drive: { motor: { speed: 1425 rpm }, stages: [{ name: b, steps: [{ driver: 20, driven: 50 }] }] }
handwheels:
  - { name: Cross slide, feed: 2 mm }
`);

/** Read at every turn of a screw of 2 mm that is worn in its middle, mm (invented). */
const turns = Array.from({ length: 25 }, (_, turn) => turn);
const worn = turns.map((turn) => (2 * turn - 0.08 * Math.exp(-(((turn - 12) / 5) ** 2))).toFixed(2));

describe("how far the slides go", () => {
  const long = "bar: { diameter: 40, out: 130 }";
  test.each<Row>([
    {
      name: "a drill deeper than the barrel travels: it can be moved up",
      steps: drilled(5, 45.1),
      found: ["take care: beyond-travel at 2"],
      says: /needs 45\.1 mm of the Tailstock barrel, which travels 45 mm; draw it back half way/,
    },
    { name: "a drill as deep as the barrel travels", steps: drilled(5, 45) },
    {
      name: "longer than the carriage travels, as its dial can be set",
      head: long,
      steps: ["do: turn, to: 39, length: 121"],
      found: ["refused: beyond-travel at 1"],
      says: /needs 121(\.\d+)? mm of the Carriage, which travels 120 mm/,
    },
    { name: "as long as the carriage travels", head: long, steps: ["do: turn, to: 39, length: 119"] },
    {
      name: "a slope longer than the top slide travels",
      head: long,
      steps: ["do: taper, large: 40, small: 38, length: 50.1"],
      found: ["refused: beyond-travel at 1"],
      says: /of the Top slide, which travels 50 mm/,
    },
    { name: "a slope just short enough", head: long, steps: ["do: taper, large: 40, small: 38, length: 49.9"] },
    {
      name: "in inches",
      on: lathe("", { units: "in" }),
      head: "units: in\nbar: { diameter: 5/8, out: 1-1/2 }",
      steps: ["do: centre drill", "do: drill, diameter: 1/4, depth: 1.8"],
      found: ["take care: beyond-travel at 2"],
      says: /needs 1\.8 in of the Tailstock barrel, which travels 1\.772 in/,
    },
  ])("$name", judged);
});

describe("what sets the depth", () => {
  test.each<Row>([
    {
      name: "no wheel goes across: told once",
      on: coarse("{ name: Tailstock barrel, feed: 2 mm }"),
      steps: ["do: turn, to: 15, length: 10", "do: turn, to: 14, length: 5"],
      found: ["take care: no-wheel at 1"],
      says: /no handwheel with a feed sets this depth.*moves: across/,
    },
    {
      name: "a face is cut into along the work, which a cross slide alone does not do",
      on: crossAlone,
      steps: ["do: face, depth: 0.5"],
      found: ["take care: no-wheel at 1"],
      says: /moves: along/,
    },
    { name: "one does", on: coarse("{ name: Cross slide, feed: 2 mm }"), steps: ["do: turn, to: 15, length: 10"] },
    {
      name: "more cuts than anyone takes",
      steps: ["do: turn, to: 6, length: 10, cut: 0.02, finish: 0.02"],
      found: ["refused: too-many-cuts at 1"],
      says: /more than 200 cuts of 0\.02 mm; take deeper cuts.*\(cut:\)/,
    },
    { name: "many, but fewer", steps: ["do: turn, to: 10, length: 10, cut: 0.05, finish: 0.02"] },
    {
      name: "a tolerance finer than the slide holds: 4 tenths of a division",
      steps: ["do: turn, to: 15, length: 10, tolerance: 0.0039"],
      found: ["take care: finer-than-the-slide at 1"],
      says: /a tolerance of 0\.0039 mm from end to end is finer than this slide comes back to one reading, about 0\.004 mm \(its scatter as measured, and a dial read to a tenth; wear not counted\); finish by hand/,
    },
    {
      // Gauge 0.01, both readings 0.001 of travel each, and 0.1 % of the 0.1 mm of the last cut.
      name: "a tolerance that the slide holds, and measuring once does not",
      steps: ["do: turn, to: 15, length: 10, finish: 0.1, tolerance: 0.028"],
      found: ["take care: finer-than-the-reading at 1"],
      says: /comes out to ± 0\.014 mm, and its tolerance leaves ± 0\.014 mm; measure and correct: leave 0\.014 mm/,
    },
    { name: "a tolerance that it holds", steps: ["do: turn, to: 15, length: 10, finish: 0.1, tolerance: 0.0284"] },
    {
      name: "the same of a bore",
      steps: [...drilled(8, 20), "do: bore, to: 10 H7, depth: 15, cut: 0.3, finish: 0.1"],
      found: ["take care: finer-than-the-reading at 3"],
      says: /± 0\.014 mm, and its tolerance leaves ± 0\.0075 mm/,
    },
    {
      name: "nobody knows how good the feed is: gauge and dial are known",
      on: coarse(
        "{ name: Cross slide, reads: diameter, feed: 2 mm, dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02 mm } }",
      ),
      steps: ["do: turn, to: 15 ± 0.01, length: 10"],
      found: ["take care: finer-than-the-reading at 1"],
      says: /gauge and dial alone leave ± 0\.014 mm, the feed's own ± is not known, and the tolerance leaves ± 0\.01 mm/,
    },
    {
      // 4 mm of slide are 2 turns, each in doubt by 0.05; the touch 0.03; on diameter twice both.
      name: "a groove is gone to at once by turns of a doubtful feed",
      on: coarse("{ name: Cross slide, reads: diameter, feed: { perTurn: 2 mm, uncertainty: 0.05 mm } }"),
      steps: ["do: groove, at: 10, width: 3, to: 8 ± 0.05, blade: 2"],
      found: ["take care: finer-than-the-slide at 1"],
      says: /touch and feed alone leave ± 0\.26 mm, .*, and the tolerance leaves ± 0\.05 mm; go in by halves/,
    },
    {
      name: "a reamer makes its size, however doubtful the feed into the hole",
      on: coarse(
        "{ name: Cross slide, feed: 2 mm }\n  - { name: Tailstock barrel, travel: 45, feed: { perTurn: 2.5 mm, uncertainty: 0.05 mm } }",
      ),
      steps: [...drilled(7.8, 20), "do: ream, diameter: 8 H7, depth: 15"],
    },
    {
      name: "of a feed that is known well enough",
      on: coarse("{ name: Cross slide, reads: diameter, feed: { perTurn: 2 mm, uncertainty: 0.001 mm } }"),
      steps: ["do: groove, at: 10, width: 3, to: 8 ± 0.065, blade: 2"],
    },
    {
      name: "the feed is known and there is no dial: that is said",
      on: coarse("{ name: Cross slide, reads: diameter, feed: { perTurn: 2 mm, uncertainty: 0.001 mm } }"),
      steps: ["do: turn, to: 15 ± 0.005, length: 10"],
      found: ["take care: finer-than-the-reading at 1"],
      says: /there is no dial to go by; gauge and slide alone leave ± 0\.01 mm, and the tolerance leaves ± 0\.005 mm/,
    },
    {
      name: "and where the slide is worn, that too",
      on: coarse(
        `{ name: Cross slide, reads: diameter, feed: { readings: { gauge: 0.01, turns: [${turns}], travel: [${worn}] } } }`,
      ),
      steps: ["do: turn, to: 15 ± 0.02, length: 10"],
      found: ["take care: finer-than-the-reading at 1"],
      says: /^the slide is worn and there is no dial to go by; gauge and slide alone leave ± 0\.0\d+ mm/,
    },
    {
      name: "and what they hold is not said to be out of reach",
      on: coarse(
        "{ name: Cross slide, reads: diameter, feed: 2 mm, dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02 mm } }",
      ),
      steps: ["do: turn, to: 15 ± 0.0141, length: 10"],
    },
  ])("$name", judged);
});

describe("what the machine bears", () => {
  const knurl = "do: knurl, at: 0, length: 6, pitch: 0.8";
  const headstock = "do: taper, large: 16, small: 15, length: 10, by: headstock";
  test.each<Row>([
    {
      name: "a drill larger than it drives",
      on: limited(10),
      steps: drilled(10.1, 20),
      found: ["refused: beyond-the-limit at 2"],
      says: /10\.1 mm is larger than the machine drives, 10 mm at most; do not run it.*\(limits: drill:\)/,
    },
    { name: "a drill as large as it drives", on: limited(10), steps: drilled(10, 20) },
    {
      name: "a knurl that presses from one side on a light machine",
      steps: [knurl],
      found: ["refused: side-load at 1"],
      says: /presses harder than a light machine's slides and bearings bear; use one that pinches/,
    },
    { name: "a knurl that pinches", steps: [`${knurl}, pinched: true`] },
    { name: "a knurl that presses, on a firm machine", on: lathe("work: { firmness: firm }"), steps: [knurl] },
    {
      name: "a headstock that does not swivel",
      steps: [headstock],
      found: ["refused: no-swivel at 1"],
      says: /the machine's file knows of none that swivels; swing the top slide.*by: top slide/,
    },
    {
      name: "a headstock that does",
      on: lathe("angleScales: [{ name: H, part: headstock, radius: 60 }]"),
      steps: [headstock],
    },
    {
      name: "a wide blade",
      steps: ["do: part, length: 30, blade: 3.1"],
      found: ["take care: wide-blade at 1"],
      says: /a blade of 3\.1 mm is wide for this machine \(about 3 mm at most, common practice\): it chatters and digs in/,
    },
    { name: "a blade just narrow enough", steps: ["do: part, length: 30, blade: 3"] },
    {
      name: "a wide blade for a groove",
      steps: ["do: groove, at: 20, width: 4, to: 12, blade: 3.1"],
      found: ["take care: wide-blade at 1"],
    },
    { name: "on a firm machine", on: lathe("work: { firmness: firm }"), steps: ["do: part, length: 30, blade: 6"] },
  ])("$name", judged);

  function limited(drill: number) {
    const findings = lathe();
    return {
      ...findings,
      machine: { ...findings.machine, limits: { ...findings.machine.limits, largestDrill: drill } },
    };
  }
});

describe("speeds", () => {
  const slide = "handwheels: [{ name: Cross slide, feed: 2 mm }, { name: Carriage, feed: 18 mm }]";
  const driven = (driver: number, limits: string) =>
    findingsOf(
      `name: L\nlimits: { ${limits} }\ndrive: { motor: { speed: 1425 rpm }, stages: [{ name: b, steps: [{ driver: ${driver}, driven: 100 }] }] }\n${slide}\n`,
    );
  test.each<Row>([
    {
      name: "no drive: told once",
      on: findingsOf(`name: L\nlimits: { chuck: 2000 rpm }\n${slide}\n`),
      steps: ["do: turn, to: 15, length: 10", "do: turn, to: 14, length: 5"],
      found: ["take care: no-drive at 1"],
      says: /every speed is yours to choose; begin at the slowest/,
    },
    {
      name: "even the slowest is too fast",
      on: driven(100, "chuck: 4000 rpm"),
      head: "bar: { diameter: 60, out: 40 }",
      steps: ["do: turn, to: 59, length: 10"],
      found: ["refused: too-fast at 1"],
      says: /even the slowest position, 1425 rpm, is too fast: 60 mm wants no more than \d+ rpm; do not run it/,
    },
    {
      name: "the slowest is slow enough",
      on: driven(10, "chuck: 4000 rpm"),
      head: "bar: { diameter: 60, out: 40 }",
      steps: ["do: turn, to: 59, length: 10"],
    },
    {
      name: "all lie beyond the chuck's limit",
      on: driven(100, "chuck: 1000 rpm"),
      steps: ["do: turn, to: 6, length: 10", "do: turn, to: 5, length: 10"],
      head: "bar: { diameter: 7, out: 20 }",
      found: ["refused: too-fast at 1", "refused: too-fast at 2"],
      says: /every position that is slow enough for 7 mm \(\d+ rpm\) may run beyond the chuck's limit of 1000 rpm/,
    },
  ])("$name", judged);

  test("no cutting speed is known: each step says which one to give", () => {
    const job = jobOf(["do: face, depth: 0.5", "do: turn, to: 15, length: 10"], undefined, "zirconium");
    const plan = planOf(job, lathe());
    expect(
      plan.findings.filter(({ code }) => code === "no-speed").map((one) => `${one.what}; ${remedyInFile(one)}`),
    ).toEqual([
      expect.stringMatching(/no cutting speed is known for zirconium .*cuttingSpeeds: … \}, face/),
      expect.stringMatching(/, turn\)/),
    ]);
  });

  test("a hand that cannot feed magnesium so coarsely does not run it", () => {
    const fine = findingsOf(
      `name: L\nlimits: { chuck: 3000 rpm }\ndrive: { motor: { speed: 1425 rpm }, stages: [{ name: b, steps: [{ driver: 100, driven: 100 }] }] }\nhandwheels: [{ name: Cross slide, feed: 2 mm }, { name: Carriage, feed: 0.5 mm }]\n`,
    );
    const plan = planOf(jobOf(["do: turn, to: 15, length: 10"], undefined, "magnesium"), fine);
    expect(verdicts(plan)).toEqual(["refused: too-fine at 1"]);
  });

  test("a chuck without a limit is told of the machine, not of a step", () => {
    const bare = findingsOf(
      `name: L\ndrive: { motor: { speed: 1425 rpm }, stages: [{ name: b, steps: [{ driver: 20, driven: 200 }] }] }\n${slide}\n`,
    );
    const plan = planFor(["do: turn, to: 15, length: 10"], undefined, bare);
    expect(plan.findings).toEqual([]);
    expect(plan.remarks.join(" ")).toContain("how fast the chuck may run");
    expect(planFor(["do: turn, to: 15, length: 10"]).remarks).toEqual([]);
  });
});
