import fc from "fast-check";
import { expect, test } from "vitest";
import type { Findings } from "../../src/findings/findings.js";
import { beltChanges } from "../../src/plan/beltChanges.js";
import { positionOf } from "../../src/plan/belts.js";
import { planOf } from "../../src/plan/plan.js";
import { jobOf } from "../support/job.js";
import { findingsOf, textsOf } from "../support/sheets.js";

/** Slow 200–500, middle 400–1000, fast 1000–2500 rpm where the motor is variable. */
const drilling = (motor = "400 to 1000 rpm", limit = 4000) =>
  findingsOf(`name: D
kind: drill
units: mm
limits: { spindle: ${limit} }
drive:
  motor: { speed: ${motor} }
  stages: [{ name: belt, steps: [{ label: slow, driver: 40, driven: 80 }, { label: middle, driver: 60, driven: 60 }, { label: fast, driver: 100, driven: 40 }] }]
handwheels:
  - { name: Quill, moves: quill, travel: 70, feed: 75 mm }
`);
const jobFor = (diameters: readonly number[], head: string) =>
  jobOf(
    diameters.map((diameter) => `do: drill, diameter: ${diameter}, depth: 10`),
    head,
    "mild steel",
  );
const planned = (diameters: readonly number[], findings: Findings = drilling(), head = "parts: 20\nbatch: part") =>
  planOf(jobFor(diameters, head), findings);

test("where the motor alone turns the spindle as fast as each step wants, the belt stays", () => {
  const alone = [20, 10].map((diameter) => planned([diameter]).steps[0]?.speed);
  expect(alone.map((speed) => speed?.speed?.position.name)).toEqual(["slow", "middle"]);
  const both = planned([20, 10]);
  expect(both.steps.map(positionOf)).toEqual(["middle", "middle"]);
  expect(both.steps.map(({ speed }) => speed?.rpm)).toEqual(alone.map((speed) => speed?.rpm));
  expect(both.steps.flatMap(({ notes }) => notes.filter((note) => note.includes("move the belt back")))).toEqual([]);
  expect([both.beltChanges, both.minutes.part.beltChanges, both.compromises]).toEqual([0, 0, []]);
});

test("where no position gives both speeds each step keeps its own", () => {
  // 615 rpm lies within the middle alone, 369 within the slow alone.
  expect(planned([25, 15]).steps.map(positionOf)).toEqual(["slow", "middle"]);
});

test("to save a change the motor is turned up as far as the position goes, not only as fast as the other step", () => {
  const { compromises } = planned([10, 8]);
  expect(compromises).toMatchObject([{ position: "middle", rpm: 1000 }]);
  expect(planned([10, 8], drilling(undefined, 950)).compromises).toEqual([]);
  expect(planned([15, 25], drilling(), "parts: 1").compromises).toMatchObject([{ position: "slow", rpm: 500 }]);
});

test("the step says that its speed is set at the motor, and of a motor with one speed it does not", () => {
  const said = (findings: Findings) =>
    textsOf({ ...findings, job: jobFor([20, 10], "parts: 2") }, "plan").includes("to be set at the motor");
  expect(said(drilling())).toBe(true);
  expect(said(drilling("1000 rpm"))).toBe(false);
});

test("fewer belt changes than any other choice of positions needs there are not", () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(5, 8, 10, 15, 20, 25), { minLength: 1, maxLength: 5 }), (diameters) => {
      const findings = drilling();
      const { steps, beltChanges: needed } = planned(diameters, findings, "parts: 1");
      const able = steps.map(({ speed }) =>
        (findings.drive?.speeds ?? []).filter(
          ({ slowestRpm, rpm }) => slowestRpm <= (speed?.rpm ?? 0) && rpm >= (speed?.rpm ?? 0),
        ),
      );
      const ways = able.reduce<string[][]>(
        (before, some) => before.flatMap((way) => some.map(({ position }) => [...way, position.name])),
        [[]],
      );
      // Steps in their order: the plan may put them in another, and so need fewer.
      expect(needed).toBeLessThanOrEqual(Math.min(...ways.map(beltChanges)));
      for (const [place, step] of steps.entries())
        expect(able[place]?.map(({ position }) => position.name)).toContain(positionOf(step));
    }),
    { numRuns: 60 },
  );
});
