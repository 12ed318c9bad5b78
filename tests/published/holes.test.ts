import { describe, expect, test } from "vitest";
import { centreDrillFor, centreHole } from "../../src/part/centreHole.js";
import { drillPoint, POINT_ANGLE } from "../../src/part/drillPoint.js";
import { toDegrees } from "../../src/quantity/angle.js";

describe("the point of a drill", () => {
  test("of 118° is 0.3004 of its diameter long: half over tan 59° (handbooks print 0.3 d; from memory)", () => {
    expect(toDegrees(POINT_ANGLE)).toBeCloseTo(118, 12);
    for (const diameter of [1, 3.3, 8, 13]) {
      expect(drillPoint(diameter) / diameter).toBeCloseTo(0.3004, 4);
      expect(Number((drillPoint(diameter) / diameter).toFixed(2))).toBe(0.3);
    }
  });

  test("a line from its tip to its rim stands at 59° to the axis", () => {
    expect(toDegrees(Math.atan2(5, drillPoint(10)))).toBeCloseTo(59, 12);
  });
});

describe("centre holes of form A (ISO 866, from memory)", () => {
  test.each([
    [1, 2.12],
    [1.25, 2.65],
    [1.6, 3.35],
    [2, 4.25],
    [2.5, 5.3],
    [3.15, 6.7],
    [4, 8.5],
    [5, 10.6],
    [6.3, 13.2],
  ])("pilot %d: mouth %d", (pilot, mouth) => {
    const hole = centreHole(pilot);
    expect(hole.mouth).toBe(mouth);
    const [cone, straight, ...more] = hole.cuts;
    expect(more).toEqual([]);
    expect(cone).toMatchObject({ from: 0, start: mouth, end: pilot });
    const length = (cone?.to ?? 0) - (cone?.from ?? 0);
    expect(2 * toDegrees(Math.atan2((mouth - pilot) / 2, length))).toBeCloseTo(60, 9);
    expect(straight).toEqual({ from: cone?.to, to: hole.depth, start: pilot, end: pilot });
    // The pilot of a drill of form A is a little longer than its diameter.
    expect((straight?.to ?? 0) - (straight?.from ?? 0)).toBeGreaterThan(pilot);
  });

  test("the cone of pilot 2 is 1.95 deep (ISO 6411, from memory)", () =>
    expect(centreHole(2).cuts[0]?.to).toBeCloseTo(1.95, 2));

  test("a pilot that is not in the table has a cone of 60° too, and a mouth between its neighbours'", () => {
    const { mouth, cuts } = centreHole(1.8);
    expect(mouth).toBeGreaterThan(3.35);
    expect(mouth).toBeLessThan(4.25);
    expect(2 * toDegrees(Math.atan2((mouth - 1.8) / 2, cuts[0]?.to ?? 0))).toBeCloseTo(60, 9);
  });

  test("the drill for work is the largest whose mouth is within 0.4 of it; the smallest for thin work", () => {
    expect([2, 5, 6, 10, 11, 16, 30, 100].map((diameter) => centreDrillFor(diameter))).toEqual([
      1, 1, 1, 1.6, 2, 2.5, 5, 6.3,
    ]);
  });
});
