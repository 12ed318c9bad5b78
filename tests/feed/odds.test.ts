import { describe, expect, test } from "vitest";
import { wearShown } from "../../src/feed/alongTravel.js";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { otherZeros } from "../../src/feed/gaugeZero.js";
import { positioning } from "../../src/feed/iso230.js";
import { contradiction, lostMotion } from "../../src/feed/lostMotion.js";
import { readingsPlan } from "../../src/feed/readingsPlan.js";
import { positioningOf } from "../../src/feed/runs.js";

const turns = [0, 1, 2, 3, 4];

test("what the maker meant goes along with what was found, whatever it was found from", () => {
  const travel = [0, 2.01, 3.99, 6, 8.01];
  const feeds = [
    { from: "stated", perTurn: 2.1 },
    { from: "screw", pitch: 2, starts: 1 },
    { from: "readings", turns, travel },
  ] as const;
  for (const feed of feeds) {
    expect(feedPerTurn({ ...feed, nominal: 2 })).toMatchObject({ nominal: 2 });
    expect(feedPerTurn(feed)).not.toHaveProperty("nominal");
  }
});

test("a wave is fitted with the line only where it is real or the dial has it built in", () => {
  const quarters = Array.from({ length: 17 }, (_, i) => i / 4);
  const travel = quarters.map((turn, i) => 2 * turn + 0.001 * ((i * 7) % 5));
  const withWave = (builtIn?: boolean) => {
    const found = feedPerTurn({ from: "readings", turns: quarters, travel }, builtIn);
    return "fit" in found && found.fit?.withWave;
  };
  expect([withWave(), withWave(false), withWave(true)]).toEqual([false, false, true]);
});

describe("runs from another zero of the gauge", () => {
  const runs = (...zeros: number[]) => ({
    turns: zeros.flatMap(() => turns),
    travel: zeros.flatMap((zero, run) => turns.map((turn) => 2 * turn + zero + 0.001 * ((3 * turn + run) % 2))),
  });
  test("of two the second is named, against the first; of three and four those that stand apart from the middle", () => {
    const [second, ...more] = otherZeros(runs(0, 0.5));
    expect(second).toMatchObject({ from: 5, to: 9, run: 2, off: expect.closeTo(0.5, 2) });
    expect(more).toEqual([]);
    expect(otherZeros(runs(0.5, 0, 0)).map(({ run, off }) => [run, off])).toEqual([[1, expect.closeTo(0.5, 2)]]);
    expect(otherZeros(runs(0, -0.4, 0.5)).map(({ run }) => run)).toEqual([2, 3]);
    expect(otherZeros(runs(0, 0, 0, -0.5)).map(({ run, off }) => [run, off])).toEqual([[4, expect.closeTo(-0.5, 2)]]);
    expect(otherZeros(runs(0, 0, 0))).toEqual([]);
  });
  test("less than two graduations of the gauge is how well a slide comes back", () => {
    const apart = runs(0, 0.05);
    expect(otherZeros({ ...apart, gauge: 0.005 })).toHaveLength(1);
    expect(otherZeros({ ...apart, gauge: 0.03 })).toEqual([]);
  });
});

