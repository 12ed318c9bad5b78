import type { Units } from "../machine/machine.js";
import { formatFixed, unitName } from "../quantity/format.js";
import { convergents } from "../quantity/fraction.js";
import { mmPer } from "../quantity/length.js";
import { say } from "../words/say.js";

/** After so many turns so many divisions come round to zero, all but `error` (dial less truth), in what the dial reads. */
export type Closing = { readonly turns: number; readonly divisions: number; readonly error: number };

/** The small numbers of turns after which divisions of `value` come nearest to closing, by continued fractions: each
 *  is nearer than any smaller number of turns. `turn`: what the dial reads in one turn. Lengths in one unit, > 0.
 *  Nobody counts more turns than `mostTurns`. */
export function closings(turn: number, value: number, mostTurns = 40): Closing[] {
  return convergents(turn / value, mostTurns)
    .filter(({ numerator }) => numerator > 0)
    .map(({ numerator, denominator }) => {
      const error = numerator * value - denominator * turn;
      return { turns: denominator, divisions: numerator, error: Math.abs(error) < 1e-9 * value ? 0 : error };
    });
}

/** "in 1 turn 84, 0.0253 mm out; in 2 turns 169 exactly": the last few, the best last. */
export function closingWords(found: readonly Closing[], units: Units): string {
  const places = units === "mm" ? 4 : 5;
  return found
    .slice(-4)
    .map(({ turns, divisions, error }) => {
      const off = Math.abs(error) / mmPer[units];
      const least = 10 ** -places;
      if (error === 0) return say("start readings.closes exactly", { n: turns, divisions });
      const out =
        off < least / 2 ? say("dials.under", { least: formatFixed(least, places) }) : formatFixed(off, places);
      return say("start readings.closes", { n: turns, divisions, out: `${out} ${unitName(units)}` });
    })
    .join("; ");
}
