import type { Units } from "../machine/machine.js";
import { mmPer } from "../quantity/length.js";

/** Worth of one division, mm, and how a maker of dials would say it. */
export type DivisionValue = { readonly value: number; readonly unit: Units };

/** The leading digit of divisions that count by fours. By them no scale counts that closes in something rounder: 0.04 mm is for inch screws, 127 times in two tenths of an inch. */
export const FOURS = 4;

/** Steps of a scale: 1, 2, 5 (MIL-HDBK-759B), and 2.5, which eighth-inch and other inch screws close on. */
const SERIES = [1, 2, 2.5, FOURS, 5];

/** Round division values in `unit` from `least` to `most`, both mm and > 0, smallest first. */
export function divisionValues(unit: Units, least: number, most: number): DivisionValue[] {
  const size = mmPer[unit];
  const values: DivisionValue[] = [];
  for (let decade = Math.floor(Math.log10(least / size)) - 1; decade <= Math.ceil(Math.log10(most / size)); decade++) {
    for (const step of SERIES) {
      // Written and read back, so that 0.02 is the double that anyone else means by 0.02.
      const value = Number(`${step}e${decade}`) * size;
      if (value >= least && value <= most) values.push({ value, unit });
    }
  }
  return values;
}

/** A division value, mm, in the unit in which it takes fewer figures; where both take as many, in `preferred`. */
export function namedDivisionValue(value: number, preferred: Units): DivisionValue {
  const figures = (unit: Units) => digits(inUnit({ value, unit })).length;
  const other = preferred === "mm" ? "in" : "mm";
  return { value, unit: figures(other) < figures(preferred) ? other : preferred };
}

/** The number before the unit, freed of what binary fractions leave behind. */
export function inUnit({ value, unit }: DivisionValue): number {
  return Number((value / mmPer[unit]).toPrecision(9));
}

/** First figures of a number > 0, from 1 to under 10: 2.5 of 0.025. */
export function leadingDigits(value: number): number {
  return Number(value.toExponential().split("e")[0]);
}

function digits(value: number): string {
  return String(leadingDigits(value)).replace(".", "");
}
