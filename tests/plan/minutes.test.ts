import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { feedPerRevolution } from "../../src/cutting/feeds.js";
import { beltChanges } from "../../src/plan/beltChanges.js";
import { compromises, positionOf } from "../../src/plan/belts.js";
import { cuttingMinutes, HANDLING, handlingMinutes, toolChanges } from "../../src/plan/minutes.js";
import { planOf } from "../../src/plan/plan.js";
import { beforeTheFirstChip } from "../../src/plan/start.js";
import { jobOf, lathe } from "../support/job.js";
import { textsOf } from "../support/sheets.js";

const planned = (
  steps: readonly string[],
  parts = 1,
  material = "mild steel",
  head = "bar: { diameter: 16, out: 40 }",
) => planOf(jobOf(steps, `${head}\nparts: ${parts}`, material), lathe());

describe("a small job, reckoned by hand", () => {
  const steps = ["do: turn, to: 14, length: 30", "do: drill, diameter: 3, depth: 20", "do: part, length: 28, blade: 2"];
  const plan = planned(steps, 10);

  test("stands on these speeds, feeds and cuts", () => {
    expect(plan.steps.map(({ speed }) => speed?.rpm)).toEqual([475, 1425, 142.5]);
    expect(plan.steps.map(({ published }) => (published?.from ?? 0) / 25.4)).toEqual([
      expect.closeTo(0.003),
      expect.closeTo(0.001),
      expect.closeTo(0.002),
    ]);
    expect(plan.steps.map(({ passes }) => passes.length)).toEqual([4, 0, 0]);
  });

  test("under the tool: length / (feed × rpm), as often as it is gone over", () => {
    // Four passes of 30 mm at 475 × 0.0762 mm a minute.
    expect(cuttingMinutes(plan.steps[0] as never)).toBeCloseTo((4 * 30) / (475 * 0.0762), 9);
    // Half as long again, since a drill stops to clear.
    expect(cuttingMinutes(plan.steps[1] as never)).toBeCloseTo((1.5 * 20) / (1425 * 0.0254), 9);
    // From 14 mm to the middle.
    expect(cuttingMinutes(plan.steps[2] as never)).toBeCloseTo(7 / (142.5 * 0.0508), 9);
    expect(plan.minutes.part.cutting).toBeCloseTo(3.3153 + 0.8288 + 0.967, 3);
  });

  test("handling: 0.4 a pass and 1 to measure, 1 for the drill, 0.4 for the blade", () => {
    expect(plan.steps.map(handlingMinutes)).toEqual([expect.closeTo(2.6), 1, 0.4]);
    expect(plan.minutes.part.handling).toBeCloseTo(4, 9);
  });

  test("part by part: the belt goes round with every part, and so do knife and blade", () => {
    const { belts, beltChanges, tools, holding, cutting, handling, batch, uncounted } = plan.minutes.part;
    // Two changes from first to last, and back to the first for all but the last part.
    expect(beltChanges).toBe(2 * 10 + 9);
    expect(belts).toBe(29 * 3);
    expect(tools).toBe(2 * 10 * 3);
    expect(holding).toBe(10 * 2);
    expect(uncounted).toBe(0);
    expect(batch).toBeCloseTo((cutting + handling) * 10 + 87 + 60 + 20, 9);
    expect(batch).toBeCloseTo(258.11, 1);
  });

  test("by operation: belts and tools once, every part held at every step", () => {
    const { belts, beltChanges, tools, holding, cutting, handling, batch } = plan.minutes.operation;
    expect({ belts, beltChanges, tools, holding }).toEqual({ belts: 6, beltChanges: 2, tools: 6, holding: 3 * 10 * 2 });
    expect([cutting, handling]).toEqual([plan.minutes.part.cutting, plan.minutes.part.handling]);
    expect(batch).toBeCloseTo((cutting + handling) * 10 + 6 + 6 + 60, 9);
  });

  test("one part takes as long either way, but for its holding", () => {
    const { part, operation } = planned(steps, 1).minutes;
    expect(operation.batch - part.batch).toBeCloseTo(2 * HANDLING.part, 9);
  });
});

