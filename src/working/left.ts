import type { Units } from "../machine/machine.js";
import { formatLength } from "../quantity/format.js";
import { inMm } from "../quantity/length.js";

/** The last place that a setting's error is told to, in each unit. */
const LAST_PLACE: Readonly<Record<Units, number>> = { mm: 0.001, in: 0.0001 };

/** What a setting to a tenth of a division leaves, mm: a length that would print as nought is told as right. */
export function leftWords(error: number, units: Units): string {
  const last = LAST_PLACE[units];
  const places = units === "mm" ? 3 : 4;
  return Math.abs(error) < inMm(last, units) / 2
    ? `right to ${formatLength(inMm(last, units), units, places)}`
    : `which leaves ${formatLength(error, units, places)}`;
}
