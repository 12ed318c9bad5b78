/** Which readings share a run of the handwheel, and which a place of the travel: each by its number from 0. */
export type Levels = {
  readonly runs: number;
  readonly run: Int32Array;
  readonly places: number;
  readonly place: Int32Array;
};

/** A run ends where the wheel comes back to a place that it had left; a place read twice in a row belongs to the same run.
 *  The gauge may have been set anew between runs. */
export function levelsOf(turns: readonly number[]): Levels {
  const run = new Int32Array(turns.length);
  const place = new Int32Array(turns.length);
  const places = new Map<number, number>();
  let [here, since] = [new Set<number>(), 0];
  for (const [index, turn] of turns.entries()) {
    if (here.has(turn) && turn !== turns[index - 1]) {
      since++;
      here = new Set();
    }
    here.add(turn);
    run[index] = since;
    const known = places.get(turn) ?? places.size;
    places.set(turn, known);
    place[index] = known;
  }
  return { runs: since + 1, run, places: places.size, place };
}

/** Mean of the values of each group, and how many they are. */
export function meansOf(values: ArrayLike<number>, group: Int32Array, groups: number) {
  const means = new Float64Array(groups);
  const counts = new Float64Array(groups);
  for (let i = 0; i < values.length; i++) {
    const g = group[i] ?? 0;
    counts[g] = (counts[g] ?? 0) + 1;
    // A running mean loses no digits where the values lie far from zero.
    means[g] = (means[g] ?? 0) + ((values[i] ?? 0) - (means[g] ?? 0)) / (counts[g] ?? 1);
  }
  return { means, counts };
}

/** The values less the mean of their group. */
export function lessMeans(values: ArrayLike<number>, group: Int32Array, groups: number): Float64Array {
  const { means } = meansOf(values, group, groups);
  return Float64Array.from(values, (value, i) => value - (means[group[i] ?? 0] ?? 0));
}

/** How far one value strays: what repeats at a place, and what differs each time it is come to. */
export type Spread = {
  /** Standard deviation of one value in one run, both together. Dividing it by the number of repeats would treat what
   *  repeats as chance. */
  readonly single: number;
  /** Of the means of the places, which alone tell what repeats. */
  readonly degreesOfFreedom: number;
  /** Of what differs each time; absent where no place was come to twice. */
  readonly repeat?: { readonly deviation: number; readonly degreesOfFreedom: number };
};

/** Spread of residuals of a line (or a mean) through `levels`, from which `fitted` coefficients beside one offset for each run
 *  were taken: between the places, with places − 1 − fitted degrees of freedom, and within them. Two levels of a nested
 *  analysis of variance, GUM H.5 (memory); for one run it is the ordinary scatter. NaN for `single` where nothing is left. */
export function spreadOf(residuals: ArrayLike<number>, levels: Levels, fitted: number): Spread {
  const { means, counts } = meansOf(residuals, levels.place, levels.places);
  const degreesOfFreedom = levels.places - 1 - fitted;
  const between = means.reduce((sum, mean) => sum + mean * mean, 0) / Math.max(0, degreesOfFreedom);
  const repeats = residuals.length - levels.places - levels.runs + 1;
  if (repeats < 1) return { single: Math.sqrt(between), degreesOfFreedom };
  let within = 0;
  for (let i = 0; i < residuals.length; i++) within += ((residuals[i] ?? 0) - (means[levels.place[i] ?? 0] ?? 0)) ** 2;
  within /= repeats;
  const share = counts.reduce((sum, count) => sum + 1 / count, 0) / levels.places;
  return {
    single: Math.sqrt(between + (1 - share) * within),
    degreesOfFreedom,
    repeat: { deviation: Math.sqrt(within), degreesOfFreedom: repeats },
  };
}
