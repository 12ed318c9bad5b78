import { describe, expect, test } from "vitest";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import type { FeedFinding } from "../../src/feed/finding.js";
import type { Readings } from "../../src/machine/machine.js";

const turns = [0, 1, 2, 3, 4, 5, 6, 7];
const travel = [0, 2.11, 4.23, 6.34, 8.45, 10.56, 12.68, 14.79];
const back = [0.13, 2.24, 4.36, 6.48, 8.58, 10.69, 12.81, 14.91];

const found = (readings: Readings): FeedFinding => {
  const finding = feedPerTurn({ from: "readings", ...readings });
  if ("tooFew" in finding) throw new Error("too few readings");
  return finding;
};

describe("lost motion", () => {
  test("play is positive, whichever way the gauge ran; so is the feed", () => {
    const up = found({ gauge: 0.01, turns, travel, back });
    const mirror = (values: readonly number[]) => values.map((value) => 20 - value);
    const down = found({ gauge: 0.01, turns, travel: mirror(travel), back: mirror(back) });
    expect(up.lostMotion?.travel).toBeCloseTo(0.13, 2);
    expect(down.lostMotion?.travel).toBeCloseTo(up.lostMotion?.travel ?? 0, 12);
    expect(down.lostMotion?.turn).toBeCloseTo(up.lostMotion?.turn ?? 0, 12);
    expect(down.perTurn).toBeCloseTo(up.perTurn, 12);
    expect(down.fit?.slope).toBeLessThan(0);
  });

  test("return readings that belong to the other way show as negative play", () => {
    expect(found({ turns, travel: back, back: travel }).lostMotion?.travel).toBeLessThan(0);
  });

  test("the return readings leave the feed alone", () => {
    const worn = travel.map((reading, i) => reading + 0.1 + 0.02 * i);
    const both = found({ turns, travel, back: worn });
    const { lostMotion: _, ...alone } = both;
    expect(found({ turns, travel })).toEqual(alone);
  });

  test("pairs rounded alike say no more than their gauge, and without a gauge nothing", () => {
    // Equal quarters of a millimetre: sums and differences are exact, the scatter is 0.
    const out = turns.map((turn) => turn / 4);
    const home = out.map((reading) => reading + 0.125);
    expect(found({ gauge: 0.01, turns, travel: out, back: home }).lostMotion?.uncertainty).toBeCloseTo(0.0077639, 7);
    expect(found({ turns, travel: out, back: home }).lostMotion).toEqual({ travel: 0.125, turn: 0.5, pairs: 8 });
    expect(found({ turns, travel: out }).uncertainty).toBeUndefined();
  });

  test("one missing return reading is refused", () => {
    expect(() => found({ turns, travel, back: back.slice(1) })).toThrow(RangeError);
  });

  test("the doubt covers the truth 95 times in 100 at least, over 2000 seeded runs of rounded readings", () => {
    // Weyl sequence through a mixing step (mulberry32): the same runs every time.
    let state = 7;
    const uniform = () => {
      state = (state + 0x6d2b79f5) | 0;
      let mixed = Math.imul(state ^ (state >>> 15), state | 1);
      mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
      return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
    };
    const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
    const read = (position: number, scatter: number) => Math.round((position + scatter * normal()) / 0.01) * 0.01;
    // Finer than the gauge, as fine, and far coarser: there the doubt is Student's t alone.
    for (const [scatter, atMost] of [
      [0, 1],
      [0.003, 1],
      [0.03, 0.965],
    ] as const) {
      let covered = 0;
      for (let run = 0; run < 2000; run++) {
        const feed = 2 + 0.2 * uniform();
        const play = 0.1 + 0.1 * uniform();
        const start = uniform();
        const out = turns.map((turn) => read(start + feed * turn, scatter));
        const home = turns.map((turn) => read(start + feed * turn + play, scatter));
        const { lostMotion } = found({ gauge: 0.01, turns, travel: out, back: home });
        if (Math.abs((lostMotion?.travel ?? 0) - play) <= (lostMotion?.uncertainty ?? 0)) covered++;
      }
      expect(covered / 2000).toBeGreaterThan(0.935);
      expect(covered / 2000).toBeLessThanOrEqual(atMost);
    }
  });
});
