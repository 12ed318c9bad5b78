import type { Drawing, Mark } from "../../drawing/drawing.js";
import { line, text } from "../../drawing/shapes.js";
import { textWidth, widestWord, wrapText } from "../../drawing/text.js";
import type { Run } from "../shared/block.js";
import { leading, objectLine, rowLine, size } from "../shared/style.js";
import { way } from "./heads.js";

export type FormColumn = {
  readonly heading: readonly string[];
  /** Share of the width. */
  readonly share: number;
  /** Which way the rows are filled, drawn beside the heading. */
  readonly arrow?: "down" | "up";
};

const GROUP = 5;
const groupGap = 1;
/** Left and right of a cell's words together, mm. */
const BESIDE = 1.6;
/** From the words to an arrow beside them. */
const ARROW = 2;

/** A ruled form, a row a run, in groups of five: what is known is printed, what is empty is room for a pencil. */
export function formGrid(
  columns: readonly FormColumn[],
  rows: readonly (readonly string[])[],
  width: number,
  rowHeight: number,
): Run[] {
  const edges = edgesOf(columns, rows, width);
  const heading = headingOf(columns, edges, width);
  const grouped = rows.length > GROUP + 2;
  return rows.map((cells, index) => {
    const startsGroup = grouped && index > 0 && index % GROUP === 0;
    const body = rowOf(cells, edges, width, rowHeight, startsGroup);
    if (index > 0) return { drawing: body, heading, gap: startsGroup ? groupGap : 0 };
    return {
      drawing: {
        width,
        height: heading.height + body.height,
        marks: [...heading.marks, { kind: "group", at: { x: 0, y: heading.height }, marks: body.marks }],
      },
    };
  });
}

/** Left edges of the columns, and the right edge of the last: by their shares, but no word of a heading and no figure is broken
 *  where there is room for it. */
function edgesOf(columns: readonly FormColumn[], rows: readonly (readonly string[])[], width: number): number[] {
  const least = columns.map(({ heading, arrow }, index) =>
    Math.max(
      ...heading.map((words) => widestWord(words, size.text, "bold") + 1.2 + (arrow ? 2 * ARROW : 0)),
      ...rows.map((cells) => widestWord(cells[index] ?? "", size.text, "regular") + BESIDE),
    ),
  );
  const wanted = least.reduce((sum, one) => sum + one, 0);
  // Where there is not room for it all give way alike.
  const shares = columns.map(({ share }, index) => (wanted > width ? (least[index] ?? 0) : share));
  // Columns that their share leaves too narrow get what they need; the others share the rest.
  const narrow = new Set<number>();
  const unit = (): number => {
    const rest = width - [...narrow].reduce((sum, index) => sum + (least[index] ?? 0), 0);
    return rest / shares.reduce((sum, share, index) => (narrow.has(index) ? sum : sum + share), 0);
  };
  if (wanted <= width)
    for (let found = true; found; ) {
      const each = unit();
      found = false;
      for (const [index, share] of shares.entries())
        if (!narrow.has(index) && share * each < (least[index] ?? 0) - 1e-9) {
          narrow.add(index);
          found = true;
        }
    }
  const each = unit();
  const edges = [0];
  for (const [index, share] of shares.entries())
    edges.push((edges.at(-1) ?? 0) + (narrow.has(index) ? (least[index] ?? 0) : share * each));
  return edges;
}

function rowOf(
  cells: readonly string[],
  edges: readonly number[],
  width: number,
  least: number,
  above: boolean,
): Drawing {
  const step = size.text * leading;
  const wrapped = cells.map((words, column) => {
    const own = (edges[column + 1] ?? width) - (edges[column] ?? 0);
    return words === "" ? [] : wrapText(words, own - BESIDE, size.text, "regular");
  });
  const height = Math.max(least, ...wrapped.map((lines) => lines.length * step + 0.8));
  const marks: Mark[] = [
    ...wrapped.flatMap((lines, column) =>
      lines.map((words, row) =>
        text(
          words,
          {
            x: ((edges[column] ?? 0) + (edges[column + 1] ?? width)) / 2,
            y: height / 2 + size.text * 0.35 + (row - (lines.length - 1) / 2) * step,
          },
          { size: size.text, anchor: "middle" },
        ),
      ),
    ),
    ...edges.map((x) => line({ x, y: 0 }, { x, y: height }, rowLine)),
    line({ x: 0, y: height }, { x: width, y: height }, rowLine),
    ...(above ? [line({ x: 0, y: 0 }, { x: width, y: 0 }, rowLine)] : []),
  ];
  return { width, height, marks };
}

function headingOf(columns: readonly FormColumn[], edges: readonly number[], width: number): Drawing {
  const step = size.text * leading;
  const own = (column: number) => (edges[column + 1] ?? width) - (edges[column] ?? 0);
  const wrapped = columns.map(({ heading, arrow }, index) =>
    heading.flatMap((words) => wrapText(words, own(index) - 1 - (arrow ? 2 * ARROW : 0), size.text, "bold")),
  );
  const lines = Math.max(...wrapped.map((list) => list.length));
  const height = lines * step + 1.4;
  const marks: Mark[] = columns.flatMap(({ arrow }, column) => {
    const list = wrapped[column] ?? [];
    const x = (edges[column] ?? 0) + own(column) / 2;
    const last = (lines - 0.2) * step;
    // Beside the last words.
    const beside = x - textWidth(list.at(-1) ?? "", size.text, "bold") / 2 - ARROW;
    const [from, to] = arrow === "down" ? [last - 2.8, last + 0.7] : [last + 0.7, last - 2.8];
    return [
      ...list.map((words, row) =>
        text(
          words,
          { x, y: (lines - list.length + row + 0.8) * step },
          { size: size.text, anchor: "middle", weight: "bold" },
        ),
      ),
      ...(arrow ? way({ x: beside, y: from }, { x: beside, y: to }, objectLine, 2.2) : []),
    ];
  });
  return { width, height, marks: [...marks, line({ x: 0, y: height }, { x: width, y: height }, objectLine)] };
}
