import type { Ink, Pen } from "../../drawing/drawing.js";

const POINT = 25.4 / 72;

/** Four type sizes (em, mm), one job each: what the hand needs; card text and headings; tables and text; where a number comes
 *  from. 20, 13, 9 and 7 pt. Nothing is smaller, save inside a stuck-on piece, which is read from close by. */
export const size = { hand: 20 * POINT, card: 13 * POINT, text: 9 * POINT, source: 7 * POINT } as const;

/** The least em inside a stuck-on piece less than 8 mm wide. */
export const leastOnPiece = 5 * POINT;

/** Three line weights: objects and sections; rows; axes and dimensions. */
export const weight = { object: 0.35, row: 0.18, axis: 0.1 } as const;

export const pen = (width: number, ink: Ink = "black", dash?: readonly number[]): Pen => ({
  width,
  ink,
  ...(dash && { dash }),
});
export const objectLine = pen(weight.object);
export const rowLine = pen(weight.row);
export const axisLine = pen(weight.axis);
/** Where scissors go round an inside circle; a straight or outer cut has corner marks instead. */
export const cutLine = pen(weight.axis);

/** Line spacing as a multiple of the em size. */
export const leading = 1.35;
