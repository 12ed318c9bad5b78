import type { Printer } from "../machine/machine.js";

/** x' = a·x + c·y + e, y' = b·x + d·y + f, in millimetres with y down. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const identity: Affine = [1, 0, 0, 1, 0, 0];

/** What an untrue printer does to a page, taken as x' = sx·x + k·y, y' = sy·y about the page's top left corner. The bars
 *  give sx and sy; the diagonals of the rectangle W × H that the bars span (nominal) give the skew k: with p the one from
 *  the top left and q the one from the top right,
 *    p² = (sx·W + k·H)² + (sy·H)²,  q² = (sx·W − k·H)² + (sy·H)²,  so  p² − q² = 4·sx·W·k·H. */
export function printerDistortion(printer: Printer | undefined): Affine {
  if (printer === undefined) return identity;
  const across = printer.across === undefined ? 1 : printer.across.measured / printer.across.nominal;
  const down = printer.down === undefined ? 1 : printer.down.measured / printer.down.nominal;
  if (printer.diagonals === undefined || printer.across === undefined || printer.down === undefined)
    return [across, 0, 0, down, 0, 0];
  const [p, q] = printer.diagonals;
  const skew = (p * p - q * q) / (4 * printer.across.measured * printer.down.nominal);
  return [across, 0, skew, down, 0, 0];
}

/** The inverse of what the printer does: a page drawn through it comes out true. About the top left corner, which a sheet
 *  fed against its stops keeps. */
export function printerCorrection(printer: Printer | undefined): Affine {
  const [across, , skew, down] = printerDistortion(printer);
  return [1 / across, 0, -skew / (across * down), 1 / down, 0, 0];
}
