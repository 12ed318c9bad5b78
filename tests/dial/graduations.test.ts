import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { choiceLines } from "../../src/cli/choiceLines.js";
import { choicesFor } from "../../src/dial/choices.js";
import type { DialChoice } from "../../src/dial/finding.js";
import { graduations } from "../../src/dial/graduations.js";
import { labelling } from "../../src/dial/labelling.js";
import { LEAST_SHORT_GAP } from "../../src/dial/penalty.js";
import type { Closure } from "../../src/machine/machine.js";
import { findingsOf, textsOf } from "../support/sheets.js";
import { diameters, drum, feeds, values } from "./dials.js";

const TURN = 2 * Math.PI;

function forced(perTurn: number, divisions: number, closure: Closure, strip = 120): DialChoice {
  const wish = drum(38, { divisions, closure });
  return choicesFor({ perTurn, from: "stated" }, "travel", wish, { stripLength: strip, units: "mm" })[0] as DialChoice;
}

test("property: even gaps are all equal, the last one to the zero mark too", () => {
  fc.assert(
    fc.property(feeds, values, (perTurn, value) => {
      const choice = forced(perTurn, value, "even");
      const [row = []] = graduations(choice, perTurn);
      expect(row).toHaveLength(choice.divisions);
      const angles = [...row.map((mark) => mark.angle), TURN];
      const worst = Math.max(
        ...row.map((_, i) => Math.abs((angles[i + 1] ?? 0) - (angles[i] ?? 0) - TURN / row.length)),
      );
      expect(worst).toBeLessThan(1e-12);
    }),
    { numRuns: 50 },
  );
});

test("property: true marks lie at value / turn, whole multiples of the value, and the last gap is what is left over", () => {
  fc.assert(
    fc.property(feeds, values, (perTurn, value) => {
      const choice = forced(perTurn, value, "true");
      const [row = []] = graduations(choice, perTurn);
      row.forEach((mark, i) => {
        if (Math.abs(mark.value - i * value) > 1e-12) throw new Error("not a multiple");
        if (Math.abs((mark.angle / TURN) * perTurn - mark.value) > 1e-9) throw new Error("mark stands off");
      });
      const gap = ((TURN - (row.at(-1)?.angle ?? 0)) / TURN) * perTurn;
      // A mark that would print as one with the zero is left out.
      const width = (choice.leftOver / value) * choice.spacing;
      const blurs = choice.leftOver > 0 && width < LEAST_SHORT_GAP && choice.spacing > 2 * LEAST_SHORT_GAP;
      expect(gap).toBeCloseTo(choice.leftOver + (blurs || choice.leftOver === 0 ? value : 0), 9);
    }),
    { numRuns: 50 },
  );
});

test("a short last division of a tenth of a millimetre of paper has no mark beside the zero, one of a half has", () => {
  const marks = (left: number) => graduations(forced(1 + left * 0.02, 0.02, "true"), 1 + left * 0.02)[0] ?? [];
  const spacing = forced(1.002, 0.02, "true").spacing;
  expect(marks(0.1 / spacing)).toHaveLength(50);
  expect(marks(0.5 / spacing)).toHaveLength(51);
});

test("property: the rows together bear each multiple of the value once, in its turn and at its angle", () => {
  const closing = fc.record({ n: fc.integer({ min: 20, max: 400 }), k: fc.integer({ min: 2, max: 6 }), value: values });
  fc.assert(
    fc.property(closing, ({ n, k, value }) => {
      const turn = (n * value) / k;
      const choice = forced(turn, value, "rows");
      const rows = graduations(choice, turn);
      expect(rows).toHaveLength(choice.rows);
      const read = rows.flatMap((row, r) => row.map((mark) => ({ ...mark, turned: r + mark.angle / TURN })));
      expect(read.map((mark) => Math.round(mark.value / value))).toEqual(read.map((_, i) => i));
      expect(read.length * value).toBeCloseTo(choice.rows * turn, 9);
      for (const mark of read) if (Math.abs(mark.turned * turn - mark.value) > 1e-9) throw new Error("mark stands off");
    }),
    { numRuns: 60 },
  );
});

/** Room that a number of five figures needs, mm, such as 12.45. */
const WIDEST_NUMBER = 7.25;

test("property: in any chosen dial angles grow, ranks are kept and at most nine marks stand between numbers where those have room", () => {
  fc.assert(
    fc.property(feeds, diameters, fc.constantFrom("mm" as const, "in" as const), (perTurn, diameter, units) => {
      const strip = Math.PI * diameter;
      const options = { stripLength: strip, units };
      for (const choice of choicesFor({ perTurn, from: "stated" }, "travel", drum(diameter), options).slice(0, 4)) {
        const { every, room } = labelling(choice);
        // The widest step up to ten is eight on a dial of quarters: 0.2 of 0.025.
        if (8 * choice.spacing >= WIDEST_NUMBER) expect(every).toBeLessThanOrEqual(10);
        else expect(every).toBeLessThanOrEqual(20);
        for (const row of graduations(choice, perTurn)) {
          const angles = row.map((mark) => mark.angle);
          expect(
            angles.every((angle, i) => angle >= 0 && angle < TURN && (i === 0 || angle > (angles[i - 1] ?? 0))),
          ).toBe(true);
          const numbered = row.filter((mark) => mark.label !== undefined);
          expect(numbered.every((mark) => mark.rank === 1)).toBe(true);
          const places = numbered.map((mark) => (mark.angle / TURN) * strip);
          const gaps = places.map((place, i) => (places[i + 1] ?? (places[0] ?? 0) + strip) - place);
          if (numbered.length > 1) expect(Math.min(...gaps)).toBeGreaterThanOrEqual(room - 1e-9);
        }
      }
    }),
    { numRuns: 60 },
  );
});

