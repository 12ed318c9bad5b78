import { chanceOfRatio } from "./chance.js";
import { NO_SCATTER, roundingDeviation } from "./gauge.js";
import { lessMeans, levelsOf, meansOf } from "./levels.js";
import { regress } from "./regress.js";

/** From which reading on all of a run stands off by as much, mm, against those before it. */
export type Jump = { readonly index: number; readonly off: number };

/** Sound readings raise a false alarm this often: it stops the feed, so it must be rarer than a question. */
const FALSE_ALARM = 0.001;
/** Part of the step that must stand between two neighbouring readings: what rises little by little is wear, and comes back. */
const AT_ONCE = 0.5;
/** Readings on either side, without which a jump cannot be told from a wild reading. */
const EACH_SIDE = 2;

/** Where a run of readings parts into two of one slope and of different height: the gauge was moved, lost motion was taken up on
 *  the way, a part of a turn was lost. The step that betters the line most is held against chance by the variance ratio, with
 *  Bonferroni's bound over the places where it might stand (a shift at an unknown place: Cook & Weisberg, Residuals and
 *  Influence in Regression, 1982, memory). `without`: readings that are known not to belong to the others; `smooth`: the
 *  standard deviation about a smooth curve through the same readings, where one is real: what that explains better is wear,
 *  and no jump. Undefined where there is none. */
export function jumpIn(
  turns: readonly number[],
  travel: readonly number[],
  gauge = 0,
  { without = [], smooth = Number.POSITIVE_INFINITY }: { without?: readonly number[]; smooth?: number } = {},
): Jump | undefined {
  const left = new Set(without);
  const kept = turns.flatMap((_, index) => (left.has(index) ? [] : [index]));
  const x = kept.map((index) => turns[index] ?? 0);
  const y = kept.map((index) => travel[index] ?? 0);
  const count = x.length;
  if (count < 2 * EACH_SIDE + 2) return undefined;
  const { run, runs } = levelsOf(x);
  // Every run about its own mean: each had a zero of its own.
  const dx = lessMeans(x, run, runs);
  const { counts } = meansOf(x, run, runs);
  const spread = dx.reduce((sum, value) => sum + value * value, 0);
  if (!(spread > 0)) return undefined;
  const line = regress([dx], lessMeans(y, run, runs));
  if (line === undefined) return undefined;
  const { residuals: rest, residualSquares: squares } = line;
  const freedom = count - runs - 2;
  if (freedom < 1) return undefined;

  let places = 0;
  /** `lean`: what a step of 1 there adds to the common slope. */
  let best: { index: number; gain: number; off: number; lean: number } | undefined;
  let after = { size: 0, rest: 0, x: 0 };
  for (let i = count - 1; i > 0; i--) {
    after = { size: after.size + 1, rest: after.rest + (rest[i] ?? 0), x: after.x + (dx[i] ?? 0) };
    const size = counts[run[i] ?? 0] ?? 0;
    if (run[i - 1] !== run[i]) {
      after = { size: 0, rest: 0, x: 0 };
      continue;
    }
    if (after.size < EACH_SIDE || size - after.size < EACH_SIDE) continue;
    places++;
    // A step is 1 from here to the run's end, less what the run's height and the common slope take of it.
    const own = after.size - after.size ** 2 / size - after.x ** 2 / spread;
    if (own < 1e-9) continue;
    const gain = after.rest ** 2 / own;
    if (best === undefined || gain > best.gain)
      best = { index: i, gain, off: after.rest / own, lean: after.x / spread };
  }
  if (best === undefined) return undefined;
  const least = Math.max(roundingDeviation(gauge), NO_SCATTER) ** 2;
  const variance = Math.max((squares - best.gain) / freedom, least);
  if (variance > smooth ** 2 || Math.abs(best.off) < 2 * gauge) return undefined;
  const slope = (line.coefficients[0] ?? 0) - best.off * best.lean;
  const between =
    (y[best.index] ?? 0) - (y[best.index - 1] ?? 0) - slope * ((x[best.index] ?? 0) - (x[best.index - 1] ?? 0));
  if (between / best.off < AT_ONCE) return undefined;
  if (chanceOfRatio(best.gain / variance, 1, freedom) * places > FALSE_ALARM) return undefined;
  return { index: kept[best.index] ?? 0, off: best.off };
}
