import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import type { Run } from "../shared/block.js";

/** Runs one below the other as one drawing. */
export function stack(runs: readonly Run[], width: number): Drawing {
  let y = 0;
  const marks = runs.map(({ drawing, gap }, index): Mark => {
    if (index > 0) y += gap ?? 0;
    const placed = group({ x: 0, y }, drawing.marks);
    y += drawing.height;
    return placed;
  });
  return { width, height: y, marks };
}
