import { describe, expect, test } from "vitest";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { normal, rounded, seeded } from "./screws.js";

/** How a screw is worn, 0 to 1, at a turn: about a place, so wide; smooth, between edges, to a corner, from the end. */
const forms: Readonly<Record<string, (turn: number, centre: number, width: number) => number>> = {
  "a smooth hollow": (turn, centre, width) => Math.exp(-(((turn - centre) / width) ** 2)),
  "a hollow with edges": (turn, centre, width) =>
    Math.abs(turn - centre) > 1.5 * width ? 0 : Math.cos((Math.PI * (turn - centre)) / (3 * width)) ** 2,
  "a corner": (turn, centre, width) => Math.max(0, 1 - Math.abs(turn - centre) / (1.5 * width)),
  "one end": (turn, _, width) => Math.max(0, 1 - turn / (2 * width)),
};
const gauge = 0.01;

type Bench = { readonly last: number; readonly every: number; readonly runs: number; readonly depth: number };
const benches: readonly Bench[] = [12, 24, 60].flatMap((last) =>
  [1, 3].flatMap((runs) => [0.03, 0.1].map((depth) => ({ last, every: last === 60 ? 2 : 1, runs, depth }))),
);

/** Of the zones of screws that were found worn: how often what is told of them lies within its ± of the true screw. */
function held(form: (turn: number, centre: number, width: number) => number, gaugeError?: number) {
  let [zones, turns, ahead] = [0, 0, 0];
  for (const [index, { last, every, runs, depth }] of benches.entries()) {
    const random = seeded(100 + index);
    for (let screw = 0; screw < 40; screw++) {
      const feed = 2 + 0.2 * random();
      const deep = depth * (0.5 + 0.5 * random());
      const [centre, width] = [last * (0.3 + 0.4 * random()), last * (0.1 + 0.2 * random())];
      const at = (turn: number) => feed * turn - deep * form(turn, centre, width);
      const places = Array.from({ length: last / every + 1 }, (_, place) => place * every);
      const errors = places.map(() => 0.003 * normal(random));
      // A gauge that errs here and there, within its limit.
      const knots = Array.from({ length: 6 }, () => (random() - 0.5) * (gaugeError ?? 0));
      const read: { turns: number[]; travel: number[] } = { turns: [], travel: [] };
      for (let run = 0; run < runs; run++) {
        const zero = random();
        for (const [place, turn] of places.entries()) {
          const own = (errors[place] ?? 0) + 0.003 * normal(random) + (knots[Math.round((turn / last) * 5)] ?? 0);
          read.turns.push(turn);
          read.travel.push(rounded(zero + at(turn) + own, gauge));
        }
      }
      const found = feedPerTurn({ from: "readings", gauge, ...(gaugeError && { gaugeError }), ...read });
      const along = "tooFew" in found ? undefined : found.measured?.shape.alongTravel;
      if ("tooFew" in found || !along?.real) continue;
      for (const { fromTurn, toTurn, perTurn, uncertainty, aheadAtEnd, aheadUncertainty } of along.found) {
        zones++;
        if (Math.abs((at(toTurn) - at(fromTurn)) / (toTurn - fromTurn) - perTurn) <= uncertainty) turns++;
        if (Math.abs(at(toTurn) - at(0) - found.perTurn * toTurn - aheadAtEnd) <= aheadUncertainty) ahead++;
      }
    }
  }
  return { zones, turns: turns / zones, ahead: ahead / zones };
}

describe("what is told of a worn slide's zones holds the true screw in 95 of 100", () => {
  test.each(Object.entries(forms))("worn as %s", (_, form) => {
    const { zones, turns, ahead } = held(form);
    // Enough to tell 95 from 93 of 100.
    expect(zones).toBeGreaterThan(1000);
    expect(turns).toBeGreaterThanOrEqual(0.95);
    expect(ahead).toBeGreaterThanOrEqual(0.95);
  });

  test("read with a gauge that errs within the limit that the file tells", () => {
    const { turns, ahead } = held(forms["a corner"] ?? (() => 0), 0.02);
    expect(turns).toBeGreaterThanOrEqual(0.95);
    expect(ahead).toBeGreaterThanOrEqual(0.95);
  });
});

test("a zone is told as it was read: straight from the readings at its ends", () => {
  // Even, but for one turn in the middle that is short by 0.03 and one later that is long by as much.
  const travel = Array.from({ length: 31 }, (_, turn) => 2 * turn - (turn > 13 && turn < 22 ? 0.03 : 0));
  const found = feedPerTurn({ from: "readings", gauge: 0.001, turns: travel.map((_, turn) => turn), travel });
  const zones = "tooFew" in found ? [] : (found.measured?.shape.alongTravel?.found ?? []);
  const perTurn = "tooFew" in found ? 0 : found.perTurn;
  expect(zones.map(({ perTurn: own }) => own)).toEqual(
    [0, 6, 12, 18, 24].map((from) => expect.closeTo(((travel[from + 6] ?? 0) - (travel[from] ?? 0)) / 6, 9)),
  );
  for (const { toTurn, aheadAtEnd } of zones)
    expect(aheadAtEnd).toBeCloseTo((travel[toTurn] ?? 0) - (travel[0] ?? 0) - perTurn * toTurn, 9);
});
