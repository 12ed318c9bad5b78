import type { Measured, Printer } from "../machine/machine.js";
import { inMm, type LengthUnit } from "../quantity/length.js";

/** x' = a·x + c·y + e, y' = b·x + d·y + f, in millimetres with y down. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const identity: Affine = [1, 0, 0, 1, 0, 0];

/** What an untrue printer does to a sheet of paper held upright, taken as x' = sx·x + k·y, y' = sy·y about the sheet's top
 *  left corner. The bars along the top and the left of a rectangle W × H (nominal) measure a and d, its diagonals p from the
 *  top left and q from the top right. The left bar leans by the skew and is measured along itself, so
 *    a = sx·W,  d = H·√(sy² + k²),  p² = (sx·W + k·H)² + (sy·H)²,  q² = (sx·W − k·H)² + (sy·H)²,  p² − q² = 4·a·k·H. */
export function printerDistortion(printer: Printer | undefined): Affine {
  if (printer === undefined) return identity;
  const across = factor(printer.across);
  const down = factor(printer.down);
  if (printer.diagonals === undefined || printer.across === undefined || printer.down === undefined)
    return [across, 0, 0, down, 0, 0];
  const [p, q] = printer.diagonals;
  const skew = (p * p - q * q) / (4 * printer.across.measured * printer.down.nominal);
  return [across, 0, skew, Math.sqrt(down * down - skew * skew), 0, 0];
}

const factor = (bar: Measured | undefined): number => (bar === undefined ? 1 : bar.measured / bar.nominal);

/** The inverse of what the printer does to a sheet held upright: what is drawn through it comes out true. About the top left
 *  corner, which a sheet fed against its stops keeps. */
export function printerCorrection(printer: Printer | undefined): Affine {
  const [across, , skew, down] = printerDistortion(printer);
  return [1 / across, 0, -skew / (across * down), 1 / down, 0, 0];
}

/** True where a page lies across its sheet of paper, which is fed as it is for any other page. */
export const liesAcross = ({ width, height }: PageSize): boolean => width > height;
type PageSize = { readonly width: number; readonly height: number };

/** The correction in the coordinates of a page, mm: the printer acts on the sheet, however the page lies on it. A page that
 *  lies across is turned a quarter anticlockwise, its top along the sheet's left side (RFC 8011, 5.2.10, "landscape", from memory): its
 *  point (x, y) lies on the sheet at (y, width − x). Turned the other way it has the same factors and skew, since half a
 *  turn changes neither; only the corner that stays in its place is another. */
export function pageCorrection(printer: Printer | undefined, page: PageSize): Affine {
  const correction = printerCorrection(printer);
  if (!liesAcross(page)) return correction;
  const [a, b, c, d, e, f] = correction;
  const { width } = page;
  // Turned on to the sheet, corrected there, turned back.
  return [d, -c, -b, a, width - d * width - f, c * width + e];
}

/** The bar of a printer's entry as it would have to be for pages to come out true that now come out `ratio` times as long as
 *  they should, along that side of the sheet. The nominal stays, since the diagonals belong to it. `usual`: that bar on the
 *  check page, where no entry says; the one of A4, or of Letter in inches, when left out. */
export function mendedBar(
  printer: Printer | undefined,
  side: "across" | "down",
  ratio: number,
  units: LengthUnit = "mm",
  usual: number = usualBar[units][side],
): Measured {
  const bar = printer?.[side] ?? { measured: usual, nominal: usual };
  return { ...bar, measured: bar.measured * ratio };
}

/** What the printer check page has on A4, and on Letter in inches; mm. */
const usualBar = { mm: { across: 200, down: 250 }, in: { across: inMm(8, "in"), down: inMm(10, "in") } } as const;
