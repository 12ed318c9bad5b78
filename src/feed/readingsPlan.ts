import { showsWear, wearShown } from "./alongTravel.js";
import { slopeErrorFrom } from "./fit.js";
import { studentT95 } from "./studentT.js";

/** What must be known to say how many readings are enough. mm; feed > 0. */
export type PlanWish = {
  /** About; the nominal will do. */
  readonly feed: number;
  /** Working travel of the slide. */
  readonly travel: number;
  /** Smallest graduation of the gauge. */
  readonly gauge: number;
  /** How far the feed may be out over the working travel, at 95 %. */
  readonly within: number;
  /** Standard deviation of one reading, where earlier readings told it. */
  readonly scatter?: number;
  /** How far the gauge reaches; the whole travel where it is not told. */
  readonly reach?: number;
  /** Travel kept free at the ends, both together: to take up lost motion in, and to run past. None where not told. */
  readonly ends?: number;
};

export type ReadingsPlan = {
  /** Where to read, in turns, one run. */
  readonly turns: readonly number[];
  /** How often to go through them, out and back: twice, which tells how alike a place comes again. More runs make the feed
   *  no better known, since what is wrong at a place comes again with each. */
  readonly runs: number;
  /** A whole turn, or the part of one at whose multiples is read. */
  readonly unit: number;
  /** Turns from one reading to the next. */
  readonly every: number;
  /** Half-width at 95 % that the feed will have over the working travel. */
  readonly doubtOverTravel: number;
  /** False where no number of readings up to the most reaches the wish. */
  readonly enough: boolean;
  /** How deep a worn stretch must be to be found in 80 of 100 cases; absent where so few places never find one. */
  readonly wearShown?: number;
  readonly scatter: number;
  /** Why just so many, and what they leave open. */
  readonly why: readonly Reason[];
};

/** The scatter is known or taken for half a graduation; read at whole turns or at parts of one; ends kept free; a gauge that is too
 *  short; what further runs are good for. */
export type Reason =
  | "scatter known"
  | "scatter assumed"
  | "whole turns"
  | "parts of a turn"
  | "ends free"
  | "short gauge"
  | "more runs";

/** One reading scatters by half a graduation: rounding alone gives 0.29 of one, setting the wheel on its mark and reading
 *  between the lines as much again. Common practice; a file's own readings tell better. */
const SCATTER_IN_GRADUATIONS = 0.5;
/** A worn stretch of as many scatters, two graduations of the gauge, is to be found; shallower ones hide in the reading.
 *  Common practice. */
const WEAR_IN_SCATTERS = 4;
/** Whole turns are read where there are as many of them; with fewer, parts of a turn. */
const FEWEST_WHOLE = 9;
const MOST_IN_A_RUN = 31;
const RUNS = 2;

/** Places in a run that find a worn stretch in 80 of 100 cases, by the power of the test that looks for it. */
function placesForWear(): number {
  for (let count = FEWEST_WHOLE; count < MOST_IN_A_RUN; count++) {
    const places = Array.from({ length: count }, (_, k) => k);
    if (showsWear(places, WEAR_IN_SCATTERS)) return count;
  }
  return MOST_IN_A_RUN;
}

/** The fewest readings, evenly spread over as much travel as the gauge reaches, whose fitted feed lies `within` the wish
 *  over the working travel in 95 of 100 cases. Whole turns where the travel holds enough of them: the wheel then stands
 *  on the same mark each time, and an eccentric dial cannot mislead. */
export function readingsPlan(wish: PlanWish): ReadingsPlan {
  const scatter = Math.max(wish.scatter ?? 0, SCATTER_IN_GRADUATIONS * wish.gauge);
  const room = wish.travel - (wish.ends ?? 0);
  const span = Math.min(room, wish.reach ?? room);
  const whole = Math.floor(span / wish.feed + 1e-9);
  // A long feed has few whole turns in its travel: then read at the quarters of a turn, or finer. Halves would take a
  // once-per-turn error for feed.
  const unit =
    whole >= FEWEST_WHOLE - 1
      ? 1
      : ([1 / 4, 1 / 8].find((part) => span / wish.feed / part >= FEWEST_WHOLE - 1) ?? 1 / 16);
  const steps = Math.max(2, Math.floor(span / wish.feed / unit + 1e-9));
  const candidates = spacings(steps, unit, placesForWear());
  const doubt = (turns: readonly number[]): number =>
    (studentT95(turns.length - 2) * slopeErrorFrom(scatter, turns) * wish.travel) / wish.feed;
  const turns = candidates.find((places) => doubt(places) <= wish.within) ?? candidates.at(-1) ?? [0, unit, 2 * unit];
  const [first = 0, second = unit] = turns;
  const doubtOverTravel = doubt(turns);
  const shown = wearShown(turns, scatter);
  return {
    turns,
    runs: RUNS,
    ...(shown !== undefined && { wearShown: shown }),
    unit,
    every: second - first,
    doubtOverTravel,
    enough: doubtOverTravel <= wish.within,
    scatter,
    why: [
      wish.scatter !== undefined && scatter === wish.scatter ? "scatter known" : "scatter assumed",
      unit === 1 ? "whole turns" : "parts of a turn",
      ...(room < wish.travel ? (["ends free"] as const) : []),
      ...(span < room * (1 - 1e-9) ? (["short gauge"] as const) : []),
      "more runs",
    ],
  };
}

/** Evenly spread places over `steps` steps of `unit` turns, fewest first, from `fewest` up where there is room. */
function spacings(steps: number, unit: number, fewest: number): number[][] {
  const lists: number[][] = [];
  for (let stride = Math.max(1, Math.floor(steps / (fewest - 1))); stride >= 1; stride--) {
    const count = Math.floor(steps / stride) + 1;
    if (count > MOST_IN_A_RUN && lists.length > 0) break;
    lists.push(Array.from({ length: count }, (_, k) => k * stride * unit));
  }
  return lists;
}
