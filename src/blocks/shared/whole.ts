import type { Run } from "./block.js";

/** Keeps runs on one page where a page has the room for them all. `height`: of an empty page, mm. */
export function whole(runs: readonly Run[], height: number): Run[] {
  const needed = runs.reduce((sum, run) => sum + (run.gap ?? 0) + run.drawing.height, 0);
  if (needed > height) return [...runs];
  return runs.map((run, index) => (index < runs.length - 1 ? { ...run, keepWithNext: true } : run));
}
