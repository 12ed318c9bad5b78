import { describe, expect, test } from "vitest";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { chanceOfPattern } from "../../src/feed/pattern.js";
import { regress } from "../../src/feed/regress.js";
import { study } from "../../src/feed/study.js";
import type { Readings } from "../../src/machine/machine.js";
import { normal, rounded, seeded } from "./screws.js";

/** What a line leaves of values over the turn. */
function leftBy(turns: readonly number[], values: readonly number[]): number[] {
  const [a = 0, b = 0] = regress([turns.map(() => 1), turns], values)?.coefficients ?? [];
  return values.map((value, i) => value - a - b * (turns[i] ?? 0));
}

/** Residuals of a line whose ratio of squared steps to squares is just `wanted`: a mixture of a slow and a quick wave. */
function withRatio(turns: readonly number[], wanted: number): number[] {
  const waves = [2, turns.length - 2].map((times) =>
    leftBy(
      turns,
      turns.map((_, i) => Math.cos((Math.PI * times * (i + 0.5)) / turns.length)),
    ),
  );
  const mixed = (share: number) =>
    turns.map((_, i) => (1 - share) * (waves[0]?.[i] ?? 0) + share * (waves[1]?.[i] ?? 0));
  const ratio = (e: readonly number[]) =>
    e.slice(1).reduce((sum, value, i) => sum + (value - (e[i] ?? 0)) ** 2, 0) / e.reduce((sum, v) => sum + v * v, 0);
  let [low, high] = [0, 1];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (ratio(mixed(middle)) < wanted) low = middle;
    else high = middle;
  }
  return mixed(low);
}

describe("whether neighbours stray alike", () => {
  // Durbin & Watson (Biometrika 38, 1951; Savin & White, Econometrica 45, 1977) for one regressor beside the constant; memory.
  const published = [
    { places: 15, level: 0.05, lower: 1.077, upper: 1.361 },
    { places: 20, level: 0.05, lower: 1.201, upper: 1.411 },
    { places: 30, level: 0.05, lower: 1.352, upper: 1.489 },
    { places: 50, level: 0.05, lower: 1.503, upper: 1.585 },
    { places: 100, level: 0.05, lower: 1.654, upper: 1.694 },
    { places: 15, level: 0.01, lower: 0.811, upper: 1.07 },
    { places: 20, level: 0.01, lower: 0.952, upper: 1.147 },
  ];
  test.each(published)(
    "$places places: the bounds of the table hold the chance of $level",
    ({ places, level, lower, upper }) => {
      for (const turns of [
        Array.from({ length: places }, (_, i) => i),
        Array.from({ length: places }, (_, i) => i * i),
      ]) {
        expect(chanceOfPattern(turns, withRatio(turns, lower), "line")).toBeLessThan(level * 1.02);
        expect(chanceOfPattern(turns, withRatio(turns, upper), "line")).toBeGreaterThan(level * 0.98);
      }
    },
  );

  test("chance alone is called a pattern as often as it says: 4000 seeded lines of 13 places, and as many means", () => {
    const random = seeded(11);
    const turns = Array.from({ length: 13 }, (_, i) => 3 * i);
    for (const from of ["line", "mean"] as const) {
      let [often, seldom] = [0, 0];
      for (let line = 0; line < 4000; line++) {
        const values = turns.map(() => normal(random));
        const middle = values.reduce((sum, value) => sum + value, 0) / values.length;
        const left = from === "line" ? leftBy(turns, values) : values.map((value) => value - middle);
        const chance = chanceOfPattern(turns, left, from) ?? 1;
        if (chance < 0.05) often++;
        if (chance < 0.01) seldom++;
      }
      expect(often / 4000).toBeGreaterThan(0.04);
      expect(often / 4000).toBeLessThan(0.06);
      expect(seldom / 4000).toBeLessThan(0.015);
    }
  });
});

const studied = (readings: Readings) => {
  const feed = feedPerTurn({ from: "readings", ...readings });
  if ("tooFew" in feed || feed.fit === undefined || feed.measured === undefined) throw new Error("no line");
  return { feed, study: study(feed.fit, feed.measured.shape, readings) };
};

describe("a screw that is stretched where it is used", () => {
  const turns = [0, 3, 6, 9, 12, 15, 18, 21, 24, 27, 30, 33, 36];
  const travel = [0, 5.99, 11.98, 17.96, 23.95, 29.97, 35.99, 42.01, 48, 53.98, 59.97, 65.96, 71.94];
  const lags = [0.18, 0.18, 0.17, 0.18, 0.31, 0.31, 0.31, 0.3, 0.18, 0.18, 0.18, 0.18, 0.18];
  const back = travel.map((value, i) => value + (lags[i] ?? 0));

  test("an S among the residuals is called one, though no bend of few terms follows it", () => {
    const found = studied({ gauge: 0.01, turns, travel }).study;
    expect(found.shape.alongTravel?.real).toBe(false);
    expect(found.pattern?.real).toBe(true);
  });

  test("lost motion is that of the stretch where it is largest, not the mean of all", () => {
    const { lostMotion } = studied({ gauge: 0.01, turns, travel, back }).feed;
    expect(lostMotion?.travel).toBeCloseTo(0.3075, 6);
    expect(lostMotion?.worst?.least).toBeCloseTo(0.18, 6);
    expect(lostMotion?.worst).toMatchObject({ fromTurn: 12, toTurn: 21 });
    // Read from the far end it is the same stretch.
    const reversed = studied({
      gauge: 0.01,
      turns: [...turns].reverse(),
      travel: [...travel].reverse(),
      back: [...back].reverse(),
    });
    expect(reversed.feed.lostMotion?.worst).toMatchObject({ fromTurn: 12, toTurn: 21 });
  });

  test("a sound slide is hardly ever told to be curved or unevenly loose: 1000 seeded ones, as a gauge rounds them", () => {
    const random = seeded(5);
    let [curved, uneven] = [0, 0];
    for (let slide = 0; slide < 1000; slide++) {
      const perTurn = 1.9 + 0.2 * random();
      const lost = 0.05 + 0.2 * random();
      const at = (turn: number, more: number) => rounded(turn * perTurn + more + 0.006 * normal(random), 0.01);
      const out = turns.map((turn) => at(turn, 0));
      const home = turns.map((turn) => at(turn, lost));
      const { feed, study } = studied({ gauge: 0.01, turns, travel: out, back: home });
      if (study.pattern?.real) curved++;
      if (feed.lostMotion?.worst) uneven++;
    }
    expect(curved).toBeLessThanOrEqual(20);
    expect(uneven).toBeLessThanOrEqual(15);
  });

  test("what rounding alone does is no curve, and without a gauge's graduation nothing is called one", () => {
    const exact = turns.map((turn) => rounded(turn * 1.99917, 0.01));
    expect(studied({ gauge: 0.01, turns, travel: exact }).study.pattern).toBeUndefined();
    expect(studied({ turns, travel }).study.pattern).toBeUndefined();
  });
});
