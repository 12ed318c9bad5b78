import { describe, expect, test } from "vitest";
import { burns } from "../../src/findings/chipFire.js";
import { readJob } from "../../src/job/read.js";
import { planOf } from "../../src/plan/plan.js";
import { findingsOf } from "../support/sheets.js";

const machine = (units: string, extra = "") =>
  findingsOf(`name: L
units: ${units}
drive:
  motor: { speed: 1425 }
  stages: [{ name: belt, steps: [{ driver: 50 mm, driven: 150 mm }, { driver: 100 mm, driven: 100 mm }, { driver: 150 mm, driven: 60 mm }] }]
handwheels:
  - { name: Cross slide, reads: diameter, feed: 2 mm, dial: { shape: drum, diameter: 40 mm, width: 10 mm } }
  - { name: Carriage, feed: 44 mm }
  - { name: Top slide, feed: 1.5 mm }
  - { name: Tailstock barrel, feed: 2.5 mm, travel: 40 mm }
work:
  cuttingSpeeds:
    - { material: titanium, speed: [25 m/min, 30 m/min] }
    - { material: titanium, speed: [25 m/min, 30 m/min], operation: parting }
    - { material: titanium, speed: [10 m/min, 20 m/min], operation: drilling }
    - { material: titanium, speed: [10 m/min, 20 m/min], operation: reaming }
    - { material: titanium, speed: [25 m/min, 30 m/min], operation: facing }
    - { material: titanium, speed: [25 m/min, 30 m/min], operation: boring }
${extra}`);
const perTurn: Readonly<Record<string, number>> = {
  "Cross slide": 2,
  Carriage: 44,
  "Top slide": 1.5,
  "Tailstock barrel": 2.5,
};

function plan(material: string, findings = machine("mm")) {
  const { job, problems } = readJob(`name: Try
material: ${material}
bar: { diameter: 16, out: 40 }
steps:
  - { do: face, depth: 0.5 }
  - { do: turn, from: 16, to: 14, length: 20, finish: 0.05, tolerance: 0.001 }
  - { do: taper, large: 14, small: 12, length: 5 }
  - { do: drill, diameter: 5, depth: 10 }
  - { do: bore, from: 5, to: 6, depth: 8 }
  - { do: ream, diameter: 6, depth: 8 }
  - { do: part, diameter: 14, length: 20, blade: 2 }
`);
  if (job === undefined) throw new Error(JSON.stringify(problems));
  return planOf(job, findings);
}
/** What stands against it, with what to do. */
const saidOf = (material: string, findings = machine("mm")) =>
  plan(material, findings).findings.map(({ what, remedy }) => `${what}; ${remedy}`);
const notesOf = (material: string) =>
  plan(material)
    .steps.map(({ notes }) => notes.join(" "))
    .join(" ");

describe.each(["magnesium", "magnesium alloy", "titanium", "titanium alloy", "zirconium"])(
  "%s, whose fine chips burn",
  (material) => {
    const { steps } = plan(material);
    const said = saidOf(material);

    test("no pass is taken twice, and none is thinner than the others", () => {
      for (const { passes, title } of steps) {
        expect(
          passes.map(({ kind }) => kind),
          title,
        ).not.toContain("spring");
        const depths = passes.map(({ depth }) => depth);
        // A tenth of a division apart, as the dial can be set.
        if (depths.length > 0) expect(Math.min(...depths), title).toBeGreaterThan(0.9 * Math.max(...depths));
      }
    });

    test("every cut under power says why, and not to halt", () => {
      for (const {
        notes,
        stage: { step },
      } of steps) {
        expect(notes.join(" ")).toMatch(/chips .*burn/);
        expect(notes.join(" ")).toMatch(step.do === "drill" ? /must not turn without cutting/ : /without a halt/);
      }
    });

    test("nothing says oil for steel, or to finish by hand: a file makes dust", () => {
      expect(notesOf(material)).not.toMatch(/oil for steel|soluble oil/);
      const fine = said.find((words) => words.includes("finer than this slide comes back"));
      expect(fine).toContain(`do not file or polish ${material}`);
      expect(said.join(" ")).not.toContain("finish by hand");
    });
  },
);

