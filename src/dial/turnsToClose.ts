import { convergents } from "../quantity/fraction.js";

/** After so many turns so many divisions come round to zero, all but `error` (dial less truth), in what the dial reads. */
export type Cycle = { readonly turns: number; readonly divisions: number; readonly error: number };

/** The small numbers of turns after which divisions of `value` come nearest to closing, by continued fractions: each
 *  is nearer than any smaller number of turns. `turn`: what the dial reads in one turn. Lengths in one unit, > 0. */
export function turnsToClose(turn: number, value: number, mostTurns = 60): Cycle[] {
  return convergents(turn / value, mostTurns)
    .filter(({ numerator }) => numerator > 0)
    .map(({ numerator, denominator }) => {
      const error = numerator * value - denominator * turn;
      return { turns: denominator, divisions: numerator, error: Math.abs(error) < 1e-9 * value ? 0 : error };
    });
}
