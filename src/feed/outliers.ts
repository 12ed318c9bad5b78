import { say } from "../words/say.js";
import { chanceOfRatio, chanceOfT, logWays } from "./chance.js";
import { NO_SCATTER, roundingDeviation } from "./gauge.js";
import { type Levels, levelsOf } from "./levels.js";
import { regress } from "./regress.js";

/** A reading that does not belong to the others, and what it looks like. */
export type Wild = {
  readonly index: number;
  /** mm from the line through the others. */
  readonly off: number;
  /** `off` in scatters of the others. */
  readonly times: number;
  /** In words, the slip of the hand that makes just such a reading; absent where none is evident. */
  readonly like?: string;
};

/** Modified z-score beyond which a reading is suspected: Iglewicz & Hoaglin, How to Detect and Handle Outliers (1993),
 *  memory. A suspect is named only when the line through the unsuspected says so too. */
const SUSPECT = 3.5;
/** All readings together raise a false alarm this often. */
const FALSE_ALARM = 0.01;
/** Above this many readings the pairs for the robust line are thinned. */
const ALL_PAIRS_UP_TO = 400;

/** Readings that miscounting, misreading or miswriting made. First the line that half of the readings cannot move (the
 *  median of the slopes between pairs: Theil, 1950, memory) picks suspects. Whoever picks the worst finds bad ones among
 *  sound readings too, so the suspects must, taken together, better the fit by more than the best of all equally large
 *  groups of sound readings would (the variance ratio of the mean-shift model, with Bonferroni's bound over the groups:
 *  Cook & Weisberg, Residuals and Influence in Regression, 1982, memory). Then each is judged by Student's t against the
 *  line through the rest. They are named, never taken out. Fewer than 5 readings cannot tell which of them is wrong: none
 *  is named. Every run has its own zero of the gauge. `unit`: mm of the unit that the readings were written in, where a slip of the
 *  pen was made. */
export function wildReadings(turns: readonly number[], travel: readonly number[], gauge = 0, unit = 1): Wild[] {
  const count = turns.length;
  if (count < 5) return [];
  const levels = levelsOf(turns);
  const { runs, run } = levels;
  const slope = robustSlope(turns, travel, levels);
  if (slope === undefined) return [];
  const rough = travel.map((value, i) => value - slope * (turns[i] ?? 0));
  const zeros = runs === 1 ? [median(rough)] : zerosOf(rough, run, runs);
  const zero = (i: number) => zeros[run[i] ?? 0] ?? 0;
  const heights = rough.map((height, i) => height - zero(i));
  const least = Math.max(roundingDeviation(gauge), NO_SCATTER);
  const scatter = Math.max(median(heights.map(Math.abs)) / 0.6745, least);
  const suspects = heights.flatMap((height, i) => (Math.abs(height) > SUSPECT * scatter ? [i] : []));
  if (suspects.length === 0 || suspects.length > (count - runs - 2) / 2) return [];

  const suspected = new Set(suspects);
  const fitThrough = (kept: readonly number[]) => {
    const x = kept.map((i) => turns[i] ?? 0);
    return regress(
      [x.map(() => 1), x],
      kept.map((i) => (travel[i] ?? 0) - zero(i)),
    );
  };
  const every = turns.map((_, i) => i);
  const line = fitThrough(every.filter((i) => !suspected.has(i)));
  if (line === undefined) return [];
  // Each further run took a zero of its own from what was left over.
  const freedom = line.degreesOfFreedom - (runs - 1);
  const deviation = Math.max(Math.sqrt(line.residualSquares / freedom), least);
  const bettered = (fitThrough(every)?.residualSquares ?? 0) - line.residualSquares;
  const together = chanceOfRatio(Math.max(0, bettered) / suspects.length / deviation ** 2, suspects.length, freedom);
  // Groups of one, two, three … share the false alarms out among them.
  const allowed = Math.log(FALSE_ALARM) - suspects.length * Math.LN2 - logWays(count, suspects.length);
  if (Math.log(together) > allowed) return [];
  const [intercept = 0, fitted = 0] = line.coefficients;
  const found = suspects.flatMap((index): Wild[] => {
    const turn = turns[index] ?? 0;
    const off = (travel[index] ?? 0) - zero(index) - (intercept + fitted * turn);
    const times = Math.abs(off) / (deviation * Math.sqrt(1 + line.spreadOf([1, turn])));
    if (chanceOfT(times, freedom) * count > FALSE_ALARM) return [];
    const like = likeness(travel[index] ?? 0, off, fitted, Math.max(4 * deviation, gauge), unit);
    return [{ index, off, times: Math.abs(off) / deviation, ...(like && { like }) }];
  });
  return found.filter((one) => !isStretch(one, found));
}

