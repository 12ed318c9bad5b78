import { describe, expect, test } from "vitest";
import { remarks } from "../../src/findings/remarks.js";
import { readJob } from "../../src/job/read.js";
import { readMachine } from "../../src/machine/read.js";
import { planOf } from "../../src/plan/plan.js";
import { findingsOf, textsOf } from "../support/sheets.js";

/** A cross slide that reads diameter, read at `turns`. */
const slide = (turns: readonly number[], travel: (turn: number) => number, more = "", wheel = "") =>
  findingsOf(
    `name: L\nhandwheels:\n  - name: Cross slide\n    reads: diameter\n    travel: 60\n    feed: { nominal: 2 mm, readings: { gauge: 0.01, turns: [${turns}], travel: [${turns.map((turn) => travel(turn).toFixed(2))}]${more} } }\n    dial: { shape: drum, diameter: 38, width: 9, closure: even, divisions: 0.05 mm }\n${wheel}`,
  );
const upTo = (last: number) => Array.from({ length: last + 1 }, (_, turn) => turn);

describe("what the dial shows on diameter is told on diameter", () => {
  test("to the student too: a worn slide is out by twice as much on the part", () => {
    const worn = slide(upTo(24), (turn) => 2 * turn + 0.004 * Math.max(0, turn - 12) ** 1.5);
    const said = /can be out by ([\d.]+) mm/.exec(textsOf(worn, "student"))?.[1];
    const most = worn.handwheels[0]?.feed?.measured?.uneven?.most?.at(-1) ?? Number.NaN;
    expect(Number(said)).toBeGreaterThan(1.8 * most);
  });

  test("on the turns sheet the doubt beside the diameter is the diameter's", () => {
    const words = textsOf(
      slide(upTo(28), (turn) => 1.9945 * turn),
      "turns",
    );
    expect(words).toMatch(/whole turns travel mm (?:diameter|dial 0 is) mm maker's out by mm ± on diameter mm 1 /);
    const forced = slide([0, 1, 2, 3, 4, 5], (turn) => 1.9945 * turn + (turn % 2 ? 0.03 : -0.03));
    expect(textsOf(forced, "student")).toMatch(
      /The dial can be out by [\d.]+ mm over [\d.]+ mm on the dial\. Measure the part\./,
    );
  });
});

test("nothing is told far beyond what was measured: five turns of a slide of thirty", () => {
  const short = slide(upTo(5), (turn) => 1.9945 * turn);
  const words = textsOf(short, "turns");
  expect(words).toMatch(/Measured over 10 mm alone of 60 mm/);
  const [, rows = ""] = /Whole turns(.*)/.exec(words) ?? [];
  expect(rows).toMatch(/ 10 19\.9[\d. ]+ 11 21\.9/);
  expect(rows).toMatch(/ 11 21\.9[\d. ]+ – – 12 /);
  expect(
    textsOf(
      slide(upTo(28), (turn) => 1.9945 * turn),
      "turns",
    ),
  ).not.toContain(" – – ");
});

describe("a miscounted turn", () => {
  const miscounted = slide(upTo(24), (turn) => 2 * (turn > 9 ? turn - 1 : turn));
  const { job } = readJob(
    "name: P\nmaterial: brass\nbar: { diameter: 20, out: 30 }\nsteps: [{ do: turn, from: 20, to: 18, length: 10 }]\n",
  );
  test("is told in the plan, which does not take the wheel for one that reads travel", () => {
    if (job === undefined) throw new Error("no job");
    const plan = planOf(job, miscounted);
    expect(plan.steps.flatMap(({ notes }) => notes).join(" ")).not.toContain("halved");
    expect(plan.findings.map(({ what }) => what).join(" ")).toContain(
      "Cross slide: A turn was miscounted in the readings",
    );
  });

  test("on the way back leaves no lost motion to go by", () => {
    const back = upTo(24).map((turn) => (2 * (turn > 9 ? turn - 1 : turn) + 0.1).toFixed(2));
    const findings = slide(upTo(24), (turn) => 2 * turn, `, return: [${back}]`);
    expect(findings.handwheels[0]?.feed).toBeDefined();
    expect(findings.handwheels[0]?.feed?.lostMotion).toBeUndefined();
    expect(textsOf(findings, "turns")).not.toMatch(/lost motion \d/);
  });
});

describe("limits and speeds", () => {
  const drive = (tachometer: string, chuck: number) =>
    findingsOf(
      `name: D\nlimits: { chuck: ${chuck} }\ndrive:\n  motor: { speed: 1425 rpm, mains: 50 Hz }\n  stages: [{ name: belt, steps: [{ label: A, driver: 50, driven: 100 }, { label: B, driver: 75, driven: 75 }] }]\n  tachometer: [${tachometer}]\n`,
    );
  test("one reading with much slip is no rule for the other positions: they are held against the unloaded motor", () => {
    const highest = (rpm: number) =>
      drive(`{ position: A, speed: ${rpm} }`, 1600).drive?.speeds.find(({ position }) => position.name === "B")
        ?.highestRpm;
    expect(highest(618)).toBeCloseTo(1500, 0);
    expect(highest(695)).toBeCloseTo(1425 * (695 / 712.5), 0);
  });

  test.each([
    [18_000, true],
    [4000, false],
  ])("a chuck of %i rpm is questioned: %s", (chuck, questioned) => {
    const codes = remarks(drive("", chuck)).map(({ code }) => code);
    expect(codes.includes("unlikely-limit")).toBe(questioned);
  });
});

describe("slips of the pen", () => {
  const codes = (text: string) =>
    readMachine(`name: S\n${text}\n`).problems.map(({ code, remedy }) => `${code}: ${remedy}`);
  test("the printer's two sides changed about", () => {
    expect(codes("printers: { shop: { across: 250.2 of 250, down: 199.6 of 200 } }").join()).toContain("sides-swapped");
    expect(codes("printers: { shop: { across: 199.6 of 200, down: 250.2 of 250 } }").join()).not.toContain(
      "sides-swapped",
    );
  });
  test.each([
    ["0.0625", "pitch: 16 DP"],
    ["3.14", "write module: 1, or pitch: 3.14 mm"],
    ["1", ""],
    ["1.5", ""],
    ["0.5", ""],
  ])("a module of %s", (module, remedy) => {
    const told = codes(`handwheels: [{ name: Carriage, feed: { rack: { module: ${module}, teeth: 14 } } }]`).filter(
      (line) => line.startsWith("unlikely-module"),
    );
    if (remedy === "") expect(told).toEqual([]);
    else expect(told.join()).toContain(remedy);
  });
});

describe("what is questioned on the terminal reaches the sheets", () => {
  const wheel = (rest: string) =>
    findingsOf(
      `name: Q\nhandwheels: [{ name: Cross slide, travel: 60, ${rest}, dial: { shape: drum, diameter: 38, width: 9, closure: even, divisions: 0.05 mm } }]\n`,
    );
  const swapped = wheel("feed: { perTurn: 0.5, nominal: 2 }");
  const far = wheel(
    `feed: { readings: { gauge: 0.01, turns: [${upTo(8)}], travel: [${upTo(8).map((turn) => (turn * 50.8).toFixed(2))}] } }`,
  );
  test.each(["turns", "dial"])("a feed far from nominal, and readings beyond the travel, on %s", (sheet) => {
    expect(textsOf(swapped, sheet).replace(/\s+/g, " ")).toContain("its feed is 0.25 times what the maker meant");
    expect(textsOf(far, sheet).replace(/\s+/g, " ")).toContain("its readings reach farther than it travels");
  });
  test("the student asks before trusting such a dial", () => {
    for (const findings of [swapped, far])
      expect(textsOf(findings, "student")).toContain("Nobody has proved this dial. Ask before you trust it.");
  });

  test("a plate for other mains: the limits are held against the field that these drive, and the card says so", () => {
    const drill = (hertz: number) =>
      findingsOf(
        `name: M\nlimits: { chuck: 850 rpm }\ndrive:\n  motor: { speed: 1425 rpm, mains: ${hertz} Hz }\n  stages: [{ name: belt, steps: [{ label: A, driver: 50, driven: 100 }, { label: B, driver: 40, driven: 120 }] }]\n`,
      );
    const highest = (hertz: number) =>
      drill(hertz).drive?.speeds.find(({ position }) => position.name === "A")?.highestRpm;
    expect(highest(60)).toBeCloseTo(900, 6);
    expect(highest(50)).toBeCloseTo(750, 6);
    expect(textsOf(drill(60), "belt-card")).toContain("No induction motor runs at 1425 rpm on 60 Hz");
    expect(textsOf(drill(50), "belt-card")).not.toContain("No induction motor");
  });

  test.each([
    ["one slip of the pen", (turn: number) => (turn === 5 ? 1.21 : 2 * turn + 0.1), /return readings|not known/],
    ["another slope", (turn: number) => 2.1 * turn + 0.1, /not known/],
  ])("a lost motion that %s makes is told nowhere", (_, back, words) => {
    const findings = slide(
      upTo(10),
      (turn) => 2 * turn,
      `, return: [${upTo(10).map((turn) => back(turn).toFixed(2))}]`,
    );
    expect(findings.handwheels[0]?.feed?.lostMotion).toBeUndefined();
    expect(textsOf(findings, "turns")).toMatch(words);
    expect(textsOf(findings, "turns")).not.toMatch(/lost motion −?\d/);
  });
});

test("a dial that was forced though it does not fit carries what it reads wrong where the eye is", () => {
  const legend = (divisions: string) =>
    textsOf(
      findingsOf(
        `name: F\nhandwheels: [{ name: Top slide, travel: 60, feed: 1.5875 mm, dial: { shape: drum, diameter: 60, width: 14, closure: even, divisions: ${divisions} } }]\n`,
      ),
      "dial",
    );
  // 79 divisions of 0.02 read 1.58 for each 1.5875 gone: 0.28 over 60 mm.
  expect(legend("0.02 mm")).toContain("reads 0.2835 mm too little over 60 mm ·");
  expect(legend("0.025 mm")).not.toContain("too little over 60 mm ·");
});

test("readings a little faster than the plate are no slip below nothing where the drive is told", () => {
  const card = (rpm: number) =>
    textsOf(
      findingsOf(
        `name: S\ndrive:\n  motor: { speed: 1425 rpm }\n  stages: [{ name: belt, steps: [{ label: A, driver: 50, driven: 100 }, { label: B, driver: 75, driven: 75 }] }]\n  tachometer: [{ position: A, speed: ${rpm} }]\n`,
      ),
      "speed-tree",
    );
  expect(card(752)).toContain("5.5 % faster than the motor's plate and the pulleys give");
  expect(card(752)).not.toContain("mean slip −");
  expect(card(690)).toContain("mean slip 3.2 %");
});
