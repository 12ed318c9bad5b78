import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ChoiceOptions } from "../../src/dial/blank.js";
import { choicesFor } from "../../src/dial/choices.js";
import type { DialChoice } from "../../src/dial/finding.js";
import { LEAST_SPACING } from "../../src/dial/penalty.js";
import type { FeedFinding } from "../../src/feed/finding.js";
import { diameters, doubts, drum, feeds, values } from "./dials.js";

const metric: ChoiceOptions = { stripLength: 120, units: "mm" };

function measured(perTurn: number, uncertainty?: number): FeedFinding {
  return { perTurn, from: "readings", ...(uncertainty !== undefined && { uncertainty }) };
}

const said = (choice: DialChoice | undefined) =>
  choice && `${choice.closure} ${choice.divisionLabel}, ${choice.divisions} in ${choice.rows}`;

test("16 tpi forced on 0.001 in even stands first and tells its cost; better dials follow", () => {
  const wish = drum(40, { divisions: 0.0254, closure: "even" });
  const choices = choicesFor({ perTurn: 1.5875, from: "screw" }, "travel", wish, metric);
  expect(said(choices[0])).toBe("even 0.001 in, 63 in 1");
  expect(choices[0]?.remarks[0]).toBe("reads 0.0127 mm too much each turn; 0.20 mm over 25 mm of travel (none stated)");
  expect(choices[0]?.closes).toBe(false);
  expect(choices[1]?.penalty).toBeLessThan(choices[0]?.penalty ?? 0);
});

test("a cross slide of 2.1125 mm that reads diameter: two rows of 0.05 mm, exact", () => {
  const choices = choicesFor(measured(2.1125, 0.0015), "diameter", drum(38), metric);
  expect(said(choices[0])).toBe("rows 0.05 mm, 169 in 2");
  expect(choices[0]?.doubtOverTravel).toBeCloseTo((0.0015 * 2 * 25) / 2.1125, 12);
  expect(choices.map(said)).toContain("true 0.05 mm, 85 in 1");
  expect(choices.map(said)).toContain("even 0.025 mm, 169 in 1");
});

test("a feed of 2.54 mm: 127 of 0.02 mm for a file in mm, 100 of 0.001 in for a file in inches", () => {
  const options = { stripLength: Math.PI * 44 };
  expect(said(choicesFor(measured(2.54), "travel", drum(44), { ...options, units: "mm" })[0])).toBe(
    "even 0.02 mm, 127 in 1",
  );
  expect(said(choicesFor(measured(2.54), "travel", drum(44), { ...options, units: "in" })[0])).toBe(
    "even 0.001 in, 100 in 1",
  );
});

test("an error within the doubt of the feed counts as closing, and the remark says so", () => {
  const wish = drum(40, { divisions: 0.02, closure: "even" });
  const [within] = choicesFor(measured(2.5405, 0.001), "travel", wish, metric);
  expect(within?.closes).toBe(true);
  expect(within?.errorPerTurn).toBeCloseTo(-0.0005, 12);
  expect(within?.remarks[0]).toMatch(/^closes as well as the feed is known: reads 0.0005 mm too little each turn/);
  const [beyond] = choicesFor(measured(2.5425, 0.001), "travel", wish, metric);
  expect(beyond?.closes).toBe(false);
  expect(beyond?.penalty).toBeGreaterThan(within?.penalty ?? Number.POSITIVE_INFINITY);
});

test("rows that never close fall back to the nearest and say the error", () => {
  const [rows] = choicesFor(measured(Math.PI), "travel", drum(40, { divisions: 0.05, closure: "rows" }), metric);
  expect(rows?.closure).toBe("rows");
  expect(rows?.remarks[0]).toMatch(
    /^does not close in 6 rows or fewer; with \d rows? it reads 0\.\d+ mm too (much|little)/,
  );
});

test("a division finer than the eye, or wider than the turn, is drawn as asked and said to be so", () => {
  const [fine] = choicesFor(measured(2), "travel", drum(40, { divisions: 0.005 }), metric);
  expect(fine?.divisions).toBe(400);
  expect(fine?.remarks).toContain("marks 0.3 mm apart are too close to read");
  const [wide] = choicesFor(measured(2), "travel", drum(40, { divisions: 5 }), metric);
  expect(wide?.remarks).toContain("one division is more than one turn");
  const [swarm] = choicesFor(measured(20), "travel", drum(40, { divisions: 1e-6 }), metric);
  expect(swarm?.remarks).toContain("20000000 marks are too many to draw");
});

