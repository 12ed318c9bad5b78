import { incompleteBeta } from "./chance.js";
import { levelsOf, meansOf } from "./levels.js";

/** Fewer places than this show no run of neighbours. The published tables begin there. */
const LEAST_PLACES = 6;

/** Values over the turn, place by place along the travel: the mean of each place, whatever its runs. */
export function alongPlaces(
  turns: readonly number[],
  values: ArrayLike<number>,
): { turns: number[]; values: number[] } {
  const { place, places } = levelsOf(turns);
  const { means } = meansOf(values, place, places);
  const at = new Float64Array(places);
  for (const [i, turn] of turns.entries()) at[place[i] ?? 0] = turn;
  const order = Array.from(at, (_, k) => k).sort((a, b) => (at[a] ?? 0) - (at[b] ?? 0));
  return { turns: order.map((k) => at[k] ?? 0), values: order.map((k) => means[k] ?? 0) };
}

/** How likely chance alone leaves neighbours as alike as these: values over the turn that are left by a line (`from: "line"`) or a
 *  mean, in the order of the travel. What strays by chance does so place by place; a worn or stretched screw strays the same way
 *  for a stretch. Undefined with too few places, or where nothing is left.
 *
 *  The ratio d of the squared steps between neighbours to the squares themselves: Durbin & Watson, Biometrika 37 (1950) and 38
 *  (1951), for a mean alone von Neumann's (1941). Its chance by their beta approximation with d's own mean and variance over these
 *  turns, within the bounds of their tables (all from memory; the bounds are in the tests). */
export function chanceOfPattern(
  turns: readonly number[],
  left: ArrayLike<number>,
  from: "line" | "mean",
): number | undefined {
  const count = turns.length;
  if (count < LEAST_PLACES) return undefined;
  let squares = 0;
  let steps = 0;
  for (let i = 0; i < count; i++) {
    squares += (left[i] ?? 0) ** 2;
    if (i > 0) steps += ((left[i] ?? 0) - (left[i - 1] ?? 0)) ** 2;
  }
  if (squares === 0) return undefined;
  const { mean, variance } = momentsOver(turns, from);
  const both = (mean * (4 - mean)) / variance - 1;
  return incompleteBeta(Math.min(1, steps / squares / 4), (both * mean) / 4, both * (1 - mean / 4));
}

/** Mean and variance of d by chance alone. A is the matrix of the squared steps; the mean takes nothing from it, the line the part
 *  along its own unit column u. */
function momentsOver(turns: readonly number[], from: "line" | "mean"): { mean: number; variance: number } {
  const count = turns.length;
  let [trace, traceOfSquare] = [2 * (count - 1), 6 * count - 8];
  if (from === "line") {
    const u = unitColumn(turns);
    const at = (i: number) => u[i] ?? 0;
    let [once, twice] = [0, 0];
    for (let i = 0; i < count; i++) {
      const before = i > 0 ? at(i) - at(i - 1) : 0;
      const after = i + 1 < count ? at(i + 1) - at(i) : 0;
      once += before ** 2;
      twice += (before - after) ** 2;
    }
    trace -= once;
    traceOfSquare += once ** 2 - 2 * twice;
  }
  const freedom = count - (from === "line" ? 2 : 1);
  const mean = trace / freedom;
  return { mean, variance: (2 * (traceOfSquare - trace * mean)) / (freedom * (freedom + 2)) };
}

function unitColumn(turns: readonly number[]): Float64Array {
  const middle = turns.reduce((sum, turn) => sum + turn, 0) / turns.length;
  const column = Float64Array.from(turns, (turn) => turn - middle);
  const length = Math.sqrt(column.reduce((sum, value) => sum + value * value, 0));
  return column.map((value) => value / length);
}
