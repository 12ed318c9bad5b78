import { describe, expect, test } from "vitest";
import { shape, wearShown } from "../../src/feed/alongTravel.js";
import { miscountedFrom, wildReadings } from "../../src/feed/outliers.js";
import { normal, rounded, seeded } from "./screws.js";

const gauge = 0.01;
const wholeTurns = Array.from({ length: 25 }, (_, i) => i);
const quarters = Array.from({ length: 33 }, (_, i) => i / 4);
const read = (turns: number[], travelAt: (turn: number) => number, random: () => number) => ({
  gauge,
  turns,
  travel: turns.map((turn) => rounded(travelAt(turn) + 0.004 * normal(random), gauge)),
});

describe("a worn stretch", () => {
  test("sound screws are called worn about once in a hundred", () => {
    const random = seeded(11);
    let alarms = 0;
    for (let i = 0; i < 2000; i++) {
      const feed = 2.1 + 0.05 * random();
      if (
        shape(
          read(wholeTurns, (turn) => feed * turn, random),
          feed,
        ).alongTravel?.real
      )
        alarms++;
    }
    expect(alarms / 2000).toBeLessThan(0.018);
    expect(alarms / 2000).toBeGreaterThan(0.003);
  });
  test("0.05 mm of wear in the middle is found, and the zones follow it", () => {
    const random = seeded(12);
    const lag = (turn: number) => -0.05 * Math.exp(-(((turn - 12) / 5) ** 2));
    const found = shape(
      read(wholeTurns, (turn) => 2.11 * turn + lag(turn), random),
      2.11,
    ).alongTravel;
    expect(found?.real).toBe(true);
    for (const zone of found?.found ?? [])
      expect(Math.abs(zone.aheadAtEnd - (lag(zone.toTurn) - lag(0)))).toBeLessThan(0.02);
    const total = found?.found.reduce((sum, zone) => sum + zone.perTurn * (zone.toTurn - zone.fromTurn), 0) ?? 0;
    expect(total).toBeCloseTo(2.11 * 24, 1);
  });
  test("errors that come again with every run are no wear: called worn about once in a hundred", () => {
    const random = seeded(14);
    let alarms = 0;
    for (let i = 0; i < 1000; i++) {
      const errors = wholeTurns.map(() => 0.006 * normal(random));
      const runs = [0, 1, 2, 3, 4].map(() => read(wholeTurns, (turn) => 2.11 * turn + (errors[turn] ?? 0), random));
      const turns = runs.flatMap((run) => run.turns);
      if (shape({ gauge, turns, travel: runs.flatMap(({ travel }) => travel) }, 2.11).alongTravel?.real) alarms++;
    }
    expect(alarms / 1000).toBeLessThan(0.02);
  });
  test.each([12, 16, 28])("%i places show the wear that they are said to show in 80 of 100 cases", (count) => {
    const random = seeded(15);
    const places = Array.from({ length: count }, (_, i) => i);
    const depth = wearShown(places, 0.01) ?? Number.NaN;
    const [middle, width] = [(count - 1) / 2, 0.4 * ((count - 1) / 2)];
    let found = 0;
    for (let i = 0; i < 2000; i++) {
      const travel = places.map(
        (turn) => 2 * turn - depth * Math.exp(-(((turn - middle) / width) ** 2)) + 0.01 * normal(random),
      );
      if (shape({ turns: places, travel }, 2).alongTravel?.real) found++;
    }
    // Three standard deviations of a count of 2000 about 80 %.
    expect(Math.abs(found / 2000 - 0.8)).toBeLessThan(0.027);
  });
  test("fewer than 12 places never show a hollow: what they cannot follow swells the scatter", () => {
    expect(wearShown([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0.01)).toBeUndefined();
    expect(wearShown([0, 1, 2, 3], 0.01)).toBeUndefined();
  });
  test("the same whichever way the gauge runs", () => {
    const lag = (turn: number) => 2.11 * turn - 0.05 * Math.exp(-(((turn - 12) / 5) ** 2));
    const one = shape(read(wholeTurns, lag, seeded(13)), 2.11);
    const readings = read(wholeTurns, lag, seeded(13));
    const other = shape({ ...readings, travel: readings.travel.map((value) => 20 - value) }, -2.11);
    expect(other.alongTravel?.chance).toBeCloseTo(one.alongTravel?.chance ?? -1, 9);
    expect(other.alongTravel?.found[2]?.aheadAtEnd).toBeCloseTo(one.alongTravel?.found[2]?.aheadAtEnd ?? -1, 9);
  });
  test("readings without any scatter are not worn", () => {
    const readings = { turns: wholeTurns, travel: wholeTurns.map((turn) => 2 * turn) };
    expect(shape(readings, 2).alongTravel?.real).toBe(false);
  });
});

describe("a once-per-turn wave", () => {
  test("amplitude and crest come back", () => {
    const wave = (turn: number) => 0.03 * Math.cos(2 * Math.PI * (turn - 0.35));
    const { oncePerTurn } = shape(
      read(quarters, (turn) => 2.11 * turn + wave(turn), seeded(21)),
      2.11,
    );
    expect(oncePerTurn?.real).toBe(true);
    const { amplitude = 0, uncertainty = 0, crest = 0 } = oncePerTurn?.found ?? {};
    expect(Math.abs(amplitude - 0.03)).toBeLessThan(uncertainty * 1.5);
    expect(crest).toBeCloseTo(0.35, 1);
  });
  test("its half-width holds the truth in 95 of 100", () => {
    const random = seeded(22);
    const wave = (turn: number) => 0.03 * Math.cos(2 * Math.PI * (turn - 0.35));
    let held = 0;
    for (let i = 0; i < 2000; i++) {
      const readings = read(quarters, (turn) => 2.11 * turn + wave(turn), random);
      const { amplitude = 0, uncertainty = 0 } = shape(readings, 2.11).oncePerTurn?.found ?? {};
      if (Math.abs(amplitude - 0.03) <= uncertainty) held++;
    }
    expect(held / 2000).toBeGreaterThan(0.93);
    expect(held / 2000).toBeLessThan(0.99);
  });
  test("whole turns alone cannot tell of a wave", () => {
    expect(
      shape(
        read(wholeTurns, (turn) => 2 * turn, seeded(23)),
        2,
      ).oncePerTurn,
    ).toBeUndefined();
  });
});

describe("a wild reading", () => {
  const turns = Array.from({ length: 13 }, (_, i) => i);
  const sound = (seed: number) => read(turns, (turn) => 2.11 * turn + 1.03, seeded(seed)).travel;
  const with_ = (index: number, value: number) => sound(5).map((v, i) => (i === index ? value : v));

  test("a miscounted turn is named at its place", () => {
    const [wild, ...more] = wildReadings(turns, with_(6, (sound(5)[6] ?? 0) + 2.11), gauge);
    expect(more).toEqual([]);
    expect(wild).toMatchObject({ index: 6, like: expect.stringContaining("one turn too much") });
  });
  test("figures swapped are named", () => {
    // 2.11 × 7 + 1.03 = 15.80, written as 18.50
    expect(wildReadings(turns, with_(7, 18.5), gauge)[0]).toMatchObject({
      index: 7,
      like: expect.stringContaining("look swapped"),
    });
  });
  test("two wild readings do not hide each other", () => {
    const travel = sound(5).map((v, i) => (i === 3 ? v + 0.4 : i === 4 ? v + 0.45 : v));
    expect(wildReadings(turns, travel, gauge).map(({ index }) => index)).toEqual([3, 4]);
  });
  test.each([5, 6, 7, 8, 10, 13, 20, 30])("%i sound readings are accused once in a hundred series at most", (count) => {
    const random = seeded(31 + count);
    const places = Array.from({ length: count }, (_, i) => i);
    for (const scatter of [0.004, 0.02]) {
      let accused = 0;
      for (let i = 0; i < 2000; i++) {
        const travel = places.map((turn) => rounded(2.11 * turn + scatter * normal(random), gauge));
        if (wildReadings(places, travel, gauge).length > 0) accused++;
      }
      // Three standard deviations of a count of 2000 above one in a hundred.
      expect(accused / 2000).toBeLessThan(0.0167);
    }
  });
  test("a gross slip among five readings is named all the same", () => {
    const travel = [0, 2.11, 6.22, 6.33, 8.44];
    expect(wildReadings([0, 1, 2, 3, 4], travel, gauge).map(({ index }) => index)).toEqual([2]);
  });
  test("runs with a zero of the gauge for each are not wild, and a slip in one of them is", () => {
    const all = [0, 1, 2].flatMap(() => turns);
    const travel = [0, 1, 2].flatMap((run) => sound(run + 60).map((v) => v + 0.7 * run));
    expect(wildReadings(all, travel, gauge)).toEqual([]);
    const slip = travel.map((v, i) => (i === 17 ? v + 0.3 : v));
    expect(wildReadings(all, slip, gauge).map(({ index }) => index)).toEqual([17]);
    expect(miscountedFrom(all, travel)).toBeUndefined();
  });
  test("a turn lost in counting shifts all that follow, and is told from a lone slip", () => {
    const shifted = sound(5).map((v, i) => (i >= 8 ? v + 2.11 : v));
    expect(miscountedFrom(turns, shifted)).toEqual({ index: 8, turns: 1 });
    expect(miscountedFrom(turns, sound(5))).toBeUndefined();
    expect(miscountedFrom(turns, with_(6, (sound(5)[6] ?? 0) + 2.11))).toBeUndefined();
  });
});
