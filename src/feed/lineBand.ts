import type { Budget } from "./budget.js";
import type { Fit } from "./finding.js";

/** How far the fitted line itself may lie off at a place, half-width at 95 %, mm: what the feed's ± makes of the way from the middle
 *  of the places, and what the scatter makes of their mean height (the band of a regression line; common practice).
 *  `places`: turns at which was read. */
export function lineBand(
  { leverage }: Fit,
  { contributions, coverageFactor, expanded }: Budget,
  places: readonly number[],
): (turn: number) => number {
  const different = [...new Set(places)];
  const middle = different.reduce((sum, turn) => sum + turn, 0) / different.length;
  // What one reading scatters by, or the graduation where that shows less.
  const chance = contributions.find(
    ({ source, counts }) => counts && (source === "scatter" || source === "graduation"),
  );
  const height = (coverageFactor * (chance?.standard ?? 0)) / leverage / Math.sqrt(different.length);
  return (turn) => Math.hypot(height, expanded * (turn - middle));
}
