import type { DialChoice } from "./finding.js";
import { COMFORTABLE_FROM, LEAST_SPACING } from "./penalty.js";

/** Least height of figures, as a part of the distance that they are read from: 15 minutes of arc (NUREG-0700, 11.4.1.5,
 *  character height at least 0.004 of the viewing distance). */
const HEIGHT_PER_DISTANCE = 0.004;

/** Where a seated or standing operator's eyes usually are from a small handwheel, mm (common practice). */
export const USUAL_DISTANCE = 400;

/** Farthest distance, mm, from which figures of a height, mm, are read well. */
export const farthestReading = (height: number): number => height / HEIGHT_PER_DISTANCE;

/** Marks so near each other blur; only rounding does not make them so. */
export const blurs = (spacing: number): boolean => spacing < LEAST_SPACING * (1 - 1e-9);

/** Marks that one can tell apart, but not at ease. */
export const strains = (spacing: number): boolean => !blurs(spacing) && spacing < 0.95 * COMFORTABLE_FROM;

/** Width of a mark's line, mm: as wished, but no more than half the distance of neighbouring marks (ASME B89.1.7-2009, 4.6,
 *  for steel tapes). */
export const lineWidth = (wished: number, spacing: number): number => Math.min(wished, spacing / 2);

/** Whether the last division of true marks is longer than the others, the mark so near to the zero being left out. */
export const isLong = ({ last = 0, divisionValue }: Pick<DialChoice, "last" | "divisionValue">): boolean =>
  last > divisionValue;
