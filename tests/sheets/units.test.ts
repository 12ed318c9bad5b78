import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readJob } from "../../src/job/read.js";
import { file, witnessmark } from "../support/command.js";
import { walk } from "../support/marks.js";
import { problemsOf } from "../support/problems.js";
import { findingsOf, printOf, sheetNames, textsOf } from "../support/sheets.js";

const jobOf = (path: string) => readJob(readFileSync(path, "utf8")).job;

type Case = {
  readonly path: string;
  readonly job: string;
  /** What only the other unit's figures look like. */
  readonly foreign: RegExp;
  /** Where it may stand all the same, by sheet ("explain", "check" for the commands), and why. */
  readonly allowed: readonly { readonly on: string; readonly words: RegExp; readonly why: string }[];
};

const inch: Case = {
  path: "tests/machine/sound/inch-everything.yaml",
  job: "tests/job/inch-pin.yaml",
  foreign: /\bmm\b|millimet|µm|m\/min/,
  allowed: [
    { on: "turns", words: /^mm$/, why: "the second table is for drawings in mm" },
    { on: "turns", words: /rows of 0\.05 mm/, why: "a dial in mm to choose" },
    { on: "turns", words: /^5 mm$/, why: "as the file gives it" },
    { on: "threads", words: /^[\d.]+ mm!?$/, why: "what is stamped on a metric drill" },
    { on: "threads", words: /^mm$/, why: "a metric thread's pitch, and every thread's major diameter in both units" },
    {
      on: "dial",
      words: /0\.02 mm|^mm$|Lower scale: its last division is only [\d.]+ mm/,
      why: "the file asks for a second scale in mm",
    },
    {
      on: "engraving",
      words: /lower 0\.02 mm|^mm$|in \([\d.]+ mm\)/,
      why: "as the file asks; lasers are set up in mm",
    },
    {
      on: "dial-choices",
      words: /× 0\.0\d+ mm|division only 0\.0\d+ mm/,
      why: "dials in mm to choose",
    },
    { on: "start-readings", words: /rows of 0\.05 mm/, why: "a dial in mm to choose" },
    { on: "explain", words: /0\.0\d+ mm|reads in millimetres|second scale/, why: "dials in mm to choose" },
    {
      on: "explain",
      words: /\(printed as [\d.]+( to [\d.]+)? m\/min\)/,
      why: "what a source prints, as it is printed",
    },
    { on: "explain", words: /module, always in mm/, why: "a module has no other unit" },
    { on: "explain", words: /Cross slide, 5 mm|for 5 mm of/, why: "as the file gives it" },
    { on: "explain", words: /cad-data|ISO|looked up/, why: "titles of sources" },
    { on: "check", words: /× 0\.0\d+ mm/, why: "dials in mm to choose" },
  ],
};

const metric: Case = {
  path: "templates/machines/boathouse.yaml",
  job: "templates/jobs/deck-pin.yaml",
  foreign: /[\d/] in\b(?! \d)|\binch|(^|, )in$|ft\/min/,
  allowed: [
    {
      on: "explain",
      words: /\(printed as [\d.]+( to [\d.]+)? ft\/min\)/,
      why: "what a source prints, as it is printed",
    },
    { on: "explain", words: /threads per inch/, why: "as the file gives it" },
    { on: "turns", words: /^in$/, why: "the second table is for drawings in inches" },
    {
      on: "turns",
      words: /0\.001 in|0\.0833 in/,
      why: "a dial that the file asks for in inches; an old dial in inches",
    },
    { on: "threads", words: /^in$|^[\d/]+ in$|per inch/, why: "inch threads and their drills" },
    {
      on: "dial",
      words: /0\.001 in|0\.0625 in|reads in inches|1 = |^in$|1\/16 in/,
      why: "the file asks for a dial and a scale in inches",
    },
    { on: "engraving", words: /0\.001 in|0\.0625 in/, why: "the file asks for a dial in inches" },
    { on: "dial-choices", words: /0\.0\d+ in/, why: "dials in inches to choose" },
    { on: "ring-cutting", words: /0\.\d+ in/, why: "the file asks for a dial in inches" },
    { on: "stops", words: /0\.001 in|, in$/, why: "divisions of that dial" },
    { on: "tapers", words: /0\.001 in/, why: "divisions of that dial" },
    { on: "plan", words: /0\.001 in|^in$|, in$/, why: "the reading of that dial" },
    { on: "scales", words: /1\/16 in|^in$/, why: "the file asks for a scale in inches" },
    { on: "student", words: /0\.001 in/, why: "the file asks for a dial in inches" },
    { on: "vernier", words: /0\.0\d+ in/, why: "the file asks for a dial in inches" },
    { on: "hand-feed", words: /0\.001 in/, why: "divisions of that dial" },
    { on: "start-readings", words: /0\.0\d+ in/, why: "dials in inches to choose" },
    {
      on: "explain",
      words: /0\.0\d+ in|reads in inches/,
      why: "a dial that the file asks for in inches, dials to choose",
    },
    { on: "explain", words: /^ +[\d.]+( to [\d.]+)? (m|ft)\/min: /, why: "what a source prints, as it is printed" },
    { on: "explain", words: /published drill|looked up/, why: "the names of drills; titles of sources" },
    { on: "check", words: /0\.0\d+ in/, why: "dials in inches to choose" },
  ],
};

