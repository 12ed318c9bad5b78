import type { Mark } from "../../drawing/drawing.js";
import { line } from "../../drawing/shapes.js";
import { between } from "../../part/outline.js";
import { endsOf, type Workpiece } from "../../part/workpiece.js";
import type { Stage } from "../../plan/stage.js";
import { axisPen, breakLine, outlinePen, stockPen, thinPen } from "../shared/sectionMarks.js";
import type { Part } from "./partFeatures.js";
import { JAW, type Layout } from "./partLayout.js";
import { above, across, below, centreMarks, driverMarks, jawMarks, type View, workView } from "./workView.js";

/** Stock, jaws and centres: all thin. */
export function heldMarks(part: Part, stages: readonly Stage[], view: View, { to, reach, gap }: Layout): Mark[] {
  const { from } = endsOf(part.stock);
  const marks: Mark[] = [];
  const right = across(view, Math.min(from, endsOf(part.finished).from));
  const left = across(view, to);
  marks.push(line({ x: right + 4, y: view.y }, { x: left - 2.5, y: view.y }, axisPen));
  if (part.block) return marks;
  const stock = part.stock.outside[0]?.start ?? 0;
  const far = Math.min(to, endsOf(part.stock).to);
  const [top, bottom] = [above(view, stock), below(view, stock)];
  const known = endsOf(part.stock).to <= to + 1e-9 && !stages[0]?.openEnded;
  const parts = gap === undefined ? [[from, far] as const] : [[from, gap.from] as const, [gap.to, far] as const];
  for (const [begin, end] of parts)
    for (const y of [top, bottom])
      marks.push(line({ x: across(view, begin), y }, { x: across(view, end), y }, stockPen));
  marks.push(line({ x: across(view, from), y: top }, { x: across(view, from), y: bottom }, stockPen));
  for (const z of gap === undefined ? [] : [gap.from, gap.to])
    marks.push(breakLine({ x: across(view, z), y: top }, { x: across(view, z), y: bottom }));
  const [farTop, farBottom] = [
    { x: across(view, far), y: top },
    { x: across(view, far), y: bottom },
  ];
  // What is finished to there has its own end.
  if (part.bounded) marks.push(known ? line(farTop, farBottom, stockPen) : breakLine(farTop, farBottom));
  const held = stages[0]?.holding.held;
  if (reach !== undefined && held !== "between centres")
    marks.push(...jawMarks(view, reach, stock, JAW.reach, JAW.height));
  if (reach !== undefined && held === "between centres") marks.push(...driverMarks(view, reach, stock));
  if (held !== "chuck" && held !== undefined) marks.push(...centreMarks(across(view, from), view.y, 4, 1));
  return marks;
}

export function partMarks(part: Part, view: View, { to, gap }: Layout): Mark[] {
  const { finished, bounded, block } = part;
  const end = gap !== undefined && !bounded ? gap.from : to;
  const shown: Workpiece =
    bounded || block
      ? finished
      : {
          outside: between(finished.outside, Number.NEGATIVE_INFINITY, end),
          bore: between(finished.bore, Number.NEGATIVE_INFINITY, end),
          surfaces: finished.surfaces,
        };
  return workView(shown, view, { outline: outlinePen, thin: thinPen, gap: 1.5, broken: !bounded, block });
}
