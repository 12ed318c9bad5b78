import { describe, expect, test } from "vitest";
import { doubtOver } from "../../src/feed/doubtOver.js";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { normal, rounded, seeded, trueFeed } from "./screws.js";

/** `FEED_SCREWS=20000 npx vitest run tests/feed/coverage.test.ts` measures more of each, for figures to quote. */
const screws = Number(process.env.FEED_SCREWS ?? 600);

type Bench = {
  /** Places of one run, in turns. */
  readonly places: readonly number[];
  readonly runs: number;
  /** What comes again at a place with every run, and what does not; mm, standard deviations. */
  readonly atPlace: number;
  readonly each: number;
  readonly wear?: number;
  readonly wave?: number;
  /** The dial is to have the wave built in. */
  readonly builtIn?: boolean;
};

const gauge = 0.01;
const whole = (last: number) => Array.from({ length: last + 1 }, (_, i) => i);
const quarters = (last: number) => Array.from({ length: 4 * last + 1 }, (_, i) => i / 4);

/** How often the stated half-widths hold the truth: of the feed, and of a movement begun and ended anywhere that was measured. */
function held({ places, runs, atPlace, each, wear = 0, wave = 0, builtIn = false }: Bench, seed: number) {
  const random = seeded(seed);
  const last = places.at(-1) ?? 0;
  let [feeds, moves] = [0, 0];
  for (let screw = 0; screw < screws; screw++) {
    const feed = 2 + 0.2 * random();
    const depth = wear * (0.5 + 0.5 * random());
    const [centre, width] = [last * (0.3 + 0.4 * random()), last * (0.15 + 0.2 * random())];
    const [sway, crest] = [wave * (0.5 + 0.5 * random()), random()];
    const even = (turn: number) => feed * turn - depth * Math.exp(-(((turn - centre) / width) ** 2));
    const travelAt = (turn: number) => even(turn) + sway * Math.cos(2 * Math.PI * (turn - crest));
    const errors = places.map(() => atPlace * normal(random));
    const [turns, travel]: [number[], number[]] = [[], []];
    for (let run = 0; run < runs; run++) {
      const zero = random();
      for (const [i, turn] of places.entries()) {
        turns.push(turn);
        travel.push(rounded(zero + travelAt(turn) + (errors[i] ?? 0) + each * normal(random), gauge));
      }
    }
    const found = feedPerTurn({ from: "readings", gauge, turns, travel }, builtIn);
    if ("tooFew" in found || found.uncertainty === undefined) throw new Error("nothing found");
    if (Math.abs(found.perTurn - trueFeed(even, last)) <= found.uncertainty) feeds++;
    const [from, to] = [last * random(), last * random()];
    const off = Math.abs(travelAt(to) - travelAt(from) - found.perTurn * (to - from));
    if (off <= (doubtOver(to - from, found) ?? 0)) moves++;
  }
  return { feeds: feeds / screws, moves: moves / screws };
}

describe("the stated 95 % holds the truth in 93 of 100 at least", () => {
  test.each<[string, Bench]>([
    ["one run", { places: whole(12), runs: 1, atPlace: 0.006, each: 0.003 }],
    ["one run of few readings", { places: whole(5), runs: 1, atPlace: 0.006, each: 0.003 }],
    ["5 runs", { places: whole(12), runs: 5, atPlace: 0.006, each: 0.003 }],
    ["20 runs", { places: whole(12), runs: 20, atPlace: 0.006, each: 0.003 }],
    ["20 runs that differ by chance alone", { places: whole(12), runs: 20, atPlace: 0, each: 0.01 }],
    ["a worn screw, one run", { places: whole(24), runs: 1, atPlace: 0.003, each: 0.003, wear: 0.06 }],
    ["a worn screw, 5 runs", { places: whole(24), runs: 5, atPlace: 0.003, each: 0.003, wear: 0.06 }],
    ["a little worn, few places", { places: whole(9), runs: 1, atPlace: 0.003, each: 0.003, wear: 0.03 }],
    ["a wavy screw, one run", { places: quarters(5), runs: 1, atPlace: 0.003, each: 0.003, wave: 0.04 }],
    ["a wavy screw, 5 runs", { places: quarters(5), runs: 5, atPlace: 0.003, each: 0.003, wave: 0.04 }],
    ["a little wavy, over two turns", { places: quarters(2), runs: 1, atPlace: 0.003, each: 0.003, wave: 0.015 }],
    ["wavy and worn", { places: quarters(8), runs: 1, atPlace: 0.003, each: 0.003, wave: 0.03, wear: 0.05 }],
  ])("%s", (name, bench) => {
    const { feeds, moves } = held(bench, 41);
    if (process.env.FEED_SCREWS) console.log(`${name}: feed ${feeds}, movements ${moves}`);
    expect(feeds).toBeGreaterThanOrEqual(0.93);
    expect(moves).toBeGreaterThanOrEqual(0.93);
  });

  test("a wave that the dial has built in: its feed, fitted together with the wave", () => {
    const bench = { places: quarters(2), runs: 1, atPlace: 0.003, each: 0.003, wave: 0.04, builtIn: true };
    expect(held(bench, 42).feeds).toBeGreaterThanOrEqual(0.93);
  });
});

describe("repeats of the same places alone", () => {
  const turns = whole(8);
  const once = turns.map((turn) => rounded(2.11 * turn + 0.006 * normal(seeded(turn + 1)), gauge));
  const doubt = (runs: number, travel: readonly number[]) => {
    const all = Array.from({ length: runs }, () => turns).flat();
    const found = feedPerTurn({ from: "readings", gauge, turns: all, travel });
    return "tooFew" in found ? Number.NaN : (found.uncertainty ?? Number.NaN);
  };
  test("make the feed no better known, however many, and a new zero of the gauge for each no worse", () => {
    const single = doubt(1, once);
    for (const runs of [2, 5, 20]) {
      const same = Array.from({ length: runs }, () => once).flat();
      expect(doubt(runs, same)).toBeCloseTo(single, 12);
      const shifted = Array.from({ length: runs }, (_, run) => once.map((reading) => reading + 0.37 * run)).flat();
      expect(doubt(runs, shifted)).toBeCloseTo(single, 12);
    }
  });
  test("two places alone tell no doubt, however often they are read", () => {
    const found = feedPerTurn({ from: "readings", gauge, turns: [0, 8, 0, 8], travel: [0, 16.9, 0.01, 16.88] });
    expect("tooFew" in found ? 0 : found.uncertainty).toBeUndefined();
  });
});