describe.each([
  ["in inches", inch],
  ["in millimetres", metric],
] as const)("a machine %s speaks its own unit", (_, { path, job, foreign, allowed }) => {
  const made = jobOf(job);
  const findings = { ...findingsOf(readFileSync(path, "utf8")), ...(made && { job: made }) };
  const stray = (on: string, words: readonly string[]) =>
    words.filter((line) => foreign.test(line) && !allowed.some((case_) => case_.on === on && case_.words.test(line)));

  test("the job is read", () => expect(made).toBeDefined());

  test.each(sheetNames())("on the sheet %s", (sheet) => {
    const words: string[] = [];
    for (const { drawing } of printOf(findings, sheet).pages)
      walk(drawing.marks, (mark) => {
        if (mark.kind === "text") words.push(mark.text);
      });
    expect(words.length).toBeGreaterThan(3);
    expect(stray(sheet, words)).toEqual([]);
  });

  const quantities = [
    ["feed", "lost motion", "dial", "strip length", "speed", "belt length"],
    ["slip", "cutting speed", "turns", "taper", "tapping hole", "stop"],
  ].flat();
  test.each(quantities)("in explain %s", async (quantity) => {
    const { out, code } = await witnessmark("explain", path, quantity);
    expect(code).toBe(0);
    expect(stray("explain", out.split("\n"))).toEqual([]);
  });

  test("in check, and in the list of what can be explained", async () => {
    const check = await witnessmark("check", path, "--choices");
    expect(check.code).toBe(0);
    expect(stray("check", check.out.split("\n"))).toEqual([]);
    expect(stray("explain", (await witnessmark("explain", path)).out.split("\n"))).toEqual([]);
  });
});