/** So many neighbours off on one side are no slips of the hand: there the screw is worn, or its nut. Common practice. */
const STRETCH = 3;

function isStretch({ index, off }: Wild, all: readonly Wild[]): boolean {
  const also = new Set(all.flatMap((one) => (one.off * off > 0 ? [one.index] : [])));
  let [first, last] = [index, index];
  while (also.has(first - 1)) first--;
  while (also.has(last + 1)) last++;
  return last - first + 1 >= STRETCH;
}

/** The median height of each run. */
function zerosOf(heights: readonly number[], run: Int32Array, runs: number): number[] {
  const lists: number[][] = Array.from({ length: runs }, () => []);
  for (const [i, height] of heights.entries()) lists[run[i] ?? 0]?.push(height);
  return lists.map(median);
}

/** From which reading on a whole turn was lost or gained in counting; undefined where none was. The travel between
 *  neighbours then fits one turn more or less, and the readings after it go on as before. */
export function miscountedFrom(
  turns: readonly number[],
  travel: readonly number[],
): { readonly index: number; readonly turns: number } | undefined {
  const levels = levelsOf(turns);
  const { run } = levels;
  const slope = turns.length < 5 ? undefined : robustSlope(turns, travel, levels, true);
  if (slope === undefined || slope === 0) return undefined;
  const excess = (i: number) =>
    ((travel[i] ?? 0) - (travel[i - 1] ?? 0)) / slope - ((turns[i] ?? 0) - (turns[i - 1] ?? 0));
  for (let i = 1; i < turns.length; i++) {
    // A new run may begin at a new zero of the gauge.
    if (run[i] !== run[i - 1]) continue;
    const here = Math.round(excess(i));
    if (here === 0 || Math.abs(excess(i) - here) > 0.15) continue;
    // A lone wild reading jumps back at once; a miscount stays.
    if (i + 1 < turns.length && run[i + 1] === run[i] && Math.round(excess(i + 1)) === -here) return undefined;
    return { index: i, turns: here };
  }
  return undefined;
}

/** Median of the slopes between pairs of one run, or between `neighbours` alone, which a single step cannot move. */
function robustSlope(
  turns: readonly number[],
  travel: readonly number[],
  { run, runs }: Levels,
  neighbours = false,
): number | undefined {
  const count = turns.length;
  const slopes: number[] = [];
  const add = (i: number, j: number) => {
    const apart = (turns[j] ?? 0) - (turns[i] ?? 0);
    if (apart !== 0 && run[i] === run[j]) slopes.push(((travel[j] ?? 0) - (travel[i] ?? 0)) / apart);
  };
  const half = Math.max(1, Math.floor(count / runs / 2));
  if (neighbours) for (let i = 1; i < count; i++) add(i - 1, i);
  else if (count <= ALL_PAIRS_UP_TO) for (let i = 0; i < count; i++) for (let j = i + 1; j < count; j++) add(i, j);
  else for (let i = 0; i < count; i++) add(i, (i + half) % count);
  return slopes.length === 0 ? undefined : median(slopes);
}

/** What slip of the hand makes a reading so far off; all mm, but figures as they were written. */
function likeness(reading: number, off: number, slope: number, near: number, unit: number): string | undefined {
  const turns = Math.round(off / slope);
  if (turns !== 0 && Math.abs(turns) <= 3 && Math.abs(off - turns * slope) <= near)
    return say(turns > 0 ? "measured report.turns too many" : "measured report.turns too few", { n: Math.abs(turns) });
  if (Math.abs(2 * reading - off) <= near) return say("measured report.sign");
  const swapped = swappedDigits(reading / unit).find((other) => Math.abs(reading - off - other * unit) <= near);
  if (swapped !== undefined) return say("measured report.swapped", { reading: swapped });
  const size = 10 ** Math.floor(Math.log10((Math.abs(off) + near) / unit));
  const digit = Math.round(off / unit / size);
  if (digit !== 0 && Math.abs(digit) <= 9 && size * unit >= 0.1 && Math.abs(off - digit * size * unit) <= near)
    return say(off > 0 ? "measured report.figure too much" : "measured report.figure too little", {
      by: Number((Math.abs(digit) * size).toPrecision(3)),
    });
  return undefined;
}

function swappedDigits(reading: number): number[] {
  const text = String(Number(reading.toPrecision(12)));
  const spots = [...text].flatMap((char, i) => (/\d/.test(char) ? [i] : []));
  return spots.slice(1).flatMap((spot, k) => {
    const before = spots[k] ?? 0;
    if (text[before] === text[spot]) return [];
    const chars = [...text];
    [chars[before], chars[spot]] = [chars[spot] ?? "", chars[before] ?? ""];
    return [Number(chars.join(""))];
  });
}

export function median(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? Number.NaN)) / 2;
}
