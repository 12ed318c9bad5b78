import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Fit } from "../../src/feed/finding.js";
import { fit as fitLine } from "../../src/feed/fit.js";

const points = fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.double({ min: -100, max: 100, noNaN: true })), {
  minLength: 3,
  maxLength: 15,
});
const lineThrough = (readings: readonly (readonly [number, number])[]) =>
  fitLine(
    readings.map(([turn]) => turn),
    readings.map(([, travel]) => travel),
  );

describe("a line through readings", () => {
  test("the order of the readings changes nothing", () => {
    const shuffled = points.chain((readings) =>
      fc.tuple(fc.constant(readings), fc.shuffledSubarray(readings, { minLength: readings.length })),
    );
    fc.assert(
      fc.property(shuffled, ([before, after]) => {
        const [a, b] = [lineThrough(before), lineThrough(after)];
        if ("tooFew" in a || "tooFew" in b) {
          expect(b).toEqual(a);
          return;
        }
        for (const key of ["slope", "intercept", "slopeError", "interceptError", "residualDeviation"] as const)
          expect(Math.abs(a[key] - b[key])).toBeLessThan(1e-9);
      }),
    );
  });

  test("what is left over adds up to nothing, and leans neither way along the turns", () => {
    fc.assert(
      fc.property(points, (readings) => {
        const line = lineThrough(readings);
        if ("tooFew" in line) return;
        expect(Math.abs(line.residuals.reduce((sum, left) => sum + left, 0))).toBeLessThan(1e-9);
        const lean = line.residuals.reduce((sum, left, i) => sum + left * (readings[i]?.[0] ?? 0), 0);
        expect(Math.abs(lean)).toBeLessThan(1e-7);
      }),
    );
  });

  test("readings far from zero lose no digits", () => {
    const far = [1e8, 1e8 + 1, 1e8 + 2, 1e8 + 3];
    const line = fitLine(far, [0, 2.11, 4.22, 6.33]) as Fit;
    expect(line.slope).toBeCloseTo(2.11, 12);
  });

  test.each([
    { turns: [0, 1], travel: [0, 2], differentTurns: 2 },
    { turns: [3, 3, 3, 3], travel: [1, 2, 3, 4], differentTurns: 1 },
    { turns: [], travel: [], differentTurns: 0 },
  ])("too few to carry a line: turns $turns", ({ turns, travel, differentTurns }) => {
    expect(fitLine(turns, travel)).toEqual({ tooFew: true, readings: turns.length, differentTurns });
  });

  test("one reading for each turn, each a number", () => {
    expect(() => fitLine([0, 1, 2], [0, 1])).toThrow(RangeError);
    expect(() => fitLine([0, 1, 2], [0, Number.NaN, 2])).toThrow(RangeError);
  });
});
