import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Job } from "../../src/job/job.js";
import { diameterAt } from "../../src/part/outline.js";
import { endsOf, metalOf, type Workpiece } from "../../src/part/workpiece.js";
import { beltChanges } from "../../src/plan/beltChanges.js";
import { positionOf } from "../../src/plan/belts.js";
import { stepFindings } from "../../src/plan/checks/steps.js";
import { workingOrder } from "../../src/plan/order.js";
import { planOf } from "../../src/plan/plan.js";
import { stagesOf } from "../../src/plan/stage.js";
import { jobOf, lathe } from "../support/job.js";

const findings = lathe();

/** Places in the file, in the order of work, when each step runs at the position given beside it ("" is by hand). */
function orderOf(steps: readonly (readonly [string, string])[], head?: string): readonly number[] {
  const job = jobOf(
    steps.map(([step]) => step),
    head,
  );
  return workingOrder(job, findings, (index) => steps[index]?.[1] || undefined);
}

describe("steps that share a position come together", () => {
  const turn = "do: turn, to: 14, length: 20";
  const centre = "do: centre drill";
  const drill = "do: drill, diameter: 5, depth: 18";

  test("turning and drilling by turns become turning, then drilling", () =>
    expect(
      orderOf([
        [turn, "A"],
        [centre, "A"],
        ["do: drill, diameter: 4, depth: 18", "B"],
        ["do: turn, to: 10, length: 8", "A"],
        ["do: chamfer, size: 0.5, side: bore", "B"],
      ]),
    ).toEqual([0, 1, 3, 2, 4]));

  test("a tap by hand between them does not count as a change", () => {
    const steps = [
      [turn, "A"],
      ["do: drill, diameter: 3.3, depth: 18", "B"],
      ["do: tap, thread: M4, depth: 9", ""],
      ["do: groove, at: 10, width: 2, to: 12, blade: 2", "A"],
    ] as const;
    expect(orderOf(steps)).toEqual([0, 3, 1, 2]);
  });

  test.each([
    [
      "a bore before its drill",
      [
        [turn, "A"],
        [drill, "B"],
        ["do: bore, to: 8, depth: 15", "A"],
      ],
    ],
    [
      "a finer turn before the one that makes room",
      [
        [turn, "A"],
        ["do: turn, to: 12, length: 20", "B"],
        ["do: turn, to: 10, length: 20", "A"],
      ],
    ],
    [
      "a chamfer before the shoulder whose edge it breaks",
      [
        ["do: turn, to: 15, length: 25", "A"],
        [turn, "B"],
        ["do: chamfer, at: 20, size: 0.4", "A"],
      ],
    ],
    [
      "a step over the face that makes its zero",
      [
        [turn, "A"],
        ["do: face, depth: 0.5", "B"],
        ["do: turn, to: 12, length: 10", "A"],
      ],
    ],
    [
      "a diameter with a tolerance over the drill that may push the work askew",
      [
        [turn, "A"],
        ["do: drill, diameter: 3, depth: 10", "B"],
        ["do: turn, to: 12 h9, length: 10", "A"],
      ],
    ],
    [
      "a finer turn over the knurl that presses the work askew",
      [
        [turn, "A"],
        ["do: knurl, at: 12, length: 5, pitch: 0.8, pinched: true", "B"],
        ["do: turn, to: 10, length: 8", "A"],
      ],
    ],
    [
      "parting over what comes before it",
      [
        [turn, "A"],
        ["do: turn, to: 12, length: 10", "B"],
        ["do: part, length: 25, blade: 2", "A"],
      ],
    ],
    [
      "a step over turning the work round",
      [
        ["do: turn, to: 15, length: 30", "A"],
        ["do: part, length: 25, blade: 2", "B"],
        ["do: turn round, out: 10", ""],
        ["do: turn, to: 12, length: 5", "A"],
      ],
    ],
  ] as const)("never %s", (_, steps) => expect(orderOf(steps)).toEqual(steps.map((_, index) => index)));

  test("never a die before its rod: the rod may wait, and the die waits with it", () => {
    const order = orderOf([
      [turn, "A"],
      ["do: drill, diameter: 2, depth: 10", "B"],
      ["do: turn, to: 5.9, length: 12", "A"],
      ["do: die, thread: M6, length: 8", ""],
    ]);
    expect(order).toEqual([0, 2, 1, 3]);
    expect(order.indexOf(2)).toBeLessThan(order.indexOf(3));
  });

  test("a job longer than anyone sorts keeps its order", () => {
    const job = jobOf(
      Array.from({ length: 41 }, (_, index) => `do: turn, to: ${15.9 - index / 10}, length: ${35 - index / 2}`),
    );
    expect(workingOrder(job, findings, (index) => (index % 2 === 0 ? "A" : "B"))).toEqual(
      job.steps.map((_, index) => index),
    );
  });
});

