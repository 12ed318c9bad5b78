import type { DialShape } from "../machine/machine.js";

/** Thickness of the paper and of the glue under it, mm. */
export type StripPaper = { readonly paper: number; readonly adhesive: number };

/** Flat length, mm, of a strip that goes once round a drum: π (diameter + 2 · adhesive + paper), all mm, diameter > 0.
 *  Paper bends about its middle: Cyclopedia of Drawing, 1906, rule for a strip fitted outside or inside a ring.
 *  @example wrapLength({ diameter: 38, adhesive: 0.03, paper: 0.11 })   // 119.914... */
export function wrapLength({ diameter, adhesive, paper }: StripPaper & { readonly diameter: number }): number {
  return Math.PI * (diameter + 2 * adhesive + paper);
}

/** Bare diameter, mm, of a drum round which a strip of length `wrap` goes once; the inverse of `wrapLength`. */
export function drumDiameter({ wrap, adhesive, paper }: StripPaper & { readonly wrap: number }): number {
  return wrap / Math.PI - 2 * adhesive - paper;
}

/** Flat length, mm, of the strip for a drum: as measured where it was, else by formula. Undefined for another shape,
 *  and for a drum of which neither diameter nor wrap is known. */
export function stripLength(dial: DialShape, paper: StripPaper): number | undefined {
  if (dial.shape !== "drum") return undefined;
  if (dial.wrap !== undefined) return dial.wrap;
  return dial.diameter === undefined ? undefined : wrapLength({ diameter: dial.diameter, ...paper });
}

/** Length, mm, of the circle on which the marks are read: once round a drum, the outer edge of a face, the larger end
 *  of a bevel. Undefined where a drum's size is not known. */
export function readingCircle(dial: DialShape, paper: StripPaper): number | undefined {
  switch (dial.shape) {
    case "drum":
      return stripLength(dial, paper);
    case "face":
      return Math.PI * dial.outside;
    case "bevel":
      return Math.PI * Math.max(dial.diameter, dial.smallDiameter);
  }
}

/** Room across the marks, mm: what the rows of a dial share. */
export function bandWidth(dial: DialShape): number {
  return dial.shape === "face" ? (dial.outside - dial.inside) / 2 : dial.width;
}

/** Distance on paper, mm, of neighbouring marks a division apart: the part of a turn that `step` is, on `circle`. */
export function spacing(circle: number, turn: number, step: number): number {
  return (circle * step) / turn;
}
