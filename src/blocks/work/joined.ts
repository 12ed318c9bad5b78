import type { Drawing } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import type { Run } from "../shared/block.js";
import { heightOf, lowered } from "../shared/runs.js";

/** Runs one below the other as one that is never broken; the space above the first is left to whoever places it. */
export function joined(runs: readonly Run[], width: number): Drawing {
  const all = lowered(runs, 0);
  const marks = all.map(({ drawing, gap = 0 }, index) =>
    group({ x: 0, y: heightOf(all.slice(0, index)) + gap }, drawing.marks),
  );
  return { width, height: heightOf(all), marks };
}
