import { describe, expect, test } from "vitest";
import { shape } from "../../src/feed/alongTravel.js";
import { jumpIn } from "../../src/feed/jump.js";
import { wildReadings } from "../../src/feed/outliers.js";
import { regress } from "../../src/feed/regress.js";
import { findingsOf } from "../support/sheets.js";

// A cross slide of ten threads to the inch whose screw is worn in the middle, read with an indicator of half a thousandth (invented).
const travel =
  "0, 0.1, 0.2005, 0.3005, 0.401, 0.501, 0.601, 0.702, 0.803, 0.9045, 1.0055, 1.106, 1.206, 1.305, 1.404, 1.5035, 1.603, 1.7035, 1.8035, 1.904, 2.004, 2.104, 2.2045, 2.3045, 2.405, 2.505, 2.605";
const back =
  "0.011, 0.111, 0.2115, 0.3115, 0.412, 0.512, 0.612, 0.7135, 0.8155, 0.918, 1.0195, 1.12, 1.22, 1.3185, 1.417, 1.5155, 1.614, 1.7145, 1.8145, 1.915, 2.015, 2.115, 2.2155, 2.3155, 2.416, 2.516, 2.616";
const turns = travel.split(", ").map((_, turn) => turn);
const lathe = (out: string, home: string) =>
  findingsOf(
    `name: L\nunits: in\nhandwheels: [{ name: Cross slide, feed: { readings: { gauge: 0.0005, turns: [${turns.join(", ")}], travel: [${out}], return: [${home}] } } }]\n`,
  ).handwheels[0];

describe("a screw that is worn in the middle", () => {
  test("is told as that: no jump, no wild reading on either way, its lost motion known", () => {
    const { study, feed } = lathe(travel, back) ?? {};
    expect(study?.jump).toBeUndefined();
    expect(study?.wild).toEqual([]);
    expect(study?.back?.wild).toEqual([]);
    expect(study?.shape.alongTravel?.real).toBe(true);
    // It lags by 0.011 to 0.0145 in from place to place; the worst stretch counts.
    expect((feed?.lostMotion?.travel ?? 0) / 25.4).toBeCloseTo(0.0137, 3);
  });

  test("a gauge that was moved there is still found", () => {
    const moved = travel.split(", ").map((at, turn) => Number(at) + (turn > 19 ? 0.012 : 0));
    expect(
      jumpIn(
        turns,
        moved.map((inches) => inches * 25.4),
        0.0127,
      ),
    ).toMatchObject({ index: 20 });
  });
});

test("a slip of the pen is looked for in the figures that were written, not in millimetres", () => {
  const inches = turns.map((turn) => Number((turn * 0.1003).toFixed(4)));
  // 1.1033 written as 1.1303
  inches[11] = 1.1303;
  const [wild] = wildReadings(
    turns,
    inches.map((value) => value * 25.4),
    0.0127,
    25.4,
  );
  expect(wild).toMatchObject({ index: 11, like: expect.stringContaining("1.1033 would fit") });
});

test("a hollow with edges is corrected as it was read, near its edges and the ends too", () => {
  // 0.1002 in a turn, and a bulge of 0.006 in between turns 4 and 24; read to half a thou.
  const bulge = (turn: number) => (turn < 4 || turn > 24 ? 0 : 0.006 * Math.sin((Math.PI * (turn - 4)) / 20) ** 2);
  const screw = (turn: number) => 25.4 * (0.1002 * turn + bulge(turn));
  const turns = Array.from({ length: 16 }, (_, at) => 2 * at);
  const grain = 25.4 * 0.0005;
  const travel = turns.map((turn) => Math.round(screw(turn) / grain) * grain);
  const slope = regress([turns.map(() => 1), turns], travel)?.coefficients[1] ?? 0;
  const { ahead = [] } = shape({ turns, travel, gauge: grain }, slope);
  const aheadAt = (turn: number) => {
    const at = (turn / 30) * (ahead.length - 1);
    const [low, high] = [Math.floor(at), Math.ceil(at)];
    return (ahead[low] ?? 0) + (at - low) * ((ahead[high] ?? 0) - (ahead[low] ?? 0));
  };
  for (const from of [0, 5, 10, 15, 20, 23, 25])
    for (const gone of [1, 3, 5]) {
      const truly = screw(from + gone) - screw(from);
      const corrected = slope * gone + aheadAt(from + gone) - aheadAt(from);
      // Both ends as they are read, and where an edge lies between two readings a quarter of what it turns by.
      expect(Math.abs(corrected - truly)).toBeLessThan(grain + 25.4 * 0.0004);
    }
});
