import type { Ink, Pen } from "../../drawing/drawing.js";

export { leastOnPiece, size } from "../../drawing/typeSizes.js";

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
