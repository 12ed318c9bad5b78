import { describe, expect, test } from "vitest";
import { readJob } from "../../src/job/read.js";
import { planOf } from "../../src/plan/plan.js";
import { demoFindings } from "../support/sheets.js";

/** What a plan was found to say wrongly in trials with real parts, each with the file that showed it. */

const demo = demoFindings();

function plan(steps: readonly string[], head = "bar: { diameter: 20, out: 60 }", material = "brass") {
  const text = `name: P\nmaterial: ${material}\n${head}\nsteps:\n${steps.map((step) => `  - { ${step} }`).join("\n")}\n`;
  const { job, problems } = readJob(text);
  if (job === undefined) throw new Error(JSON.stringify(problems));
  return planOf(job, demo);
}
const codes = (made: ReturnType<typeof plan>) => made.findings.map(({ kind, code }) => `${kind}: ${code}`);

describe("zeros", () => {
  test("before it is faced the end is touched as it is, and lengths count from where the finished face will be", () => {
    const { steps } = plan([
      "do: turn, to: 18, length: 20",
      "do: groove, at: 10, width: 2, to: 15, blade: 2",
      "do: face, depth: 0.5",
    ]);
    const lengths = steps.flatMap(({ zeros }) => zeros.filter(({ of }) => of === "end").map(({ at }) => at));
    expect(lengths).toEqual([-0.5, -0.5]);
    const stop = steps[0]?.places.find(({ what }) => what === "stop");
    expect(stop?.reading.travel).toBeCloseTo(20.5, 1);
  });

  test("a bore is touched at its mouth, though a drill left it narrower further in", () => {
    const zero = plan([
      "do: face, depth: 0.5",
      "do: centre drill",
      "do: drill, diameter: 12, depth: 14",
      "do: bore, to: 14, depth: 15, cut: 0.4",
    ])
      .steps.find(({ stage }) => stage.step.do === "bore")
      ?.zeros.find(({ of }) => of === "bore");
    expect(zero?.at).toBeCloseTo(12, 9);
  });

  test("a taper is touched behind an edge that was broken", () => {
    const { steps } = plan([
      "do: face, depth: 0.5",
      "do: turn, to: 18, length: 30",
      "do: chamfer, size: 0.3",
      "do: taper, large: 18, small: 16, length: 10",
    ]);
    const taper = steps.find(({ stage }) => stage.step.do === "taper");
    expect(taper?.zeros.find(({ of }) => of === "diameter")?.at).toBeCloseTo(18, 9);
    expect(taper?.passes.every(({ reading }) => reading?.back === false)).toBe(true);
  });
});

describe("holes", () => {
  test("a tap past a wider bore counts its turns from where it bites", () => {
    const { steps } = plan([
      "do: face, depth: 0.5",
      "do: centre drill",
      "do: drill, diameter: 3.3, depth: 31",
      "do: drill, diameter: 8, depth: 15",
      "do: tap, thread: M4, depth: 25",
    ]);
    const tap = steps.at(-1);
    // The cone of 118° ends 1.2 mm below the full 8 mm at a hole of 4 mm.
    const begins = 15 + (8 - 4) / 2 / Math.tan((59 / 180) * Math.PI);
    // Two threads of the tap's lead go beyond the full thread.
    expect(tap?.places[0]?.at).toBeCloseTo(25 - begins + 2 * 0.7, 6);
    expect(tap?.sizes[0]?.aim).toBeCloseTo(25 - begins, 6);
    expect(tap?.notes.join(" ")).toContain(`${((25 - begins) / 0.7 + 2).toFixed(2)} turns`);
  });

  test("a large drill goes in stages though a centre drill was there before it", () =>
    expect(
      plan(
        ["do: face, depth: 0.5", "do: centre drill", "do: drill, diameter: 15, depth: 20"],
        "bar: { diameter: 40, out: 50 }",
      )
        .steps.at(-1)
        ?.drills.map(({ diameter }) => diameter),
    ).toEqual([5, 10, 15]));
});

