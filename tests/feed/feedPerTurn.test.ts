import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import type { FeedFinding, Fit } from "../../src/feed/finding.js";
import { fit } from "../../src/feed/fit.js";
import type { Feed } from "../../src/machine/machine.js";

const found = (feed: Feed): FeedFinding => {
  const finding = feedPerTurn(feed);
  if ("tooFew" in finding) throw new Error("too few readings");
  return finding;
};

describe("a feed without readings", () => {
  test("screw: pitch times starts", () => expect(found({ from: "screw", pitch: 1.5, starts: 2 }).perTurn).toBe(3));
  test("rack: pitch circumference through the reduction", () => {
    const rack = { from: "rack", module: 1.5, teeth: 14 } as const;
    expect(found({ ...rack, reduction: [1, 1] }).perTurn).toBeCloseTo(65.9734, 4);
    expect(found({ ...rack, reduction: [16, 64] }).perTurn).toBeCloseTo(16.4934, 4);
  });
  test("nothing says how good it is, unless the file does", () => {
    expect(found({ from: "screw", pitch: 2, starts: 1 }).uncertainty).toBeUndefined();
    expect(found({ from: "stated", perTurn: 2.54, uncertainty: 0.005 }).uncertainty).toBe(0.005);
  });
});

describe("a feed from readings", () => {
  /** Computed exactly: 11 readings of a nominal 1.27 mm screw on a 0.01 mm indicator (slope 6991/5500, sd 0.02/√10/√110). */
  const turns = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
  const travel = [0.02, 1.28, 2.56, 3.83, 5.09, 6.38, 7.64, 8.91, 10.19, 11.46, 12.72];

  test("slope, intercept, and half-width at 95 % as worked by exact fractions", () => {
    const finding = found({ from: "readings", gauge: 0.01, turns, travel });
    expect(finding.perTurn).toBeCloseTo(6991 / 5500, 13);
    expect(finding.fit?.intercept).toBeCloseTo(17 / 1100, 12);
    expect(finding.fit?.residualDeviation).toBeCloseTo(0.02 / Math.sqrt(10), 13);
    expect(finding.uncertainty).toBeCloseTo(0.0013641320956, 10);
  });

  test("a fit that scatters less than its gauge can tell claims no more than the gauge", () => {
    const perfect = found({ from: "readings", gauge: 0.01, turns, travel: turns.map((turn) => 1.27 * turn) });
    expect(perfect.fit?.residualDeviation).toBeLessThan(1e-12);
    expect(perfect.uncertainty).toBeCloseTo((2.26215716 * (0.01 / Math.sqrt(12))) / Math.sqrt(110), 9);
  });

  test("lost motion: mean of return minus out, in travel and in turn", () => {
    const finding = found({
      from: "readings",
      gauge: 0.01,
      turns,
      travel,
      back: travel.map((reading, index) => reading + (index % 2 === 0 ? 0.12 : 0.14)),
    });
    expect(finding.lostMotion?.travel).toBeCloseTo((6 * 0.12 + 5 * 0.14) / 11, 12);
    expect(finding.lostMotion?.turn).toBeCloseTo((6 * 0.12 + 5 * 0.14) / 11 / finding.perTurn, 12);
    expect(finding.lostMotion?.pairs).toBe(11);
  });

  test("an exact line is found whatever its slope, offset and order", () => {
    const line = fc.record({
      slope: fc.double({ min: 0.1, max: 50, noNaN: true }),
      offset: fc.double({ min: -1000, max: 1000, noNaN: true }),
      at: fc.uniqueArray(fc.integer({ min: -50, max: 50 }), { minLength: 3, maxLength: 20 }),
    });
    fc.assert(
      fc.property(line, ({ slope, offset, at }) => {
        const result = fit(
          at,
          at.map((turn) => offset + slope * turn),
        ) as Fit;
        expect(Math.abs(result.slope - slope)).toBeLessThan(1e-9);
        expect(Math.abs(result.intercept - offset)).toBeLessThan(1e-8);
      }),
    );
  });

  test("the doubt covers the truth 95 times in 100, over 3000 seeded runs with normal scatter", () => {
    // A small linear congruential generator (constants of Numerical Recipes) and Box–Muller: the same runs every time.
    let state = 12345;
    const uniform = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return (state + 0.5) / 2 ** 32;
    };
    const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    let covered = 0;
    for (let run = 0; run < 3000; run++) {
      const noisy = turns.slice(0, 8).map((turn) => 2.1 * turn + 0.01 * normal());
      const { perTurn, uncertainty = 0 } = found({ from: "readings", turns: turns.slice(0, 8), travel: noisy });
      if (Math.abs(perTurn - 2.1) <= uncertainty) covered++;
    }
    // 95 % ± three standard deviations of a count of 3000.
    expect(covered / 3000).toBeGreaterThan(0.938);
    expect(covered / 3000).toBeLessThan(0.962);
  });
});
