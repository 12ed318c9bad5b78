import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readingWords, sumRules } from "../../src/blocks/work/planWords.js";
import type { HandwheelFinding } from "../../src/findings/findings.js";
import { dialTurn, settingToMove } from "../../src/findings/settings.js";
import { shownAt } from "../../src/findings/settingWords.js";
import { readingAt } from "../../src/plan/zero.js";
import { TURN } from "../../src/quantity/angle.js";
import { findingsOf } from "../support/sheets.js";

/** Any dial, forced to whatever closure: most of them do not come out even. */
const wheels = fc
  .record({
    perTurn: fc.double({ min: 0.5, max: 8, noNaN: true }),
    divisions: fc.constantFrom("0.02 mm", "0.05 mm", "0.1 mm", "0.001 in", "0.002 in"),
    closure: fc.constantFrom("even", "true", "rows"),
    reads: fc.constantFrom("travel", "diameter"),
    fixed: fc.boolean(),
  })
  .map(({ perTurn, ...dial }): HandwheelFinding => {
    const [wheel] = findingsOf(
      `name: L\nhandwheels: [{ name: Slide, reads: ${dial.reads}, feed: { perTurn: ${perTurn} mm, uncertainty: 0.0005 mm }, dial: { shape: drum, diameter: 60 mm, width: 18 mm, fixed: ${dial.fixed}, divisions: ${dial.divisions}, closure: ${dial.closure} } }]\n`,
    ).handwheels;
    if (wheel?.dial === undefined || wheel.reading === undefined) throw new Error("no dial");
    return wheel;
  });
const travels = fc.double({ min: 0.01, max: 40, noNaN: true });

/** Parts of a turn from zero at which a figure stands on the ring as it is drawn, between its two nearest marks on the row. */
function placeOnRing({ dial, reading }: HandwheelFinding, value: number, row: number): number {
  const marks = dial?.rows[row - 1] ?? [];
  const above = Math.min(
    Math.max(
      marks.findIndex((mark) => mark.value >= value),
      1,
    ),
    marks.length - 1,
  );
  const [low, high] = value > (marks.at(-1)?.value ?? 0) ? marks.slice(-2) : marks.slice(above - 1, above + 1);
  if (low === undefined || high === undefined || reading === undefined) throw new Error("no marks");
  return (low.angle + ((value - low.value) / (high.value - low.value)) * (high.angle - low.angle)) / TURN;
}

/** Half of the tenth to which a division is split, and what printing to a tenth rounds away, mm of travel. */
const split = ({ dial, reading }: HandwheelFinding): number =>
  ((dial?.divisionWorth ?? 0) * 0.101) / (reading?.factor ?? 1) + 1e-9;

const labelWorth = ({ dial }: HandwheelFinding): number => dial?.labelWorth ?? Number.NaN;

describe("a reading is a place on the ring", () => {
  test("property: looked up on the ring as drawn, turns and figure move the slide as far as was asked, whatever the closure", () => {
    fc.assert(
      fc.property(wheels, travels, (wheel, travel) => {
        const setting = settingToMove(wheel, travel);
        const shown = setting && shownAt(wheel, setting);
        if (shown === undefined || setting === undefined) throw new Error("nothing shown");
        const part = placeOnRing(wheel, Number(shown.figure) * labelWorth(wheel), shown.row ?? 1);
        const gone = (setting.wholeTurns + part) * (wheel.feed?.perTurn ?? 0);
        expect(Math.abs(gone - travel)).toBeLessThanOrEqual(split(wheel));
      }),
      { numRuns: 1500 },
    );
  });

  test("property: added to wherever a dial stands that cannot be set to 0, the plan's figures move the slide as far", () => {
    fc.assert(
      fc.property(wheels, travels, fc.double({ min: 0, max: 1, noNaN: true }), (wheel, travel, start) => {
        const reading = readingAt(wheel, travel);
        const turn = dialTurn(wheel);
        fc.pre(wheel.handwheel.dial?.fixed === true && wheel.dial?.chosen.rows === 1);
        if (reading === undefined || turn === undefined || wheel.dial === undefined) throw new Error("no reading");
        const { turns, figure } = readingWords(wheel, reading);
        // Written down at the touch, a sum of more than a turn read less one turn.
        const sum = start * turn + Number(figure) * labelWorth(wheel);
        const over = sum >= turn ? 1 : 0;
        const part = placeOnRing(wheel, sum - over * turn, 1) + over - placeOnRing(wheel, start * turn, 1);
        expect(Math.abs((Number(turns) + part) * (wheel.feed?.perTurn ?? 0) - travel)).toBeLessThanOrEqual(
          split(wheel),
        );
        expect(sumRules([wheel])[0]).toContain(` ${(turn / labelWorth(wheel)).toFixed(figure.split(".")[1]?.length)} `);
      }),
      { numRuns: 1500 },
    );
  });

  test("a ring of 40 divisions on a screw of 3.97: it goes from 0 to 4.00, and 10 mm is 2 turns and 2.08 by its numbers", () => {
    const [wheel] = findingsOf(
      "name: L\nhandwheels: [{ name: Slide, reads: diameter, feed: { perTurn: 1.985, uncertainty: 0.0005 }, dial: { shape: drum, diameter: 44, width: 10, fixed: true, divisions: 0.1 mm, closure: even } }]\n",
    ).handwheels;
    const reading = wheel && readingAt(wheel, 5);
    if (wheel === undefined || reading === undefined) throw new Error("no reading");
    expect(readingWords(wheel, reading)).toMatchObject({ turns: "2", figure: "2.08" });
    expect(sumRules([wheel])[0]).toContain("4.00 mm");
  });
});
