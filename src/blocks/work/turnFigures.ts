import type { Machine, Units } from "../../machine/machine.js";
import { figureAsGiven } from "../../machine/written.js";
import { formatFixed, trimmed } from "../../quantity/format.js";
import { inSixtyFourths } from "../../quantity/fraction.js";
import { fromMm, inMm } from "../../quantity/length.js";
import type { Cell, Column } from "../shared/column.js";

/** What stands in a table, before it is known where on the page that is. */
export type Table = { readonly columns: readonly Column[]; readonly rows: readonly Cell[][] };

export type Sizes = Pick<Machine, "units" | "written">;

const places: Record<Units, number> = { mm: 3, in: 4 };

export const show = (mm: number, units: Units): string => formatFixed(fromMm(mm, units), places[units]);

/** A ± is never a bare nought: what is less than the last place is told as one of it. */
export const showDoubt = (mm: number, units: Units): string =>
  show(Math.max(mm, inMm(10 ** -places[units], units)), units);

/** As the file gives it; a sixty-fourth of an inch as the fraction that it is. */
export const sizeText = (mm: number, sizes: Sizes): string =>
  sizes.units === "in" && !sizes.written?.has(mm) ? inches(fromMm(mm, "in")) : figureAsGiven(mm, sizes, 4);

const inches = (value: number): string => inSixtyFourths(value) ?? trimmed(value, 4);