test("the stated travel is the one that errors are told over; in inches an inch is supposed", () => {
  const stated = choicesFor(measured(1.5875), "travel", drum(40, { divisions: 0.0254, closure: "even" }), {
    ...metric,
    travel: 100,
  });
  expect(stated[0]?.remarks[0]).toBe("reads 0.0127 mm too much each turn; 0.80 mm over 100 mm of travel");
  const [inch] = choicesFor(measured(1.5875), "travel", drum(40, { divisions: 0.0254, closure: "even" }), {
    stripLength: 126,
    units: "in",
  });
  expect(inch?.remarks[0]).toBe("reads 0.0005 in too much each turn; 0.0080 in over 1 in of travel (none stated)");
});

test("property: there is always a choice; the free ones can be read, are in order, differ, and repeat themselves", () => {
  fc.assert(
    fc.property(
      feeds,
      diameters,
      doubts,
      fc.boolean(),
      fc.boolean(),
      (perTurn, diameter, doubt, metricFile, onDiameter) => {
        const options = { stripLength: Math.PI * diameter, units: metricFile ? ("mm" as const) : ("in" as const) };
        const all = () =>
          choicesFor(measured(perTurn, doubt), onDiameter ? "diameter" : "travel", drum(diameter), options);
        const choices = all();
        expect(choices.length).toBeGreaterThan(0);
        expect(choices.every((choice) => choice.spacing >= LEAST_SPACING - 1e-9 && choice.remarks.length > 0)).toBe(
          true,
        );
        expect(choices.every((choice, i) => i === 0 || choice.penalty >= (choices[i - 1]?.penalty ?? 0) - 1e-9)).toBe(
          true,
        );
        expect(new Set(choices.map((choice) => `${choice.closure} ${choice.divisionLabel}`)).size).toBe(choices.length);
        expect(all()).toEqual(choices);
      },
    ),
    { numRuns: 60 },
  );
});

test("property: what the file forces stands first, once, and the rest still follow", () => {
  const wishes = fc.record({
    divisions: fc.option(values),
    closure: fc.option(fc.constantFrom("even", "true", "rows")),
  });
  fc.assert(
    fc.property(feeds, diameters, wishes, (perTurn, diameter, { divisions, closure }) => {
      fc.pre(divisions !== null || closure !== null);
      const options: ChoiceOptions = { stripLength: Math.PI * diameter, units: "mm" };
      const wish = drum(diameter, { ...(divisions && { divisions }), ...(closure && { closure: closure as "even" }) });
      const [first, ...others] = choicesFor(measured(perTurn), "travel", wish, options);
      if (divisions !== null) expect(first?.divisionValue).toBeCloseTo(divisions, 12);
      // Rows of which one closes as well are even divisions, and called so.
      if (closure !== null) expect([closure, ...(closure === "rows" ? ["even"] : [])]).toContain(first?.closure);
      expect(others.length).toBeGreaterThan(0);
      expect(others.map(said)).not.toContain(said(first));
    }),
    { numRuns: 60 },
  );
});

test("where even divisions close, no true dial and no rows of the same value are offered", () => {
  const choices = choicesFor(measured(2.54), "travel", drum(44), { stripLength: 138, units: "mm" });
  expect(choices.filter((choice) => choice.divisionLabel === "0.02 mm").map(said)).toEqual(["even 0.02 mm, 127 in 1"]);
  expect(choices.every((choice) => choice.closure !== "rows" || choice.rows > 1)).toBe(true);
});

test("an error too small for the figures shown is never a bare nought", () => {
  const [even] = choicesFor(measured(2.54002, 0.001), "travel", drum(40, { divisions: 0.02, closure: "even" }), metric);
  expect(even?.remarks[0]).toContain("reads under 0.0001 mm too little each turn; under 0.001 mm over 25 mm");
});

test("a metric screw under a file in inches gets inches where true marks come near to closing", () => {
  // 59 × 0.001 in leave 0.00006 in, whose mark would print as one with the zero: the last division hardly looks long.
  const [chosen] = choicesFor({ perTurn: 1.5, from: "stated" }, "travel", drum(45), {
    ...{ stripLength: 141, units: "in", travel: 70 },
  });
  expect(said(chosen)).toBe("true 0.001 in, 59 in 1");
});

test("even marks asked for under a file in inches are inches, unless others close and they do not", () => {
  const even = (perTurn: number) =>
    said(
      choicesFor(measured(perTurn, 0.0012), "diameter", drum(38, { closure: "even" }), {
        stripLength: 120,
        units: "in",
        travel: 114,
      })[0],
    );
  expect(even(2.5485)).toMatch(/^even 0\.\d+ in/);
  expect(even(1.5)).toMatch(/^even 0\.\d+ mm/);
});

