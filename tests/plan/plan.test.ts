import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { HandwheelFinding } from "../../src/findings/findings.js";
import type { Job } from "../../src/job/job.js";
import { readJob } from "../../src/job/read.js";
import { MOST_PASSES, passes } from "../../src/plan/passes.js";
import { planOf } from "../../src/plan/plan.js";
import { planFor, verdicts } from "../support/job.js";
import { demoFindings, findingsOf } from "../support/sheets.js";

const wheelOf = (feed: string, reads: string, extra = ""): HandwheelFinding => {
  const [wheel] = findingsOf(
    `name: L\nhandwheels: [{ name: Cross slide, reads: ${reads}, travel: 60, feed: ${feed}, dial: { shape: drum, diameter: 40, width: 9${extra} } }]\n`,
  ).handwheels;
  if (wheel === undefined) throw new Error("no wheel");
  return wheel;
};

test("limits of a fit and what they leave bear no more figures in inches than anyone measures", () => {
  const head = "units: in\nbar: { diameter: 1/2, out: 1.5 }";
  const { steps, findings } = planFor(
    ["do: centre drill", "do: drill, diameter: 19/64, depth: 0.5", "do: bore, to: 5/16 H7, depth: 0.5"],
    head,
  );
  const inches = [steps.at(-1)?.title ?? "", ...findings.map(({ what }) => what)].join(" ").matchAll(/\.(\d+) in\b/g);
  const places = [...inches].map(([, figures = ""]) => figures.length);
  expect(places.length).toBeGreaterThan(2);
  expect(Math.max(...places)).toBeLessThanOrEqual(5);
});

