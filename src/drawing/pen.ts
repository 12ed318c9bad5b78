import type { Path } from "d3-path";
import type { Segment } from "./drawing.js";

/** Collects what d3-shape draws as segments with full doubles: its own path strings are rounded to three digits, half of the
 *  0.001 mm that is promised here. */
export function segmentPen(): { readonly context: Path; readonly segments: Segment[] } {
  const segments: Segment[] = [];
  const pen = {
    moveTo: (x: number, y: number) => void segments.push({ to: "move", x, y }),
    lineTo: (x: number, y: number) => void segments.push({ to: "line", x, y }),
    bezierCurveTo: (x1: number, y1: number, x2: number, y2: number, x: number, y: number) =>
      void segments.push({ to: "curve", x1, y1, x2, y2, x, y }),
    arc: (x: number, y: number, radius: number, start: number, end: number) =>
      void segments.push({ to: "arc", centre: { x, y }, radius, start, end }),
    closePath: () => void segments.push({ to: "close" }),
  };
  // d3's types ask for a whole path; line() and its like use only these.
  return { context: pen as unknown as Path, segments };
}
