import type { Mark, PathMark, Pen, Point, Segment } from "../../drawing/drawing.js";
import { line, polyline } from "../../drawing/shapes.js";
import { axisLine, objectLine, pen, weight } from "./style.js";

/** Two widths of line, ISO 128-2: thick for what is seen, thin for dimensions, hatching, threads and what only helps. */
export const outlinePen = objectLine;
export const thinPen = axisLine;
/** Long dash and dot: axes. */
export const axisPen = pen(weight.axis, "black", [6, 0.9, 0.5, 0.9]);
/** Long dash and two dots: the outline before the work was shaped. */
export const stockPen = pen(weight.axis, "black", [5, 0.8, 0.5, 0.8, 0.5, 0.8]);

/** The parts of a straight line inside a closed shape: even-odd. `along` runs with the line, `across` stays. */
function within(polygon: readonly Point[], slope: 1 | -1, across: number): [Point, Point][] {
  const crossings: Point[] = [];
  for (const [index, from] of polygon.entries()) {
    const to = polygon[(index + 1) % polygon.length] as Point;
    const [a, b] = [from.y - slope * from.x - across, to.y - slope * to.x - across];
    if (a < 0 === b < 0) continue;
    const share = a / (a - b);
    crossings.push({ x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) });
  }
  crossings.sort((a, b) => a.x - b.x);
  return crossings.flatMap((point, index): [Point, Point][] => {
    const next = crossings[index + 1];
    return index % 2 === 0 && next !== undefined && next.x - point.x > 0.02 ? [[point, next]] : [];
  });
}

/** Parallel thin lines at 45° inside a closed shape; `slope` 1 falls to the right on paper. One path, to keep the page small. */
export function hatching(polygon: readonly Point[], gap: number, slope: 1 | -1, look: Pen = thinPen): PathMark[] {
  if (polygon.length < 3) return [];
  const offsets = polygon.map(({ x, y }) => y - slope * x);
  const step = gap * Math.SQRT2;
  const segments: Segment[] = [];
  // A shade off the shape's own corners, where even-odd is not decided.
  for (let across = Math.min(...offsets) + step * 0.517; across < Math.max(...offsets); across += step)
    for (const [from, to] of within(polygon, slope, across))
      segments.push({ to: "move", ...from }, { to: "line", ...to });
  return segments.length === 0 ? [] : [{ kind: "path", segments, pen: look }];
}

/** A knurl: crossed thin lines. */
export const crossed = (polygon: readonly Point[], gap: number, look: Pen = thinPen): PathMark[] => [
  ...hatching(polygon, gap, 1, look),
  ...hatching(polygon, gap, -1, look),
];

/** Where something is broken off: a thin free-hand line, ISO 128-2, that waves about the straight one. */
export function breakLine(from: Point, to: Point, look: Pen = thinPen): PathMark {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  const waves = Math.max(2, 2 * Math.round(length / 8));
  const swing = Math.min(0.7, length / 12);
  const [nx, ny] = length === 0 ? [0, 0] : [(-dy / length) * swing, (dx / length) * swing];
  const segments: Segment[] = [{ to: "move", ...from }];
  for (let wave = 0; wave < waves; wave++) {
    const at = (share: number, side: number): Point => ({
      x: from.x + ((wave + share) / waves) * dx + side * nx,
      y: from.y + ((wave + share) / waves) * dy + side * ny,
    });
    const side = wave % 2 === 0 ? 1.3 : -1.3;
    const [first, second, end] = [at(0.35, side), at(0.65, side), at(1, 0)];
    segments.push({ to: "curve", x1: first.x, y1: first.y, x2: second.x, y2: second.y, x: end.x, y: end.y });
  }
  return { kind: "path", segments, pen: look };
}

/** A filled head at `tip`, pointing along (dx, dy), of unit length. */
export function arrowHead(tip: Point, dx: number, dy: number, length = 2.2): PathMark {
  const half = length / 6;
  const [bx, by] = [tip.x - dx * length, tip.y - dy * length];
  return polyline(
    [tip, { x: bx - dy * half, y: by + dx * half }, { x: bx + dy * half, y: by - dx * half }],
    { fill: "black" },
    true,
  );
}

/** A line with a head at its end. */
export function arrow(from: Point, to: Point, look: Pen = thinPen, head = 2.2): Mark[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) return [];
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const back = Math.min(head, length) * 0.8;
  return [line(from, { x: to.x - dx * back, y: to.y - dy * back }, look), arrowHead(to, dx, dy, head)];
}