test("magnesium is turned at more than 0.25 mm a revolution (a supplier's data sheet no. 254), drilled at the coarsest in print, no faster than the hand keeps up, and says so", () => {
  const { steps } = plan("magnesium");
  const fed = steps.flatMap(({ feed, feedWheel = "", speed, stage: { step }, notes }) =>
    feed === undefined ? [] : [{ feed, feedWheel, rpm: speed?.rpm ?? Number.NaN, step, notes }],
  );
  expect(fed.map(({ step }) => step.do)).toEqual(["face", "turn", "taper", "drill", "bore", "part"]);
  for (const { feed, feedWheel, rpm, step, notes } of fed) {
    const perRevolution = (feed.turnsPerMinute * (perTurn[feedWheel] ?? 0)) / rpm;
    expect(perRevolution, step.do).toBeCloseTo(step.do === "drill" ? 0.004 * 25.4 : 0.25, 9);
    expect(feed.count, step.do).not.toBe("too fast by hand");
    expect(notes.join(" ")).toMatch(
      step.do === "drill" ? /fed at 0.102 mm .*US Navy/ : /0\.25 mm a revolution \(a magnesium supplier's data sheet\)/,
    );
  }
  expect(steps.find(({ stage }) => stage.step.do === "taper")?.speed).toMatchObject({ heldBy: "hand" });
});

test("an inch machine tells the least feed rounded up, never finer", () => {
  const words = plan("magnesium", machine("in"))
    .steps.map(({ notes }) => notes.join(" "))
    .join(" ");
  expect(words).toContain("Never feed magnesium more finely than 0.0099 in a revolution");
});

test("titanium: no feed was found in print, so none is counted, and the step says so", () => {
  const { steps } = plan("titanium alloy");
  for (const { stage, feed, notes } of steps.filter(({ stage }) => stage.step.do !== "drill")) {
    expect(feed, stage.step.do).toBeUndefined();
    expect(notes.join(" ")).toContain("No least feed for it was found in print");
  }
  expect(steps.every(({ speed, byHand }) => speed !== undefined || byHand)).toBe(true);
});

test("zirconium: no speed is known, and the plan says so", () =>
  expect(saidOf("zirconium").join(" ")).toContain("no cutting speed is known for zirconium"));

test("a machine that no hand can feed so coarsely does not run magnesium", () => {
  const fast = machine("mm").drive?.speeds[0]?.rpm ?? 0;
  expect(fast).toBeGreaterThan(400);
  const findings = machine("mm", "limits: { chuck: 3000 }");
  const fineScrew = {
    ...findings,
    handwheels: findings.handwheels.map((wheel) =>
      wheel.feed ? { ...wheel, feed: { ...wheel.feed, perTurn: 0.5 } } : wheel,
    ),
  };
  const { steps } = plan("magnesium", fineScrew);
  expect(steps[1]?.speed).toMatchObject({ heldBy: "hand" });
  expect(steps[1]?.speed?.speed).toBeUndefined();
  expect(saidOf("magnesium", fineScrew).join(" ")).toContain("the hand would feed magnesium too finely");
});

test("beryllium copper, too, is not filed or polished, and is kept wet", () => {
  expect(saidOf("BeCu").join(" ")).toContain("do not file or polish BeCu");
  expect(notesOf("BeCu")).toContain("Cutting fluid: cutting oil, plenty: it binds the dust.");
});

test("steel keeps its thin last cut, its spring pass, its oil, and may be finished by hand", () => {
  const { steps } = plan("mild steel");
  const [, turned] = steps;
  expect(turned?.passes.map(({ kind }) => kind).slice(-2)).toEqual(["finish", "spring"]);
  expect(turned?.passes.at(-2)?.depth).toBeCloseTo(0.05, 2);
  expect(steps.at(-1)?.notes.join(" ")).toContain("Cutting fluid: cutting oil or soluble oil.");
  expect(saidOf("mild steel").join(" ")).toContain("finish by hand");
  expect(burns("mild steel")).toBe(false);
});

test("brass is parted and reamed dry, with no word of oil", () => {
  expect(notesOf("brass")).toContain("Cutting fluid: dry.");
  expect(notesOf("brass")).not.toMatch(/\boil\b/);
});
