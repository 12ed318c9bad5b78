import { toRadians } from "../quantity/angle.js";
import type { Graduation } from "./finding.js";
import { stepMarks } from "./stepMarks.js";

/** What swings to turn a taper. */
export type SwivelPart = "headstock" | "top slide";
/** Seen from above, the operator at the bottom of the picture. */
export type Sense = "clockwise" | "anticlockwise";

/** Which end of a taper comes out small when a part is swung, with the tool on the operator's side and the chuck at the
 *  left: computed from where the tool's path runs against the spindle's axis, not remembered. */
export function smallEnd(part: SwivelPart, sense: Sense): "chuck end" | "free end" {
  const angle = (sense === "clockwise" ? 1 : -1) * toRadians(1);
  // Seen from above, x to the right along the bed, y towards the operator; clockwise turns x towards y.
  const swung = { x: Math.cos(angle), y: Math.sin(angle) };
  const bed = { x: 1, y: 0 };
  const [axis, path] = part === "headstock" ? [swung, bed] : [bed, swung];
  // How the tool's distance from the axis, on the operator's side, changes on the way from the chuck to the free end.
  const growth = axis.x * path.y - axis.y * path.x;
  return growth > 0 ? "chuck end" : "free end";
}

export type AnglePlan = {
  /** Degrees either way of zero: from ≤ 0 ≤ to. */
  readonly from: number;
  readonly to: number;
  /** Degrees; parts of a degree as 0.5. */
  readonly step: number;
};

/** Marks of an angle scale, angles in radians, numbered in degrees without a sign: each side says what it does. */
export function angleMarks({ from, to, step }: AnglePlan, paperPerRadian: number): Graduation[] {
  const whole = Math.max(1, Math.round(1 / step));
  const ten = step < 1 ? whole * 5 : step === 1 ? 10 : Math.max(1, Math.round(10 / step));
  const middle = step < 1 ? whole : step === 1 ? 5 : Math.max(1, Math.round(5 / step));
  const gap = (every: number) => every * toRadians(step) * paperPerRadian;
  const numbered = [middle, ten, 2 * ten, 3 * ten].find((every) => gap(every) >= 4) ?? 3 * ten;
  return stepMarks({ from, to, step, per: 1, long: ten, middle, numbered, unsigned: true }).map((mark) => ({
    ...mark,
    angle: toRadians(mark.angle),
  }));
}
