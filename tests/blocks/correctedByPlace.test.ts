import { describe, expect, test } from "vitest";
import { readJob } from "../../src/job/read.js";
import { findingsOf, textsOf } from "../support/sheets.js";

// Cross slides of inch lathes, worn in the middle (invented): where they truly stand at a turn, inches.
const screws: Record<string, (turn: number) => number> = {
  "a hollow with edges": (turn) =>
    0.1 * Math.min(turn, 12) + 0.0997 * Math.max(0, Math.min(turn, 22) - 12) + 0.1 * Math.max(0, turn - 22),
  "a bulge": (turn) => 0.1002 * turn + (turn < 6 || turn > 26 ? 0 : 0.006 * Math.sin((Math.PI * (turn - 6)) / 20) ** 2),
  "a deep hollow": (turn) => 0.1 * turn - 0.012 * Math.exp(-(((turn - 17) / 6) ** 2)),
};
const LAST = 34;
const turns = Array.from({ length: LAST + 1 }, (_, turn) => turn);
/** A rule is read to this, inches. */
const RULED = 0.5 / 25.4;

const latheOf = (truly: (turn: number) => number) => {
  const travel = turns.map((turn) => (Math.round(truly(turn) / 0.0005) * 0.0005).toFixed(4));
  return findingsOf(
    `name: L\nunits: in\ndrive: { motor: { speed: 1400 rpm }, stages: [{ name: b, steps: [{ label: A, driver: 3, driven: 6 }] }] }\nhandwheels:\n  - name: Cross slide\n    reads: diameter\n    travel: 3.4\n    feed: { readings: { gauge: 0.0005, zeroAt: a line, turns: [${turns}], travel: [${travel}] } }\n    dial: { shape: drum, diameter: 1.75, width: 0.375, divisions: 0.002 }\n    distances: [1/4, 1.25]\n  - { name: Carriage, travel: 12, feed: 8 tpi, dial: { shape: drum, diameter: 2.5, width: 0.5 } }\nstops: [{ name: groove, handwheel: Cross slide, length: 1.1 }]\nwork: { materials: [aluminium] }\n`,
  );
};
const perTurnOf = (found: ReturnType<typeof latheOf>) => (found.handwheels[0]?.reading?.perTurn ?? 0) / 25.4;

/** "1 3/16", inches. */
const fromRule = (words: string): number =>
  words.split(" ").reduce((sum, part) => {
    const [over = "", under = "1"] = part.split("/");
    return sum + Number(over) / Number(under);
  }, 0);
const MARK = "(?:\\d+ )?\\d+/\\d+|\\d+";

type Row = { readonly from: number; readonly to: number; readonly turned: number };

/** On every place of the slide, as the rule may have been read, by the row or column in which it then stands: what comes out is
 *  within what is said. How many places were tried. */
function tried(truly: (turn: number) => number, rows: readonly Row[], wanted: number, within: number): number {
  let places = 0;
  for (let start = 0; start <= LAST; start += 0.1)
    for (const off of [-RULED, 0, RULED])
      for (const { from, to, turned } of rows) {
        const place = truly(start) + off;
        if (place < from - 1e-9 || place > to + 1e-9) continue;
        const end = start + turned;
        if (end < 0 || end > LAST) continue;
        places++;
        expect(Math.abs(2 * (truly(end) - truly(start)) - wanted), `from turn ${start}`).toBeLessThan(within);
      }
  return places;
}

describe.each(Object.entries(screws))("by its place a movement on %s comes out within its ±", (_, truly) => {
  const lathe = latheOf(truly);
  const perTurn = perTurnOf(lathe);

  test.each(["turns", "stops"])("for all distances of the %s sheet, wherever it begins", (sheet) => {
    const [, words = ""] = textsOf(lathe, sheet).split("Corrected over the stretch that was measured");
    const columns = [...words.matchAll(new RegExp(`rule at (${MARK}) to (${MARK})`, "g"))].map(
      ([, from = "", to = ""]) => ({
        from: fromRule(from),
        to: fromRule(to),
      }),
    );
    expect(columns.length).toBeGreaterThan(2);
    expect(columns.length).toBeLessThanOrEqual(8);
    const rows = [
      ...words.matchAll(
        new RegExp(`(\\d\\.\\d+|${MARK}) ((?:(?:\\d+ \\+ \\d+\\.\\d|–) ){${columns.length}})(0\\.\\d{4})(?= )`, "g"),
      ),
    ];
    expect(rows.length).toBeGreaterThan(sheet === "turns" ? 4 : 0);
    for (const [, size = "", figures = "", within = ""] of rows) {
      const told = figures.match(/\d+ \+ \d+\.\d|–/g) ?? [];
      const stretches = columns.flatMap((column, index): Row[] => {
        const [whole, figure] = (told[index] ?? "").split(" + ").map(Number);
        return figure === undefined ? [] : [{ ...column, turned: (whole ?? 0) + figure / 1000 / perTurn }];
      });
      expect(tried(truly, stretches, fromRule(size), Number(within))).toBeGreaterThan(50);
    }
  });

  test.each([
    ["turned down", "{ diameter: 2.2, out: 2 }", "{ do: turn, to: 1.4, length: 1, cut: 0.1 }", 1],
    ["bored out", "{ diameter: 3, bore: 0.5, out: 2 }", "{ do: bore, to: 1.3, depth: 1, cut: 0.1 }", -1],
  ])("for a step of a plan that is %s", (_, bar, step, sense) => {
    const { job } = readJob(
      `name: J\nunits: in\nmaterial: aluminium\nbar: ${bar}\nsteps:\n  - { do: face, depth: 0.02 }\n  - ${step}\n`,
    );
    if (job === undefined) throw new Error("no job");
    const plan = textsOf({ ...lathe, job }, "plan");
    const [, size, within = "", words = ""] =
      /(0\.8\d+) in by the Cross slide, × 0\.001 in, ± (0\.\d+) in (.*?) elsewhere/.exec(plan) ?? [];
    const rows = [
      ...words.matchAll(new RegExp(`(${MARK}) to (${MARK}) (?:back )?(\\d+) (\\d+\\.\\d)(?= |$)`, "g")),
    ].map(([, from = "", to = "", whole, figure]): Row => {
      const part = Number(figure) / 1000 / perTurn;
      // Backwards the dial comes to stand at what is left of a turn.
      const turned = Number(whole) + (sense < 0 && part > 1e-9 ? 1 - part : part);
      return { from: fromRule(from), to: fromRule(to), turned: sense * turned };
    });
    expect(rows.length).toBeGreaterThan(2);
    expect(tried(truly, rows, sense * Number(size), Number(within))).toBeGreaterThan(200);
    // The rule is laid where the zero is touched, before what is dialled by it.
    expect(plan.indexOf("lay a rule now")).toBeGreaterThan(0);
    expect(plan.indexOf("lay a rule now")).toBeLessThan(plan.indexOf(" by the rule "));
  });

  test("by the figures that are not corrected it does not, somewhere", () => {
    const turned = 1 / perTurn;
    const errors = turns.flatMap((start) =>
      start + turned > LAST ? [] : [Math.abs(2 * (truly(start + turned) - truly(start)) - 1)],
    );
    expect(Math.max(...errors)).toBeGreaterThan(0.0017);
  });
});
