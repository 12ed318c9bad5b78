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
  /** How often to go through them, out and back. */
  readonly runs: number;
  /** Turns from one reading to the next. */
  readonly every: number;
  /** Half-width at 95 % that the feed will have over the working travel. */
  readonly doubtOverTravel: number;
  /** False where no number of readings up to the most reaches the wish. */
  readonly enough: boolean;
  readonly scatter: number;
  /** Why just so many, each a sentence without its full stop. */
  readonly why: readonly string[];
};

/** One reading scatters by half a graduation: rounding alone gives 0.29 of one, setting the wheel on its mark and reading
 *  between the lines as much again. Common practice; a file's own readings tell better. */
const SCATTER_IN_GRADUATIONS = 0.5;
/** Fewer would not show a worn zone. */
const FEWEST = 9;
const MOST_IN_A_RUN = 31;
const MOST_RUNS = 5;

/** The fewest readings, evenly spread over as much travel as the gauge reaches, whose fitted feed lies `within` the wish
 *  over the working travel in 95 of 100 cases. Whole turns where the travel holds enough of them: the wheel then stands
 *  on the same mark each time, and an eccentric dial cannot mislead. */
export function readingsPlan(wish: PlanWish): ReadingsPlan {
  const scatter = Math.max(wish.scatter ?? 0, SCATTER_IN_GRADUATIONS * wish.gauge);
  const room = wish.travel - (wish.ends ?? 0);
  const span = Math.min(room, wish.reach ?? room);
  const whole = Math.floor(span / wish.feed + 1e-9);
  // A long feed has few whole turns in its travel: then read at the quarters of a turn, or finer.
  const unit =
    whole >= FEWEST - 1 ? 1 : ([1 / 2, 1 / 4, 1 / 8].find((part) => span / wish.feed / part >= FEWEST - 1) ?? 1 / 16);
  const steps = Math.max(2, Math.floor(span / wish.feed / unit + 1e-9));
  const candidates = spacings(steps, unit).map((turns) => ({ turns, runs: 1 }));
  const densest = candidates.at(-1) ?? { turns: [0, unit, 2 * unit], runs: 1 };
  for (let runs = 2; runs <= MOST_RUNS; runs++) candidates.push({ turns: densest.turns, runs });
  const doubt = (plan: { turns: readonly number[]; runs: number }): number => {
    const all = Array.from({ length: plan.runs }, () => plan.turns).flat();
    return (studentT95(all.length - 2) * slopeErrorFrom(scatter, all) * wish.travel) / wish.feed;
  };
  const last = candidates.at(-1) ?? densest;
  const plan = candidates.find((candidate) => doubt(candidate) <= wish.within) ?? last;
  const [first = 0, second = unit] = plan.turns;
  const doubtOverTravel = doubt(plan);
  return {
    turns: plan.turns,
    runs: plan.runs,
    every: second - first,
    doubtOverTravel,
    enough: doubtOverTravel <= wish.within,
    scatter,
    why: [
      wish.scatter !== undefined && scatter === wish.scatter
        ? "the scatter of one reading is that of the readings in the file"
        : "one reading is taken to scatter by half a graduation",
      ...(unit === 1
        ? ["whole turns bring the same mark to the index each time, so an eccentric dial cannot mislead"]
        : ["one turn goes so far that parts of a turn must be read"]),
      ...(room < wish.travel ? ["the ends of the travel are kept free to take up the lost motion in"] : []),
      ...(span < room * (1 - 1e-9)
        ? ["the gauge does not reach over the whole travel: what lies beyond it stays unproven"]
        : []),
      `at least ${FEWEST} places, so that a worn stretch shows`,
    ],
  };
}

/** Evenly spread places over `steps` steps of `unit` turns, fewest first, from FEWEST up where there is room. */
function spacings(steps: number, unit: number): number[][] {
  const lists: number[][] = [];
  for (let stride = Math.max(1, Math.floor(steps / (FEWEST - 1))); stride >= 1; stride--) {
    const count = Math.floor(steps / stride) + 1;
    if (count > MOST_IN_A_RUN && lists.length > 0) break;
    lists.push(Array.from({ length: count }, (_, k) => k * stride * unit));
  }
  return lists;
}
