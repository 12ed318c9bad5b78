import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { Drawing, Mark, Point, Segment } from "../../drawing/drawing.js";
import { segmentPen } from "../../drawing/pen.js";
import { circle, rectangle, line as stroke, text } from "../../drawing/shapes.js";
import { trimmed } from "../../quantity/format.js";
import { fine, medium, pen, size } from "../shared/style.js";

const mostDots = 500;

export type Plot = {
  readonly title: string;
  /** Written along the axes. */
  readonly across: string;
  readonly up: string;
  readonly points: readonly {
    readonly x: number;
    readonly y: number /** Named in the remarks. */;
    readonly marked?: boolean;
  }[];
  /** A level line, as the mean. */
  readonly level?: number;
};

/** A small scatter plot: dots, axes with a few round ticks, zero drawn through. */
export function plotDrawing(plot: Plot, width: number, height: number): Drawing {
  const { title, across, up, level } = plot;
  // More dots than that are one black band, and a file that no printer takes.
  const every = Math.ceil(plot.points.length / mostDots);
  const points = plot.points.filter(({ marked }, index) => marked || index % every === 0);
  const [left, right, top, bottom] = [15, width - 2, 5, height - 8];
  const xs = points.map(({ x }) => x);
  const ys = [...points.map(({ y }) => y), 0, ...(level === undefined ? [] : [level])];
  const x = scaleLinear([Math.min(...xs), Math.max(...xs)], [left + 2, right - 2]);
  const reach = Math.max(1e-6, ...ys) - Math.min(0, ...ys);
  const y = scaleLinear([Math.min(...ys) - reach * 0.08, Math.max(...ys) + reach * 0.08], [bottom, top]).nice(4);
  const places = (step: number) => Math.max(0, Math.min(6, -Math.floor(Math.log10(step))));
  const yTicks = y.ticks(4);
  const step = yTicks.length > 1 ? Math.abs((yTicks[1] ?? 0) - (yTicks[0] ?? 0)) : 1;
  const marks: Mark[] = [
    text(title, { x: left, y: 3 }, { size: size.small, weight: "bold" }),
    rectangle({ x: left, y: top }, right - left, bottom - top, { pen: fine }),
    ...yTicks.flatMap((tick): Mark[] => [
      stroke({ x: left - 1, y: y(tick) }, { x: left, y: y(tick) }, fine),
      text(trimmed(tick, places(step)), { x: left - 1.5, y: y(tick) + 0.65 }, { size: size.tiny, anchor: "end" }),
    ]),
    ...x
      .ticks(8)
      .flatMap((tick): Mark[] => [
        stroke({ x: x(tick), y: bottom }, { x: x(tick), y: bottom + 1 }, fine),
        text(trimmed(tick, 2), { x: x(tick), y: bottom + 3.2 }, { size: size.tiny, anchor: "middle" }),
      ]),
    stroke({ x: left, y: y(0) }, { x: right, y: y(0) }, medium),
    ...(level === undefined
      ? []
      : [stroke({ x: left, y: y(level) }, { x: right, y: y(level) }, pen(0.18, "black", [1.5, 1]))]),
    { kind: "path", segments: joined(points.map((point) => ({ x: x(point.x), y: y(point.y) }))), pen: fine },
    ...points.map((point) =>
      circle(
        { x: x(point.x), y: y(point.y) },
        point.marked ? 1 : 0.6,
        point.marked ? { pen: medium, fill: "white" } : { fill: "black" },
      ),
    ),
    text(across, { x: (left + right) / 2, y: bottom + 6.2 }, { size: size.tiny, anchor: "middle" }),
    text(up, { x: 2.4, y: (top + bottom) / 2 }, { size: size.tiny, anchor: "middle", turn: -Math.PI / 2 }),
  ];
  return { width, height, marks };
}

/** A thin line through the points in the order of x, to lead the eye. */
function joined(points: readonly Point[]): readonly Segment[] {
  const pen = segmentPen();
  line<Point>()
    .x(({ x }) => x)
    .y(({ y }) => y)
    .context(pen.context)([...points].sort((a, b) => a.x - b.x));
  return pen.segments;
}
