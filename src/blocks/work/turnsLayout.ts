import { group } from "../../drawing/shapes.js";
import { beside } from "../shared/beside.js";
import type { Run } from "../shared/block.js";
import { heightOf, lowered } from "../shared/runs.js";
import { table, tableWidth } from "../shared/table.js";
import type { Table } from "./turnFigures.js";

const least = 8;
/** Further apart three tables do not belong together. */
const most = 16;
/** A list of fewer rows stays one column. */
const shortList = 8;
/** What a run that cannot be broken may take of a page. */
const unbroken = 0.88;

export type Room = { readonly width: number; readonly height: number };

/** One below the other, or down a column and on to the next. */
export const listed = ({ columns, rows }: Table, width: number): Run[] =>
  table(columns, rows, { width, list: rows.length > shortList });

/** Tables of one row height side by side, one below the other where the paper is too narrow for that. */
export function inPair(tables: readonly Table[], width: number): Run[] {
  const [one, other] = tables;
  if (one === undefined) return [];
  if (other === undefined) return listed(one, width);
  const runs = tables.map(({ columns, rows }) => table(columns, rows, { width })) as [Run[], Run[]];
  const wide = tables.map((one) => widthOf(one, width)) as [number, number];
  // Where one is split by columns, its rows are no longer those of the other.
  const whole = tables.every(({ rows }, index) => runs[index]?.length === rows.length);
  if (!whole || wide[0] + least + wide[1] > width) return [...listed(one, width), ...lowered(listed(other, width), 4)];
  return beside(...runs, Math.max(wide[0] + least, Math.min(width / 2 + least / 2, width - wide[1])));
}

/** The pair with a third table, of another row height, to its right; undefined where that wants more paper than there is. */
export function withThird(pair: readonly Table[], third: Table, { width, height }: Room): Run[] | undefined {
  const wides = [...pair, third].map((one) => widthOf(one, width));
  const [first = 0, second = 0] = wides;
  const sum = wides.reduce((all, one) => all + one, 0);
  const free = (width - sum) / pair.length;
  if (pair.length === 0 || free < least) return undefined;
  const gap = Math.min(free, most);
  const [one, other] = pair.map(({ columns, rows }) => table(columns, rows, { width })) as [Run[], Run[]?];
  const left = other === undefined ? one : beside(one, other, first + gap);
  const right = table(third.columns, third.rows, { width });
  const rows = pair.reduce((all, { rows }) => Math.max(all, rows.length), 0);
  const high = Math.max(heightOf(left), heightOf(right));
  if (left.length !== rows || right.length !== third.rows.length || high > unbroken * height) return undefined;
  const x = first + gap + (other === undefined ? 0 : second + gap);
  const marks = [column(left, 0), column(right, x)];
  return [{ drawing: { width, height: high, marks } }];
}

const widthOf = ({ columns, rows }: Table, width: number): number => tableWidth(columns, rows, { width });

function column(runs: readonly Run[], x: number) {
  let y = 0;
  const marks = runs.map(({ drawing, gap = 0 }, index) => {
    y += index === 0 ? 0 : gap;
    const at = { x: 0, y };
    y += drawing.height;
    return group(at, drawing.marks);
  });
  return group({ x, y: 0 }, marks);
}