test("a row that the travel never reaches is on no dial, not where the file asks for rows either", () => {
  const options = { ...metric, stripLength: 180, travel: 60 };
  const wish = drum(58, { divisions: 1, closure: "rows" });
  const [row, ...others] = choicesFor(measured(82.5, 0.86), "travel", wish, options);
  expect(row).toMatchObject({ closure: "true", rows: 1 });
  expect(row?.remarks[0]).toBe("the travel ends before row 2 begins: one row serves");
  for (const { rows } of others) expect(rows).toBe(1);
  // As soon as it is reached there is one.
  expect(choicesFor(measured(82.5), "travel", wish, { ...options, travel: 83 })[0]).toMatchObject({ rows: 2 });
  fc.assert(
    fc.property(feeds, fc.double({ min: 0.2, max: 80, noNaN: true }), (perTurn, travel) => {
      const all = choicesFor(measured(perTurn), "travel", drum(40), { ...metric, travel });
      for (const { rows } of all) if (rows > 1) expect((rows - 1) * perTurn).toBeLessThan(travel);
    }),
  );
});

describe("ten threads to the inch on diameter, 5.08 mm a turn, under a file in millimetres", () => {
  const ways = (diameter: number, units: "mm" | "in" = "mm", perTurn = 2.54) =>
    choicesFor({ perTurn, from: "stated" }, "diameter", drum(diameter), {
      ...{ stripLength: Math.PI * diameter, units, travel: 60 },
    });
  const fours = (choices: ReturnType<typeof ways>) =>
    choices.filter(({ divisionLabel }) => /0*4 mm$/.test(divisionLabel));

  test.each([40, 50, 60])(
    "127 equal divisions of 0.04 mm close, and go before true marks whose turns are counted: drum of %d",
    (drumOf) => {
      expect(said(ways(drumOf)[0])).toBe("even 0.04 mm, 127 in 1");
    },
  );

  test("fours are for what closes by them alone: not where 0.02 is read at ease, nor with anything left over", () => {
    expect(said(ways(90)[0])).toBe("even 0.02 mm, 254 in 1");
    expect(fours(ways(90))).toEqual([]);
    for (const perTurn of [2, 2.5, 2.5503, 3.175])
      expect(fours(ways(45, "mm", perTurn)), `${perTurn} a turn`).toEqual([]);
    expect(ways(45).filter(({ divisionValue, closure }) => divisionValue === 0.04 && closure !== "even")).toEqual([]);
  });

  test("a file in inches has its hundred of 0.002 in", () =>
    expect(said(ways(45, "in")[0])).toBe("even 0.002 in, 100 in 1"));
});

test("true marks close where nothing is left over, rows within a quarter of the feed's doubt, even ones within all of it", () => {
  const closes = (perTurn: number, closure: "even" | "true" | "rows", divisions: number, doubt?: number) =>
    choicesFor(measured(perTurn, doubt), "travel", drum(40, { divisions, closure }), metric)[0]?.closes;
  expect([closes(2, "true", 0.02), closes(2, "true", 0.03), closes(2, "true", 0.03, 0.1)]).toEqual([
    true,
    false,
    false,
  ]);
  // Two rows of 0.025 are 0.0001 a turn short of 2.1126.
  expect([0.001, 0.00041, 0.00039].map((doubt) => closes(2.1126, "rows", 0.025, doubt))).toEqual([true, true, false]);
  expect([0.00011, 0.00009, undefined].map((doubt) => closes(2.0001, "even", 0.02, doubt))).toEqual([
    true,
    false,
    false,
  ]);
});

test("what a division names alone is taken as it costs least, whatever closes it", () => {
  const first = (perTurn: number, divisions: number) =>
    choicesFor(measured(perTurn), "travel", drum(40, { divisions }), metric);
  for (const [perTurn, divisions] of [
    [1.5875, 0.0254],
    [2.1125, 0.05],
    [2, 0.03],
    [2.54, 0.04],
  ] as const) {
    const ways = (["even", "true", "rows"] as const).map(
      (closure) => choicesFor(measured(perTurn), "travel", drum(40, { divisions, closure }), metric)[0]?.penalty ?? 0,
    );
    expect(first(perTurn, divisions)[0]?.penalty).toBeCloseTo(Math.min(...ways), 9);
  }
});
