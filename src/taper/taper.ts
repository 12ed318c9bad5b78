/** A taper is the change of DIAMETER per unit of length, a pure number; its half angle is what a swivel is set to. */

/** tan(half angle) = (large − small) / (2 · length); diameters and length in one unit, length > 0. Radians. */
export const halfAngle = (large: number, small: number, length: number): number =>
  Math.atan((large - small) / (2 * length));

export const halfAngleOfTaper = (taper: number): number => Math.atan(taper / 2);
/** "1 in 20" means 1 on diameter in 20 of length. */
export const taperOfRatio = (one: number, inLength: number): number => one / inLength;
/** Inches on diameter in a foot of length. */
export const taperPerFoot = (inchesPerFoot: number): number => inchesPerFoot / 12;
export const taperOfHalfAngle = (angle: number): number => 2 * Math.tan(angle);

/** Set-over of a tailstock for work of this whole length (not that of the tapered part): the work lies between the centres as
 *  the longest side of the triangle. The handbooks' T · L / 2 takes the tangent instead, 0.24 % more at 4°. */
export const setOver = (angle: number, wholeLength: number): number => wholeLength * Math.sin(angle);

/** Half angle beyond which plain centres bear on the edges of their holes alone, and wear them oval: about 8° included.
 *  Common practice; ball-ended centres bear more. */
export const STEEPEST_BETWEEN_CENTRES = (4 / 180) * Math.PI;

export const TOO_STEEP_FOR_CENTRES =
  "Not by setting the tailstock over: beyond about 8° included, plain centres bear on the edges of their holes alone (common practice).";

export const centresBear = (angle: number): boolean => angle <= STEEPEST_BETWEEN_CENTRES + 1e-12;

/** How far an indicator against the taper moves while the slide travels `travel` along the work's axis. */
export const riseAlongAxis = (angle: number, travel: number): number => travel * Math.tan(angle);

/** How far the cut moves sideways while the swivelled slide itself travels `travel`. */
export const riseAlongSlide = (angle: number, travel: number): number => travel * Math.sin(angle);

/** Stack under one roll of a sine bar whose rolls are `bar` apart. */
export const sineBarStack = (angle: number, bar: number): number => bar * Math.sin(angle);

/** Difference of two gauge pins that touch both legs of the angle `full` (vertex to vertex), with `between` between their
 *  centres: the radii differ by between · sin(full / 2). Geometry. */
export const pinDifference = (full: number, between: number): number => 2 * between * Math.sin(full / 2);

/** Error on diameter over `length` of an angle wrong by `error` radians: 2 · length · error / cos². */
export const diameterError = (angle: number, error: number, length: number): number =>
  (2 * length * error) / Math.cos(angle) ** 2;
