import type { Drawing, Ink, Mark, Weight } from "../../drawing/drawing.js";
import { line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import type { Run } from "./block.js";
import { fine, leading, medium, size as sizes } from "./style.js";

export type Cell = {
  readonly text: string;
  readonly weight?: Weight;
  readonly ink?: Ink /** Small words under the text. */;
  readonly note?: string;
  /** Drawn instead of text: a box to tick, or a line to write on (which the text then stands before). */
  readonly drawn?: "box" | "line";
};

export type Column = {
  /** Lines of the heading, the last may be the unit. */
  readonly heading: readonly string[];
  /** `decimal` lines numbers up on the point, which even-width figures make exact. */
  readonly align: "start" | "middle" | "end" | "decimal";
  /** Share of the width that is left over after every column has what it needs; 1 when absent. */
  readonly stretch?: number;
  /** Left out, the last of them first, where the paper is too narrow for all columns. */
  readonly optional?: boolean;
};

export type TableOptions = {
  readonly width: number;
  readonly size?: number /** A fine rule under every nth row. */;
  readonly ruleEvery?: number;
};

const padding = 1.4;
/** A figure written by hand wants so much, mm. */
const ROOM_TO_WRITE = 16;

/** A table as one run a row, so that pages break between rows and the heading repeats. Where it is wider than the paper its
 *  letters shrink, as far as they may; then optional columns go. */
export function table(columns: readonly Column[], rows: readonly (readonly Cell[])[], options: TableOptions): Run[] {
  const wanted = options.size ?? sizes.body;
  const needed = neededWidth(columns, rows, wanted, sizes.small);
  // The room between columns stays.
  const between = 2 * padding * columns.length;
  const squeeze = Math.min(1, Math.max(0, options.width - between) / (needed - between));
  const size = Math.max(sizes.tiny, wanted * squeeze);
  const headingSize = Math.max(sizes.tiny, sizes.small * squeeze);
  const last = columns.findLastIndex(({ optional }) => optional);
  if (squeeze < 1 && last >= 0 && neededWidth(columns, rows, size, headingSize) > options.width + 1e-9) {
    const without = <T>(list: readonly T[]) => list.filter((_, index) => index !== last);
    return table(without(columns), rows.map(without), options);
  }
  const layout = columnLayout(columns, rows, options.width, size, headingSize);
  const heading = headingRow(columns, layout, options.width, headingSize);
  return rows.map((row, index) => {
    const ruled = options.ruleEvery !== undefined && (index + 1) % options.ruleEvery === 0;
    const drawing = bodyRow(columns, row, layout, options.width, size, ruled || index === rows.length - 1);
    if (index > 0) return { drawing, heading };
    return { drawing: above(heading, drawing) };
  });
}

/** `whole` and `fraction`: the widest parts left and right of the decimal point. */
type Place = { readonly left: number; readonly width: number; readonly whole: number; readonly fraction: number };
type Layout = readonly Place[];

const neededWidth = (
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  size: number,
  headingSize: number,
): number => columnNeeds(columns, rows, size, headingSize).reduce((sum, need) => sum + need.width, 0);

function columnNeeds(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  size: number,
  headingSize: number,
): Omit<Place, "left">[] {
  return columns.map((column, index) => {
    const cells = rows.map((row) => row[index]).filter((cell) => cell !== undefined);
    const parts = cells.map((cell) => splitDecimal(cell, size));
    const whole = Math.max(0, ...parts.map((part) => part.whole));
    const fraction = Math.max(0, ...parts.map((part) => part.fraction));
    const body =
      column.align === "decimal"
        ? whole + fraction
        : Math.max(
            0,
            ...cells.map(
              (cell) =>
                textWidth(cell.text, size, cell.weight ?? "regular") + (cell.drawn === "line" ? ROOM_TO_WRITE : 0),
            ),
          );
    const notes = Math.max(0, ...cells.map((cell) => textWidth(cell.note ?? "", sizes.tiny, "regular")));
    const head = Math.max(0, ...column.heading.map((words) => textWidth(words, headingSize, "bold")));
    return { width: Math.max(body, notes, head) + 2 * padding, whole, fraction };
  });
}

function columnLayout(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  width: number,
  size: number,
  headingSize: number,
): Layout {
  const needs = columnNeeds(columns, rows, size, headingSize);
  const needed = needs.reduce((sum, need) => sum + need.width, 0);
  const stretches = columns.map((column) => column.stretch ?? 1);
  const stretch = stretches.reduce((sum, share) => sum + share, 0);
  const spare = Math.max(0, width - needed);
  const squeeze = Math.min(1, width / needed);
  let left = 0;
  return needs.map((need, index) => {
    const own = need.width * squeeze + (stretch > 0 ? (spare * (stretches[index] ?? 1)) / stretch : 0);
    const place = { left, width: own, whole: need.whole, fraction: need.fraction };
    left += own;
    return place;
  });
}

function splitDecimal(cell: Cell, size: number): { whole: number; fraction: number } {
  const point = cell.text.search(/[.,]/);
  const weight = cell.weight ?? "regular";
  const whole = point < 0 ? cell.text : cell.text.slice(0, point);
  return {
    whole: textWidth(whole, size, weight),
    fraction: point < 0 ? 0 : textWidth(cell.text.slice(point), size, weight),
  };
}

function headingRow(columns: readonly Column[], layout: Layout, width: number, size: number): Drawing {
  const lines = Math.max(...columns.map(({ heading }) => heading.length));
  const step = size * leading;
  const height = lines * step + 1.2;
  const marks: Mark[] = columns.flatMap((column, index) => {
    const place = layout[index];
    if (place === undefined) return [];
    const anchor = column.align === "decimal" ? "middle" : column.align;
    return column.heading.map((words, row) =>
      text(
        words,
        { x: anchorX(place, anchor), y: (lines - column.heading.length + row + 0.8) * step },
        {
          size,
          anchor,
          weight: row === column.heading.length - 1 && column.heading.length > 1 ? "regular" : "bold",
        },
      ),
    );
  });
  return { width, height, marks: [...marks, line({ x: 0, y: height - 0.4 }, { x: width, y: height - 0.4 }, medium)] };
}

function bodyRow(
  columns: readonly Column[],
  row: readonly Cell[],
  layout: Layout,
  width: number,
  size: number,
  ruled: boolean,
): Drawing {
  const noted = row.some(({ note }) => note !== undefined && note !== "");
  const step = size * leading + 0.5;
  const height = step + (noted ? sizes.tiny * 1.2 : 0);
  const marks = columns.flatMap((column, index): Mark[] => {
    const place = layout[index];
    const cell = row[index];
    if (place === undefined || cell === undefined) return [];
    const baseline = step * 0.76;
    if (cell.drawn !== undefined) return drawnCell(cell, place, baseline, size);
    if (cell.text === "") return [];
    const style = { size, weight: cell.weight ?? "regular", ink: cell.ink ?? "black" } as const;
    const note = cell.note
      ? [
          text(
            cell.note,
            { x: anchorX(place, column.align === "decimal" ? "middle" : column.align), y: baseline + sizes.tiny * 1.2 },
            { size: sizes.tiny, anchor: column.align === "decimal" ? "middle" : column.align, ink: style.ink },
          ),
        ]
      : [];
    if (column.align !== "decimal")
      return [
        text(cell.text, { x: anchorX(place, column.align), y: baseline }, { ...style, anchor: column.align }),
        ...note,
      ];
    const point = place.left + (place.width - place.whole - place.fraction) / 2 + place.whole;
    return [
      text(cell.text, { x: point - splitDecimal(cell, size).whole, y: baseline }, { ...style, anchor: "start" }),
      ...note,
    ];
  });
  return {
    width,
    height,
    marks: ruled ? [...marks, line({ x: 0, y: height - 0.1 }, { x: width, y: height - 0.1 }, fine)] : marks,
  };
}

function drawnCell({ drawn, text: words }: Cell, place: Place, baseline: number, size: number): Mark[] {
  if (drawn === "box") {
    const side = size * 0.95;
    return [
      rectangle({ x: anchorX(place, "middle") - side / 2, y: baseline - side * 0.88 }, side, side, { pen: medium }),
    ];
  }
  const from = place.left + padding + (words === "" ? 0 : textWidth(words, size, "regular") + 0.8);
  const to = place.left + place.width - padding;
  const before = words === "" ? [] : [text(words, { x: place.left + padding, y: baseline }, { size })];
  return [...before, line({ x: from, y: baseline + 0.5 }, { x: to, y: baseline + 0.5 }, fine)];
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

/** Lines of plain text as one run each. */
export function paragraph(
  words: string,
  width: number,
  style: { size?: number; weight?: Weight; ink?: Ink; gap?: number } = {},
): Run[] {
  const size = style.size ?? sizes.body;
  const step = size * leading;
  return wrapText(words, width, size, style.weight ?? "regular").map((part, index) => ({
    drawing: {
      width,
      height: step,
      marks: [
        text(part, { x: 0, y: step * 0.76 }, { size, weight: style.weight ?? "regular", ink: style.ink ?? "black" }),
      ],
    },
    gap: index === 0 ? (style.gap ?? 0) : 0,
  }));
}