describe("what is counted", () => {
  test("a tap: the drill's chuck, and a tenth of a minute a turn", () => {
    const [, , tap] = planned([
      "do: centre drill",
      "do: drill, diameter: 5, depth: 20",
      "do: tap, thread: M6, depth: 12",
    ]).steps;
    expect(handlingMinutes(tap as never)).toBeCloseTo(1 + 12 * 0.1, 9);
    expect(cuttingMinutes(tap as never)).toBe(0);
  });

  test("one drill after the other: each is put in, and each drills", () => {
    const [, one] = planned(["do: centre drill", "do: drill, diameter: 8, depth: 20"]).steps;
    const [, several] = planned(["do: centre drill", "do: drill, diameter: 10, depth: 20"]).steps;
    expect(one?.drills).toHaveLength(1);
    const count = several?.drills.length ?? 0;
    expect(count).toBeGreaterThan(1);
    expect(handlingMinutes(several as never)).toBe(count);
    const rpm = several?.speed?.rpm ?? Number.NaN;
    const each = several?.drills.map(({ published }) => (1.5 * 20) / (rpm * (published?.from ?? Number.NaN))) ?? [];
    expect(cuttingMinutes(several as never)).toBeCloseTo(
      each.reduce((sum, one) => sum + one, 0),
      9,
    );
  });

  test("each of several drills is fed by its own figure in print, to a tenth, and the plan names both", () => {
    const findings = lathe();
    const job = jobOf(["do: centre drill", "do: drill, diameter: 11, depth: 20"], undefined, "mild steel");
    const [, drilled] = planOf(job, findings).steps;
    const perTurn = findings.handwheels.find(({ handwheel }) => handwheel.name === drilled?.feedWheel)?.feed?.perTurn;
    expect(drilled?.drills.length).toBeGreaterThan(1);
    for (const { diameter, feed } of drilled?.drills ?? []) {
      const { from, to } = feedPerRevolution("mild steel", "drilling", diameter) ?? { from: 0, to: 0 };
      const counting = feed?.counting;
      if (typeof counting !== "object" || counting.of !== "turn") throw new Error("is no count of turns");
      const fed = ((counting.parts / counting.counts) * 60 * (perTurn ?? 0)) / (drilled?.speed?.rpm ?? 0);
      expect(fed).toBeGreaterThan(0.9 * from);
      expect(fed).toBeLessThan(to);
    }
    const words = textsOf({ ...findings, job }, "plan").replace(/\s+/g, " ");
    for (const { name, feed } of drilled?.drills ?? []) expect(words).toContain(`${name}: ${feed?.count}`);
  });

  test("a knife that stays in the post is set once for the whole batch", () => {
    const { steps } = planned([
      "do: turn, to: 14, length: 30",
      "do: turn, to: 12, length: 20",
      "do: drill, diameter: 3, depth: 5",
    ]);
    expect(toolChanges(steps, 10)).toBe(1);
  });

  test("centre drill and countersink go into the tailstock: the knife stays in the post", () => {
    const { steps } = planned([
      "do: turn, to: 14, length: 30",
      "do: centre drill",
      "do: drill, diameter: 6, depth: 9",
      "do: chamfer, size: 0.5, side: bore",
      "do: turn, to: 12, length: 20",
    ]);
    expect(toolChanges(steps, 10)).toBe(1);
    const seenTo = (...steps: string[]) => {
      const job = jobOf(steps);
      return beforeTheFirstChip(job, planOf(job, lathe()).steps, lathe()).join(" ");
    };
    expect(seenTo("do: centre drill", "do: drill, diameter: 6, depth: 9")).not.toContain("centre height");
    expect(seenTo("do: centre drill", "do: face, depth: 0.5")).toContain("centre height");
  });

  test("a chamfer outside is the post's", () =>
    expect(toolChanges(planned(["do: turn, to: 14, length: 30", "do: chamfer, size: 0.5"]).steps)).toBe(2));

  test("a knife that comes back after the blade is set again, and stays for the next part", () => {
    const { steps } = planned([
      "do: turn, to: 14, length: 30",
      "do: groove, at: 10, width: 2, to: 12, blade: 2",
      "do: turn, to: 11, length: 20",
    ]);
    expect(steps.map(({ tool }) => tool)).toEqual(["knife tool", "blade 2 mm wide", "knife tool"]);
    expect(toolChanges(steps)).toBe(3);
    expect(toolChanges(steps, 10)).toBe(3 + 9 * 2);
  });

  test("turned round: the part is held once more, under no tool", () => {
    const { steps, minutes } = planned([
      "do: part, length: 25, blade: 2",
      "do: turn round, out: 10",
      "do: face, length: 24.5",
    ]);
    // Holding each end once is all that it is.
    expect(handlingMinutes(steps[1] as never)).toBe(0);
    expect(cuttingMinutes(steps[1] as never)).toBe(0);
    expect(minutes.operation.holding).toBe(2 * HANDLING.part);
  });

  test("a step without a feed in print is left out, and counted", () => {
    const { minutes } = planned(["do: turn, to: 14, length: 30"], 1, "titanium alloy");
    expect(minutes.part.uncounted).toBe(1);
    expect(minutes.part.cutting).toBe(0);
  });
});