describe("judged", () => {
  test("a cut too deep is refused whatever is said of its last cut", () =>
    expect(codes(plan(["do: turn, to: 15, length: 20, cut: 5, finish: 0.01"]))).toEqual(
      expect.arrayContaining(["refused: too-deep", "take care: rubs"]),
    ));
  test("turned round at once, a bar through the spindle has no other end", () =>
    expect(codes(plan(["do: turn round, out: 30", "do: face, depth: 1"]))).toContain("refused: length-unknown"));
  test("nor can it be faced to a length", () =>
    expect(codes(plan(["do: face, length: 35"]))).toEqual(["refused: length-unknown"]));
  test("a part that is parted off and held anew the same way round counts from its own face", () => {
    const { findings, steps } = plan(
      [
        "do: face, depth: 0.5",
        "do: part, length: 36, blade: 2",
        "do: hold, out: 20",
        "do: face, length: 35",
        "do: turn, to: 18, length: 9",
      ],
      "bar: { diameter: 20, out: 60, length: 100 }",
    );
    expect(findings.filter(({ kind }) => kind === "refused")).toEqual([]);
    expect(steps.at(-1)?.stage.after.outside.at(-1)?.to).toBeCloseTo(35, 9);
    expect(steps.at(-1)?.places.at(-1)?.at).toBe(9);
  });
  test("a knurling wheel wider than the knurl", () =>
    expect(codes(plan(["do: knurl, length: 5, pitch: 0.8, pinched: true, width: 6"]))).toContain(
      "refused: wider-than-the-knurl",
    ));
  test("a grip of a quarter of the diameter is none", () =>
    expect(codes(plan(["do: face, depth: 0.5"], "bar: { diameter: 20, out: 30, length: 34 }"))).toContain(
      "refused: no-grip",
    ));
});

test("a centre drill is fed as a drill of its tip, at the speed of its mouth", () => {
  const [centred, drilled] = plan(["do: centre drill, diameter: 2", "do: drill, diameter: 2, depth: 6"]).steps;
  expect(centred?.published?.from).toBeGreaterThan(0);
  expect(centred?.published).toEqual(drilled?.published);
  expect(centred?.speed?.diameter).toBeGreaterThan(2);
});

describe("parts alike", () => {
  const steps = [
    "do: face, depth: 0.5",
    "do: turn, to: 18, length: 30",
    "do: groove, at: 10, width: 2, to: 15, blade: 2",
    "do: turn, to: 17, length: 8",
  ];
  const head = (more: string) => `bar: { diameter: 20, out: 60 }\nparts: 4\n${more}`;
  const alike = (more: string, which: number) => plan(steps, head(more)).steps[which]?.sizes[0]?.alike ?? Number.NaN;

  test("tools that are changed for every part add their touches", () => {
    const kept = plan(steps.slice(0, 2), head("")).steps[1]?.sizes[0]?.alike ?? Number.NaN;
    expect(alike("", 1)).toBeCloseTo(kept + 4 * 0.03, 9);
  });
  test("one tool that stays keeps its zero", () =>
    expect(plan(steps.slice(0, 2), head("")).steps[1]?.anew).toEqual({ across: false, along: true }));
  test("blanks against a stop keep their length zero as well", () =>
    expect(
      plan(steps.slice(0, 2), "bar: { diameter: 20, out: 60, length: 90 }\nparts: 4\nspindleStop: true").steps[1]?.anew,
    ).toEqual({ across: false, along: false }));
});

test("where fine chips burn the hand's count never feeds below the least in print", () => {
  const { steps } = plan(
    ["do: face, depth: 0.5", "do: turn, to: 17, length: 20", "do: taper, large: 17, small: 15, length: 8"],
    "bar: { diameter: 20, out: 40 }",
    "magnesium",
  );
  for (const { feed, feedWheel, speed, published } of steps) {
    if (feed === undefined || speed?.rpm === undefined || published === undefined) continue;
    const perTurn = demo.handwheels.find(({ handwheel }) => handwheel.name === feedWheel)?.feed?.perTurn ?? Number.NaN;
    const fed = (turnsASecond(feed.count) * 60 * perTurn) / speed.rpm;
    expect(fed, `${feedWheel}: ${feed.count}`).toBeGreaterThanOrEqual(published.from - 1e-9);
  }
});

/** What a count means, a count being a second. */
function turnsASecond(count: string): number {
  const [, turns, counts] = /^(\d) turns to a count of (\d)$/.exec(count) ?? [];
  if (turns !== undefined) return Number(turns) / Number(counts);
  if (count === "1 turn a count") return 1;
  if (count === "2 turns a count") return 2;
  const [, a] = /^count (\d+) a turn$/.exec(count) ?? [];
  if (a !== undefined) return 1 / Number(a);
  const [, quarter] = /^count (\d+) a quarter turn$/.exec(count) ?? [];
  if (quarter !== undefined) return 1 / (4 * Number(quarter));
  throw new Error(`what is "${count}"?`);
}
