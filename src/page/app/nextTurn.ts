import { parseTurns } from "../../quantity/number.js";

/** The next turn, by the last two: a whole one, which needs no mark between the marks, and none before nought, as a slip of the pen
 *  would lead to. */
export function nextTurn(rows: readonly { readonly turns: string }[]): string {
  if (rows.length === 0) return "0";
  const [before, last] = rows.slice(-2).map(({ turns }) => parseTurns(turns));
  const next = rows.length === 1 ? (before ?? Number.NaN) + 1 : 2 * (last ?? Number.NaN) - (before ?? Number.NaN);
  // Where there is no such number it is left to who types.
  return Number.isInteger(next) && next >= 0 ? String(next) : "";
}
