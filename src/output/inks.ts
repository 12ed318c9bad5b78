import type { Ink } from "../drawing/drawing.js";

/** Red, green and blue in 0…1. The accent keeps a dark grey when printed in black and white. */
export const inkRgb: Readonly<Record<Ink, readonly [number, number, number]>> = {
  black: [0, 0, 0],
  grey: [0.42, 0.42, 0.42],
  pale: [0.85, 0.85, 0.85],
  white: [1, 1, 1],
  accent: [0.72, 0.11, 0.05],
};
