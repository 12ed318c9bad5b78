import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  between,
  cylinder,
  diameterAt,
  diameterOf,
  greatest,
  HAIR,
  least,
  lowered,
  mirrored,
  moved,
  type Outline,
  raised,
  volumeOf,
} from "../../src/part/outline.js";
import { BESIDE, faultOf, gapped, place, places, readAt, stretch, whole } from "./outlines.js";

const closeTo = (one: number | undefined, other: number | undefined, slack: number): boolean =>
  one === undefined || other === undefined ? one === other : Math.abs(one - other) <= slack;

/** Both have the same diameter wherever either has an edge, and between. */
function expectAlike(one: Outline, other: Outline): void {
  for (const at of places(one, other)) {
    const [a, b] = [readAt(one, at), readAt(other, at)];
    expect(closeTo(a, b, 1e-6), `${a} and ${b} at ${at}`).toBe(true);
  }
}

describe("a tool from outside", () => {
  test("leaves the lower of both wherever it went, and the work where it did not", () => {
    fc.assert(
      fc.property(gapped, stretch, (outline, cut) => {
        const after = lowered(outline, cut);
        expect(faultOf(after)).toBeUndefined();
        for (const at of places(outline, [cut])) {
          const [own, tool] = [readAt(outline, at), readAt([cut], at)];
          const expected = own === undefined || tool === undefined ? own : Math.min(own, tool);
          // Where both cross just there, neither side is meant.
          if (after.some(({ from, to }) => Math.abs(from - at) < 1e-9 || Math.abs(to - at) < 1e-9)) continue;
          expect(closeTo(readAt(after, at), expected, 1e-6), `at ${at}`).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  test("never adds metal, and a second pass over the same takes nothing", () => {
    fc.assert(
      fc.property(whole, stretch, (outline, cut) => {
        const once = lowered(outline, cut);
        expect(volumeOf(once)).toBeLessThanOrEqual(volumeOf(outline) + 1e-6);
        expectAlike(lowered(once, cut), once);
      }),
    );
  });

  test("leaves no gap wider than a few hairs in whole metal", () => {
    fc.assert(
      fc.property(whole, fc.array(stretch, { maxLength: 4 }), (outline, cuts) => {
        const after = cuts.reduce((work: Outline, cut) => lowered(work, cut), outline);
        for (const [index, { from }] of after.entries())
          if (index > 0) expect(from - (after[index - 1]?.to ?? from)).toBeLessThanOrEqual(10 * HAIR);
      }),
    );
  });

  test("stretches that go on in one line become one", () => {
    const bar = [cylinder(0, 20, 16)];
    const passes = [cylinder(0, 5, 12), cylinder(5, 10, 12)];
    expect(passes.reduce((work: Outline, cut) => lowered(work, cut), bar)).toEqual([
      cylinder(0, 10, 12),
      cylinder(10, 20, 16),
    ]);
  });

  test("a taper meets a cylinder of 10 where it is 10 itself: halfway from 8 to 12", () => {
    expect(lowered([cylinder(0, 20, 10)], { from: 0, to: 20, start: 8, end: 12 })).toEqual([
      { from: 0, to: 10, start: 8, end: 10 },
      cylinder(10, 20, 10),
    ]);
  });
});

describe("a tool from inside", () => {
  test("leaves the higher of both wherever it went, a hole where none was, and the rest as it was", () => {
    fc.assert(
      fc.property(gapped, stretch, (outline, cut) => {
        const after = raised(outline, cut);
        expect(faultOf(after)).toBeUndefined();
        for (const at of places(outline, [cut])) {
          const [own, tool] = [readAt(outline, at), readAt([cut], at)];
          const expected = tool === undefined ? own : Math.max(own ?? 0, tool);
          // Where both cross just there, neither side is meant.
          if (after.some(({ from, to }) => Math.abs(from - at) < 1e-9 || Math.abs(to - at) < 1e-9)) continue;
          expect(closeTo(readAt(after, at), expected, 1e-6), `at ${at}`).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  test("never closes a hole, and a second pass over the same takes nothing", () => {
    fc.assert(
      fc.property(gapped, stretch, (outline, cut) => {
        const once = raised(outline, cut);
        expect(volumeOf(once)).toBeGreaterThanOrEqual(volumeOf(outline) - 1e-6);
        expectAlike(raised(once, cut), once);
      }),
    );
  });
});

test("a volume is that of many thin discs", () => {
  fc.assert(
    fc.property(gapped, (outline) => {
      const discs = outline.map(({ from, to, start, end }) => {
        const thick = (to - from) / 2000;
        let sum = 0;
        for (let disc = 0; disc < 2000; disc++)
          sum += (Math.PI / 4) * (start + ((end - start) * (disc + 0.5)) / 2000) ** 2 * thick;
        return sum;
      });
      const sum = discs.reduce((all, one) => all + one, 0);
      expect(Math.abs(volumeOf(outline) - sum)).toBeLessThanOrEqual(1e-6 * sum);
    }),
    { numRuns: 50 },
  );
});

test("a volume is that of its parts", () => {
  fc.assert(
    fc.property(gapped, place, (outline, at) => {
      const [left, right] = [between(outline, -1000, at), between(outline, at, 1000)];
      // What is thinner than a hair is lost.
      expect(Math.abs(volumeOf(left) + volumeOf(right) - volumeOf(outline))).toBeLessThan(1e-4);
    }),
  );
});

test("between two places is what lies there, and nothing else", () => {
  fc.assert(
    fc.property(gapped, place, place, (outline, a, b) => {
      const [from, to] = [Math.min(a, b), Math.max(a, b)];
      const part = between(outline, from, to);
      expect(faultOf(part)).toBeUndefined();
      for (const at of places(outline, [cylinder(from, to, 1)]))
        expect(closeTo(readAt(part, at), from < at && at < to ? readAt(outline, at) : undefined, 1e-6)).toBe(true);
    }),
  );
});

test("all of an outline is itself", () => {
  fc.assert(
    fc.property(gapped, (outline) => {
      expect(between(outline, -1000, 1000)).toEqual(outline);
    }),
  );
});

test("moved there and back is where it was, and every diameter goes with it", () => {
  fc.assert(
    fc.property(gapped, place, (outline, by) => {
      expectAlike(moved(moved(outline, by), -by), outline);
      for (const at of places(outline))
        expect(closeTo(readAt(moved(outline, by), at + by), readAt(outline, at), 1e-6)).toBe(true);
    }),
  );
});

test("mirrored twice is as it was; once, what lay at z lies at about − z", () => {
  fc.assert(
    fc.property(gapped, place, (outline, about) => {
      const once = mirrored(outline, about);
      expect(faultOf(once)).toBeUndefined();
      expectAlike(mirrored(once, about), outline);
      for (const at of places(outline)) expect(closeTo(readAt(once, about - at), readAt(outline, at), 1e-6)).toBe(true);
      expect(volumeOf(once)).toBeCloseTo(volumeOf(outline), 6);
    }),
  );
});

test("greatest and least are those of all places between; 0 and endless where nothing is", () => {
  fc.assert(
    fc.property(gapped, place, place, (outline, a, b) => {
      const [from, to] = [Math.min(a, b), Math.max(a, b) + 0.1];
      const read = places(outline, [cylinder(from, to, 1)])
        .filter((at) => from < at && at < to)
        .flatMap((at) => readAt(outline, at) ?? []);
      const steepest = 100 * BESIDE;
      expect(Math.abs(greatest(outline, from, to) - Math.max(0, ...read))).toBeLessThanOrEqual(steepest);
      if (read.length === 0) expect(least(outline, from, to)).toBe(Number.POSITIVE_INFINITY);
      else expect(Math.abs(least(outline, from, to) - Math.min(...read))).toBeLessThanOrEqual(steepest);
    }),
  );
});

describe("the diameter at an edge", () => {
  test("is on each side that of the stretch there, or 0", () => {
    fc.assert(
      fc.property(gapped, (outline) => {
        for (const { from, to, start, end } of outline) {
          expect(diameterAt(outline, from)).toBeCloseTo(start, 9);
          expect(diameterAt(outline, to, -1)).toBeCloseTo(end, 9);
          const before = outline.find((other) => other.to === from);
          const after = outline.find((other) => other.from === to);
          expect(diameterAt(outline, from, -1)).toBeCloseTo(before?.end ?? 0, 9);
          expect(diameterAt(outline, to, 1)).toBeCloseTo(after?.start ?? 0, 9);
        }
      }),
    );
  });

  test("holds a hair beside the edge as well: places are sums, and sums round", () => {
    const shoulder = [cylinder(0, 0.3, 8), cylinder(0.3, 1, 12)];
    expect([diameterAt(shoulder, 0.1 + 0.2), diameterAt(shoulder, 0.1 + 0.2, -1)]).toEqual([12, 8]);
    expect([diameterAt(shoulder, 0.3 - 1e-9), diameterAt(shoulder, 0.3 - 1e-9, -1)]).toEqual([12, 8]);
  });

  test("between edges both sides are one", () => {
    fc.assert(
      fc.property(gapped, (outline) => {
        for (const at of places(outline)) {
          expect(diameterAt(outline, at)).toBe(diameterAt(outline, at, -1));
          expect(closeTo(diameterAt(outline, at), readAt(outline, at) ?? 0, 1e-6)).toBe(true);
        }
      }),
    );
  });
});

test("a cylinder has its diameter to the last bit wherever it is asked", () => {
  expect(diameterOf(cylinder(0, 3, 11.9), 0.1 + 0.2)).toBe(11.9);
});