describe("an edge is broken at the belt that lies there", () => {
  const speeds = (steps: readonly string[], material?: string) =>
    planned(steps, 1, material).steps.map((one) => [one.speed?.rpm, one.beltOf]);
  const KNIFE = "do: turn, to: 14, length: 30";
  const CHAMFER = "do: chamfer, size: 0.5";

  test("of the step before it or after it, whichever saves a change and is faster, and no faster than it bears", () => {
    // By itself an edge of 4 mm bears 1425 rpm.
    expect(speeds([KNIFE, "do: shoulder, to: 4, length: 10", CHAMFER]).at(-1)).toEqual([475, 2]);
    const edgeFirst = [CHAMFER, "do: groove, at: 8, width: 2, to: 3, blade: 2"];
    const thin = "bar: { diameter: 4, out: 20 }";
    expect(planned(edgeFirst.slice(0, 1), 1, "mild steel", thin).steps[0]?.speed?.rpm).toBe(1425);
    const first = planned(edgeFirst, 1, "mild steel", thin);
    expect(first.steps.map(({ speed, beltOf }) => [speed?.rpm, beltOf])).toEqual([
      [475, 2],
      [475, undefined],
    ]);
    expect(first.beltChanges).toBe(0);
    const steps = [KNIFE, "do: shoulder, to: 4, length: 10", CHAMFER];
    expect(speeds(steps, "magnesium").every(([, kept]) => kept === undefined)).toBe(true);
  });

  test("not where that saves nothing", () =>
    expect(speeds([KNIFE, CHAMFER, "do: drill, diameter: 3, depth: 5"]).map(([, kept]) => kept)).toEqual([
      undefined,
      undefined,
      undefined,
    ]));
});

describe("slower, to save going under the cover", () => {
  test("is offered where it loses less than the belt changes take", () => {
    // 3 mm at 475 instead of 1425 rpm: (3 × 1.5) / 0.0254 × (1/475 − 1/1425) = 0.25 minutes, for two changes of 3.
    const { compromises, beltChanges } = planned([
      "do: turn, to: 14, length: 30",
      "do: drill, diameter: 3, depth: 3",
      "do: face, depth: 0.5",
    ]);
    expect(beltChanges).toBe(2);
    expect(compromises).toHaveLength(1);
    expect(compromises[0]).toMatchObject({ rpm: 475, saved: 2 });
    expect(compromises[0]?.more).toBeCloseTo(0.2486, 3);
    expect(compromises[0]?.steps.map(({ stage }) => stage.step.do)).toEqual(["drill"]);
  });

  test("is not offered where it loses more: 45 mm deep loses 3.7 minutes, for one change", () => {
    expect(planned(["do: turn, to: 14, length: 30", "do: drill, diameter: 3, depth: 45"]).compromises).toEqual([]);
    // 36 mm loses 2.98.
    expect(planned(["do: turn, to: 14, length: 30", "do: drill, diameter: 3, depth: 36"]).compromises).toHaveLength(1);
  });

  test("never where fine chips burn", () => {
    const steps = planned(["do: turn, to: 14, length: 30", "do: drill, diameter: 3, depth: 3"]).steps;
    expect(compromises(steps, { material: "mild steel" }, lathe().machine)).toHaveLength(1);
    expect(compromises(steps, { material: "magnesium" }, lathe().machine)).toEqual([]);
  });

  test("never faster, never at a loss, and as told: any job", () => {
    let offered = 0;
    const step = fc.oneof(
      fc
        .tuple(fc.integer({ min: 3, max: 15 }), fc.integer({ min: 2, max: 35 }))
        .map(([to, length]) => `do: turn, to: ${to}, length: ${length}`),
      fc
        .tuple(fc.integer({ min: 2, max: 9 }), fc.integer({ min: 2, max: 40 }))
        .map(([size, depth]) => `do: drill, diameter: ${size}, depth: ${depth}`),
      fc.constant("do: part, length: 30, blade: 2"),
    );
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 2, maxLength: 6 }),
        fc.constantFrom("mild steel", "brass", "aluminium"),
        (steps, material) => {
          const plan = planned(steps, 1, material);
          const all = plan.steps;
          for (const { steps: slowed, position, rpm, more, saved } of plan.compromises) {
            offered++;
            const lost = slowed.map(
              (one) => (cuttingMinutes(one, rpm) ?? Number.NaN) - (cuttingMinutes(one) ?? Number.NaN),
            );
            for (const one of slowed) expect(rpm).toBeLessThan(one.speed?.rpm ?? 0);
            expect(more).toBeCloseTo(
              lost.reduce((sum, minutes) => sum + minutes, 0),
              9,
            );
            const positions = all.map((one) => (slowed.includes(one) ? position : positionOf(one)));
            const left = beltChanges(positions);
            expect(saved).toBe(plan.beltChanges - left);
            expect(saved).toBeGreaterThan(0);
            expect(more).toBeLessThanOrEqual(saved * HANDLING.belt);
          }
        },
      ),
      { numRuns: 150 },
    );
    expect(offered).toBeGreaterThan(10);
  });
});