describe("readings that do not belong together", () => {
  test("are refused, and told why", () => {
    expect(() =>
      positioning({
        up: [[1, 2], [1]],
        down: [
          [1, 2],
          [1, 2],
        ],
      }),
    ).toThrow("same number of runs, up and down");
    expect(() => positioning({ up: [[1, 2]], down: [] })).toThrow("same number of runs");
    expect(() => lostMotion({ turns, travel: turns, back: [1, 2] }, 1)).toThrow(
      "2 return readings but 5 outward: one for each.",
    );
    expect(lostMotion({ turns, travel: turns, back: [] }, 1)).toBeUndefined();
    expect(lostMotion({ turns, travel: turns }, 1)).toBeUndefined();
  });
  test("as a lost motion that cannot be", () => {
    const lost = (travel: number, turn: number, uncertainty?: number) =>
      contradiction({ travel, turn, pairs: 5, ...(uncertainty !== undefined && { uncertainty }) });
    expect([lost(0.1, 0.05), lost(0.1, 0.05, 0.01), lost(-0.01, -0.005, 0.02)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect([lost(-0.1, -0.05), lost(-0.1, -0.05, 0.02)]).toEqual(["negative", "negative"]);
    expect([lost(1, 0.5), lost(1.02, 0.51)]).toEqual([undefined, "over half a turn"]);
    // Its doubt beyond itself and beyond a tenth of a turn of 2 mm.
    expect([lost(0.1, 0.05, 0.2), lost(0.1, 0.05, 0.21), lost(0.3, 0.15, 0.29)]).toEqual([
      undefined,
      "scattered",
      undefined,
    ]);
  });
});

describe("positioning of readings", () => {
  const twice = [...turns, ...turns];
  const out = twice.map((turn, i) => 2 * turn + (i < 5 ? 0.01 : -0.01));
  test("asks for a way back and two runs at two places", () => {
    expect(positioningOf({ turns: twice, travel: out }, 2, 0)).toBeUndefined();
    expect(positioningOf({ turns: twice, travel: out, back: [1] }, 2, 0)).toBeUndefined();
    expect(positioningOf({ turns, travel: turns, back: turns }, 1, 0)).toBeUndefined();
    expect(positioningOf({ turns: [1, 1], travel: [2, 2], back: [2, 2] }, 2, 0)).toBeUndefined();
  });
  test("reckons deviations from the fitted line, in the sense of the travel; a place read once is left out", () => {
    const back = out.map((one) => one + 0.05);
    const found = positioningOf({ turns: [...twice, 9], travel: [...out, 18], back: [...back, 18] }, 2, 0);
    expect([found?.runs, found?.positions.length]).toEqual([2, 5]);
    expect(found?.meanReversal).toBeCloseTo(-0.05, 9);
    // ± 0.01 is a deviation of 0.01 √2, and repeatability four of them.
    expect(found?.repeatabilityUp).toBeCloseTo(0.04 * Math.SQRT2, 9);
    const mirrored = positioningOf(
      { turns: twice, travel: out.map((one) => 7 - one), back: back.map((one) => 7 - one) },
      -2,
      7,
    );
    expect(mirrored?.meanReversal).toBeCloseTo(-0.05, 9);
  });
});

describe("why just so many readings", () => {
  const wish = { feed: 2, travel: 60, gauge: 0.01, within: 0.02 };
  test("of what is known of the scatter, the turns, ends that are kept free, a short gauge", () => {
    expect(readingsPlan(wish).why).toEqual(["scatter assumed", "whole turns", "more runs"]);
    expect(readingsPlan(wish).scatter).toBe(0.005);
    const { turns: places, scatter, wearShown: shown } = readingsPlan(wish);
    expect(shown).toBe(wearShown(places, scatter));
    expect(shown).toBeGreaterThan(0);
    expect(readingsPlan({ ...wish, travel: 0.5 })).not.toHaveProperty("wearShown");
    expect(readingsPlan({ ...wish, scatter: 0.008 })).toMatchObject({
      scatter: 0.008,
      why: ["scatter known", "whole turns", "more runs"],
    });
    expect(readingsPlan({ ...wish, scatter: 0.001 })).toMatchObject({
      scatter: 0.005,
      why: ["scatter assumed", "whole turns", "more runs"],
    });
    expect(readingsPlan({ ...wish, reach: 60 }).why).not.toContain("short gauge");
    expect(readingsPlan({ ...wish, ends: 4, reach: 20 }).why).toEqual([
      "scatter assumed",
      "whole turns",
      "ends free",
      "short gauge",
      "more runs",
    ]);
  });
  test("they stay within the travel less its ends, and within what the gauge reaches", () => {
    for (const [more, most] of [
      [{}, 30],
      [{ ends: 10 }, 25],
      [{ reach: 30 }, 15],
      [{ ends: 10, reach: 56 }, 25],
    ] as const) {
      const plan = readingsPlan({ ...wish, ...more });
      expect(plan.turns.at(-1)).toBeLessThanOrEqual(most);
      expect(plan.turns.at(-1)).toBeGreaterThan(most - plan.every);
      expect([plan.turns[0], plan.turns[1], plan.unit]).toEqual([0, plan.every, 1]);
    }
    // Eight turns are nine places; seven are read by quarters, one by eighths, half a one by sixteenths.
    expect([16, 15.9, 4, 2, 1].map((travel) => readingsPlan({ ...wish, travel }).unit)).toEqual([
      1, 0.25, 0.25, 0.125, 0.0625,
    ]);
  });
});
