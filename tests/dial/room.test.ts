import { describe, expect, test } from "vitest";
import { BELOW, bandWith, roundedUp, rowsTooLow, toEdge, wordsOn } from "../../src/dial/bandRoom.js";
import { choicesFor } from "../../src/dial/choices.js";
import type { Development } from "../../src/dial/development.js";
import type { DialChoice, Graduation } from "../../src/dial/finding.js";
import { labelling } from "../../src/dial/labelling.js";
import { drum } from "./dials.js";

const numbers = (...labels: string[]): Graduation[] =>
  labels.map((label, value) => ({ angle: value, rank: 1, value, label }));
const chosen = { unit: "mm" } as DialChoice;
const strip = (width: number): Development => ({ kind: "strip", length: 120, width });
const ring = (width: number): Development => ({ kind: "ring", outer: 30 + width, inner: 30, sweep: 6.28 });
const low = (flat: Development, rows: readonly (readonly Graduation[])[], labelUnit = "mm") =>
  rowsTooLow({ chosen, labelUnit, flat, rows });

describe("rows that are too low for their numbers", () => {
  const two = [numbers("0", "1"), numbers("2", "3")];
  test("ask for two bands and the edge; one row, or no surface, asks for nothing", () => {
    // Two bands of the usual words, the knife's edge 0.5 mm clear in the place of what is clear below figures.
    const em = wordsOn(20, true);
    const room = 2 * bandWith(em) + 0.5 - BELOW;
    expect(low(strip(20), two)).toBeUndefined();
    const found = low(strip(8), [...two, ...two]);
    expect(found?.rows).toBe(4);
    expect(found?.least).toBeCloseTo(2 * room - (0.5 - BELOW), 9);
    expect(low(strip(0.5), [two[0] ?? []])).toBeUndefined();
    expect(rowsTooLow({ chosen, labelUnit: "mm", flat: undefined, rows: two } as never)).toBeUndefined();
  });
  test("the width that is told does, and a hair less does not, on strips and rings", () => {
    for (const flat of [strip, ring])
      for (const rows of [two, [...two, ...two], [numbers("0.5"), numbers("1")], [...two, ...two, ...two]]) {
        const { least = Number.NaN } = low(flat(1), rows) ?? {};
        expect(low(flat(least), rows)).toBeUndefined();
        expect(low(flat(least - 0.01), rows)).toBeDefined();
      }
  });
  test("as many rows fit as are told to, and not one more", () => {
    const rows = Array.from({ length: 6 }, () => numbers("10"));
    const { fit = 0 } = low(strip(9), rows) ?? {};
    expect(fit).toBeGreaterThan(1);
    expect(low(strip(9), rows.slice(0, fit))).toBeUndefined();
    expect(low(strip(9), rows.slice(0, fit + 1))).toBeDefined();
  });
  test("a point in any number of any row, or numbers that count parts of the unit, ask for the tail of a comma", () => {
    const plain = low(strip(4), two)?.least ?? Number.NaN;
    const comma = low(strip(4), [numbers("0", "1"), numbers("2", "2.5")])?.least;
    expect(comma).toBeGreaterThan(plain);
    expect(low(strip(4), [numbers("0", "2,5"), numbers("2")])?.least).toBe(comma);
    expect(low(strip(4), two, "1 = 0.01 mm")?.least).toBe(comma);
    const bare = [{ angle: 9, rank: 3 as const, value: 9 }];
    expect(low(strip(4), [[...numbers("0", "1"), ...bare], numbers("2", "3")])?.least).toBe(plain);
  });
  test("a second scale shares the room, and its numbers count", () => {
    const second = (labelUnit: string) =>
      rowsTooLow({
        chosen,
        labelUnit: "mm",
        flat: strip(2),
        rows: [numbers("0")],
        second: { chosen, labelUnit, rows: [numbers("1")] },
      } as never);
    expect(second("mm")?.rows).toBe(2);
    expect(second("mm")?.least).toBe(low(strip(2), two)?.least);
    expect(second("1 = 0.01 mm")?.least).toBeGreaterThan(second("mm")?.least ?? 0);
  });
  test("scissors along a hollow edge want more room than a knife", () =>
    expect(toEdge(true) - toEdge(false)).toBeCloseTo(0.3, 9));
  test("a width is told to a tenth of a millimetre or a hundredth of an inch, upwards", () => {
    expect([5, 5.01, 5.1].map((least) => roundedUp(least, "mm"))).toEqual([5, 5.1, 5.1]);
    expect([25.4, 25.5].map((least) => roundedUp(least, "in") / 25.4)).toEqual(
      [1, 1.01].map((one) => expect.closeTo(one, 9)),
    );
  });
});

