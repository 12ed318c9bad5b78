import { describe, expect, test } from "vitest";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { jumpIn } from "../../src/feed/jump.js";
import { study } from "../../src/feed/study.js";
import { remarks } from "../../src/findings/remarks.js";
import { findingsOf, textsOf } from "../support/sheets.js";
import { normal, rounded, seeded } from "./screws.js";

const gauge = 0.01;
type Slide = {
  last: number;
  count: number;
  curve?: (turn: number) => number;
  jump?: number;
  at?: number;
  runs?: number;
};

/** Readings of a slide of 1.9945 mm a turn, with noise of 3 µm; from reading `at` on they stand off by `jump`. */
function readingsOf({ last, count, curve = () => 0, jump = 0, at = count, runs = 1 }: Slide, seed: number) {
  const random = seeded(seed);
  const one = Array.from({ length: count }, (_, i) => Math.round((i * last) / (count - 1)));
  const turns = Array.from({ length: runs }, () => one).flat();
  const travel = turns.map((turn, i) =>
    rounded(1.9945 * turn + curve(turn) + 0.003 * normal(random) + (i >= at ? jump : 0), gauge),
  );
  return { turns, travel };
}

/** By all that the program does with readings. */
function studied(slide: Slide, seed: number) {
  const readings = { from: "readings", gauge, ...readingsOf(slide, seed) } as const;
  const found = feedPerTurn(readings);
  if ("tooFew" in found || !found.fit || !found.measured) throw new Error("too few");
  return study(found.fit, found.measured.shape, readings);
}
const share = (slide: Slide, cases: number) =>
  Array.from({ length: cases }, (_, seed) => studied(slide, 1000 + seed).jump !== undefined).filter(Boolean).length /
  cases;

describe("a jump in the readings", () => {
  test.each([
    [8, 28, 0.13],
    [8, 28, 0.5],
    [8, 28, 0.997],
    [13, 24, 0.13],
    [13, 24, -0.5],
    [25, 24, 0.06],
    [25, 24, 0.13],
    [25, 24, 0.997],
  ])("%i readings over %i turns that jump by %f mm: named in nine of ten, at its reading", (count, last, jump) => {
    const at = Math.floor(count / 2);
    const slide = { count, last, jump, at };
    let named = 0;
    for (let seed = 0; seed < 60; seed++) {
      const found = studied(slide, seed).jump;
      if (found === undefined) continue;
      named++;
      expect(found.index).toBe(at);
      expect(found.off).toBeCloseTo(jump, 1);
    }
    expect(named / 60).toBeGreaterThan(0.9);
  });

  test.each([
    ["8 readings", { count: 8, last: 28 }],
    ["25 readings", { count: 25, last: 24 }],
    ["five runs", { count: 9, last: 16, runs: 5 }],
  ])("sound slides are left alone: %s", (_, slide) => {
    expect(share(slide, 1500)).toBeLessThanOrEqual(0.004);
  });

  test.each([
    ["a worn stretch", { count: 25, last: 24, curve: (turn: number) => 0.002 * Math.max(0, turn - 12) ** 1.5 }],
    ["a kink", { count: 25, last: 24, curve: (turn: number) => 0.02 * Math.max(0, turn - 10) }],
    ["a bow", { count: 25, last: 24, curve: (turn: number) => 0.1 * Math.sin((Math.PI * turn) / 24) }],
  ])("wear is no jump: %s", (_, slide) => {
    expect(share(slide, 200)).toBeLessThanOrEqual(0.02);
  });

  test("a run that begins at another zero is none either, and one wild reading is a wild reading", () => {
    const zero = studied({ count: 9, last: 16, runs: 2, jump: 0.4, at: 9 }, 5);
    expect(zero.jump).toBeUndefined();
    const { turns, travel } = readingsOf({ count: 13, last: 24 }, 5);
    travel[6] = (travel[6] ?? 0) + 0.4;
    expect(jumpIn(turns, travel, gauge, { without: [6] })).toBeUndefined();
  });

  test("it stops the feed and its dial, and says where and why", () => {
    const { turns, travel } = readingsOf({ count: 13, last: 24, jump: 0.13, at: 6 }, 7);
    const text = `name: J\nhandwheels:\n  - name: Cross slide\n    feed: { readings: { gauge: 0.01, turns: [${turns}], travel: [${travel.map((mm) => mm.toFixed(2))}] } }\n    dial: { shape: drum, diameter: 38, width: 9, closure: even }\n`;
    const findings = findingsOf(text);
    const [wheel] = findings.handwheels;
    expect(wheel?.feed).toBeUndefined();
    expect(wheel?.dial).toBeUndefined();
    const told = remarks(findings);
    expect(told.map(({ code }) => code)).toEqual(["jump"]);
    expect(told[0]?.what).toMatch(/from here on all readings of "Cross slide" stand 0\.1[23]\d mm above those before/);
    expect(told[0]?.path.at(-1)).toBe(6);
    expect(textsOf(findings, "measured-report")).toContain("readings that jump");
  });
});
