import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cylinder, type Outline, raised, volumeOf } from "../../src/part/outline.js";
import {
  bar,
  bored,
  boreOver,
  endsOf,
  facedTo,
  marked,
  metalOf,
  openOver,
  outsideOver,
  partedAt,
  shifted,
  thinnestWall,
  turned,
  turnedRound,
  type Workpiece,
} from "../../src/part/workpiece.js";
import { BESIDE, faultOf, gapped, place, places, readAt, stretch, whole } from "./outlines.js";

/** Round work with holes, none beyond its metal; some wider than it, as a botched job has them. */
const work: fc.Arbitrary<Workpiece> = fc
  .tuple(whole, fc.array(stretch, { maxLength: 3 }), place, place)
  .map(([outside, cuts, a, b]) => {
    const blank: Workpiece = { outside, bore: [], surfaces: [] };
    const holed = cuts.reduce(bored, blank);
    const surface = { kind: "thread" as const, side: "outside" as const, name: "M6" };
    return marked(holed, { ...surface, from: Math.min(a, b), to: Math.max(a, b) + 1 });
  });

const span = fc.tuple(place, place).map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) + 0.1 }));

/** What is read of an outline strictly between two places; undefined where nothing is. */
const readBetween = (outline: Outline, { from, to }: { from: number; to: number }) =>
  places(outline, [cylinder(from, to, 1)])
    .filter((at) => from < at && at < to)
    .map((at) => readAt(outline, at));

const SLACK = 200 * BESIDE;

function expectSame(one: Workpiece, other: Workpiece): void {
  for (const part of ["outside", "bore"] as const) {
    expect(one[part].length).toBe(other[part].length);
    for (const [index, stretch] of one[part].entries())
      for (const key of ["from", "to", "start", "end"] as const)
        expect(stretch[key]).toBeCloseTo(other[part][index]?.[key] ?? Number.NaN, 9);
  }
  expect(one.surfaces.map(({ name, kind, side }) => [name, kind, side])).toEqual(
    other.surfaces.map(({ name, kind, side }) => [name, kind, side]),
  );
  for (const [index, { from, to }] of one.surfaces.entries()) {
    expect(from).toBeCloseTo(other.surfaces[index]?.from ?? Number.NaN, 9);
    expect(to).toBeCloseTo(other.surfaces[index]?.to ?? Number.NaN, 9);
  }
}

describe("turned end for end", () => {
  test("twice is the work again", () => {
    fc.assert(
      fc.property(work, place, (before, end) =>
        expectSame(turnedRound(turnedRound(before, end), endsOf(before).from), before),
      ),
    );
  });

  test("the end that was in the chuck lies where it is said, and no metal is lost", () => {
    fc.assert(
      fc.property(work, place, (before, end) => {
        const after = turnedRound(before, end);
        expect(endsOf(after).from).toBeCloseTo(end, 9);
        expect(endsOf(after).to - endsOf(after).from).toBeCloseTo(endsOf(before).to - endsOf(before).from, 9);
        expect(metalOf(after)).toBeCloseTo(metalOf(before), 5);
      }),
    );
  });

  test("a shoulder, a hole and a thread lie at the other end", () => {
    const pin = bored(turned(bar(16, 0, 40), cylinder(0, 10, 8)), cylinder(0, 15, 3));
    const threaded = marked(pin, { kind: "thread", side: "outside", from: 1, to: 9, name: "M8" });
    expect(turnedRound(threaded, 0)).toEqual({
      outside: [cylinder(0, 30, 16), cylinder(30, 40, 8)],
      bore: [cylinder(25, 40, 3)],
      surfaces: [{ kind: "thread", side: "outside", from: 31, to: 39, name: "M8" }],
    });
  });
});

test("shifted there and back is where it was", () => {
  fc.assert(fc.property(work, place, (before, by) => expectSame(shifted(shifted(before, by), -by), before)));
});

test("faced and parted: what is left is what lay there, surfaces included", () => {
  fc.assert(
    fc.property(work, place, (before, at) => {
      const [left, right] = [partedAt(before, at), facedTo(before, at)];
      // What is thinner than a hair is lost.
      expect(Math.abs(metalOf(left) + metalOf(right) - metalOf(before))).toBeLessThan(1e-3);
      for (const { to } of [...left.outside, ...left.bore, ...left.surfaces]) expect(to).toBeLessThanOrEqual(at);
      for (const { from } of [...right.outside, ...right.bore, ...right.surfaces])
        expect(from).toBeGreaterThanOrEqual(at);
    }),
  );
});

