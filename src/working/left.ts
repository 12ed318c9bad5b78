import type { Units } from "../machine/machine.js";
import { formatBound, formatLength } from "../quantity/format.js";
import { inMm } from "../quantity/length.js";

/** The last place that a setting's error is told to, in each unit. */
const LAST_PLACE: Readonly<Record<Units, number>> = { mm: 0.001, in: 0.0001 };

/** What a setting to a tenth of a division leaves, mm: a length that would print as nought is told as right. `doubt`: how well the distance
 *  itself is known, half-width. */
export function leftWords(error: number, units: Units, doubt = 0): string {
  const last = LAST_PLACE[units];
  // No setting is right to what the feed is not known to.
  if (doubt > Math.max(Math.abs(error), inMm(last, units))) return `known to ± ${formatBound(doubt, units)}`;
  const places = units === "mm" ? 3 : 4;
  return Math.abs(error) < inMm(last, units) / 2
    ? `right to ${formatLength(inMm(last, units), units, places)}`
    : `which leaves ${formatLength(error, units, places)}`;
}
