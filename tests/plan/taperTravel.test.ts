import { describe, expect, test } from "vitest";
import { lathe, planFor } from "../support/job.js";

type Point = readonly [along: number, across: number];

/** Turned about the origin. */
const swung = ([x, y]: Point, angle: number): Point => [
  x * Math.cos(angle) - y * Math.sin(angle),
  x * Math.sin(angle) + y * Math.cos(angle),
];

/** Two slopes of one cone, a difference of radii apart, swung so that both lie along the bed: how far the slide goes from one to
 *  the other, square to the bed. Nothing of this is taken from the plan. */
function squareToTheBed(large: number, small: number, length: number, difference: number): number {
  const rise = (large - small) / 2;
  const swing = -Math.atan2(rise, length);
  const slope = (off: number): Point[] =>
    [
      [0, small / 2 + off],
      [length, large / 2 + off],
    ].map(([x, y]) => swung([x as number, y as number], swing));
  const [inner, outer] = [slope(0), slope(difference)];
  const acrosses = [...inner, ...outer].map(([, across]) => across) as [number, number, number, number];
  // Swung rightly, either of them lies along the bed.
  expect(acrosses[0]).toBeCloseTo(acrosses[1], 9);
  expect(acrosses[2]).toBeCloseTo(acrosses[3], 9);
  return acrosses[2] - acrosses[0];
}

/** The dial is set to a twentieth of a division of 0.02 mm on diameter. */
const AS_SET = 0.0005 + 1e-9;

describe("how far the cross slide goes to a taper's depth", () => {
  const on = lathe("angleScales: [{ name: H, part: headstock, radius: 60 }]");
  // 20°, 5.7° and 1.4°: half angles where the cosine is worth 0.22, 0.01 and 0.0003 mm.
  test.each([
    [16, 8.72, 10],
    [16, 12, 20],
    [14, 12, 40],
  ])("from %f to %f mm over %f", (large, small, length) => {
    const travels = (by: string, head: string) =>
      planFor(
        [`do: taper, large: ${large}, small: ${small}, length: ${length}, by: ${by}`],
        head,
        on,
      ).steps[0]?.passes.at(-1);
    const bar = (held: string) => `bar: { diameter: 16, out: 60, held: ${held} }`;
    const difference = (16 - small) / 2;
    const square = squareToTheBed(large, small, length, difference);

    for (const last of [travels("headstock", bar("chuck")), travels("tailstock", bar("between centres"))]) {
      expect(Math.abs((last?.travel ?? Number.NaN) - square)).toBeLessThanOrEqual(AS_SET);
      // On the work that is the small diameter, whichever way it was reached.
      expect(last?.size).toBeCloseTo(small, 2);
    }
    const straight = travels("top slide", bar("chuck"));
    expect(Math.abs((straight?.travel ?? Number.NaN) - difference)).toBeLessThanOrEqual(AS_SET);
    expect(straight?.size).toBeCloseTo(small, 2);
  });

  test("at 20° the two ways differ by 0.22 mm on the slide: the one cannot stand for the other", () =>
    expect((16 - 8.72) / 2 - squareToTheBed(16, 8.72, 10, (16 - 8.72) / 2)).toBeCloseTo(0.22, 2));
});
