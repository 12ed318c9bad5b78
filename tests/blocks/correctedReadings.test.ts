import { describe, expect, test } from "vitest";
import { correctedReadings } from "../../src/blocks/work/correctedReadings.js";
import { readings } from "../../src/blocks/work/planReadings.js";
import { readJob } from "../../src/job/read.js";
import { planOf } from "../../src/plan/plan.js";
import { showIn } from "../../src/plan/words.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const worn = (fixed: boolean) => {
  const turns = Array.from({ length: 25 }, (_, i) => i);
  const travel = turns.map((turn) => (turn * 2 + 0.12 * Math.exp(-(((turn - 12) / 5) ** 2))).toFixed(3));
  return findingsOf(
    `name: L\ndrive: { motor: { speed: 1400 rpm }, stages: [{ name: b, steps: [{ label: A, driver: 60, driven: 120 }] }] }\nhandwheels:\n  - name: Cross slide\n    reads: diameter\n    travel: 48\n    feed: { readings: { gauge: 0.01, zeroAt: a line, turns: [${turns}], travel: [${travel}] } }\n    dial: { shape: drum, diameter: 44, width: 10, fixed: ${fixed}, divisions: 0.05 mm, closure: even }\n  - { name: Carriage, travel: 200, feed: 5 mm, dial: { shape: drum, diameter: 60, width: 10 } }\nwork: { materials: [aluminium] }\n`,
  );
};

