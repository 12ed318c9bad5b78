import type { DialShape } from "../machine/machine.js";
import { TURN } from "../quantity/angle.js";
import { bandWidth, type StripPaper, stripLength } from "./strip.js";

/** A dial's surface laid flat. A strip is as long as once round; of a ring or a cone's ring the radii are on paper, and
 *  `sweep` is the paper's angle for one turn of the wheel: a whole circle for a face, less for a bevel. mm, radians. */
export type Development =
  | { readonly kind: "strip"; readonly length: number; readonly width: number }
  | { readonly kind: "ring"; readonly outer: number; readonly inner: number; readonly sweep: number };

/** Undefined for a drum of unknown size, and for a cone whose slope is shorter than half the difference of its ends. */
export function development(dial: DialShape, paper: StripPaper): Development | undefined {
  switch (dial.shape) {
    case "drum": {
      const length = stripLength(dial, paper);
      return length === undefined ? undefined : { kind: "strip", length, width: bandWidth(dial) };
    }
    case "face":
      return { kind: "ring", outer: dial.outside / 2, inner: dial.inside / 2, sweep: TURN };
    case "bevel":
      return coneRing({ ...dial, ...paper });
  }
}

/** The ring that a cone's surface unrolls to (annular sector): outer radius slope · D / (D − d), angle π (D − d) / slope.
 *  Paper bends about its middle, so both diameters are taken at half its thickness above the glue, square to the slope;
 *  the slope itself stays as long. Construction: Longfield, Sheet Metal Drafting; the formula is geometry's.
 *  `width` is the length along the slope. Undefined where the slope is too short for such ends. */
export function coneRing(cone: {
  readonly diameter: number;
  readonly smallDiameter: number;
  readonly width: number;
  readonly paper: number;
  readonly adhesive: number;
}): Extract<Development, { kind: "ring" }> | undefined {
  const [large, small] = [Math.max(cone.diameter, cone.smallDiameter), Math.min(cone.diameter, cone.smallDiameter)];
  /** Sine of half the angle at the cone's point. */
  const sine = (large - small) / 2 / cone.width;
  if (!(sine > 0 && sine <= 1)) return undefined;
  const outwards = 2 * (cone.adhesive + cone.paper / 2) * Math.sqrt(1 - sine * sine);
  const outer = (large + outwards) / (2 * sine);
  return { kind: "ring", outer, inner: outer - cone.width, sweep: TURN * sine };
}

/** Paper under a mark, mm for one radian of the wheel, at the edge where the marks are read. */
export function paperPerRadian(flat: Development): number {
  return flat.kind === "strip" ? flat.length / TURN : (flat.outer * flat.sweep) / TURN;
}

export const bandOf = (flat: Development): number => (flat.kind === "strip" ? flat.width : flat.outer - flat.inner);