describe("any job", () => {
  const size = (min: number, max: number) => fc.integer({ min: 10 * min, max: 10 * max }).map((tenths) => tenths / 10);
  const step = fc.oneof(
    fc.tuple(size(5, 15), size(3, 36)).map(([to, length]) => `do: turn, to: ${to}, length: ${length}`),
    fc.tuple(size(5, 15), size(3, 30)).map(([to, at]) => `do: groove, at: ${at}, width: 2, to: ${to}, blade: 2`),
    fc.tuple(size(1, 10), size(3, 30)).map(([diameter, depth]) => `do: drill, diameter: ${diameter}, depth: ${depth}`),
    fc.tuple(size(4, 12), size(3, 25)).map(([to, depth]) => `do: bore, to: ${to}, depth: ${depth}`),
    fc
      .tuple(size(0, 20), fc.constantFrom("outside", "bore"))
      .map(([at, side]) => `do: chamfer, at: ${at}, size: 0.5, side: ${side}`),
    fc
      .tuple(size(10, 15), size(0, 10))
      .map(([large, at]) => `do: taper, large: ${large}, small: ${large - 2}, at: ${at}, length: 5`),
    fc.constantFrom(
      "do: die, thread: M6, length: 8",
      "do: tap, thread: M6, depth: 8",
      "do: ream, diameter: 6, depth: 10",
      "do: centre drill",
      "do: face, depth: 0.5",
      "do: turn, to: 5.9, length: 10",
      "do: drill, diameter: 5, depth: 15",
    ),
  );
  const jobs = fc
    .tuple(
      fc.array(fc.tuple(step, fc.constantFrom("A", "B", "C")), { minLength: 3, maxLength: 9 }),
      fc.boolean(),
      fc.constantFrom("A", "B"),
    )
    .map(([steps, parts, last]) =>
      parts ? [...steps, ["do: part, length: 30, blade: 2", last] as [string, string]] : steps,
    );

  const outlines = ({ outside, bore }: Workpiece): string[] =>
    Array.from({ length: 400 }, (_, index) => {
      const at = index / 10 - 0.53;
      return `${diameterAt(outside, at).toFixed(6)} ${diameterAt(bore, at).toFixed(6)}`;
    });
  /** All that must come out alike: the part, and what is said of each step. */
  const outcome = (job: Job, order: readonly number[]) => {
    const stages = stagesOf(job, order);
    const last = stages.at(-1)?.after as Workpiece;
    return {
      metal: metalOf(last).toFixed(3),
      ends: endsOf(last),
      shape: outlines(last),
      said: stepFindings(stages, job, findings)
        .map(({ step, code, kind }) => `${step} ${kind} ${code}`)
        .sort(),
    };
  };

  let moved = 0;
  test("comes out the same, is judged the same, and never moves the belt more often", () => {
    fc.assert(
      fc.property(jobs, (steps) => {
        const job = jobOf(steps.map(([text]) => text));
        const at = (index: number) =>
          ["die", "tap"].includes(job.steps[index]?.do ?? "") ? undefined : steps[index]?.[1];
        const given = job.steps.map((_, index) => index);
        const order = workingOrder(job, findings, at);
        expect([...order].sort((a, b) => a - b)).toEqual(given);
        expect(beltChanges(order.map(at))).toBeLessThanOrEqual(beltChanges(given.map(at)));
        if (order.every((index, place) => index === place)) return;
        moved++;
        // Whoever changes the order must have saved something by it.
        expect(beltChanges(order.map(at))).toBeLessThan(beltChanges(given.map(at)));
        expect(outcome(job, order)).toEqual(outcome(job, given));
        for (const [place, index] of order.entries())
          if (["face", "part", "centre drill"].includes(job.steps[index]?.do ?? ""))
            expect(new Set(order.slice(0, place))).toEqual(new Set(given.slice(0, index)));
      }),
      { numRuns: 400 },
    );
    // Else nothing was tried.
    expect(moved).toBeGreaterThan(10);
  });
});

test("no plan moves the belt more often than its file's order would", () =>
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 2, max: 15 }), fc.integer({ min: 5, max: 30 }), fc.boolean()), {
        minLength: 3,
        maxLength: 7,
      }),
      (steps) => {
        const plan = planOf(
          jobOf(
            steps.map(([size, length, hole]) =>
              hole ? `do: drill, diameter: ${size}, depth: ${length}` : `do: turn, to: ${size}, length: ${length}`,
            ),
            undefined,
            "mild steel",
          ),
          findings,
        );
        const positions = new Map(plan.steps.map((planned) => [planned.stage.index, positionOf(planned)]));
        expect(plan.beltChanges).toBeLessThanOrEqual(beltChanges(steps.map((_, index) => positions.get(index))));
      },
    ),
    { numRuns: 60 },
  ));

test("the plan tells the order of work, and counts its steps in it", () => {
  const job = jobOf(
    [
      "do: face, depth: 0.5",
      "do: turn, to: 14, length: 30",
      "do: drill, diameter: 2, depth: 15",
      "do: turn, to: 12, length: 20",
      "do: part, length: 28, blade: 2",
    ],
    undefined,
    "mild steel",
  );
  const plan = planOf(job, findings);
  const given = stagesOf(job).map(({ index }) => index);
  const worked = plan.steps.map(({ stage }) => stage.index);
  expect([...worked].sort()).toEqual(given);
  expect(plan.reordered).toBe(worked.some((index, place) => index !== place));
  expect(plan.reordered).toBe(true);
  expect(plan.steps.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
  const positions = plan.steps.map(positionOf).filter((position) => position !== undefined);
  expect(plan.beltChanges).toBe(
    positions.filter((position, place) => place > 0 && position !== positions[place - 1]).length,
  );
});