test("a hole ends with the metal, wherever the drill went on", () => {
  fc.assert(
    fc.property(whole, stretch, (outside, cut) => {
      const { bore } = bored({ outside, bore: [], surfaces: [] }, cut);
      expect(faultOf(bore)).toBeUndefined();
      const ends = endsOf({ outside, bore: [], surfaces: [] });
      for (const at of places(outside, [cut])) {
        const tool = ends.from < at && at < ends.to ? readAt([cut], at) : undefined;
        const found = readAt(bore, at);
        expect(found === undefined).toBe(tool === undefined);
        expect(found ?? 0).toBeCloseTo(tool ?? 0, 6);
      }
    }),
  );
});

test("outside and bore over a length are the largest read there, 0 where nothing is", () => {
  fc.assert(
    fc.property(work, span, (before, { from, to }) => {
      const most = (outline: Outline) =>
        Math.max(0, ...readBetween(outline, { from, to }).map((diameter) => diameter ?? 0));
      expect(Math.abs(outsideOver(before, from, to) - most(before.outside))).toBeLessThanOrEqual(SLACK);
      expect(Math.abs(boreOver(before, from, to) - most(before.bore))).toBeLessThanOrEqual(SLACK);
    }),
  );
});

describe("the way through", () => {
  test("is the smallest bore read over the length, and 0 where the metal is whole anywhere in it", () => {
    const bores = fc.oneof(
      gapped,
      fc.tuple(gapped, stretch).map(([bore, cut]) => raised(bore, cut)),
      whole,
    );
    let open = 0;
    fc.assert(
      fc.property(bores, span, (bore, { from, to }) => {
        const read = readBetween(bore, { from, to }).map((diameter) => diameter ?? 0);
        const expected = Math.min(...read);
        if (expected > 0) open++;
        expect(Math.abs(openOver({ outside: [], bore, surfaces: [] }, from, to) - expected)).toBeLessThanOrEqual(SLACK);
      }),
      { numRuns: 500 },
    );
    // Else the property would say nothing of open bores.
    expect(open).toBeGreaterThan(10);
  });

  test("of a blind hole: open to its floor, shut beyond", () => {
    const blind = bored(bar(16, 0, 40), cylinder(0, 15, 5));
    expect([openOver(blind, 0, 15), openOver(blind, 0, 15.01), openOver(blind, 20, 30)]).toEqual([5, 0, 0]);
  });

  test("over no length there is none: never endless", () => {
    const blind = bored(bar(16, 0, 40), cylinder(0, 15, 5));
    for (const at of [0, 5, 15, 20]) expect(openOver(blind, at, at)).toBe(0);
  });
});

describe("the thinnest wall", () => {
  test("is the least that is read between bore and outside, and lies where it is said", () => {
    let found = 0;
    fc.assert(
      fc.property(work, (before) => {
        const thinnest = thinnestWall(before);
        const read = places(before.outside, before.bore).flatMap((at) => {
          const [outside, bore] = [readAt(before.outside, at), readAt(before.bore, at)];
          return outside === undefined || bore === undefined ? [] : [{ at, wall: (outside - bore) / 2 }];
        });
        expect(thinnest === undefined).toBe(read.length === 0);
        if (thinnest === undefined) return;
        found++;
        const [least] = read.toSorted((a, b) => a.wall - b.wall);
        expect(Math.abs(thinnest.wall - (least?.wall ?? Number.NaN))).toBeLessThanOrEqual(SLACK);
        const there = read.filter(({ at }) => Math.abs(at - thinnest.at) <= 2 * BESIDE).map(({ wall }) => wall);
        expect(Math.min(...there)).toBeLessThanOrEqual(thinnest.wall + SLACK);
      }),
      { numRuns: 300 },
    );
    expect(found).toBeGreaterThan(50);
  });

  test("is less than nothing where the bore breaks out", () => {
    const through = turned(bored(bar(16, 0, 40), cylinder(0, 20, 10)), cylinder(0, 5, 8));
    expect(thinnestWall(through)).toEqual({ wall: -1, at: 0 });
  });

  test("there is none in whole metal", () => expect(thinnestWall(bar(16, 0, 40))).toBeUndefined());
});

test("metal: a tube of 20 by 10, 30 long, is 2250 π; a blind hole of 4 for 10 takes 40 π off it", () => {
  expect(metalOf(bar(20, 0, 30, 10))).toBeCloseTo(2250 * Math.PI, 9);
  expect(metalOf(bored(bar(20, 0, 30), cylinder(0, 10, 4)))).toBeCloseTo(2960 * Math.PI, 9);
});

test("no tool adds metal", () => {
  fc.assert(
    fc.property(work, stretch, (before, cut) => {
      expect(metalOf(bored(before, cut))).toBeLessThanOrEqual(metalOf(before) + 1e-6);
      expect(volumeOf(turned(before, cut).outside)).toBeLessThanOrEqual(volumeOf(before.outside) + 1e-6);
    }),
  );
});
