import { type Fraction, fraction } from "../quantity/fraction.js";

/** Whole turns of the crank and holes beyond them, on one circle. */
export type Move = { readonly turns: number; readonly holes: number; readonly circle: number };

/** A move that may miss: `error` is what was turned less what was wanted, in turns of the crank. */
export type NearMove = Move & { readonly error: number };

/** Turns of the crank for one of `divisions` equal parts of a turn of the work. `ratio`: turns of the crank for one
 *  turn of the work, 40 for most heads. Both whole numbers > 0. */
export const turnsPerDivision = (ratio: number, divisions: number): Fraction => fraction(ratio, divisions);

const SECONDS_IN_TURN = 360 * 3600;

/** Turns of the crank for an angle in whole seconds of arc. */
export const turnsForSeconds = (ratio: number, seconds: number): Fraction => fraction(ratio * seconds, SECONDS_IN_TURN);

/** Every circle on which a number of turns falls on holes exactly, fewest holes first. */
export function simpleMoves(turns: Fraction, circles: readonly number[]): Move[] {
  return circles
    .filter((circle) => circle % turns.denominator === 0)
    .map((circle) => moveOf((turns.numerator * circle) / turns.denominator, circle))
    .sort((one, other) => one.circle - other.circle);
}

/** The hole nearest to a number of turns; of circles that come equally near the one of fewest holes. At least one circle. */
export function nearestMove(turns: number, circles: readonly number[]): NearMove {
  const near = circles.map((circle) => {
    const holes = Math.round(turns * circle);
    return { ...moveOf(holes, circle), error: holes / circle - turns };
  });
  return near.reduce((best, move) => {
    const gain = Math.abs(best.error) - Math.abs(move.error);
    if (Math.abs(gain) > 1e-12) return gain > 0 ? move : best;
    return move.circle < best.circle ? move : best;
  });
}

function moveOf(holes: number, circle: number): Move {
  const turns = Math.floor(holes / circle);
  return { turns, holes: holes - turns * circle, circle };
}