describe("a row of cuts", () => {
  test("none is deeper than the step allows, as the dial can be set; the last reaches the depth to a twentieth of a division", () => {
    const length = (min: number, max: number) =>
      fc.double({ min, max, noNaN: true }).map((mm) => Number(mm.toFixed(3)));
    fc.assert(
      fc.property(
        length(0.8, 6),
        fc.constantFrom("travel", "diameter"),
        length(0, 4),
        length(0.2, 12),
        length(0.1, 2),
        length(0.02, 0.3),
        fc.constantFrom(1, -1),
        (feed, reads, from, depth, cut, finish, sense) => {
          const wheel = wheelOf(String(feed), reads);
          const to = from + sense * depth;
          const cuts = passes({ from, to, cut, finish, spring: true }, wheel);
          const worth = (wheel.dial?.divisionWorth ?? 0) / (wheel.reading?.factor ?? 1);
          for (const { kind, depth: deep } of cuts)
            if (kind === "rough") expect(deep).toBeLessThanOrEqual(cut + worth / 10 + 1e-9);
          expect(cuts.at(-1)?.kind).toBe("spring");
          expect(Math.abs((cuts.at(-1)?.travel ?? 0) - to)).toBeLessThanOrEqual(worth / 20 + 1e-9);
          for (const [index, { travel }] of cuts.entries())
            if (index > 0) expect((travel - (cuts[index - 1]?.travel ?? 0)) * sense).toBeGreaterThanOrEqual(-1e-9);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("1 mm on the radius, 0.4 at most, 0.1 to finish: three rough cuts, one to finish, one for spring", () => {
    const wheel = wheelOf("2", "diameter", ", divisions: 0.02 mm, closure: even");
    const cuts = passes({ from: 0.5, to: 1.5, cut: 0.4, finish: 0.1, spring: true }, wheel);
    expect(cuts.map(({ kind }) => kind)).toEqual(["rough", "rough", "rough", "finish", "spring"]);
    expect(cuts.map(({ travel }) => Number(travel.toFixed(6)))).toEqual([0.8, 1.1, 1.4, 1.5, 1.5]);
    // 1.5 mm of travel: three quarters of a turn of 200 divisions.
    expect(cuts[3]?.reading).toMatchObject({ back: false, setting: { wholeTurns: 0, divisions: 150 } });
  });

  test("outward the wheel goes back from its zero", () => {
    const wheel = wheelOf("2", "diameter", ", divisions: 0.02 mm, closure: even");
    const cuts = passes({ from: 0, to: -0.5, cut: 0.3, finish: 0.1, spring: false }, wheel);
    expect(cuts.map(({ travel }) => Number(travel.toFixed(6)))).toEqual([-0.2, -0.4, -0.5]);
    expect(cuts.every(({ reading }) => reading?.back)).toBe(true);
  });

  test("more cuts than anyone takes are none", () =>
    expect(passes({ from: 0, to: 10, cut: 0.000001, finish: 0.1, spring: true }, undefined)).toEqual([]));
  test("as many as anyone takes are made", () =>
    expect(
      passes({ from: 0, to: 10, cut: 10 / (MOST_PASSES - 2), finish: 0.01, spring: false }, undefined).length,
    ).toBeGreaterThan(MOST_PASSES - 10));
});

const jobOf = (text: string): Job => {
  const { job, problems } = readJob(text);
  if (job === undefined) throw new Error(JSON.stringify(problems));
  return job;
};

describe("one set of zeros", () => {
  const findings = demoFindings();
  const { steps } = planOf(
    jobOf(`name: P
material: brass
bar: { diameter: 16, out: 60 }
steps:
  - { do: face, depth: 0.5 }
  - { do: turn, to: 14, length: 40 }
  - { do: shoulder, to: 10, length: 20 }
  - { do: centre drill }
  - { do: drill, diameter: 5, depth: 15 }
  - { do: shoulder, to: 8, length: 10 }
  - { do: taper, large: 8, small: 7, length: 4 }
  - { do: shoulder, to: 6, length: 3 }
  - { do: groove, at: 22, width: 3, to: 11, blade: 2 }
  - { do: part, length: 42, blade: 2 }
`),
    findings,
  );
  const zeros = steps.map(({ zeros }) => zeros.map(({ wheel, of }) => `${wheel.handwheel.name} ${of}`));

  test("a wheel is touched off once for a tool, however many steps it cuts and holes are drilled between", () =>
    expect(zeros.slice(0, 6)).toEqual([
      ["Top slide raw end"],
      ["Cross slide diameter"],
      [],
      ["Tailstock barrel tip"],
      ["Tailstock barrel mouth"],
      [],
    ]));

  test("after another tool or a swung slide it is touched off anew; one blade serves groove and parting", () => {
    expect(zeros[6]).toEqual(["Carriage end", "Top slide begin", "Cross slide diameter"]);
    expect(zeros[7]).toEqual(["Cross slide diameter", "Carriage end"]);
    expect(zeros[8]).toEqual(["Cross slide diameter", "Carriage end"]);
    expect(zeros[9]).toEqual([]);
  });

  test("every reading of a tool counts from its one zero: 16 to 8 mm is 8 mm on a dial that reads diameter", () => {
    const last = steps[5]?.passes.at(-1);
    const turns = last?.reading?.setting.turns ?? Number.NaN;
    expect(turns * (findings.handwheels[0]?.reading?.perTurn ?? Number.NaN)).toBeCloseTo(8, 2);
    expect(last?.size).toBeCloseTo(8, 2);
  });

  test("lengths of all tools count from the finished face; the blade's from its chuck-side edge", () => {
    const at = (index: number) => steps[index]?.places.map(({ what, at }) => `${what} ${at}`);
    expect(at(1)).toEqual(["stop 40"]);
    expect(at(8)).toEqual(["plunge 24", "plunge 25", "depth 11"]);
    expect(at(9)).toEqual(["plunge 44", "depth 0"]);
  });
});

describe("parts in batches", () => {
  const bar = "bar: { diameter: 16, out: 40 }";
  const blank = "bar: { diameter: 16, out: 40, length: 60 }";
  const ends = ["do: turn, to: 14, length: 30", "do: part, length: 28, blade: 2"];
  test.each([
    ["by operation, parted off a bar through the spindle", bar, ends, ["refused: no-blanks"]],
    ["by operation, from sawn blanks", blank, ends, []],
    ["by operation, nothing parted off", bar, ends.slice(0, 1), []],
  ] as const)("%s", (_, head, steps, found) => {
    expect(verdicts(planFor(steps, `${head}\nbatch: operation\nparts: 2`))).toEqual(found);
    // One part alone, and parts made one after the other, come off any bar.
    expect(verdicts(planFor(steps, `${head}\nbatch: operation\nparts: 1`))).toEqual([]);
    expect(verdicts(planFor(steps, `${head}\nbatch: part\nparts: 2`))).toEqual([]);
  });
});

describe("how edges are broken", () => {
  const chamferOf = (...steps: string[]) => planFor(steps).steps.at(-1);
  const stops = (...steps: string[]) =>
    chamferOf(...steps)?.places.map(
      ({ what, wheel, at }) => `${what} ${wheel.handwheel.name} ${Number(at.toFixed(6))}`,
    );

  test("half a millimetre in one go, more in several alike", () => {
    expect(stops("do: chamfer, size: 0.5")).toEqual(["stop Carriage 0.5"]);
    expect(stops("do: chamfer, size: 1.2")).toEqual(["stop Carriage 0.4", "stop Carriage 0.8", "stop Carriage 1.2"]);
  });

  test("of a hole by a countersink on the barrel, which leaves the tool in the post alone", () => {
    const hole = ["do: turn, to: 14, length: 20", "do: centre drill", "do: drill, diameter: 6, depth: 10"];
    const edge = "do: chamfer, size: 0.5, side: bore";
    expect(chamferOf(...hole, edge)?.tool).toBe("countersink, 90°");
    expect(stops(...hole, edge)).toEqual(["stop Tailstock barrel 0.5"]);
    // Without a drive no step changes its place.
    const undriven = findingsOf(
      "name: L\nhandwheels: [{ name: Cross slide, feed: 2 mm }, { name: Carriage, feed: 18 mm }]\n",
    );
    const { steps } = planFor([...hole, edge, "do: turn, to: 12, length: 10"], undefined, undriven);
    expect(steps.map(({ stage }) => stage.step.do).slice(-2)).toEqual(["chamfer", "turn"]);
    expect(steps.at(-1)?.zeros).toEqual([]);
  });

  test("a centre drill has a reading of its depth from where its tip touches", () => {
    const centred = chamferOf("do: centre drill, diameter: 2");
    expect(centred?.zeros.map(({ wheel, of }) => `${wheel.handwheel.name} ${of}`)).toEqual(["Tailstock barrel tip"]);
    // Form A of 2 mm: (4.25 − 2) / 2 / tan 30° of cone, and 1.2 · 2 mm of pilot: 1.949 + 2.4.
    expect(centred?.places.map(({ what, at }) => `${what} ${at.toFixed(3)}`)).toEqual(["depth 4.349"]);
  });
});

describe("the demo's job on the demo's machine", () => {
  const job = jobOf(readFileSync("templates/jobs/deck-pin.yaml", "utf8"));
  const findings = { ...demoFindings(), job };
  const { steps, findings: found } = planOf(job, findings);

  test("what is asked finer than one measuring gives is to be minded, nothing else; every step under power has a speed within the limits; threads are turned by hand", () => {
    expect(verdicts({ findings: found })).toEqual([
      "take care: finer-than-the-reading at 2",
      "take care: finer-than-the-reading at 3",
      "take care: finer-than-the-reading at 4",
    ]);
    expect(steps.filter(({ byHand }) => byHand).map(({ stage }) => stage.step.do)).toEqual([
      "die",
      "turn round",
      "tap",
    ]);
    for (const { byHand, speed } of steps)
      if (!byHand) expect(speed?.rpm ?? Number.NaN).toBeLessThanOrEqual(findings.machine.limits.chuckRpm ?? 0);
  });

  test("the finished part is as long as was asked, and bored and threaded at both ends", () => {
    const last = steps.at(-1)?.stage.after;
    expect(last?.outside[0]?.from).toBeCloseTo(0, 9);
    expect(last?.outside.at(-1)?.to).toBeCloseTo(35.5, 9);
    expect(last?.surfaces.map(({ name, side }) => `${name} ${side}`).sort()).toEqual([
      "M4 inside",
      "M6 outside",
      "knurl outside",
    ]);
  });
});
