import type { Drawing, Mark } from "../../drawing/drawing.js";
import { line, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import type { Run } from "../shared/block.js";
import { fine, leading, medium, size } from "../shared/style.js";

export type FormColumn = {
  readonly heading: readonly string[];
  /** Share of the width. */
  readonly share: number;
};

/** A ruled form, a row a run: what is known is printed small, what is empty is room for a pencil. */
export function formGrid(
  columns: readonly FormColumn[],
  rows: readonly (readonly string[])[],
  width: number,
  rowHeight: number,
): Run[] {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  const edges = [0];
  for (const { share } of columns) edges.push((edges.at(-1) ?? 0) + (share / shares) * width);
  const heading = headingOf(columns, edges, width);
  return rows.map((cells, index) => {
    const body: Mark[] = [
      ...columns.flatMap((_, column): Mark[] => {
        const [left = 0, right = width] = [edges[column], edges[column + 1]];
        const words = cells[column] ?? "";
        if (words === "") return [];
        const most = right - left - 1.6;
        const fitting = Math.min(size.body, (size.body * most) / textWidth(words, size.body, "regular"));
        return [
          text(
            words,
            { x: (left + right) / 2, y: rowHeight / 2 + size.body * 0.35 },
            { size: Math.max(size.tiny, fitting), anchor: "middle" },
          ),
        ];
      }),
      ...edges.map((x) => line({ x, y: 0 }, { x, y: rowHeight }, fine)),
      line(
        { x: 0, y: rowHeight },
        { x: width, y: rowHeight },
        index % 5 === 4 || index === rows.length - 1 ? medium : fine,
      ),
    ];
    const drawing: Drawing = { width, height: rowHeight, marks: body };
    if (index > 0) return { drawing, heading };
    return {
      drawing: {
        width,
        height: heading.height + rowHeight,
        marks: [...heading.marks, { kind: "group", at: { x: 0, y: heading.height }, marks: body }],
      },
    };
  });
}

function headingOf(columns: readonly FormColumn[], edges: readonly number[], width: number): Drawing {
  const step = size.small * leading;
  const wrapped = columns.map(({ heading }, index) =>
    heading.flatMap((words) =>
      wrapText(words, (edges[index + 1] ?? width) - (edges[index] ?? 0) - 1, size.small, "bold"),
    ),
  );
  const lines = Math.max(...wrapped.map((list) => list.length));
  const height = lines * step + 1.4;
  const marks: Mark[] = wrapped.flatMap((list, column) =>
    list.map((words, row) =>
      text(
        words,
        { x: ((edges[column] ?? 0) + (edges[column + 1] ?? width)) / 2, y: (lines - list.length + row + 0.8) * step },
        { size: size.small, anchor: "middle", weight: "bold" },
      ),
    ),
  );
  return { width, height, marks: [...marks, line({ x: 0, y: height }, { x: width, y: height }, medium)] };
}
