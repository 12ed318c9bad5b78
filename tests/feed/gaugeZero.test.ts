import { describe, expect, test } from "vitest";
import { fit } from "../../src/feed/fit.js";
import { otherZeros } from "../../src/feed/gaugeZero.js";
import { lostMotion } from "../../src/feed/lostMotion.js";
import { returnStudy } from "../../src/feed/returnStudy.js";
import { normal, rounded, seeded } from "./screws.js";

const gauge = 0.01;
const positions = Array.from({ length: 9 }, (_, i) => i);

/** Runs over the same positions; `zero` is where the gauge stood at each run's start. */
function runs(zeros: readonly number[], scatter: number, random: () => number) {
  const turns = zeros.flatMap(() => positions);
  const travel = zeros.flatMap((zero) =>
    positions.map((turn) => rounded(zero + 2.003 * turn + scatter * normal(random), gauge)),
  );
  return { gauge, turns, travel };
}

describe("repeated runs", () => {
  test("sound ones, come back to within a graduation, are let pass: 1000 seeded machines", () => {
    const random = seeded(11);
    let alarms = 0;
    for (let k = 0; k < 1000; k++) {
      const zeros = Array.from({ length: 2 + Math.floor(4 * random()) }, () => 0.005 * normal(random));
      alarms += otherZeros(runs(zeros, 0.004, random)).length > 0 ? 1 : 0;
    }
    expect(alarms).toBeLessThanOrEqual(10);
  });

  test("the one from another zero is named, whichever it is", () => {
    const random = seeded(12);
    for (let k = 0; k < 200; k++) {
      const other = Math.floor(3 * random());
      const zeros = [0, 0, 0].map((zero, run) => (run === other ? zero + (random() < 0.5 ? 0.1 : -0.5) : zero));
      const found = otherZeros(runs(zeros, 0.004, random));
      expect(found.map(({ run }) => run)).toEqual([other + 1]);
      expect(found[0]?.from).toBe(other * positions.length);
      expect(Math.abs((found[0]?.off ?? 0) - (zeros[other] ?? 0))).toBeLessThan(0.01);
    }
  });

  test("a single run, readings in any other order, and a run of one reading say nothing", () => {
    expect(otherZeros({ turns: [0, 1, 2, 3], travel: [0, 2, 4, 6] })).toEqual([]);
    expect(otherZeros({ turns: [3, 2, 1, 0], travel: [6, 4, 2, 0] })).toEqual([]);
    expect(otherZeros({ turns: [0, 1, 2, 0], travel: [0, 2, 4, 1] })).toEqual([]);
  });
});

test("sound return readings are let pass, at the rate that the test for wild ones states: 1000 seeded machines", () => {
  const random = seeded(13);
  let alarms = 0;
  for (let k = 0; k < 1000; k++) {
    const out = runs([0], 0.004, random);
    const play = 0.3 * random();
    const back = positions.map((turn) => rounded(play + 2.003 * turn + 0.004 * normal(random), gauge));
    const readings = { ...out, back };
    const line = fit(out.turns, out.travel);
    if ("tooFew" in line) throw new Error("too few");
    const found = returnStudy(readings, lostMotion(readings, line.slope));
    alarms += found?.wild.length || found?.miscounted || found?.contradiction ? 1 : 0;
  }
  expect(alarms).toBeLessThanOrEqual(20);
});
