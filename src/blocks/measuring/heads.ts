import type { Mark, PathMark, Pen, Point } from "../../drawing/drawing.js";
import { line, polyline } from "../../drawing/shapes.js";

/** A full head at `tip`, pointing along (dx, dy), of unit length: seen from farther than that of a dimension. */
export const fullHead = (tip: Point, dx: number, dy: number, length = 2.6): PathMark => head(tip, dx, dy, length, 0.36);

/** The slender head of a dimension. */
export const dimensionHead = (tip: Point, dx: number, dy: number, length = 2): PathMark =>
  head(tip, dx, dy, length, 1 / 6);

/** `broad`: half its width for each mm of its length. */
function head(tip: Point, dx: number, dy: number, length: number, broad: number): PathMark {
  const half = length * broad;
  const [x, y] = [tip.x - dx * length, tip.y - dy * length];
  return polyline(
    [tip, { x: x - dy * half, y: y + dx * half }, { x: x + dy * half, y: y - dx * half }],
    { fill: "black" },
    true,
  );
}

/** Which way something goes. */
export const way = (from: Point, to: Point, look: Pen, length = 2.6): Mark[] => arrow(from, to, look, length, fullHead);

/** One side of a dimension that is pointed at from outside. */
export const pointer = (from: Point, to: Point, look: Pen, length = 1.8): Mark[] =>
  arrow(from, to, look, length, dimensionHead);

function arrow(from: Point, to: Point, look: Pen, length: number, headed: typeof fullHead): Mark[] {
  const whole = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / whole, (to.y - from.y) / whole];
  const end = { x: to.x - dx * length * 0.8, y: to.y - dy * length * 0.8 };
  return [line(from, end, look), headed(to, dx, dy, length)];
}
