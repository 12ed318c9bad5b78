import type { Drawing, Mark, Weight } from "../../drawing/drawing.js";
import { line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import type { Run } from "./block.js";
import type { Cell, Column } from "./column.js";
import { unlessNoRoom } from "./noRoom.js";
import { leading, objectLine, rowLine, size as sizes } from "./style.js";
import { measure, type Place, padding, parts, splitDecimal, widthOf } from "./tableWidths.js";

export type { Cell, Column } from "./column.js";

export type TableOptions = {
  /** Room across, mm; a table is as wide as its cells. */
  readonly width: number;
  readonly size?: number;
  /** A rule under every row; otherwise rows stand in groups of five. */
  readonly ruled?: boolean;
  /** Down a column and on to the next, as many as the paper has room for. */
  readonly list?: boolean;
  /** Words over a row, across the table: what it and the rows below it are about. By the row's index; groups then stand by these. */
  readonly titles?: ReadonlyMap<number, string>;
};

const GROUP = 5;
/** Space after a group of rows, and between the columns of a list: as a rule, and where that makes room for one more. */
const groupGap = 1.6;
const listGap = 8;
const leastListGap = 5;
/** Rows that are too many for one column with the paper beside it empty. */
const LONG = 12;
const partGap = 4;

/** A table as one run a row, so that pages break between rows and the heading repeats. Where it is wider than the paper its words
 *  wrap, then optional columns go, then it is split by columns with its key repeated.
 *  @throws NoRoom where the paper does not even hold the key and one more column. */
export function table(columns: readonly Column[], rows: readonly (readonly Cell[])[], options: TableOptions): Run[] {
  const size = options.size ?? sizes.text;
  const width = roomOf(columns, rows, options, size);
  const split = parts(columns, rows, width, size);
  return split.flatMap((indexes, part) => {
    const these = indexes.map((index) => columns[index] as Column);
    const cells = rows.map((row) => indexes.map((index) => row[index] ?? { text: "" }));
    const places = measure(these, cells, width, size);
    const runs = drawn(these, cells, places, size, options);
    return part === 0 ? runs : runs.map((run, index) => (index === 0 ? { ...run, gap: partGap } : run));
  });
}

/** What a table may take of the paper, mm: a list of numbers half of it, where no more than its headings have to wrap for that. */
function roomOf(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  { width, list }: TableOptions,
  size: number,
): number {
  if (!list || rows.length < LONG || columns.some(({ align }) => align === "start")) return width;
  const half = (width - leastListGap) / 2 - 0.01;
  const [all, ...more] = unlessNoRoom(() => parts(columns, rows, half, size)) ?? [];
  return all?.length === columns.length && more.length === 0 ? half : width;
}

/** How wide the table comes out, mm: at most the room there is. */
export function tableWidth(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  { width, size = sizes.text }: TableOptions,
): number {
  return Math.max(
    ...parts(columns, rows, width, size).map((indexes) =>
      widthOf(
        measure(
          indexes.map((index) => columns[index] as Column),
          rows.map((row) => indexes.map((index) => row[index] ?? { text: "" })),
          width,
          size,
        ),
      ),
    ),
  );
}

function drawn(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  places: readonly Place[],
  size: number,
  { ruled = false, list = false, titles, width: room }: TableOptions,
): Run[] {
  const width = widthOf(places);
  const heading = headingRow(columns, places, width);
  const across = Math.floor((room + leastListGap) / (width + leastListGap));
  const step = width + Math.min(listGap, (room - across * width) / Math.max(1, across - 1));
  // The same object marks the rows of one list.
  const placed = list && across > 1 && rows.length > across ? { list: { columns: across, step } } : {};
  // In short columns side by side groups would only set rows out of line.
  const deep = placed.list ? Math.ceil(rows.length / placed.list.columns) : rows.length;
  let current: string | undefined;
  return rows.map((row, index): Run => {
    const title = titles?.get(index);
    current = title ?? current;
    const own = bodyRow(columns, row, places, width, size, ruled || index === rows.length - 1);
    const drawing = title === undefined ? own : above(titleRow(title, width), own);
    if (index === 0) return { drawing: heading === undefined ? drawing : above(heading, drawing), ...placed };
    const grouped = titles ? title !== undefined : deep > GROUP + 2 && index % GROUP === 0;
    const gap = !ruled && grouped ? groupGap : 0;
    // Overleaf a row says again what it belongs to.
    const again =
      heading && title === undefined && current !== undefined ? above(heading, titleRow(current, width)) : heading;
    return { drawing, gap, ...(again && { heading: again }), ...placed };
  });
}

function headingRow(columns: readonly Column[], places: readonly Place[], width: number): Drawing | undefined {
  const size = sizes.text;
  const wrapped = columns.map(({ heading }, index) => {
    const own = (places[index]?.width ?? 0) - 2 * padding;
    return heading.flatMap((words, row) => {
      const weight: Weight = row === heading.length - 1 && heading.length > 1 ? "regular" : "bold";
      return words === "" ? [] : wrapText(words, own, size, weight).map((part) => ({ part, weight }));
    });
  });
  const lines = Math.max(...wrapped.map((list) => list.length));
  if (lines === 0) return undefined;
  const step = size * leading;
  const height = lines * step + 1.2;
  const marks: Mark[] = columns.flatMap((column, index) => {
    const place = places[index];
    const list = wrapped[index];
    if (place === undefined || list === undefined) return [];
    const anchor = column.align === "decimal" ? "middle" : column.align;
    return list.map(({ part, weight }, row) =>
      text(part, { x: anchorX(place, anchor), y: (lines - list.length + row + 0.8) * step }, { size, anchor, weight }),
    );
  });
  const y = height - 0.4;
  return { width, height, marks: [...marks, line({ x: 0, y }, { x: width, y }, objectLine)] };
}

function titleRow(words: string, width: number): Drawing {
  const size = sizes.text;
  const step = size * leading;
  const lines = wrapText(words, width - 2 * padding, size, "bold");
  const marks = lines.map((part, index) =>
    text(part, { x: padding, y: (index + 0.8) * step }, { size, weight: "bold" }),
  );
  return { width, height: lines.length * step, marks };
}

function bodyRow(
  columns: readonly Column[],
  row: readonly Cell[],
  places: readonly Place[],
  width: number,
  size: number,
  ruled: boolean,
): Drawing {
  const largest = Math.max(size, ...row.map((cell) => cell.size ?? 0));
  const baseline = (largest * leading + 0.5) * 0.76;
  const cells = columns.map((column, index) =>
    cellMarks(column, row[index] ?? { text: "" }, places[index] as Place, baseline, size),
  );
  const height = Math.max(largest * leading + 0.5, ...cells.map(({ bottom }) => bottom));
  const marks = cells.flatMap((cell) => cell.marks);
  const y = height - 0.1;
  return {
    width,
    height,
    marks: ruled ? [...marks, line({ x: 0, y }, { x: width, y }, rowLine)] : marks,
  };
}

/** Its marks, and how far down they reach with the room below them. */
function cellMarks(
  column: Column,
  cell: Cell,
  place: Place,
  baseline: number,
  tableSize: number,
): { marks: Mark[]; bottom: number } {
  const size = cell.size ?? tableSize;
  if (cell.drawn !== undefined) return { marks: drawnCell(cell, place, baseline, size), bottom: 0 };
  const { weight = "regular", ink = "black" } = cell;
  const own = place.width - 2 * padding;
  const anchor = column.align === "decimal" ? "middle" : column.align;
  const lines = cell.text === "" ? [] : column.align === "start" ? wrapText(cell.text, own, size, weight) : [cell.text];
  const notes = cell.note ? wrapText(cell.note, own, sizes.source, "regular") : [];
  const x =
    column.align === "decimal"
      ? place.left + (place.width - place.whole - place.fraction) / 2 + place.whole - splitDecimal(cell, size).whole
      : anchorX(place, anchor);
  const style = { size, weight, ink, anchor: column.align === "decimal" ? ("start" as const) : anchor };
  const step = size * leading;
  const last = baseline + Math.max(0, lines.length - 1) * step;
  const small = sizes.source * 1.25;
  return {
    marks: [
      ...lines.map((part, index) => text(part, { x, y: baseline + index * step }, style)),
      ...notes.map((part, index) =>
        text(part, { x: anchorX(place, anchor), y: last + (index + 1) * small }, { size: sizes.source, anchor, ink }),
      ),
    ],
    bottom: last + notes.length * small + 0.32 * (notes.length > 0 ? sizes.source : size) + 0.4,
  };
}

function drawnCell({ drawn, text: words }: Cell, place: Place, baseline: number, size: number): Mark[] {
  if (drawn === "box") {
    const side = size * 0.95;
    return [
      rectangle({ x: anchorX(place, "middle") - side / 2, y: baseline - side * 0.88 }, side, side, {
        pen: rowLine,
      }),
    ];
  }
  const from = place.left + padding + (words === "" ? 0 : textWidth(words, size, "regular") + 0.8);
  const to = place.left + place.width - padding;
  const before = words === "" ? [] : [text(words, { x: place.left + padding, y: baseline }, { size })];
  return [...before, line({ x: from, y: baseline + 0.5 }, { x: to, y: baseline + 0.5 }, rowLine)];
}

const anchorX = (place: { left: number; width: number }, anchor: "start" | "middle" | "end"): number =>
  anchor === "start"
    ? place.left + padding
    : anchor === "end"
      ? place.left + place.width - padding
      : place.left + place.width / 2;

function above(top: Drawing, bottom: Drawing): Drawing {
  return {
    width: Math.max(top.width, bottom.width),
    height: top.height + bottom.height,
    marks: [
      { kind: "group", at: { x: 0, y: 0 }, marks: top.marks },
      { kind: "group", at: { x: 0, y: top.height }, marks: bottom.marks },
    ],
  };
}