describe("on a worn slide", () => {
  test("a corrected reading stands only where it differs, and the table's own is then not the bold one", () => {
    const findings = worn(false);
    const { job } = readJob(
      "name: J\nunits: mm\nmaterial: aluminium\nbar: { diameter: 30, out: 50 }\nsteps:\n  - { do: turn, to: 16, length: 20, cut: 1 }\n",
    );
    const [wheel] = findings.handwheels;
    if (job === undefined || wheel === undefined) throw new Error("no job");
    expect(wheel.feed?.measured?.uneven).toBeDefined();
    const table = readings(
      planOf(job, findings).steps[0] as never,
      false,
      "mm",
      showIn(findings.machine, job),
      () => undefined,
    );
    const rowsAt = (size: string) => table?.cells.filter((row) => row.some(({ text }) => text === size)) ?? [];
    expect(rowsAt("16.00").length).toBeGreaterThan(0);
    for (const row of rowsAt("16.00")) {
      expect(row[3]?.text).toBe("");
      expect(row[4]?.text).toBe("by the rule");
    }
    expect(table?.cells.some((row) => /^\d\.\d+$/.test(row[4]?.text ?? "") && row[4]?.weight === "bold")).toBe(true);
    expect(correctedReadings({ wheel, travel: 7 }, "mm")?.stretches.length).toBeGreaterThan(2);
    // Over hardly any way a worn slide is as good as an even one.
    expect(correctedReadings({ wheel, travel: 0.025 }, "mm")).toBeUndefined();
    const plan = textsOf({ ...findings, job }, "plan");
    expect(plan).toMatch(
      /rule at the touch mm turns dial 14\.00 mm by the Cross slide, mm, ± 0\.\d+ mm 0 to \d+ 3 \d\.\d/,
    );
    // What is set after the last cut is the row's figure: the even one would make every later row wrong.
    expect(plan).toContain("set the dial to your row's figure");
    expect(plan).not.toContain("every later reading of this tool is then true");
  });

  test("on a dial that cannot be set to 0 it is told as what the dial goes on by", () => {
    const { job } = readJob(
      "name: J\nunits: mm\nmaterial: aluminium\nbar: { diameter: 30, out: 50 }\nsteps:\n  - { do: turn, to: 16, length: 20, cut: 2 }\n",
    );
    const plan = textsOf({ ...worn(true), ...(job && { job }) }, "plan");
    expect(plan).toMatch(/± 0\.\d+ mm 0 to \d+ 3 \+ \d\.\d{3} \d+ to \d+ 3 \+/);
    expect(plan).toContain("S1 + … =");
    expect(textsOf(worn(true), "student")).toContain("Count on from it.");
    expect(textsOf(worn(false), "student")).toContain("Set the dial to 0.");
  });

  test("how good it comes out is said only where a step says it", () => {
    const jobOf = (cut: number) =>
      readJob(
        `name: J\nunits: mm\nmaterial: aluminium\nbar: { diameter: 30, out: 50 }\nsteps:\n  - { do: turn, to: 16, length: 20, cut: ${cut} }\n`,
      ).job;
    const { machine, handwheels, ...rest } = worn(false);
    // Read by the dial that it had, of which nobody says how finely.
    const old = handwheels.map(({ dial: _, ...wheel }) => wheel);
    const plan = (wheels: typeof handwheels, job = jobOf(1)) =>
      textsOf({ ...rest, machine, handwheels: wheels, ...(job && { job }) }, "plan");
    expect(plan(handwheels)).toContain("Go on by what is left alone: “Comes out” says how good that is.");
    expect(plan(handwheels)).toMatch(/ Comes out/);
    expect(plan(old)).toContain("Measured before the last cut? Go on by what is left alone.");
    expect(plan(old)).not.toMatch(/[Cc]omes out/);
    // Refused, for so deep a cut: nothing is promised.
    expect(plan(handwheels, jobOf(2))).not.toMatch(/[Cc]omes out/);
  });

  test.each([false, true])("a bore is enlarged outwards, by a wheel turned backwards; fixed: %s", (fixed) => {
    const { job } = readJob(
      "name: J\nunits: mm\nmaterial: aluminium\nbar: { diameter: 50, bore: 10, out: 50 }\nsteps:\n  - { do: face, depth: 0.5 }\n  - { do: bore, to: 24, depth: 20, cut: 2 }\n",
    );
    expect(textsOf({ ...worn(fixed), ...(job && { job }) }, "plan")).toMatch(
      fixed ? /± 0\.\d+ mm \d+ to \d+ back 3 − \d\.\d{3}/ : /± 0\.\d+ mm \d+ to \d+ back 3 \d\.\d{3}/,
    );
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

describe("what a plan promises on a worn slide", () => {
  const planWith = (zeroAt: string) => {
    const turns = Array.from({ length: 41 }, (_, i) => i);
    const travel = turns.map((turn) => (turn * 2 + 0.2 * Math.exp(-(((turn - 20) / 8) ** 2))).toFixed(2));
    const findings = findingsOf(
      `name: L\ndrive: { motor: { speed: 1400 rpm }, stages: [{ name: b, steps: [{ label: A, driver: 60, driven: 120 }] }] }\nhandwheels:\n  - { name: Cross slide, reads: diameter, travel: 80, feed: { perTurn: 2, uncertainty: 0.0001 }, dial: { shape: drum, diameter: 44, width: 10, divisions: 0.05 mm, closure: even } }\n  - { name: Carriage, travel: 80, feed: { readings: { gauge: 0.01, ${zeroAt}turns: [${turns}], travel: [${travel}] } }, dial: { shape: drum, diameter: 60, width: 10, divisions: 0.05, closure: even } }\nwork: { materials: [aluminium] }\n`,
    );
    const { job } = readJob(
      "name: J\nunits: mm\nmaterial: aluminium\nbar: { diameter: 30, out: 50 }\nsteps:\n  - { do: turn, to: 28, length: 20 }\n",
    );
    if (job === undefined) throw new Error("no job");
    const planned = planOf(job, findings).steps[0];
    return {
      length: planned?.sizes.find(({ what }) => what === "length"),
      diameter: planned?.sizes.find(({ what }) => what === "diameter"),
      words: textsOf({ ...findings, job }, "plan"),
      most: findings.handwheels[1]?.feed?.measured?.uneven?.most?.at(-1) ?? 0,
    };
  };

  test("is of the movement as it is dialled by its place, without the whole wear, and says so", () => {
    const [placed, plain] = [planWith("zeroAt: a line, "), planWith("")];
    expect(placed.length?.byRule).toBe(true);
    expect(plain.length?.byRule).toBeUndefined();
    // Of the wear of some 0.1 mm what is left is what its curve is in doubt by, and its stretches.
    expect(plain.length?.doubt).toBeGreaterThan(placed.most / 2);
    expect(placed.length?.doubt).toBeLessThan((plain.length?.doubt ?? 0) - 0.02);
    expect(placed.words).toMatch(/length 20\.00 mm ± [\d.]+ mm, where it is dialled by the rule/);
    expect(plain.words).not.toContain("where it is dialled by the rule");
    // On the even slide nothing is otherwise.
    expect(placed.diameter).toEqual(plain.diameter);
  });
});
