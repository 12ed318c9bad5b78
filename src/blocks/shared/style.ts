import type { Ink, Pen } from "../../drawing/drawing.js";

/** Em sizes, mm. The least is a little over 5 pt (1.764 mm). */
export const size = { huge: 7, title: 4.6, heading: 3.4, body: 2.7, small: 2.25, tiny: 1.8 } as const;

/** Three line weights. */
export const weight = { heavy: 0.5, medium: 0.25, fine: 0.13 } as const;

export const pen = (width: number, ink: Ink = "black", dash?: readonly number[]): Pen => ({
  width,
  ink,
  ...(dash && { dash }),
});
export const heavy = pen(weight.heavy);
export const medium = pen(weight.medium);
export const fine = pen(weight.fine);
/** Where scissors go. */
export const cutLine = pen(weight.fine, "black", [1.2, 0.8]);

/** Line spacing as a multiple of the em size. */
export const leading = 1.35;
