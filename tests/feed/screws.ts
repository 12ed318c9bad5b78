import { slopeErrorFrom } from "../../src/feed/fit.js";

/** Seeded, so that a failure comes again: mulberry32, public domain. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Box and Muller. */
export const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

export const rounded = (value: number, gauge: number): number => Math.round(value / gauge) * gauge;

/** Slope of the least-squares line through a true curve, taken at many places: what "the feed" of a worn screw means. */
export function trueFeed(travelAt: (turn: number) => number, last: number): number {
  const places = Array.from({ length: 400 }, (_, i) => (i * last) / 399);
  const unit = slopeErrorFrom(1, places) ** 2;
  const middle = last / 2;
  return places.reduce((sum, turn) => sum + (turn - middle) * travelAt(turn), 0) * unit;
}
