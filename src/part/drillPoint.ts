/** Angle of the usual twist drill's point. ISO 235 and 5419 name it for general use (memory). */
export const POINT_ANGLE = (118 / 180) * Math.PI;

/** How much deeper than the full diameter its point goes: half the diameter over tan of half the point's angle; 0.3004 d at 118°.
 *  Geometry; handbooks print 0.3 d. Diameter in mm, > 0. */
export const drillPoint = (diameter: number): number => diameter / 2 / Math.tan(POINT_ANGLE / 2);

/** Thickness of a drill's web as a share of its diameter, which a first hole must clear for a large drill to enter lightly. About
 *  a fifth; common practice. */
export const WEB = 0.2;

/** Larger than this, mm, a hole from the solid wants a smaller one first on a light machine. Common practice. */
export const LARGEST_FROM_THE_SOLID = 8;
