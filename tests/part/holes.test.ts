import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { centreDrillFor, centreDrillUpTo, centreHole } from "../../src/part/centreHole.js";
import { drillPoint } from "../../src/part/drillPoint.js";
import { cylinder, lowered, type Stretch, volumeOf } from "../../src/part/outline.js";
import {
  bar,
  bored,
  depthOfHole,
  facedTo,
  marked,
  metalOf,
  narrowsAt,
  openOver,
  partedAt,
  type Surface,
  shifted,
  thinnestWall,
  turned,
  turnedRound,
} from "../../src/part/workpiece.js";

describe("centre holes", () => {
  test("the cone of 60° goes from the mouth to the pilot, and the pilot 1.2 of its width beyond", () => {
    for (const [pilot, wide] of [
      [1, 2.12],
      [2, 4.25],
      [3.15, 6.7],
      [6.3, 13.2],
      // Of inch drills the mouth is 2.12 pilots: 1/8 in.
      [3.175, 2.12 * 3.175],
      [5.5, 2.12 * 5.5],
    ] as const) {
      const { depth, mouth, cuts } = centreHole(pilot);
      expect(mouth).toBeCloseTo(wide, 9);
      const [cone, bottom] = cuts;
      expect([cone?.from, cone?.start, cone?.end]).toEqual([0, mouth, pilot]);
      // Either side leans 30° from the axis: tan 30° = 1/√3.
      expect(((cone?.to ?? 0) * 2) / Math.sqrt(3)).toBeCloseTo(mouth - pilot, 9);
      expect(bottom).toEqual(cylinder(cone?.to ?? 0, depth, pilot));
      expect(depth - (cone?.to ?? 0)).toBeCloseTo(1.2 * pilot, 9);
    }
  });

  test("the largest whose mouth fits, the smallest where none does; for work the mouth is 0.4 of it at most", () => {
    expect([1, 2.11, 2.12, 2.64, 2.65, 13.2, 100].map((mouth) => centreDrillUpTo(mouth))).toEqual([
      1, 1, 1, 1, 1.25, 6.3, 6.3,
    ]);
    // 0.4 · 25 is 10: the mouth of 4 mm is 8.5, that of 5 is 10.6.
    expect(centreDrillFor(25)).toBe(4);
    expect(centreDrillFor(26.5)).toBe(5);
    // In inches: 0.4 of 1 in is 0.4 in, 2.12 · 3/16 = 0.3975; a hair less and 1/8 it is.
    expect(centreDrillFor(25.4, "in")).toBeCloseTo((3 / 16) * 25.4, 9);
    expect(centreDrillFor(25, "in")).toBeCloseTo(25.4 / 8, 9);
    expect(centreDrillFor(0.5, "in")).toBeCloseTo(0.025 * 25.4, 9);
  });
});

test("a drill's point of 118° reaches 0.3 of its width beyond (handbooks print 0.3 d)", () => {
  expect(drillPoint(10)).toBeCloseTo(3.004, 3);
  expect(drillPoint(1) * 2 * Math.tan((59 * Math.PI) / 180)).toBeCloseTo(1, 12);
});

/** Countersunk from 12 to 8 over 4 mm, 8 wide to 10, 5 wide to 20. */
const stepped = [{ from: 0, to: 4, start: 12, end: 8 }, cylinder(0, 10, 8), cylinder(0, 20, 5)].reduce(
  bored,
  bar(30, 0, 40),
);

describe("a hole from the free end", () => {
  test("is as deep as it is as wide", () => {
    expect([5, 5.1, 8, 8.1].map((wide) => depthOfHole(stepped, wide))).toEqual([20, 10, 10, 0]);
    expect(depthOfHole(bar(30, 3, 40), 1)).toBe(3);
    expect(depthOfHole(bar(30, 3, 40, 10), 10)).toBe(40);
    // A hole that begins inside, or goes on behind whole metal, is none from this end.
    const inner = bored(bar(30, 0, 40), cylinder(10, 40, 6));
    expect(depthOfHole(inner, 6)).toBe(0);
    expect(depthOfHole(bored(inner, cylinder(0, 5, 6)), 6)).toBe(5);
  });

  test("is narrower past the countersink, where its cone has come down to that", () => {
    // The cone loses 1 mm in each mm of depth.
    expect([11, 9, 8, 6, 5, 4].map((wide) => narrowsAt(stepped, wide))).toEqual([1, 3, 10, 10, 20, 20]);
    expect(narrowsAt(stepped, 13)).toBe(0);
    expect(narrowsAt(bar(30, 3, 40), 1)).toBe(3);
    expect(narrowsAt(bored(bar(30, 0, 40), cylinder(10, 40, 6)), 3)).toBe(0);
    // Wider again behind a narrow neck: the neck counts.
    const necked = bored(bored(bar(30, 0, 40), cylinder(0, 40, 5)), cylinder(20, 40, 9));
    expect([narrowsAt(necked, 7), narrowsAt(necked, 5)]).toEqual([0, 40]);
  });

  test("is open over a length only where it is whole, as wide as at its narrowest there", () => {
    expect(openOver(stepped, 0, 20)).toBe(5);
    expect(openOver(stepped, 0, 10)).toBe(8);
    expect(openOver(stepped, 0, 20.1)).toBe(0);
    expect(openOver(stepped, 25, 30)).toBe(0);
    expect(openOver(stepped, 1, 3)).toBeCloseTo(9, 9);
  });
});

