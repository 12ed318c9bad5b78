import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import type { Run } from "./block.js";

/** Two tables row by row side by side, the second `step` mm to the right of the first; what one has more rows of stands alone. Rows of
 *  one height, so that both break at the same place; headings end on one line. */
export function beside(left: readonly Run[], right: readonly Run[], step: number): Run[] {
  return Array.from({ length: Math.max(left.length, right.length) }, (_, index): Run => {
    const [one, other] = [left[index], right[index]];
    const heading = sideBySide(one?.heading, other?.heading, step);
    return {
      drawing: sideBySide(one?.drawing, other?.drawing, step) ?? { width: 0, height: 0, marks: [] },
      gap: Math.max(one?.gap ?? 0, other?.gap ?? 0),
      ...(heading && { heading }),
      ...((one?.keepWithNext || other?.keepWithNext) && { keepWithNext: true }),
    };
  });
}

function sideBySide(left: Drawing | undefined, right: Drawing | undefined, step: number): Drawing | undefined {
  if (left === undefined && right === undefined) return undefined;
  const height = Math.max(left?.height ?? 0, right?.height ?? 0);
  const at = (drawing: Drawing | undefined, x: number): Mark[] =>
    drawing === undefined ? [] : [group({ x, y: height - drawing.height }, drawing.marks)];
  const width = right === undefined ? (left?.width ?? 0) : step + right.width;
  return { width, height, marks: [...at(left, 0), ...at(right, step)] };
}
