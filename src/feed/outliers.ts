import { chanceOfT } from "./chance.js";
import { NO_SCATTER, roundingDeviation } from "./gauge.js";
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

/** Readings that miscounting, misreading or miswriting made: first the line that half of the readings cannot move (the
 *  median of the slopes between pairs: Theil, 1950, memory), then Student's t against the line through the rest. They
 *  are named, never taken out. Fewer than 5 readings cannot tell which of them is wrong: none is named. */
export function wildReadings(turns: readonly number[], travel: readonly number[], gauge = 0): Wild[] {
  const count = turns.length;
  if (count < 5) return [];
  const slope = robustSlope(turns, travel);
  if (slope === undefined) return [];
  const heights = travel.map((value, i) => value - slope * (turns[i] ?? 0));
  const middle = median(heights);
  const least = Math.max(roundingDeviation(gauge), NO_SCATTER);
  const scatter = Math.max(median(heights.map((height) => Math.abs(height - middle))) / 0.6745, least);
  const suspects = heights.flatMap((height, i) => (Math.abs(height - middle) > SUSPECT * scatter ? [i] : []));
  if (suspects.length === 0 || suspects.length > (count - 3) / 2) return [];

  const suspected = new Set(suspects);
  const kept = turns.flatMap((_, i) => (suspected.has(i) ? [] : [i]));
  const x = kept.map((i) => turns[i] ?? 0);
  const line = regress(
    [x.map(() => 1), x],
    kept.map((i) => travel[i] ?? 0),
  );
  if (line === undefined) return [];
  const deviation = Math.max(line.deviation, least);
  const [intercept = 0, fitted = 0] = line.coefficients;
  return suspects.flatMap((index): Wild[] => {
    const turn = turns[index] ?? 0;
    const expected = intercept + fitted * turn;
    const off = (travel[index] ?? 0) - expected;
    const times = Math.abs(off) / (deviation * Math.sqrt(1 + line.spreadOf([1, turn])));
    if (chanceOfT(times, line.degreesOfFreedom) * count > FALSE_ALARM) return [];
    const like = likeness(travel[index] ?? 0, off, fitted, Math.max(4 * deviation, gauge));
    return [{ index, off, times: Math.abs(off) / deviation, ...(like && { like }) }];
  });
}

/** From which reading on a whole turn was lost or gained in counting; undefined where none was. The travel between
 *  neighbours then fits one turn more or less, and the readings after it go on as before. */
export function miscountedFrom(
  turns: readonly number[],
  travel: readonly number[],
): { readonly index: number; readonly turns: number } | undefined {
  const slope = turns.length < 5 ? undefined : robustSlope(turns, travel, true);
  if (slope === undefined || slope === 0) return undefined;
  const excess = (i: number) =>
    ((travel[i] ?? 0) - (travel[i - 1] ?? 0)) / slope - ((turns[i] ?? 0) - (turns[i - 1] ?? 0));
  for (let i = 1; i < turns.length; i++) {
    const here = Math.round(excess(i));
    if (here === 0 || Math.abs(excess(i) - here) > 0.15) continue;
    // A lone wild reading jumps back at once; a miscount stays.
    if (i + 1 < turns.length && Math.round(excess(i + 1)) === -here) return undefined;
    return { index: i, turns: here };
  }
  return undefined;
}

/** Median of the slopes between pairs, or between `neighbours` alone, which a single step cannot move. */
function robustSlope(turns: readonly number[], travel: readonly number[], neighbours = false): number | undefined {
  const count = turns.length;
  const slopes: number[] = [];
  const add = (i: number, j: number) => {
    const run = (turns[j] ?? 0) - (turns[i] ?? 0);
    if (run !== 0) slopes.push(((travel[j] ?? 0) - (travel[i] ?? 0)) / run);
  };
  if (neighbours) for (let i = 1; i < count; i++) add(i - 1, i);
  else if (count <= ALL_PAIRS_UP_TO) for (let i = 0; i < count; i++) for (let j = i + 1; j < count; j++) add(i, j);
  else for (let i = 0; i < count; i++) add(i, (i + (count >> 1)) % count);
  return slopes.length === 0 ? undefined : median(slopes);
}

function likeness(reading: number, off: number, slope: number, near: number): string | undefined {
  const turns = Math.round(off / slope);
  if (turns !== 0 && Math.abs(turns) <= 3 && Math.abs(off - turns * slope) <= near)
    return `just ${Math.abs(turns) === 1 ? "one turn" : `${Math.abs(turns)} turns`} ${turns > 0 ? "too much" : "too little"}: the turns look miscounted`;
  if (Math.abs(2 * reading - off) <= near) return "the sign looks wrong";
  const swapped = swappedDigits(reading).find((other) => Math.abs(reading - off - other) <= near);
  if (swapped !== undefined) return `two figures look changed about: ${swapped} would fit`;
  const size = 10 ** Math.floor(Math.log10(Math.abs(off) + near));
  const digit = Math.round(off / size);
  if (digit !== 0 && Math.abs(digit) <= 9 && size >= 0.1 && Math.abs(off - digit * size) <= near)
    return `one figure looks wrong: it is ${Math.abs(digit) * size} ${off > 0 ? "too much" : "too little"}`;
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
