import type { Ink } from "../drawing/drawing.js";

/** Red, green and blue in 0…1. The accent is nearly black when printed in black and white: a lighter red is dithered there, and a
 *  warning in bold would look weaker than the text beside it. */
export const inkRgb: Readonly<Record<Ink, readonly [number, number, number]>> = {
  black: [0, 0, 0],
  grey: [0.42, 0.42, 0.42],
  pale: [0.85, 0.85, 0.85],
  white: [1, 1, 1],
  accent: [0.58, 0, 0],
};
