import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { DialChoice } from "../../src/dial/finding.js";
import { divisionWorth, readsPerTurn, settingFor } from "../../src/dial/setting.js";

const dial = (closure: DialChoice["closure"], divisionValue: number, divisions: number): DialChoice => ({
  closure,
  divisionValue,
  divisionLabel: "",
  unit: "mm",
  divisions,
  rows: 1,
  divisionsPerTurn: divisions,
  beginsAgain: false,
  leftOver: 0,
  errorPerTurn: 0,
  errorOverTravel: 0,
  overTravel: 25,
  spacing: 1,
  penalty: 0,
  remarks: [],
});

/** What an old dial reads that shows `shows` in a turn, told to `least`: its divisions, ten times that, need not close. */
function onOldDial(distance: number, perTurn: number, shows: number, least: number) {
  const value = 10 * least;
  const { wholeTurns, divisions = Number.NaN } = settingFor(distance, perTurn, dial("even", value, shows / value));
  return { wholeTurns, reading: divisions * value };
}

describe("a distance in turns and divisions", () => {
  test("10 mm on a 2.5 mm screw is 4 turns, not 3 and a hair", () => {
    expect(settingFor(10, 2.5, dial("even", 0.025, 100))).toMatchObject({ wholeTurns: 4, divisions: 0, error: 0 });
    expect(settingFor(0.3, 0.1, undefined).wholeTurns).toBe(3);
  });

  test("half a tenth of a division goes up whatever the last binary digit, as a printed number does", () => {
    // Sixty-fourths of an inch on screws of whole threads an inch, in divisions of 0.001 in: each ends on a half or on none.
    for (const threads of [5, 8, 10, 16, 20])
      for (let sixtyFourths = 1; sixtyFourths < 128; sixtyFourths++) {
        const perTurn = 25.4 / threads;
        const { divisions = 0, wholeTurns } = settingFor(
          (sixtyFourths * 25.4) / 64,
          perTurn,
          dial("even", 0.0254, 1000 / threads),
        );
        const tenthsOfThou = Math.round(wholeTurns * (10000 / threads) + divisions * 10);
        // Whole turns are a whole number of tenths, so the half is where the distance itself has it.
        expect(tenthsOfThou, `${sixtyFourths}/64, ${threads} tpi`).toBe(Math.floor((sixtyFourths * 10000) / 64 + 0.5));
      }
  });

  test("what is left after setting to a tenth of a division is told, and is at most a twentieth", () => {
    const closure = fc.constantFrom("even", "true", "rows") as fc.Arbitrary<DialChoice["closure"]>;
    const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        closure,
        size(0.5, 10),
        size(0.01, 100),
        fc.integer({ min: 20, max: 200 }),
        (kind, perTurn, distance, count) => {
          const choice = dial(kind, perTurn / (count + 0.3), count);
          const { wholeTurns, divisions = 0, error } = settingFor(distance, perTurn, choice);
          const moved = wholeTurns * perTurn + divisions * divisionWorth(choice, perTurn);
          expect(Math.abs(moved - distance - error)).toBeLessThan(1e-9);
          expect(Math.abs(error)).toBeLessThanOrEqual(divisionWorth(choice, perTurn) / 20 + 1e-9);
        },
      ),
    );
  });
});

test("the old dial, made for 2 mm a turn on a true 1.995: 10 mm is 5 turns and 0.0251 mm on it", () => {
  const { wholeTurns, reading } = onOldDial(10, 1.995, 2, 0.0001);
  expect(wholeTurns).toBe(5);
  expect(Math.abs(reading - (10 / 1.995 - 5) * 2)).toBeLessThanOrEqual(0.00005);
});

describe("rounding carries", () => {
  test("a hair under five turns is five turns and nothing, not four and 200.0 divisions", () => {
    expect(settingFor(9.9998, 2, dial("even", 0.01, 200))).toMatchObject({ wholeTurns: 5, divisions: 0 });
    expect(settingFor(9.9998, 2, dial("even", 0.01, 200)).error).toBeCloseTo(0.0002, 12);
    expect(onOldDial(9.9998, 2, 2, 0.001)).toMatchObject({ wholeTurns: 5, reading: 0 });
  });

  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  test("whatever feed, rows, divisions and distance: less than a turn of divisions is told, on a row that is in force", () => {
    const kinds = fc.constantFrom("even", "true", "rows") as fc.Arbitrary<DialChoice["closure"]>;
    const rows = fc.integer({ min: 1, max: 6 });
    // Half of all distances lie within a tenth of a division of a whole turn, where rounding has to carry.
    const near = fc.record({ turns: fc.integer({ min: 1, max: 200 }), off: size(-0.1, 0.1), free: fc.boolean() });
    fc.assert(
      fc.property(kinds, rows, size(0.3, 10), fc.integer({ min: 20, max: 250 }), near, size(0.001, 300), (...given) => {
        const [closure, rowCount, perTurn, count, { turns, off, free }, far] = given;
        const rowsUsed = closure === "rows" ? rowCount : 1;
        // Printed values a hair off what the parts of a turn truly move, as they are where they do not close.
        const value = perTurn / (count + 0.37 / rowsUsed);
        const choice = { ...dial(closure, value, rowsUsed * count), rows: rowsUsed };
        const worth = divisionWorth(choice, perTurn);
        const distance = free ? far : Math.max(0.001, turns * perTurn + off * worth);
        const setting = settingFor(distance, perTurn, choice);
        const { wholeTurns, divisions = Number.NaN, row, reading, error } = setting;
        expect(divisions * worth).toBeLessThan(perTurn);
        if (rowsUsed === 1) expect(Number(divisions.toFixed(1)) * worth).toBeLessThan(perTurn + 1e-9);
        expect(wholeTurns * perTurn + divisions * worth).toBeCloseTo(distance + error, 6);
        // To the tenth on either side, or to the end of a round that a tenth does not fill.
        expect(Math.abs(error)).toBeLessThanOrEqual(0.1 * worth + 1e-9);
        if (row === undefined || reading === undefined) return;
        expect(row).toBe((wholeTurns % rowsUsed) + 1);
        const round = readsPerTurn(choice, perTurn);
        expect(reading).toBeLessThan(rowsUsed * round);
        expect(Math.floor(reading / round + 1e-9) + 1).toBe(row);
      }),
      { numRuns: 2000 },
    );
  });

  test("an old dial is never told to read its whole turn", () => {
    fc.assert(
      fc.property(size(0.3, 10), size(0.3, 10), size(0.001, 300), (perTurn, shows, distance) => {
        const { reading } = onOldDial(distance, perTurn, shows, 0.001);
        expect(Number(reading.toFixed(3))).toBeLessThan(shows + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });
});

test("two rows of 62.5 divisions: the third turn is on row 1 again, and its numbers go on from zero", () => {
  const rows = { ...dial("rows", 0.0254, 125), rows: 2 };
  expect(settingFor(1.5875 * 1.5, 1.5875, rows)).toMatchObject({ wholeTurns: 1, row: 2 });
  // Half way between two tenths of a division: the upper one.
  expect(settingFor(1.5875 * 1.5, 1.5875, rows).reading).toBeCloseTo(93.8 * 0.0254, 9);
  expect(settingFor(1.5875 * 2 + 0.254, 1.5875, rows)).toMatchObject({ wholeTurns: 2, row: 1 });
  expect(settingFor(1.5875 * 2 + 0.254, 1.5875, rows).reading).toBeCloseTo(0.254, 9);
});