describe("what is told of a choice", () => {
  const told = (
    perTurn: number,
    wish: Parameters<typeof drum>[1],
    more: { uncertainty?: number; reads?: "diameter"; travel?: number; units?: "mm" | "in" } = {},
  ) => {
    const { uncertainty, reads = "travel", travel, units = "mm" } = more;
    const feed = { perTurn, from: "readings" as const, ...(uncertainty !== undefined && { uncertainty }) };
    return (
      choicesFor(feed, reads, drum(40, wish), { stripLength: 126, units, ...(travel !== undefined && { travel }) })[0]
        ?.remarks ?? []
    );
  };
  test("true marks: how long the last division is, where the turn begins again, and whether it can be seen", () => {
    // 79 of 0.02 mm in 1.5875 leave 0.0075, on 126 mm of strip 0.6 mm.
    const remarks = told(1.5875, { divisions: 0.02, closure: "true" });
    expect(remarks[0]).toMatch(/0\.0075 mm/);
    expect(remarks[0]).toMatch(/0\.6 mm/);
    expect(remarks[1]).toContain("1.5875 mm");
    const blurs = (perTurn: number, divisions: number) =>
      told(perTurn, { divisions, closure: "true" }).filter((one) => one === "its mark prints as one with the zero");
    expect(blurs(1.5875, 0.02)).toEqual([]);
    // 0.0025 left of 0.01: 0.2 mm, on marks of 0.8 mm that are left.
    expect(blurs(1.5825, 0.01)).toHaveLength(1);
    const onDiameter = told(1.5875, { divisions: 0.04, closure: "true" }, { reads: "diameter" });
    expect(onDiameter.join(" ")).toContain("3.175 mm on diameter");
  });
  test("rows that close: after how many turns, on how many divisions", () => {
    const remarks = told(2.1125, { divisions: 0.025, closure: "rows" });
    expect(remarks[0]).toMatch(/2/);
    expect(remarks[0]).toMatch(/169/);
    const doubtful = told(2.1126, { divisions: 0.025, closure: "rows" }, { uncertainty: 0.001 });
    expect(doubtful[0]).toMatch(/2 rows/);
    expect(doubtful[0]).toMatch(/0\.0001 mm too little/);
  });
  test("over the travel as the dial reads it: twice the way on diameter, and whether the file states it", () => {
    const wish = { divisions: 0.05, closure: "even" as const };
    const way = (more: Parameters<typeof told>[2]) => told(2.11, wish, more)[0] ?? "";
    expect(way({ travel: 60 })).toMatch(/over 60 mm/);
    expect(way({ travel: 60 })).not.toContain("none stated");
    expect(way({ reads: "diameter", travel: 60 })).toMatch(/120 mm/);
    expect(way({ reads: "diameter", travel: 60 })).not.toContain("stated");
    expect(way({ reads: "diameter" })).toMatch(/50 mm.*stated/);
  });
  test("the doubt of the feed, where there is one, over the same way", () => {
    const wish = { divisions: 0.02, closure: "even" as const };
    expect(told(2, wish)).toHaveLength(1);
    // 0.001 in each of 30 turns.
    const [, doubt] = told(2, wish, { uncertainty: 0.001, travel: 60 });
    expect(doubt).toMatch(/0\.03 mm.*60 mm/);
  });
});

test("a number at about every 8 mm, among those that its figures leave room for", () => {
  const at = (spacing: number, divisions = 200, divisionValue = 0.01) =>
    labelling({
      closure: "even",
      divisionValue,
      divisions,
      divisionsPerTurn: divisions,
      rows: 1,
      spacing,
      unit: "mm",
    } as DialChoice).every;
  expect([0.8, 1.6, 8].map((spacing) => at(spacing))).toEqual([10, 5, 1]);
  // Where tens are too near each other, twenties.
  expect(at(0.3)).toBeGreaterThan(10);
  expect([2, 4].map((spacing) => at(spacing, 80, 0.025))).toEqual([4, 2]);
});

test("numbers are chosen by their distance, by fours on a dial of few divisions alone, by twenties where tens are too near", () => {
  const at = (spacing: number, divisions: number, divisionValue: number) =>
    labelling({
      ...{ closure: "even", divisionValue, divisions, divisionsPerTurn: divisions, rows: 1, spacing, unit: "mm" },
    } as DialChoice).every;
  // Fives would have room at 1 mm; tens come nearer to 8 mm.
  expect([at(1, 200, 0.01), at(0.3, 200, 0.01)]).toEqual([10, 20]);
  expect(at(2, 39, 0.05)).toBe(4);
  expect(at(2, 40, 0.05)).not.toBe(4);
});
