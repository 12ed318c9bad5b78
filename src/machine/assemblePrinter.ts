import { trimmed } from "../quantity/format.js";
import { MM_PER_INCH } from "../quantity/length.js";
import type { Context, Raw } from "./context.js";
import type { LengthText } from "./fields.js";
import type { Printer } from "./machine.js";
import type { Path } from "./problem.js";

/** Beyond this no printer is simply untrue: the page was scaled. */
const largestScaleError = 0.05;

/** Bars are made a round length: whole fives of millimetres or halves of inches. */
const isRound = (mm: number): boolean =>
  [5, MM_PER_INCH / 2].some((step) => Math.abs(mm / step - Math.round(mm / step)) < 1e-6);

/** No sheet that a printer takes is so long, mm: a bare number of an inch file beyond it is in millimetres. */
const longestSheet = 1000;

/** What was measured of a printer, so far as it can be true. */
export function assemblePrinter(
  printer: Raw<"printers">[string],
  path: Path,
  { mm, units, said, error, warn }: Context,
): Printer {
  const barOf = (given: typeof printer.across) => given?.[given[units].nominal > longestSheet ? "mm" : units];
  const bars = { across: barOf(printer.across), down: barOf(printer.down) };
  for (const key of ["across", "down"] as const) {
    const bar = bars[key];
    if (bar !== undefined && isRound(bar.measured) && !isRound(bar.nominal))
      warn(
        [...path, key],
        "swapped-bar",
        `${key} says that a bar of ${said(bar.nominal)} was measured as a round ${said(bar.measured)}`,
        `the two seem swapped: what was measured comes first, ${units === "mm" ? trimmed(bar.nominal, 3) : said(bar.nominal)} of ${said(bar.measured)}`,
      );
    if (bar !== undefined && Math.abs(bar.measured / bar.nominal - 1) > largestScaleError)
      error(
        [...path, key],
        "scaled-page",
        `${key} is ${(Math.abs(bar.measured / bar.nominal - 1) * 100).toFixed(1)} % off, more than a printer is`,
        'the page was most likely printed "fit to page": print it again at 100 % and measure again',
      );
  }
  const { across, down } = bars;
  if (across !== undefined && down !== undefined && across.nominal > down.nominal)
    warn(
      [...path, "across"],
      "sides-swapped",
      `a bar of ${said(across.nominal)} across is longer than that of ${said(down.nominal)} down, though across is the sheet's short side`,
      "change the two about: each belongs to the sheet as it is fed, whichever way the page lies on it",
    );
  const diagonalOf = (given: LengthText) => (mm(given) > longestSheet ? given.value : mm(given));
  const diagonals =
    printer.diagonals && ([diagonalOf(printer.diagonals[0]), diagonalOf(printer.diagonals[1])] as const);
  if (diagonals && Math.abs(diagonals[0] / diagonals[1] - 1) > largestScaleError)
    error(
      [...path, "diagonals"],
      "scaled-page",
      "the diagonals differ by more than a printer's skew",
      "measure again from corner to corner, from top left first",
    );
  if (diagonals && (across === undefined || down === undefined))
    error(path, "missing", "the diagonals mean nothing without both bars", "add across: and down:");
  if (diagonals && across && down) {
    const expected = Math.hypot(across.measured, down.measured);
    if (diagonals.some((diagonal) => Math.abs(diagonal / expected - 1) > largestScaleError))
      error(
        [...path, "diagonals"],
        "diagonals-unlike",
        `bars of ${said(across.measured, 1)} and ${said(down.measured, 1)} have diagonals of about ${said(expected, 1)}, not ${diagonals.map((diagonal) => said(diagonal, 1)).join(" and ")}`,
        `measure from corner to corner; a number without a unit is in ${units}, the file's unit`,
      );
  }
  return {
    ...(across && { across }),
    ...(down && { down }),
    ...(diagonals && { diagonals }),
  };
}
