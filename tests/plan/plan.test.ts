import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Job } from "../../src/job/job.js";
import { readJob } from "../../src/job/read.js";
import { passes } from "../../src/plan/passes.js";
import { planOf } from "../../src/plan/plan.js";
import { demoFindings, findingsOf } from "../support/sheets.js";

const wheelOf = (feed: string, reads: string, extra = "") =>
  findingsOf(
    `name: L\nhandwheels: [{ name: Cross slide, reads: ${reads}, travel: 60, feed: ${feed}, dial: { shape: drum, diameter: 40, width: 9${extra} } }]\n`,
  ).handwheels[0];

describe("a row of cuts", () => {
  test("none is deeper than the step allows, as the dial can be set; the last reaches the depth to a twentieth of a division", () => {
    const length = (min: number, max: number) =>
      fc.double({ min, max, noNaN: true }).map((mm) => Number(mm.toFixed(3)));
    fc.assert(
      fc.property(
        length(0.8, 6),
        fc.constantFrom("travel", "diameter"),
        length(0.2, 12),
        length(0.1, 2),
        length(0.02, 0.3),
        (feed, reads, depth, cut, finish) => {
          const wheel = wheelOf(String(feed), reads);
          const cuts = passes(depth, cut, finish, wheel, true);
          for (const { kind, depth: deep } of cuts) if (kind === "rough") expect(deep).toBeLessThanOrEqual(cut + 1e-9);
          expect(cuts.at(-1)?.kind).toBe("spring");
          expect(Math.abs((cuts.at(-1)?.total ?? 0) - depth)).toBeLessThan(0.1);
          for (const [index, { total }] of cuts.entries())
            if (index > 0) expect(total).toBeGreaterThanOrEqual(cuts[index - 1]?.total ?? 0);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("1 mm on the radius, 0.4 at most, 0.1 to finish: three rough cuts, one to finish, one for spring", () => {
    const cuts = passes(1, 0.4, 0.1, wheelOf("2", "diameter", ", divisions: 0.02 mm, closure: even"), true);
    expect(cuts.map(({ kind }) => kind)).toEqual(["rough", "rough", "rough", "finish", "spring"]);
    expect(cuts.map(({ total }) => Number(total.toFixed(6)))).toEqual([0.3, 0.6, 0.9, 1, 1]);
    expect(cuts[3]?.setting).toMatchObject({ wholeTurns: 0, divisions: 100 });
  });
});

describe("the plan on a virtual machine", () => {
  /** What the slide truly does: its feed is off by what the file admits, worn in the middle, and loose by the lost motion. */
  function virtual(feed: number, worn: number, lost: number) {
    let wheel = 0;
    let slide = 0;
    const along = (turns: number) => feed * turns + worn * Math.sin((Math.PI * feed * turns) / 30);
    return {
      turnTo(turns: number): void {
        const screw = along(turns);
        if (turns > wheel) slide = Math.max(slide, screw);
        else slide = Math.min(slide, screw + lost);
        wheel = turns;
      },
      slide: () => slide,
      wheel: () => wheel,
    };
  }

  /** Follows the printed settings as the sheet says, measuring before the finish cut; answers the diameter cut. */
  function follow(job: Job, gaugeError: number, machine: ReturnType<typeof virtual>, feedOfFile: number): number {
    const findings = findingsOf(
      `name: L\nhandwheels: [{ name: Cross slide, reads: diameter, travel: 60, feed: { perTurn: ${feedOfFile}, uncertainty: 0.01 }, dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02 mm, closure: even } }]\n`,
    );
    const [planned] = planOf(job, findings).steps;
    const step = job.steps[0];
    if (planned === undefined || step?.do !== "turn") throw new Error("no step to follow");
    const perDivision = 1 / (findings.handwheels[0]?.dial?.chosen.divisions ?? Number.NaN);
    // Touching off after coming back from well clear: the lost motion is taken up inward.
    machine.turnTo(-1);
    machine.turnTo(0);
    const zero = machine.slide();
    let cut = 0;
    const advance = (turns: number): void => {
      machine.turnTo(turns - 1);
      machine.turnTo(turns);
      cut = Math.max(cut, machine.slide() - zero);
    };
    for (const pass of planned.passes) {
      if (pass.setting === undefined) throw new Error("no setting");
      if (pass.kind === "rough") advance(pass.setting.wholeTurns + (pass.setting.divisions ?? 0) * perDivision);
      else if (pass.kind === "finish") {
        const measured = step.from - 2 * cut + gaugeError;
        const left = measured - step.to;
        // One line to compute: so much more on a dial that reads diameter, to the tenth of a division.
        const divisions = Math.round((left / (2 * feedOfFile) / perDivision) * 10) / 10;
        advance(machine.wheel() + divisions * perDivision);
      }
    }
    return step.from - 2 * cut;
  }

  test("feed error, lost motion and a worn zone: the size comes within the tolerance", () => {
    const job: Job = {
      name: "pin",
      units: "mm",
      material: "mild steel",
      tool: "high-speed steel",
      bar: { diameter: 30, out: 40, supported: true },
      parts: 1,
      steps: [{ do: "turn", from: 30, to: 24, length: 20, cut: 0.5, finish: 0.1, tolerance: 0.05 }],
    };
    const spread = (max: number) => fc.double({ min: -max, max, noNaN: true });
    fc.assert(
      fc.property(
        spread(0.01),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        spread(0.05),
        spread(0.01),
        (feedError, lost, worn, gaugeError) => {
          const size = follow(job, gaugeError, virtual(2 + feedError, worn, lost), 2);
          expect(Math.abs(size - 24)).toBeLessThanOrEqual(0.025);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("without measuring, that worn slide would have missed it: the check can fail", () => {
    const machine = virtual(2.01, 0.05, 0.2);
    machine.turnTo(-1);
    machine.turnTo(0);
    machine.turnTo(1.5);
    expect(Math.abs(30 - 2 * machine.slide() - 24)).toBeGreaterThan(0.025);
  });
});

describe("the demo's job on the demo's machine", () => {
  const job = readJob(readFileSync("templates/jobs/deck-pin.yaml", "utf8")).job as Job;
  const findings = { ...demoFindings(), job };

  test("every step under power has a speed within the limits; threads are turned by hand", () => {
    const { steps, objections } = planOf(job, findings);
    expect(objections).toEqual([]);
    expect(steps.filter(({ byHand }) => byHand).map(({ step }) => step.do)).toEqual(["die", "tap"]);
    for (const { byHand, speed } of steps)
      if (!byHand) expect(speed?.rpm ?? Number.NaN).toBeLessThanOrEqual(findings.machine.limits.chuckRpm ?? 0);
  });

  test("what the machine cannot do is said first: bar too far out, a step beyond the travel or the bar", () => {
    const long: Job = {
      ...job,
      bar: { diameter: 16, out: 100, supported: false },
      steps: [
        { do: "turn", from: 16, to: 14, length: 120, cut: 0.5, finish: 0.1 },
        { do: "drill", diameter: 5, depth: 80 },
      ],
    };
    const { objections } = planOf(long, findings);
    expect(objections.join("\n")).toContain("more than 4 times its diameter");
    expect(objections.join("\n")).toContain("reaches 120 mm");
    expect(objections.join("\n")).toMatch(/tailstock barrel, which travels 45 mm/);
  });
});
