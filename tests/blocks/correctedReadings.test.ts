import { describe, expect, test } from "vitest";
import { correctedReadings } from "../../src/blocks/work/correctedReadings.js";
import { readings } from "../../src/blocks/work/planReadings.js";
import { readJob } from "../../src/job/read.js";
import { planOf } from "../../src/plan/plan.js";
import { showIn } from "../../src/plan/words.js";
import { findingsOf, textsOf } from "../support/sheets.js";

/** The row of a corrected reading: where it starts, how far from turn 0 that is (2 mm a turn), what is to be dialled. */
const rowOf = ({ starts, shown }: ReturnType<typeof correctedReadings>[number]): string =>
  `${starts.join(", ")} ${starts.map((turn) => `${2 * turn}.0 mm`).join(", ")} ${shown.turns} ${shown.figure}`;

const worn = (fixed: boolean) => {
  const turns = Array.from({ length: 25 }, (_, i) => i);
  const travel = turns.map((turn) => (turn * 2 + 0.12 * Math.exp(-(((turn - 12) / 5) ** 2))).toFixed(3));
  return findingsOf(
    `name: L\ndrive: { motor: { speed: 1400 rpm }, stages: [{ name: b, steps: [{ label: A, driver: 60, driven: 120 }] }] }\nhandwheels:\n  - name: Cross slide\n    reads: diameter\n    travel: 48\n    feed: { readings: { gauge: 0.01, turns: [${turns}], travel: [${travel}] } }\n    dial: { shape: drum, diameter: 44, width: 10, fixed: ${fixed}, divisions: 0.05 mm, closure: even }\n  - { name: Carriage, travel: 200, feed: 5 mm, dial: { shape: drum, diameter: 60, width: 10 } }\nwork: { materials: [aluminium] }\n`,
  );
};

describe("on a worn slide", () => {
  test("a corrected reading stands only where it differs, and the table's own is then not the bold one", () => {
    const findings = worn(false);
    const { job } = readJob(
      "name: J\nunits: mm\nmaterial: aluminium\nbar: { diameter: 30, out: 50 }\nsteps:\n  - { do: turn, to: 16, length: 20, cut: 2 }\n",
    );
    const [wheel] = findings.handwheels;
    if (job === undefined || wheel === undefined) throw new Error("no job");
    expect(wheel.feed?.measured?.uneven).toBeDefined();
    const table = readings(
      planOf(job, findings).steps[0] as never,
      "mm",
      showIn(findings.machine, job),
      () => undefined,
    );
    const last = table?.cells.findLast((row) => row.some(({ text }) => text === "16.00"));
    const figure = last?.[4];
    const told = correctedReadings({ wheel, travel: 7 });
    // Each place stands once, those of one reading together; not all have the table's own.
    expect(told.length).toBeGreaterThan(1);
    expect(new Set(told.flatMap(({ starts }) => starts)).size).toBe(told.flatMap(({ starts }) => starts).length);
    expect(new Set(told.map(({ shown }) => JSON.stringify(shown))).size).toBe(told.length);
    expect(told.some(({ shown }) => shown.figure !== figure?.text)).toBe(true);
    expect(figure?.weight).toBe("regular");
    expect(table?.cells.some((row) => row[4]?.weight === "bold")).toBe(true);
    // Over hardly any way a worn slide is as good as an even one.
    expect(correctedReadings({ wheel, travel: 0.025 })).toEqual([]);
    const plan = textsOf({ ...findings, job }, "plan");
    expect(plan).toContain("starts at turn which is from turn 0 turns dial 14.00 mm by the Cross slide");
    for (const one of told) expect(plan).toContain(rowOf(one));
  });

  test("on a dial that cannot be set to 0 it is told as what the dial goes on by", () => {
    const [wheel] = worn(true).handwheels;
    if (wheel === undefined) throw new Error("no wheel");
    for (const { shown } of correctedReadings({ wheel, travel: 7 })) expect(shown.figure).toMatch(/^\+ \d\.\d{3}$/);
    expect(textsOf(worn(true), "student")).toContain("Count on from it.");
    expect(textsOf(worn(false), "student")).toContain("Set the dial to 0.");
  });

  describe("a bore is enlarged outwards", () => {
    const bored = readJob(
      "name: J\nunits: mm\nmaterial: aluminium\nbar: { diameter: 50, bore: 10, out: 50 }\nsteps:\n  - { do: face, depth: 0.5 }\n  - { do: bore, to: 24, depth: 20, cut: 2 }\n",
    ).job;
    const truly = (turn: number) => turn * 2 + 0.12 * Math.exp(-(((turn - 12) / 5) ** 2));
    /** The readings' curve has few terms: so much it leaves of this hollow, mm on the diameter. */
    const CURVE = 0.045;
    const told = (fixed: boolean) => {
      const findings = worn(fixed);
      const [wheel] = findings.handwheels;
      if (wheel?.reading === undefined || bored === undefined) throw new Error("no wheel");
      const words = textsOf({ ...findings, job: bored }, "plan");
      return { perTurn: wheel.reading.perTurn, words, ways: correctedReadings({ wheel, travel: -7 }) };
    };

    test.each([false, true])(
      "the corrected reading is that of a wheel turned backwards, and ends where the curve says; fixed: %s",
      (fixed) => {
        const { perTurn, words, ways } = told(fixed);
        expect(ways.length).toBeGreaterThan(1);
        for (const one of ways) {
          const { starts, shown } = one;
          expect(words).toContain(rowOf(one));
          const turns = Number(/^back (\d)$/.exec(shown.turns)?.[1]);
          // One that cannot be set to 0 is told what is taken off it.
          const part = fixed ? Number(/^− (\d\.\d+)$/.exec(shown.figure)?.[1]) : perTurn - Number(shown.figure);
          const gone = turns + part / perTurn;
          for (const from of starts) expect(Math.abs(2 * (truly(from) - truly(from - gone)) - 14)).toBeLessThan(CURVE);
        }
      },
    );

    test("the dial is set to the figure where it comes to stand, which nothing is added to", () =>
      expect(told(false).words).toMatch(/set the dial to what stands above \(back \d, \d\.\d+\)/));
  });

  test("wear is no reason to finish by hand: over the little that is left after measuring the slide goes as an even one", () => {
    const findings = worn(false);
    const { job } = readJob(
      "name: J\nunits: mm\nmaterial: aluminium\nbar: { diameter: 30, out: 50 }\nsteps:\n  - { do: turn, to: 28 ± 0.06, length: 20, cut: 0.5, finish: 0.1 }\n",
    );
    if (job === undefined) throw new Error("no job");
    expect(planOf(job, findings).findings.map(({ code }) => code)).toEqual(["finer-than-the-reading"]);
  });
});
