import { textWidth, widestAlone, widestWord } from "../../drawing/text.js";
import { say } from "../../words/say.js";
import type { Cell, Column } from "./column.js";
import { NoRoom } from "./noRoom.js";
import { size as sizes } from "./style.js";

/** Beside every cell, mm. */
export const padding = 1.4;
/** A figure written by hand wants so much. */
const ROOM_TO_WRITE = 20;
/** A word that is wider may be broken. */
const WIDEST_WORD = 26;

/** Where a column stands; `whole` and `fraction`: the widest parts left and right of the decimal point. mm. */
export type Place = {
  readonly left: number;
  readonly width: number;
  readonly whole: number;
  readonly fraction: number;
};

/** What a column would have, and what it can do with, padding included. */
type Need = { readonly wish: number; readonly least: number; readonly whole: number; readonly fraction: number };
type Rows = readonly (readonly Cell[])[];

export const widthOf = (places: readonly Place[]): number => places.reduce((sum, { width }) => sum + width, 0);

/** Indexes of the columns of each part of a table that is split by columns; one part where the paper has room for all, be it
 *  without those that are optional. */
export function parts(columns: readonly Column[], rows: Rows, width: number, size: number): number[][] {
  const needs = columns.map((column, index) => needOf(column, index, rows, size));
  const leastOf = (indexes: readonly number[]) => indexes.reduce((sum, index) => sum + (needs[index]?.least ?? 0), 0);
  const fits = (indexes: readonly number[]) => leastOf(indexes) <= width + 1e-9;
  let kept = columns.map((_, index) => index);
  while (!fits(kept)) {
    const last = kept.findLast((index) => columns[index]?.optional);
    if (last === undefined) break;
    kept = kept.filter((index) => index !== last);
  }
  if (fits(kept)) return [kept];
  const flagged = kept.filter((index) => columns[index]?.key);
  const key = flagged.length > 0 ? flagged : kept.slice(0, 1);
  const split: number[][] = [];
  for (const index of kept) {
    if (key.includes(index)) continue;
    const open = split.at(-1);
    const ordered = (list: readonly number[]) => [...list].sort((a, b) => a - b);
    if (open !== undefined && fits([...open, index])) split[split.length - 1] = ordered([...open, index]);
    else if (fits([...key, index])) split.push(ordered([...key, index]));
    else
      throw new NoRoom(({ wanted, there }) =>
        say("no room.table", {
          table: columns[key[0] ?? 0]?.heading[0] || say("no room.unnamed"),
          wants: wanted(leastOf([...key, index])),
          has: there(width),
        }),
      );
  }
  return split;
}

/** Columns side by side within `width`: as wide as their cells, and where that is too wide, those of words narrower. */
export function measure(columns: readonly Column[], rows: Rows, width: number, size: number): Place[] {
  const needs = columns.map((column, index) => needOf(column, index, rows, size));
  const sum = (key: "wish" | "least") => needs.reduce((total, need) => total + need[key], 0);
  const [wish, least] = [sum("wish"), sum("least")];
  const share = wish <= width || wish - least < 1e-9 ? 1 : Math.max(0, (width - least) / (wish - least));
  let left = 0;
  return needs.map(({ wish, least, whole, fraction }) => {
    const own = least + share * (wish - least);
    const place = { left, width: own, whole, fraction };
    left += own;
    return place;
  });
}

function needOf(column: Column, index: number, rows: Rows, size: number): Need {
  let [whole, fraction, wish, least] = [0, 0, 0, 0];
  for (const row of rows) {
    const cell = row[index];
    if (cell === undefined) continue;
    const em = cell.size ?? size;
    const own = textWidth(cell.text, em, cell.weight ?? "regular") + (cell.drawn === "line" ? ROOM_TO_WRITE : 0);
    const words = column.align === "start" && cell.drawn === undefined;
    const note = cell.note ?? "";
    if (column.align === "decimal") {
      const parts = splitDecimal(cell, em);
      whole = Math.max(whole, parts.whole);
      fraction = Math.max(fraction, parts.fraction);
    }
    wish = Math.max(wish, own, textWidth(note, sizes.source, "regular"));
    least = Math.max(
      least,
      words ? Math.min(WIDEST_WORD, widestWord(cell.text, em, cell.weight ?? "regular")) : own,
      Math.min(WIDEST_WORD, widestWord(note, sizes.source, "regular")),
    );
  }
  const { heading } = column;
  const headed = (of: (words: string) => number) => Math.max(0, ...heading.map(of));
  const body = Math.max(whole + fraction, least);
  const beside = 2 * padding + (column.apart ?? 0);
  return {
    whole,
    fraction,
    // A heading of several words wraps rather than set numbers far apart.
    wish:
      Math.max(
        whole + fraction,
        wish,
        headed((words) => headingWidth(words, Math.max(wish, body))),
      ) + beside,
    least:
      Math.max(
        body,
        // Rather a heading's unit below its figure than a column less.
        headed((words) => Math.min(WIDEST_WORD, widestAlone(words, sizes.text, "bold"))),
      ) + beside,
  };
}

/** Of its heading a column takes what two lines need, where the cells want less. */
function headingWidth(words: string, cells: number): number {
  const all = textWidth(words, sizes.text, "bold");
  return all <= cells
    ? all
    : Math.max(widestWord(words, sizes.text, "bold"), Math.min(all, Math.max(cells, 0.62 * all)));
}

export function splitDecimal(cell: Cell, size: number): { whole: number; fraction: number } {
  const point = cell.text.search(/[.,]/);
  const em = cell.size ?? size;
  const weight = cell.weight ?? "regular";
  const whole = point < 0 ? cell.text : cell.text.slice(0, point);
  return {
    whole: textWidth(whole, em, weight),
    fraction: point < 0 ? 0 : textWidth(cell.text.slice(point), em, weight),
  };
}