describe("faults of an inch file are told in inches", () => {
  const wheel = (rest: string) => `handwheels: [{ name: Slide, ${rest} }]`;
  const turns = Array.from({ length: 24 }, (_, turn) => turn);
  const readings = (travel: (turn: number) => number, more = "") =>
    wheel(`feed: { readings: { gauge: 0.001, turns: [${turns}], travel: [${turns.map(travel)}]${more} } }`);
  const worn = (turn: number) => Number((turn * 0.1 + 0.002 * Math.sin((turn / 24) * Math.PI)).toFixed(4));
  test.each([
    ["paper: { thickness: 0.1 }"],
    ["paper: { thickness: 0.025 }"],
    [wheel("feed: 5")],
    [wheel("feed: 0.1, dial: { shape: drum, diameter: 30, width: 3/8 }")],
    [wheel("feed: 0.1, dial: { shape: drum, diameter: 1.5, width: 3/8, lap: 4 }")],
    [wheel("feed: 0.1, dial: { shape: drum, diameter: 1.5, width: 0.01 }")],
    [wheel("feed: 0.1, dial: { shape: face, outside: 2, inside: 1.99 }")],
    [wheel("feed: 0.1, dial: { shape: bevel, diameter: 2, smallDiameter: 1, width: 0.3 }")],
    [wheel("feed: 0.1, dial: { shape: drum, diameter: 1.5, wrap: 6, width: 3/8 }")],
    [wheel("feed: 0.1, dial: { shape: drum, diameter: 1, width: 3/8, divisions: 0.0002, closure: even }")],
    [wheel("feed: { rack: { pitch: 20, teeth: 20 } }")],
    [wheel("travel: 1, feed: 0.1, distances: [2]")],
    [readings((turn) => (turn === 4 ? 0.44 : turn * 0.1))],
    [readings(worn)],
    [readings((turn) => turn * 0.1, `, return: [${turns.map((turn) => turn * 0.1 - 0.03)}]`)],
    [readings((turn) => turn * 0.1, `, return: [${turns.map((turn) => turn * 0.1 + 0.08)}]`)],
    [wheel("feed: { readings: { gauge: 0.05, turns: [0, 1, 2, 3], travel: [0, 0.1, 0.2, 0.3] } }")],
    ["scales: [{ name: Bed, length: 4, divisions: 0.005 }]"],
    ["angleScales: [{ name: Top, part: vice, radius: 1, step: 0.1 }]"],
    ["angleScales: [{ name: Top, part: vice, radius: 0.3, width: 0.35 }]"],
    ["tapers: [{ name: T, large: 1, small: 0.5, length: 1, included: 10 deg }]"],
    ["printers: { p: { across: 8 of 7.97 in } }\npaper: { printer: p }"],
    ["printers: { p: { across: 7.97 of 8 in, down: 10 of 10 in, diagonals: [20, 20.1] } }\npaper: { printer: p }"],
    ["drive: { motor: { speed: 1725 }, stages: [{ name: b, centres: 1, steps: [{ driver: 2, driven: 4 }] }] }"],
    ["drive: { motor: { speed: 1725 }, stages: [{ name: b, steps: [{ driver: 0.05, driven: 40 }] }] }"],
    [
      "drive: { motor: { speed: 1725 }, cover: { width: 1, height: 1 }, stages: [{ name: b, steps: [{ driver: 2, driven: 4 }] }] }",
    ],
  ])("%s", (text) => {
    const problems = problemsOf(`name: L\nunits: in\n${text}\n`);
    expect(problems.length).toBeGreaterThan(0);
    const said = problems.map(({ what, remedy }) => `${what}; ${remedy}`).join("\n");
    // Gauges are sold in both units.
    const apart = /most often 0.01 mm or 0.001 in/g;
    expect(said.replace(apart, "").replace(/if the gauge is metric.*/, "")).not.toMatch(/\bmm\b/);
  });
});

describe("sizes as given", () => {
  const findings = findingsOf(readFileSync(inch.path, "utf8"));
  const job = jobOf(inch.job);
  test("an eighth stays an eighth, a decimal a decimal, millimetres millimetres", () => {
    expect(textsOf(findings, "student")).toMatch(/ 1\/4 in 5\/8 in 1 1\/2 in /);
    const turns = textsOf(findings, "turns");
    const [own = ""] = /Your distances.*?(?= 0\.001 )/s.exec(turns) ?? [];
    for (const size of ["1/8", "0.3", "5 mm"]) expect(own).toContain(` ${size} `);
  });
  test("in a plan, and where a speed is explained", async () => {
    const plan = textsOf({ ...findings, ...(job && { job }) }, "plan");
    expect(plan).toContain("Drill 1/8 in, 1/2 in deep");
    expect(plan).toContain("Turn to 9/16 in, 1 1/4 in long");
    const { out } = await witnessmark("explain", inch.path, "cutting speed", "--of", "brass, 1/8 in, turning");
    expect(out).toContain("Speed for turning brass, 1/8 in");
  });
  test("what verify says is in inches", async () => {
    const path = file(readFileSync(inch.path, "utf8"));
    const { out } = await witnessmark("verify", path, "--handwheel", "Cross slide", "--measured", "4.731");
    expect(out).toMatch(/must measure 4\.731 in/);
    expect(out).not.toMatch(/\bmm\b/);
  });
});