test("the thinnest wall stands where bore and outside come nearest, on the radius", () => {
  expect(thinnestWall(bar(30, 0, 40))).toBeUndefined();
  expect(thinnestWall(stepped)).toEqual({ wall: 9, at: 0 });
  expect(thinnestWall(turned(stepped, cylinder(12, 18, 8)))).toEqual({ wall: 1.5, at: 12 });
});

describe("threads and knurls", () => {
  const thread: Surface = { kind: "thread", side: "outside", from: 5, to: 15, name: "M12" };
  const bolt = marked(bar(12, 0, 40, 4), thread);
  const left = (work: typeof bolt) => work.surfaces.map(({ from, to }) => [from, to]);

  test("are gone where a cut took their metal, and stay on both sides of it", () => {
    expect(left(turned(bolt, cylinder(8, 10, 9)))).toEqual([
      [5, 8],
      [10, 15],
    ]);
    expect(left(turned(bolt, cylinder(0, 10, 9)))).toEqual([[10, 15]]);
    expect(left(turned(bolt, cylinder(0, 20, 9)))).toEqual([]);
  });

  test("stay where the tool took nothing, only met their end, or was on the other side", () => {
    expect(left(turned(bolt, cylinder(8, 10, 12)))).toEqual([[5, 15]]);
    expect(left(turned(bolt, cylinder(0, 5, 9)))).toEqual([[5, 15]]);
    expect(left(turned(bolt, cylinder(15, 20, 9)))).toEqual([[5, 15]]);
    expect(left(bored(bolt, cylinder(0, 40, 8)))).toEqual([[5, 15]]);
    const nut = marked(bar(20, 0, 10, 5), { ...thread, side: "inside", from: 0, to: 10 });
    expect(left(bored(nut, cylinder(0, 3, 6)))).toEqual([[3, 10]]);
    expect(left(turned(nut, cylinder(0, 3, 16)))).toEqual([[0, 10]]);
    expect(left(bored(nut, cylinder(0, 3, 5)))).toEqual([[0, 10]]);
  });

  test("end where the work was faced or parted, and fall away with what is cut off", () => {
    expect(left(facedTo(bolt, 7))).toEqual([[7, 15]]);
    expect(left(facedTo(bolt, 15))).toEqual([]);
    expect(left(partedAt(bolt, 9))).toEqual([[5, 9]]);
    expect(left(partedAt(bolt, 5))).toEqual([]);
    const two = marked(marked(bar(12, 0, 40), { ...thread, from: 0, to: 2 }), thread);
    expect(left(turnedRound(two, 0))).toEqual([
      [25, 35],
      [38, 40],
    ]);
    expect(left(shifted(bolt, 3))).toEqual([[8, 18]]);
    const both = [facedTo(bolt, 7), partedAt(bolt, 7)];
    expect(both.map(metalOf).reduce((sum, one) => sum + one)).toBeCloseTo(metalOf(bolt), 6);
  });
});

test("a bar is drilled through where a bore is told, and whole where none is", () => {
  const ring = (Math.PI / 4) * (30 ** 2 - 10 ** 2) * 40;
  fc.assert(
    fc.property(fc.integer({ min: -20, max: 20 }), (from) => {
      expect(metalOf(bar(30, from, from + 40, 10))).toBeCloseTo(ring, 6);
      expect(bar(30, from, from + 40).bore).toEqual([]);
      expect(metalOf(bar(30, from, from + 40))).toBeCloseTo(volumeOf([cylinder(0, 40, 30)]), 6);
    }),
  );
});

describe("stretches in one line are one", () => {
  const aside = cylinder(50, 60, 1);
  test("cones as well, however long each is, and none that bend", () => {
    const cone = [
      { from: 0, to: 4, start: 12, end: 10 },
      { from: 4, to: 10, start: 10, end: 7 },
    ];
    expect(lowered(cone, aside)).toEqual([{ from: 0, to: 10, start: 12, end: 7 }]);
    const bent = [cone[0] as Stretch, { from: 4, to: 10, start: 10, end: 8 }];
    expect(lowered(bent, aside)).toEqual(bent);
    const up = [cone[0] as Stretch, { from: 4, to: 10, start: 10, end: 13 }];
    expect(lowered(up, aside)).toEqual(up);
  });

  test("what a cut meets but for a hair leaves no sliver", () => {
    const cut = { from: 0, to: 20, start: 10 + 1e-9, end: 8 };
    expect(lowered([cylinder(0, 20, 10)], cut)).toEqual([{ from: expect.closeTo(0, 7), to: 20, start: 10, end: 8 }]);
  });
});
