import fc from "fast-check";
import { expect, test } from "vitest";
import { dialReading, settingToMove } from "../../src/findings/settings.js";
import { findingsOf } from "../support/sheets.js";

const wheelOf = (dial: string) => {
  const [wheel] = findingsOf(
    `name: L\nhandwheels: [{ name: Cross slide, reads: diameter, feed: 2.117 mm, dial: { shape: drum, diameter: 40, width: 12, ${dial} } }]\n`,
  ).handwheels;
  if (wheel === undefined) throw new Error("no wheel");
  return wheel;
};
const travel = fc.double({ min: 0.01, max: 20, noNaN: true });

test("even: whole turns and what the dial then reads are the way gone, to a twentieth of a division", () => {
  const wheel = wheelOf("divisions: 0.05 mm, closure: even");
  const { divisions = 0 } = wheel.dial?.chosen ?? {};
  fc.assert(
    fc.property(travel, (way) => {
      const setting = settingToMove(wheel, way);
      const reading = setting && dialReading(wheel, setting, false);
      if (setting === undefined || reading === undefined) throw new Error("no reading");
      // The printed numbers go once round in `divisions` lines of 0.05; the slide goes 2.117 mm meanwhile.
      const gone = (setting.wholeTurns + reading / 0.05 / divisions) * 2.117;
      expect(Math.abs(gone - way)).toBeLessThanOrEqual(2.117 / divisions / 20 + 1e-9);
      const outward = dialReading(wheel, setting, true) ?? Number.NaN;
      expect(outward).toBeCloseTo(reading < 1e-9 ? 0 : divisions * 0.05 - reading, 9);
    }),
    { numRuns: 150 },
  );
});

test("rows: the number read is the way itself, less whole rounds of all rows, to a twentieth of a division and what a round is out by", () => {
  const wheel = wheelOf("divisions: 0.05 mm, closure: rows");
  const rows = wheel.dial?.chosen.rows ?? 0;
  expect(rows).toBeGreaterThan(1);
  const outPerRound = Math.abs(wheel.dial?.chosen.errorPerTurn ?? 0) * rows;
  fc.assert(
    fc.property(travel, (way) => {
      const setting = settingToMove(wheel, way);
      const reading = (setting && dialReading(wheel, setting, false)) ?? Number.NaN;
      const round = rows * 2 * 2.117;
      expect(reading).toBeGreaterThanOrEqual(0);
      expect(reading).toBeLessThan(round + 1e-6);
      const left = (2 * way - reading) % round;
      expect(Math.min(left, round - left)).toBeLessThanOrEqual(0.05 / 20 + outPerRound + 1e-9);
    }),
    { numRuns: 150 },
  );
});
