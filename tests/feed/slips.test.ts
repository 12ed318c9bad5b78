import { describe, expect, test } from "vitest";
import { jumpIn } from "../../src/feed/jump.js";
import { lostMotion } from "../../src/feed/lostMotion.js";
import { median, miscountedFrom, wildReadings } from "../../src/feed/outliers.js";
import { alongPlaces, chanceOfPattern } from "../../src/feed/pattern.js";
import { returnStudy } from "../../src/feed/returnStudy.js";

const turns = Array.from({ length: 12 }, (_, i) => i);
/** 2.11 mm a turn, read to hundredths, a hundredth off here and there. */
const strays = [0, 0.01, -0.01, 0, 0.01, 0, -0.01, 0, 0.01, 0, -0.01, 0.01];
const sound = turns.map((turn, i) => Math.round((1.03 + 2.11 * turn + (strays[i] ?? 0)) * 100) / 100);
const slip = (index: number, value: number) => sound.map((one, i) => (i === index ? value : one));
const told = (index: number, value: number, unit = 1) =>
  wildReadings(turns, slip(index, value), 0.01, unit).map(({ index: at, like }) => [at, like]);

describe("what a wild reading looks like", () => {
  // At turn 6 the gauge shows 13.68.
  test("turns miscounted, up to three, either way", () => {
    expect(told(6, 13.68 + 2 * 2.11)).toEqual([[6, "just 2 turns too much: the turns look miscounted"]]);
    expect(told(6, 13.68 - 3 * 2.11)).toEqual([[6, "just 3 turns too little: the turns look miscounted"]]);
    expect(told(6, 13.68 - 2.11)).toEqual([[6, "just one turn too little: the turns look miscounted"]]);
    expect(told(6, 13.68 + 4 * 2.11)).toEqual([[6, undefined]]);
  });
  test("a sign that is wrong", () => expect(told(6, -13.68)).toEqual([[6, "the sign looks wrong"]]));
  test("two neighbouring figures swapped, and which reading would fit", () => {
    expect(told(6, 16.38)).toEqual([[6, "two figures look swapped: 13.68 would fit"]]);
    expect(told(6, 31.68)).toEqual([[6, "two figures look swapped: 13.68 would fit"]]);
    expect(told(6, 18.63)).not.toEqual([[6, "two figures look swapped: 13.68 would fit"]]);
  });
  test("one figure wrong, of a tenth or more", () => {
    expect(told(6, 14.68)).toEqual([[6, "one figure looks wrong: it is 1 too much"]]);
    expect(told(6, 13.18)).toEqual([[6, "one figure looks wrong: it is 0.5 too little"]]);
    expect(told(6, 53.68)).toEqual([[6, "one figure looks wrong: it is 40 too much"]]);
    expect(told(6, 13.68 + 0.45)).toEqual([[6, undefined]]);
  });
  test("how far off and in how many scatters of the others", () => {
    const [wild] = wildReadings(turns, slip(6, 14.18), 0.01);
    expect(wild?.off).toBeCloseTo(0.5, 1);
    const scatter = (wild?.off ?? 0) / (wild?.times ?? 1);
    expect(scatter).toBeGreaterThan(0.005);
    expect(scatter).toBeLessThan(0.012);
  });
});

test("too few readings accuse none; three neighbours off on one side are a worn stretch", () => {
  expect(wildReadings([0, 1, 2, 3], [0, 2, 9, 6])).toEqual([]);
  expect(wildReadings(turns, sound, 0.01)).toEqual([]);
  const long = Array.from({ length: 24 }, (_, i) => i);
  const off = (...at: number[]) =>
    long.map((turn) => 2 * turn + 0.002 * ((turn * 5) % 3) + (at.includes(turn) ? 0.3 : 0));
  expect(wildReadings(long, off(10, 11)).map(({ index }) => index)).toEqual([10, 11]);
  expect(wildReadings(long, off(10, 11, 12))).toEqual([]);
  expect(wildReadings(long, off(10, 12, 14)).map(({ index }) => index)).toEqual([10, 12, 14]);
});

test("a turn lost in counting is a whole one, from there on, and not at the gauge's new zero", () => {
  const from = (index: number, by: number) => sound.map((one, i) => (i >= index ? one + by : one));
  expect(miscountedFrom(turns, from(5, -2.11))).toEqual({ index: 5, turns: -1 });
  expect(miscountedFrom(turns, from(5, 2 * 2.11))).toEqual({ index: 5, turns: 2 });
  expect(miscountedFrom(turns, from(11, 2.11))).toEqual({ index: 11, turns: 1 });
  expect(miscountedFrom(turns, from(5, 1.3 * 2.11))).toBeUndefined();
  expect(miscountedFrom(turns, slip(5, (sound[5] ?? 0) + 2.11))).toBeUndefined();
  expect(miscountedFrom([0, 1, 2, 3], [0, 2, 6, 8])).toBeUndefined();
  expect(
    miscountedFrom(
      turns,
      turns.map(() => 3),
    ),
  ).toBeUndefined();
});

