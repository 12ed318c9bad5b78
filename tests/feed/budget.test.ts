import { describe, expect, test } from "vitest";
import { type Budget, budget, type Contribution } from "../../src/feed/budget.js";
import type { Fit } from "../../src/feed/finding.js";
import { fit } from "../../src/feed/fit.js";
import type { Readings } from "../../src/machine/machine.js";

/** Begun at turn 5, so that neither end is the zero; ± 0.01 about a line of 2 mm a turn. */
const turns = [5, 7, 9, 11, 13, 15];
const strays = [0.01, -0.01, 0, 0, -0.01, 0.01];
const travel = turns.map((turn, i) => 2 * turn + (strays[i] ?? 0));
const line = fit(turns, travel) as Fit;
/** Σ (turn − 10)² of these. */
const SPREAD = 25 + 9 + 1 + 1 + 9 + 25;

const of = (known: Partial<Readings>): Budget | undefined => budget(line, { turns, travel, ...known });
const standard = (found: Budget | undefined, source: Contribution["source"]) =>
  found?.contributions.find((one) => one.source === source)?.standard;

describe("what leaves a feed in doubt", () => {
  test("scatter: that of one reading over the root of the spread of the turns, with two degrees of freedom less", () => {
    const found = of({});
    expect(found?.contributions).toHaveLength(1);
    // Four readings stray by 0.01 and lean neither way.
    expect(standard(found, "scatter")).toBeCloseTo(Math.sqrt((4 * 0.01 ** 2) / 4 / SPREAD), 12);
    expect(found).toMatchObject({ degreesOfFreedom: 4, coverageFactor: expect.closeTo(2.776, 3) });
    expect(found?.expanded).toBeCloseTo((2.776445 * 0.01) / Math.sqrt(SPREAD), 8);
  });

  test("the gauge's error, within its limit, over the 10 turns gone, not over where they were counted from", () => {
    expect(standard(of({ gaugeError: 0.03 }), "gauge error")).toBeCloseTo(0.03 / Math.sqrt(3) / 10, 12);
    // Twice the way halves it.
    const far = turns.map((turn) => 2 * turn);
    const longer = budget(fit(far, travel) as Fit, { turns: far, travel, gaugeError: 0.03 });
    expect(standard(longer, "gauge error")).toBeCloseTo(0.03 / Math.sqrt(3) / 20, 12);
  });

  test("the warmth: steel grows by 11.5 millionths of its length for each degree from 20, hot or cold (Swyt, NIST 1994)", () => {
    for (const temperature of [0, 40])
      expect(standard(of({ temperature }), "temperature")).toBeCloseTo((2 * 11.5e-6 * 20) / Math.sqrt(3), 9);
    expect(standard(of({ temperature: 20 }), "temperature")).toBe(0);
  });

  test("the graduation counts in the scatter's place where the readings scatter less than it alone makes them", () => {
    const counting = (gauge: number) =>
      of({ gauge })
        ?.contributions.filter(({ counts }) => counts)
        .map(({ source }) => source);
    // A reading rounded to a graduation strays by its twelfth's root: 0.01 √12 = 0.0346 is as much as was found.
    expect([counting(0.034), counting(0.035)]).toEqual([["scatter"], ["graduation"]]);
    expect(standard(of({ gauge: 0.12 }), "graduation")).toBeCloseTo(0.12 / Math.sqrt(12) / Math.sqrt(SPREAD), 12);
    expect(of({ gauge: 0.12 })?.degreesOfFreedom).toBe(4);
    expect(of({ gauge: 0.12 })?.contributions.map(({ counts }) => counts)).toEqual([false, true]);
  });

  test("squares are added, and the degrees of freedom are Welch and Satterthwaite's, whole ones (GUM G.4.1)", () => {
    const scatter = 0.01 / Math.sqrt(SPREAD);
    const found = of({ gaugeError: 0.02, temperature: 25 });
    const parts = [scatter, 0.02 / Math.sqrt(3) / 10, (2 * 11.5e-6 * 5) / Math.sqrt(3)];
    const combined = Math.hypot(...parts);
    expect(found?.combined).toBeCloseTo(combined, 9);
    // Only the scatter is known from few readings: (combined / scatter)⁴ · 4 of them.
    expect(found?.degreesOfFreedom).toBe(Math.floor(4 * (combined / scatter) ** 4));
    expect(found?.degreesOfFreedom).toBeGreaterThan(4);
    expect(found?.expanded).toBeCloseTo((found?.coverageFactor ?? 0) * combined, 9);
  });
});

describe("readings on a line without any scatter", () => {
  const exact = turns.map((turn) => 2 * turn);
  const straight = fit(turns, exact) as Fit;
  test("tell no doubt by themselves; what is known of the gauge does, as surely as it is known", () => {
    expect(budget(straight, { turns, travel: exact })).toBeUndefined();
    const sure = budget(straight, { turns, travel: exact, gaugeError: 0.03 });
    expect(sure?.contributions.map(({ source }) => source)).toEqual(["gauge error"]);
    expect(sure?.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    expect(sure?.expanded).toBeCloseTo((1.959964 * 0.03) / Math.sqrt(3) / 10, 8);
    const gauged = budget(straight, { turns, travel: exact, gauge: 0.01 });
    expect(gauged?.contributions.map(({ source, counts }) => [source, counts])).toEqual([
      ["scatter", false],
      ["graduation", true],
    ]);
  });

  test("at two places are no line to stray from", () => {
    expect(budget({ ...line, degreesOfFreedom: 0 }, { turns, travel, gauge: 0.01 })).toBeUndefined();
    expect(budget({ ...line, degreesOfFreedom: 1 }, { turns, travel, gauge: 0.01 })?.degreesOfFreedom).toBe(1);
  });
});
