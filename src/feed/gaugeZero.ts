import type { Readings } from "../machine/machine.js";
import { REAL_BELOW } from "./alongTravel.js";
import { chanceOfRatio } from "./chance.js";
import { mean } from "./fit.js";
import { NO_SCATTER, roundingDeviation } from "./gauge.js";

/** A repeated run that was read from another zero of the gauge than the others. */
export type OtherZero = {
  /** Its first and last reading, by their place in the list. */
  readonly from: number;
  readonly to: number;
  /** Which of the runs it is, from 1. */
  readonly run: number;
  /** mm by which it stands above the middle one of the runs. */
  readonly off: number;
};

/** Zeros this many scatters apart were set anew; less is how well a slide comes back. Common practice. */
const APART = 6;

/** The runs of a way out are told apart by turns that fall back. Each run gets a height of its own over one common slope; where
 *  the heights differ by more than chance (analysis of variance), scatter and the gauge's graduation explain, the runs furthest
 *  from the middle one are named. Empty for a single run, and for readings in another order than that of taking. */
export function otherZeros({ turns, travel, gauge = 0 }: Readings): OtherZero[] {
  const starts = turns.flatMap((turn, i) => (i === 0 || turn < (turns[i - 1] ?? 0) ? [i] : []));
  const runs = starts.map((from, k) => ({ from, to: (starts[k + 1] ?? turns.length) - 1, run: k + 1 }));
  if (runs.length < 2 || runs.some(({ from, to }) => to === from)) return [];
  const lines = runs.map((run) => {
    const x = turns.slice(run.from, run.to + 1);
    const y = travel.slice(run.from, run.to + 1);
    return { ...run, x, y, meanX: mean(x), meanY: mean(y) };
  });
  const total = (of: (line: (typeof lines)[number]) => readonly number[]) =>
    lines.flatMap(of).reduce((a, b) => a + b, 0);
  const spread = total(({ x, meanX }) => x.map((turn) => (turn - meanX) ** 2));
  if (spread === 0) return [];
  const slope = total(({ x, y, meanX, meanY }) => x.map((turn, i) => (turn - meanX) * ((y[i] ?? 0) - meanY))) / spread;
  const within = total(({ x, y, meanX, meanY }) =>
    x.map((turn, i) => ((y[i] ?? 0) - meanY - slope * (turn - meanX)) ** 2),
  );
  const heights = lines.map(({ meanX, meanY }) => meanY - slope * meanX);
  const freedom = turns.length - runs.length - 1;
  if (freedom < 1) return [];
  const deviation = Math.max(Math.sqrt(within / freedom), roundingDeviation(gauge), NO_SCATTER);
  const middle = mean(heights);
  const between = lines.reduce((sum, { x }, k) => sum + x.length * ((heights[k] ?? 0) - middle) ** 2, 0);
  if (chanceOfRatio(between / (runs.length - 1) / deviation ** 2, runs.length - 1, freedom) >= REAL_BELOW) return [];
  const like = middleOf(heights);
  return runs.flatMap((run, k) => {
    const off = (heights[k] ?? 0) - like;
    return Math.abs(off) > Math.max(APART * deviation, 2 * gauge) ? [{ ...run, off }] : [];
  });
}

/** The middle one; of two, the earlier run's: a run is compared with one that was taken. */
function middleOf(heights: readonly number[]): number {
  if (heights.length === 2) return heights[0] ?? 0;
  return [...heights].sort((a, b) => a - b)[Math.floor((heights.length - 1) / 2)] ?? 0;
}
