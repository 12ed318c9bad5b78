import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { settingToRead } from "../../src/findings/settings.js";
import { figureUnit, settingFigures, settingWords, shownAt } from "../../src/findings/settingWords.js";
import { findingsOf } from "../support/sheets.js";

const wheelOf = (feed: string, dial: string, units = "mm", reads = "travel") => {
  const [wheel] = findingsOf(
    `name: L\nunits: ${units}\nhandwheels: [{ name: Slide, reads: ${reads}, feed: { perTurn: ${feed}, uncertainty: 0.0000001 mm }, dial: { shape: drum, diameter: 60 mm, width: 18 mm, ${dial} } }]\n`,
  ).handwheels;
  if (wheel?.dial === undefined || wheel.reading === undefined) throw new Error("no dial");
  return { wheel, dial: wheel.dial, perTurn: wheel.reading.perTurn };
};

/** Feeds that close, nearly close and do not; even, true and in rows; with numbers that count and that do not. */
const wheels = [
  wheelOf("2 mm", "closure: even"),
  wheelOf("1.9946 mm", "divisions: 0.02 mm, closure: even"),
  wheelOf("2.11255 mm", "divisions: 0.05 mm, closure: rows", "mm", "diameter"),
  wheelOf("1.5875 mm", "divisions: 0.001 in, closure: rows"),
  wheelOf("1.5875 mm", "divisions: 0.02 mm, closure: true"),
  wheelOf("2.117 mm", "divisions: 0.025 mm, closure: true"),
  wheelOf("0.1 in", "divisions: 0.001 in, closure: even", "in"),
  wheelOf("0.08317 in", "divisions: 0.001 in, closure: true", "in", "diameter"),
  wheelOf("40 mm", "divisions: 0.5 mm, closure: even"),
];
const any = fc.constantFrom(...wheels);
/** Half of all distances within a tenth of a division of a whole turn. */
const distances = fc.record({
  turns: fc.integer({ min: 0, max: 30 }),
  part: fc.double({ min: 0, max: 1, noNaN: true }),
  near: fc.option(fc.double({ min: -0.1, max: 0.1, noNaN: true })),
});

describe("what a dial is told to show", () => {
  test("property: read back, turns and figure and row come to the distance, within what is told to be left", () => {
    fc.assert(
      fc.property(any, distances, ({ wheel, dial, perTurn }, { turns, part, near }) => {
        const { chosen, labelWorth = Number.NaN, divisionWorth } = dial;
        const distance = Math.max(
          1e-4,
          near === null ? (turns + part) * perTurn : turns * perTurn + near * divisionWorth,
        );
        const setting = settingToRead(wheel, distance);
        const shown = setting && shownAt(wheel, setting);
        if (setting === undefined || shown === undefined) throw new Error("nothing shown");
        const says = Number(shown.figure) * labelWorth;
        // An even dial's numbers go round once in its divisions, whatever a turn truly is; the others' are the way itself.
        const way = chosen.closure === "even" ? (says / chosen.divisionValue) * divisionWorth : says;
        const rounds = chosen.rows === 1 ? setting.wholeTurns : setting.wholeTurns - (setting.wholeTurns % chosen.rows);
        const half = 0.5 * 10 ** -(shown.figure.split(".")[1]?.length ?? 0) * labelWorth;
        expect(Math.abs(rounds * perTurn + way - distance - setting.error)).toBeLessThanOrEqual(half * 1.01 + 1e-9);
      }),
      { numRuns: 3000 },
    );
  });

  test("property: no figure reaches the number that a whole turn, or a round of rows, would have; the row is in force", () => {
    fc.assert(
      fc.property(any, distances, fc.boolean(), ({ wheel, dial, perTurn }, { turns, part, near }, outwards) => {
        const { chosen, labelWorth = Number.NaN, divisionWorth } = dial;
        const distance = Math.max(
          1e-4,
          near === null ? (turns + part) * perTurn : turns * perTurn + near * divisionWorth,
        );
        const setting = settingToRead(wheel, distance);
        const shown = setting && shownAt(wheel, setting, outwards);
        if (shown === undefined) throw new Error("nothing shown");
        const round = chosen.closure === "even" ? chosen.divisions * chosen.divisionValue : chosen.rows * perTurn;
        const says = Number(shown.figure) * labelWorth;
        expect(says).toBeGreaterThanOrEqual(0);
        expect(says).toBeLessThan(round - 1e-9);
        expect(shown.row === undefined).toBe(chosen.rows === 1);
        if (chosen.rows === 1) return;
        const row = shown.row ?? 0;
        expect(says).toBeGreaterThanOrEqual((row - 1) * perTurn - 0.06 * divisionWorth);
        expect(says).toBeLessThan(row * perTurn + 0.06 * divisionWorth);
      }),
      { numRuns: 3000 },
    );
  });

  test("in words and figures: 5.98 on the second row, as its card would say", () => {
    const { wheel } = wheels[2] as (typeof wheels)[number];
    const setting = settingToRead(wheel, 4 * 4.2251 + 5.98);
    if (setting === undefined) throw new Error("no setting");
    expect(settingWords(wheel, setting)).toBe("5 turns, then the dial reads 5.980 mm, row 2");
    expect(settingFigures(wheel, setting)).toBe("5 + 5.980, row 2");
    expect(figureUnit(wheel)).toBe("mm");
    expect(figureUnit((wheels[6] as (typeof wheels)[number]).wheel)).toBe("× 0.001 in");
  });
});