test("true marks keep their short gap before zero: 1.5875 mm on 0.02 mm leaves 0.0075 mm", () => {
  const [row = []] = graduations(forced(1.5875, 0.02, "true"), 1.5875);
  expect(row).toHaveLength(80);
  expect(((TURN - (row.at(-1)?.angle ?? 0)) / TURN) * 1.5875).toBeCloseTo(0.0075, 9);
});

test("numbers run on through two rows, so the reading of a two-turn cycle is direct", () => {
  const rows = graduations(forced(4.225, 0.05, "rows"), 4.225);
  const labels = rows.map((row) => row.flatMap((mark) => mark.label ?? []));
  expect(labels[0]?.slice(0, 3)).toEqual(["0", "0.5", "1"]);
  expect(labels[1]?.slice(0, 2)).toEqual(["4.5", "5"]);
  expect(rows[1]?.[0]?.value).toBeCloseTo(4.25, 12);
  expect(rows[1]?.[0]?.angle).toBeCloseTo((TURN * 0.025) / 4.225, 12);
});

test("a dial of 100 in 0.001 in is numbered in thousandths, and says so", () => {
  const choice = forced(2.54, 0.0254, "even");
  expect(labelling(choice).labelUnit).toBe("1 = 0.001 in");
  const [row = []] = graduations(choice, 2.54);
  expect(row.filter((mark) => mark.rank === 1)).toHaveLength(20);
  expect(row[10]).toMatchObject({ rank: 1, label: "10" });
  // Numbered by fives, so those are of the first rank too.
  expect(row[5]).toMatchObject({ rank: 1, label: "5" });
  expect(row[1]).toEqual({ angle: TURN / 100, rank: 3, value: 0.0254 });
});

test.each([
  [1.27, 0.01],
  [2.54, 0.02],
  [3.175, 0.025],
  [5, 0.05],
])("numbered marks of a %d mm feed on %d mm bear round values", (perTurn, value) => {
  const [row = []] = graduations(forced(perTurn, value, "even", 150), perTurn);
  for (const mark of row) if (mark.label !== undefined) expect(mark.label).toMatch(/^\d{1,3}$|^\d\.\d$/);
  expect(row[0]).toMatchObject({ label: "0", rank: 1, angle: 0, value: 0 });
});

test("the last number gives way to zero where they would run together", () => {
  const [row = []] = graduations(forced(1.01, 0.01, "even", 101), 1.01);
  expect(row[90]?.label).toBeDefined();
  expect(row[100]?.label).toBeUndefined();
});

test("the divisions that are counted are those that are marked, and the last one is as long as its gap on the paper", () => {
  fc.assert(
    fc.property(feeds, values, (perTurn, value) => {
      const choice = forced(perTurn, value, "true");
      const [row = []] = graduations(choice, perTurn);
      expect(row).toHaveLength(choice.divisions);
      const gap = ((TURN - (row.at(-1)?.angle ?? 0)) / TURN) * perTurn;
      expect(gap).toBeCloseTo(choice.last ?? value, 9);
    }),
    { numRuns: 200 },
  );
});

describe("a screw of 2.50396 mm a turn in divisions of 0.05: the mark 0.004 mm before the zero is left out", () => {
  const findings = findingsOf(
    "name: L\nhandwheels: [{ name: Slide, travel: 60, feed: 2.50396, dial: { shape: drum, diameter: 40, width: 9, divisions: 0.05, closure: true } }]\n",
  );

  test("so there are 50 and the last is 0.054, in the choice and in its reasons", () => {
    const { chosen } = findings.handwheels[0]?.dial ?? {};
    expect(chosen).toMatchObject({ divisions: 50, last: expect.closeTo(0.05396, 9) });
    expect(chosen?.remarks.join("; ")).toContain("the last division is long: 0.054 mm instead of 0.05 mm");
  });

  test.each<[string, RegExp]>([
    ["dial", /one of 50 divisions.*Its last division is 0\.0540 mm/],
    ["ring-cutting", /\b50 marks/],
    ["dial-choices", /50 × 0\.05 mm.*the last division 0\.0540 mm/],
  ])("on the %s sheet", (sheet, words) => {
    const told = textsOf(findings, sheet);
    expect(told).toMatch(words);
    expect(told).not.toMatch(/\b51 (×|marks|divisions)/);
    expect(told).not.toContain("only 0.00");
  });

  test("on the command line", () => {
    const lines = choiceLines(findings).join("\n");
    expect(lines).toContain("50 × 0.05 mm");
    expect(lines).toMatch(/last division long \(0\.0540 mm\)/);
  });
});
