import { describe, expect, test } from "vitest";
import { boundOver, doubtOver, feedDoubtOver } from "../../src/feed/doubtOver.js";
import type { FeedFinding, Measured } from "../../src/feed/finding.js";
import { gaugeErrorOver95, roundingDeviation, roundingOfDifference95 } from "../../src/feed/gauge.js";
import { correctedTurns, unevenOf } from "../../src/feed/uneven.js";
import { seeded } from "./screws.js";

const measured = (uneven?: Measured["uneven"]): Measured => ({
  from: 2,
  to: 12,
  position: 0.003,
  withinTurn: true,
  shape: {},
  ...(uneven && { uneven }),
});
const feed = (more: Partial<FeedFinding>): FeedFinding => ({ perTurn: 2, from: "readings", ...more });

describe("how far a movement is in doubt", () => {
  test("nothing where nothing says how good the feed is", () => {
    expect(doubtOver(5, feed({}))).toBeUndefined();
    expect(feedDoubtOver(5, feed({}))).toBeUndefined();
  });
  test("the feed's doubt grows with the turns; both ends stray for themselves; squares are added", () => {
    expect(doubtOver(5, feed({ uncertainty: 0.001 }))).toBeCloseTo(0.005, 12);
    // 0.03 over the turns, 0.04 at both ends.
    const ends = 0.04 / Math.SQRT2;
    expect(doubtOver(30, feed({ uncertainty: 0.001 }), ends)).toBeCloseTo(0.05, 12);
    const own = { ...measured(), position: 0.6 * ends };
    expect(doubtOver(30, feed({ uncertainty: 0.001, measured: own }), 0.8 * ends)).toBeCloseTo(0.05, 12);
    expect(feedDoubtOver(30, feed({ uncertainty: 0.001, measured: own }))).toBeCloseTo(0.03, 12);
  });
  test("a wave counts twice over half a turn, not at all over whole ones, and is added whole", () => {
    const waving = measured({ sway: 0.01 });
    expect([0, 0.5, 1, 1.5].map((turns) => boundOver(turns, waving))).toEqual(
      [0, 0.02, 0, 0.02].map((one) => expect.closeTo(one, 12)),
    );
    expect(boundOver(0.25, waving)).toBeCloseTo(0.02 * Math.SQRT1_2, 12);
    const own = { ...waving, position: 0 };
    expect(doubtOver(10.5, feed({ uncertainty: 0.001, measured: own }))).toBeCloseTo(0.0105 + 0.02, 12);
    // Of all movements up to so many turns the worst ends half a turn from a whole one.
    for (const turns of [0.5, 1, 7.3])
      expect(feedDoubtOver(turns, feed({ uncertainty: 0.001, measured: own }))).toBeCloseTo(turns * 0.001 + 0.02, 12);
    expect(feedDoubtOver(0.25, feed({ uncertainty: 0, measured: own }))).toBeCloseTo(0.02 * Math.SQRT1_2, 12);
  });
  test("wear by what was measured of it, straight between the steps, and no more beyond them; back as on", () => {
    // Ten turns in four steps.
    const worn = measured({ most: [0, 0.01, 0.03, 0.04, 0.04] });
    expect([0, 2.5, 3.75, 5, 10, 25, -5].map((turns) => boundOver(turns, worn))).toEqual(
      [0, 0.01, 0.02, 0.03, 0.04, 0.04, 0.03].map((one) => expect.closeTo(one, 12)),
    );
    expect(boundOver(3, undefined)).toBe(0);
    expect(boundOver(3, measured())).toBe(0);
  });
});

describe("what is uneven beyond chance", () => {
  const ahead = [0, 0.01, -0.02, 0.005];
  const found = (wornReal: boolean, waveReal: boolean) => ({
    ahead,
    aheadDoubt: 0.004,
    alongTravel: { chance: 0, real: wornReal, found: [] },
    oncePerTurn: { chance: 0, real: waveReal, found: { amplitude: 0.02, uncertainty: 0.003, crest: 0 } },
  });
  test("is told of wear and wave each where it is real", () => {
    expect(unevenOf(found(false, false), false)).toBeUndefined();
    expect(unevenOf({}, false)).toBeUndefined();
    expect(unevenOf(found(false, true), false)).toEqual({ sway: expect.closeTo(0.023, 12), wave: true });
    // What the dial has in its marks leaves its doubt alone.
    expect(unevenOf(found(false, true), true)).toEqual({ sway: 0.003 });
    // Of two places one step apart the most is 0.03, of two 0.02, which is less.
    expect(unevenOf(found(true, false), false)).toEqual({ ahead, aheadDoubt: 0.004, most: [0, 0.03, 0.03, 0.03] });
  });
});

describe("turns by a worn screw", () => {
  const worn = measured({ ahead: [0, 0.1, 0.1, -0.1, 0] });
  const gone = (turn: number) => {
    const at = ((turn - 2) / 10) * 4;
    const k = Math.min(3, Math.floor(at));
    const list = [0, 0.1, 0.1, -0.1, 0];
    return 2 * turn + (list[k] ?? 0) + ((list[k + 1] ?? 0) - (list[k] ?? 0)) * (at - k);
  };
  test("move the slide just so far, on and back, wherever they begin", () => {
    const random = seeded(41);
    for (let i = 0; i < 200; i++) {
      const [from, to] = [2 + 10 * random(), 2 + 10 * random()];
      expect(correctedTurns(gone(to) - gone(from), from, 2, worn)).toBeCloseTo(to - from, 9);
    }
    expect(correctedTurns(20, 2, 2, worn)).toBeCloseTo(10, 9);
    expect(correctedTurns(-20, 12, 2, worn)).toBeCloseTo(-10, 9);
  });
  test("are not told from or to where nothing was measured", () => {
    expect(correctedTurns(1, 1.9, 2, worn)).toBeUndefined();
    expect(correctedTurns(-1, 12.1, 2, worn)).toBeUndefined();
    expect(correctedTurns(20.1, 2, 2, worn)).toBeUndefined();
    expect(correctedTurns(-20.1, 12, 2, worn)).toBeUndefined();
    expect(correctedTurns(5, 2, 2, measured())).toBeCloseTo(2.5, 9);
  });
});

test("a gauge: its graduation's twelfth under the root, two readings' triangle, its error's third under the root", () => {
  const random = seeded(42);
  const errors = Array.from({ length: 20000 }, () => random() - 0.5);
  const deviation = Math.sqrt(errors.reduce((sum, one) => sum + one * one, 0) / errors.length);
  expect(roundingDeviation(0.02) / 0.02).toBeCloseTo(deviation, 2);
  const limit = roundingOfDifference95(0.02) / 0.02;
  const within = errors.filter((one, i) => Math.abs(one - (errors[(i + 7919) % errors.length] ?? 0)) <= limit);
  expect(within.length / errors.length).toBeCloseTo(0.95, 2);
  expect(gaugeErrorOver95(0.5) / 0.98).toBeCloseTo(2 * deviation, 2);
});