test("a median", () => {
  expect([median([3, 1, 2]), median([4, 1, 3, 2]), median([7])]).toEqual([2, 2.5, 7]);
  expect(median([10, 9, 100])).toBe(10);
});

describe("a jump", () => {
  const jump = (index: number, by: number) => sound.map((one, i) => (i >= index ? one + by : one));
  test("stands at its reading with its height, two readings from either end at least", () => {
    expect(jumpIn(turns, jump(6, 0.3), 0.01)).toEqual({ index: 6, off: expect.closeTo(0.3, 1) });
    expect(jumpIn(turns, jump(2, -0.4), 0.01)?.index).toBe(2);
    expect(jumpIn(turns, jump(10, 0.4), 0.01)?.index).toBe(10);
    expect(jumpIn(turns, sound, 0.01)).toBeUndefined();
  });
  test("is none below two graduations, nor of fewer than six readings, nor where a smooth curve tells it as well", () => {
    expect(jumpIn(turns, jump(6, 0.3), 0.2)).toBeUndefined();
    expect(jumpIn(turns.slice(0, 5), jump(2, 0.3).slice(0, 5), 0.001)).toBeUndefined();
    expect(jumpIn(turns, jump(6, 0.3), 0.01, { smooth: 0.0001 })).toBeUndefined();
    expect(jumpIn(turns, jump(6, 0.3), 0.01, { smooth: 1 })?.index).toBe(6);
  });
  test("keeps its place in the list where a wild reading before it is passed over", () => {
    const both = jump(7, 0.3).map((one, i) => (i === 3 ? one + 50 : one));
    expect(jumpIn(turns, both, 0.01, { without: [3] })?.index).toBe(7);
  });
});

describe("neighbours that are alike", () => {
  test("places in the order of the travel, each with the mean of what was read there", () => {
    expect(alongPlaces([2, 0, 1, 0, 2], [5, 1, 3, 2, 7])).toEqual({ turns: [0, 1, 2], values: [1.5, 3, 6] });
  });
  test("say nothing of fewer than six, nor where nothing is left; a stretch is unlikely, a saw is not", () => {
    const stretch = turns.map((turn) => (turn < 6 ? 1 : -1));
    const saw = turns.map((turn) => (turn % 2 ? 1 : -1));
    expect(chanceOfPattern(turns.slice(0, 5), saw, "mean")).toBeUndefined();
    expect(chanceOfPattern(turns.slice(0, 6), saw, "mean")).toBeGreaterThan(0.5);
    expect(
      chanceOfPattern(
        turns,
        turns.map(() => 0),
        "mean",
      ),
    ).toBeUndefined();
    expect(chanceOfPattern(turns, stretch, "mean")).toBeLessThan(0.01);
    expect(chanceOfPattern(turns, saw, "mean")).toBeGreaterThan(0.99);
  });
});

describe("the way back", () => {
  const study = (back: number[]) => {
    const readings = { turns, travel: sound, back, gauge: 0.01 };
    return returnStudy(readings, lostMotion(readings, 2.11));
  };
  test("is sound, or told what is wrong with it", () => {
    expect(study(sound.map((one) => one + 0.1))).toEqual({ wild: [] });
    expect(returnStudy({ turns, travel: sound }, undefined)).toBeUndefined();
    const lost = sound.map((one, i) => one + 0.1 + (i >= 5 ? 2.11 : 0));
    expect(study(lost)?.miscounted).toEqual({ index: 5, turns: 1 });
    expect(study(lost)?.wild).toEqual([]);
    expect(study(sound.map((one) => one - 0.2))?.contradiction?.why).toBe("negative");
    expect(study(sound.map((one) => one + 1.3))?.contradiction?.why).toBe("over half a turn");
    const wild = study(sound.map((one, i) => one + 0.1 + (i === 4 ? 0.4 : 0)));
    expect(wild?.wild.map(({ index }) => index)).toEqual([4]);
    expect(wild).not.toHaveProperty("contradiction");
    // Another slope on the way back: the lag grows by more than a quarter of a turn.
    expect(study(sound.map((one, i) => one + 0.1 + 0.06 * i))?.contradiction?.why).toBe("scattered");
    expect(study(sound.map((one, i) => one + 0.1 + 0.04 * i))).not.toHaveProperty("contradiction");
  });
});
