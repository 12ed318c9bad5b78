import { describe, expect, test } from "vitest";
import { shape } from "../../src/feed/alongTravel.js";
import { lessMeans, levelsOf, meansOf, spreadOf } from "../../src/feed/levels.js";
import { wildReadings } from "../../src/feed/outliers.js";
import { normal, rounded, seeded } from "./screws.js";

test("a run ends where the wheel comes back to a place that it had left; the same twice in a row is no return", () => {
  const { runs, run, places, place } = levelsOf([0, 1, 1, 2, 0, 1, 3, 0]);
  expect([runs, places]).toEqual([3, 4]);
  expect([...run]).toEqual([0, 0, 0, 0, 1, 1, 1, 2]);
  expect([...place]).toEqual([0, 1, 1, 2, 0, 1, 3, 0]);
  expect(levelsOf([0, 1, 2, 3, 2.5]).runs).toBe(1);
});

test("means of groups, far from zero too, and what is left of the values without them", () => {
  const group = Int32Array.from([0, 1, 0, 1, 1]);
  const { means, counts } = meansOf([1e9 + 1, 4, 1e9 + 2, 5, 9], group, 2);
  expect([[...means], [...counts]]).toEqual([
    [1e9 + 1.5, 6],
    [2, 3],
  ]);
  expect([...lessMeans([1, 4, 2, 5, 9], group, 2)]).toEqual([-0.5, -2, 0.5, -1, 3]);
});

describe("how far one value strays", () => {
  test("of one run: the ordinary scatter with as many degrees of freedom less", () => {
    const one = spreadOf([1, -1, 1, -1], levelsOf([0, 1, 2, 3]), 1);
    expect(one).toEqual({ single: Math.sqrt(4 / 2), degreesOfFreedom: 2 });
  });
  test("of three runs: what repeats at a place and what differs each time are found again (nested, as drawn)", () => {
    const random = seeded(51);
    const turns = [0, 1, 2].flatMap(() => Array.from({ length: 9 }, (_, k) => k));
    const levels = levelsOf(turns);
    let [single, within] = [0, 0];
    const times = 3000;
    for (let i = 0; i < times; i++) {
      const own = Array.from({ length: 9 }, () => 0.3 * normal(random));
      const values = turns.map((turn) => (own[turn] ?? 0) + 0.4 * normal(random));
      const centred = lessMeans(values, levels.run, levels.runs);
      const found = spreadOf(centred, levels, 0);
      expect([found.degreesOfFreedom, found.repeat?.degreesOfFreedom]).toEqual([8, 16]);
      single += found.single ** 2 / times;
      within += (found.repeat?.deviation ?? 0) ** 2 / times;
    }
    expect(within).toBeCloseTo(0.16, 2);
    // 0.3² + 0.4², a 3-4-5 triangle.
    expect(single).toBeCloseTo(0.25, 2);
  });
});

test("sound screws are called wavy about once in a hundred", () => {
  const random = seeded(52);
  const quarters = Array.from({ length: 25 }, (_, i) => i / 4);
  let alarms = 0;
  for (let i = 0; i < 1500; i++) {
    const travel = quarters.map((turn) => rounded(2.11 * turn + 0.004 * normal(random), 0.001));
    if (shape({ gauge: 0.001, turns: quarters, travel }, 2.11).oncePerTurn?.real) alarms++;
  }
  expect(alarms / 1500).toBeLessThan(0.02);
  expect(alarms / 1500).toBeGreaterThan(0.003);
});

test("a reading far beyond the others is not wild for what they tell so little of there, beside one that is", () => {
  const turns = [0, 1, 2, 3, 4, 5, 6, 7, 8, 40];
  const strays = [0.003, -0.004, 0.002, 0.004, 5, -0.003, 0.004, -0.002, -0.003, 0.05];
  const travel = turns.map((turn, i) => 2 * turn + (strays[i] ?? 0));
  // The others stray by about 0.003: at turn 40 their line is out by √(1 + 1/8 + 36²/60), nearly five times that.
  expect(wildReadings(turns, travel).map(({ index }) => index)).toEqual([4]);
  // As far off among the others it is wild.
  const near = turns.map((turn, i) => (i === 9 ? 9 : turn));
  const there = near.map((turn, i) => 2 * turn + (strays[i] ?? 0));
  expect(wildReadings(near, there).map(({ index }) => index)).toEqual([4, 9]);
});
