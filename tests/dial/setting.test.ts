import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { DialChoice } from "../../src/dial/finding.js";
import { divisionWorth, oldDialSetting, settingFor } from "../../src/dial/setting.js";

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

describe("a distance in turns and divisions", () => {
  test("10 mm on a 2.5 mm screw is 4 turns, not 3 and a hair", () => {
    expect(settingFor(10, 2.5, dial("even", 0.025, 100))).toMatchObject({ wholeTurns: 4, divisions: 0, error: 0 });
    expect(settingFor(0.3, 0.1, undefined).wholeTurns).toBe(3);
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
  const { wholeTurns, reading } = oldDialSetting(10, 1.995, 2);
  expect(wholeTurns).toBe(5);
  expect(reading).toBeCloseTo((10 / 1.995 - 5) * 2, 12);
});

test("two rows of 62.5 divisions: the third turn is on row 1 again, and its numbers go on from zero", () => {
  const rows = { ...dial("rows", 0.0254, 125), rows: 2 };
  expect(settingFor(1.5875 * 1.5, 1.5875, rows)).toMatchObject({ wholeTurns: 1, row: 2 });
  expect(settingFor(1.5875 * 1.5, 1.5875, rows).reading).toBeCloseTo(1.5875 * 1.5, 9);
  expect(settingFor(1.5875 * 2 + 0.254, 1.5875, rows)).toMatchObject({ wholeTurns: 2, row: 1 });
  expect(settingFor(1.5875 * 2 + 0.254, 1.5875, rows).reading).toBeCloseTo(0.254, 9);
});
