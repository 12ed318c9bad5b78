import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { Drawing, Mark, Point, Segment } from "../../drawing/drawing.js";
import { segmentPen } from "../../drawing/pen.js";
import { circle, group, polyline, rectangle, line as stroke, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { trimmed } from "../../quantity/format.js";
import { axisLine, objectLine, rowLine, size } from "../shared/style.js";
import { placeLabels } from "./plotLabels.js";

const mostDots = 500;
/** Places at which the edge of a band is drawn. */
const BAND_STEPS = 48;

export type Plot = {
  readonly name: string;
  readonly title: string;
  /** Written along the axis, and its unit on the other. */
  readonly across: string;
  readonly up: string;
  /** What has a label is named in the words beside the plot. */
  readonly points: readonly { readonly x: number; readonly y: number; readonly label?: string }[];
  /** About zero, so far to either side, and what it is. */
  readonly band?: { readonly half: (x: number) => number; readonly words: string };
};

/** A small scatter plot: dots, axes with a few round ticks, zero drawn through, a band about it. */
export function plotDrawing(plot: Plot, width: number, height: number): Drawing {
  const { name, title, across, up, band } = plot;
  // More dots than that are one black band, and a file that no printer takes.
  const every = Math.ceil(plot.points.length / mostDots);
  const points = plot.points.filter(({ label }, index) => label || index % every === 0);
  const xs = points.map(({ x }) => x);
  const [least, most] = [smallest(xs), largest(xs)];
  const edge = band === undefined ? [] : [least, most].flatMap((x) => [band.half(x), -band.half(x)]);
  const ys = [...points.map(({ y }) => y), ...edge, 0];
  const reach = Math.max(1e-6, largest(ys) - smallest(ys));
  const [top, bottom] = [6.5, height - 8];
  const y = scaleLinear([smallest(ys) - reach * 0.08, largest(ys) + reach * 0.08], [bottom, top]).nice(4);
  const yTicks = y.ticks(4);
  const step = yTicks.length > 1 ? Math.abs((yTicks[1] ?? 0) - (yTicks[0] ?? 0)) : 1;
  const places = Math.max(0, Math.min(6, -Math.floor(Math.log10(step) + 1e-9)));
  const said = yTicks.map((tick) => trimmed(tick, places));
  const left = Math.max(...[...said, up].map((words) => textWidth(words, size.source, "regular"))) + 3;
  const right = width - 2;
  const x = scaleLinear([least, most], [left + 2, right - 2]);
  const dots = points.map((point) => ({ x: x(point.x), y: y(point.y), label: point.label }));
  const path = [...dots].sort((a, b) => a.x - b.x);
  const head = textWidth(title, size.text, "bold");
  const xTicks = x.ticks(8);
  const unit = textWidth(across, size.source, "regular");
  return {
    width,
    height,
    marks: [
      text(title, { x: 0, y: 3.4 }, { size: size.text, weight: "bold" }),
      ...(band === undefined ? [] : legend(band.words, head + 6, width)),
      ...(band === undefined ? [] : bandMarks(band.half, [least, most], x, y)),
      rectangle({ x: left, y: top }, right - left, bottom - top, { pen: rowLine }),
      ...yTicks.flatMap((tick, index): Mark[] => [
        stroke({ x: left - 1, y: y(tick) }, { x: left, y: y(tick) }, rowLine),
        text(said[index] ?? "", { x: left - 1.5, y: y(tick) + 0.9 }, { size: size.source, anchor: "end" }),
      ]),
      ...xTicks.flatMap((tick): Mark[] => [
        stroke({ x: x(tick), y: bottom }, { x: x(tick), y: bottom + 1 }, rowLine),
        text(trimmed(tick, 2), { x: x(tick), y: bottom + 3.7 }, { size: size.source, anchor: "middle" }),
      ]),
      text(up, { x: left - 1.5, y: bottom + 3.7 }, { size: size.source, anchor: "end" }),
      text(across, { x: right - unit, y: bottom + 6.9 }, { size: size.source }),
      stroke({ x: left, y: y(0) }, { x: right, y: y(0) }, objectLine),
      group(
        { x: 0, y: 0 },
        [
          { kind: "path", segments: joined(path), pen: axisLine },
          ...dots.map(({ label, ...at }) =>
            circle(at, label ? 1 : 0.6, label ? { pen: objectLine, fill: "white" } : { fill: "black" }),
          ),
        ],
        { name },
      ),
      ...placeLabels(dots, path, { left, right, top, bottom }, y(0)),
    ],
  };
}

// Of ten thousand readings a spread would not fit the stack.
const smallest = (values: readonly number[]): number =>
  values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
const largest = (values: readonly number[]): number =>
  values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);

/** Filled pale, its edges drawn: it is seen in one bit too. */
function bandMarks(
  half: (x: number) => number,
  [least, most]: readonly [number, number],
  x: (value: number) => number,
  y: (value: number) => number,
): Mark[] {
  const places = Array.from({ length: BAND_STEPS + 1 }, (_, k) => least + ((most - least) * k) / BAND_STEPS);
  const side = (sign: 1 | -1) => places.map((place) => ({ x: x(place), y: y(sign * half(place)) }));
  const [upper, lower] = [side(1), side(-1)];
  return [
    group(
      { x: 0, y: 0 },
      [
        polyline([...upper, ...lower.reverse()], { fill: "pale" }, true),
        polyline(upper, { pen: axisLine }),
        polyline(lower, { pen: axisLine }),
      ],
      { name: "band" },
    ),
  ];
}

/** A patch of the band and what it is, on the right of the title where there is room. */
function legend(words: string, from: number, width: number): Mark[] {
  const own = textWidth(words, size.source, "regular");
  const x = width - own - 2;
  if (x - 8 < from) return [];
  return [
    rectangle({ x: x - 7.5, y: 1 }, 6, 2.6, { pen: axisLine, fill: "pale" }),
    text(words, { x, y: 3.2 }, { size: size.source }),
  ];
}

/** A thin line through the points in the order of x, to lead the eye. */
function joined(points: readonly Point[]): readonly Segment[] {
  const pen = segmentPen();
  line<Point>()
    .x(({ x }) => x)
    .y(({ y }) => y)
    .context(pen.context as never)(points as Point[]);
  return pen.segments;
}
