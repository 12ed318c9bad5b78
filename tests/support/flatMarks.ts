import type { Drawing, GroupMark, Ink, Mark, PathMark, Point, Segment, TextMark } from "../../src/drawing/drawing.js";
import { type Box, corners, type Extent, extent, strokeBox } from "./boxes.js";
import { inkOfText } from "./inkOfText.js";

/** A page taken apart: every mark where it lies on the paper, in the order of painting. */
export type Flat = {
  readonly texts: readonly FlatText[];
  readonly strokes: readonly Stroke[];
  readonly fills: readonly Fill[];
  readonly cuts: readonly Cut[];
};
type Placed = {
  /** Place in the order of painting. */
  readonly order: number;
  /** What the sheet is about, not the page's head, foot or check bars. */
  readonly body: boolean;
};
export type FlatText = Placed & {
  readonly mark: TextMark;
  readonly whole: Box;
  readonly letters: () => readonly Box[];
  readonly extent: Extent;
  readonly names: readonly string[];
};
export type Stroke = Placed & {
  readonly box: Box;
  readonly from: Point;
  readonly to: Point;
  readonly extent: Extent;
  readonly ink: Ink;
  readonly width: number;
  readonly names: readonly string[];
};
export type Fill = Placed & {
  readonly outlines: readonly (readonly Point[])[];
  readonly extent: Extent;
  readonly ink: Ink;
};
/** Where scissors go. `edges`: every line that is cut, drawn or only meant between two corner marks; `inside`: the closed
 *  outline, or the frame that corner marks stand about; `narrow`: least width of the piece. */
export type Cut = {
  readonly edges: readonly (readonly [Point, Point])[];
  readonly outlines: readonly (readonly Point[])[];
  readonly narrow: number;
  /** Straight edges that are drawn as a line. */
  readonly drawn: readonly (readonly [Point, Point])[];
  /** In the page's frame rather than in the sheet's body: a card's own outline. */
  readonly card: boolean;
};

/** Names of groups that belong to the page and not to what the sheet shows. */
const furniture = /^(check-bar|head|foot|title block|furniture|bleed)/;

/** A pen so broad that what it draws is a ground for words rather than a line. */
const BROAD = 1.5;

type Frame = {
  readonly place: (point: Point) => Point;
  readonly turn: number;
  readonly body: boolean;
  readonly names: readonly string[];
  readonly cut?: CutPaths;
};
type CutPaths = {
  readonly paths: { readonly mark: PathMark; readonly lines: readonly (readonly Point[])[] }[];
  readonly card: boolean;
};

export function flatten(drawing: Drawing): Flat {
  const texts: FlatText[] = [];
  const strokes: Stroke[] = [];
  const fills: Fill[] = [];
  const cuts: CutPaths[] = [];
  let order = 0;

  const path = (mark: PathMark, frame: Frame) => {
    const lines = polylines(mark.segments).map((line) => line.map(frame.place));
    const { body } = frame;
    frame.cut?.paths.push({ mark, lines });
    if (mark.fill !== undefined)
      fills.push({ order: order++, body, outlines: lines, extent: extent(lines.flat()), ink: mark.fill });
    if (mark.pen === undefined) return;
    const { width, ink } = mark.pen;
    for (const line of lines)
      for (let at = 1; at < line.length; at++) {
        const [from, to] = [line[at - 1] as Point, line[at] as Point];
        if (Math.hypot(to.x - from.x, to.y - from.y) < 1e-6) continue;
        const box = strokeBox(from, to, width);
        const outline = corners(box);
        const own = extent(outline);
        if (width >= BROAD) fills.push({ order: order++, body, outlines: [outline], extent: own, ink });
        else
          strokes.push({
            order: order++,
            body,
            box,
            from,
            to,
            extent: own,
            ink,
            width,
            names: frame.names,
          });
      }
  };

  const visit = (marks: readonly Mark[], frame: Frame, top: boolean) => {
    for (const mark of marks) {
      if (mark.kind === "path") path(mark, frame);
      else if (mark.kind === "text") {
        const ink = inkOfText(mark, frame.place, frame.turn);
        if (ink)
          texts.push({
            order: order++,
            body: frame.body,
            mark,
            names: frame.names,
            ...ink,
            extent: extent(corners(ink.whole)),
          });
      } else visit(mark.marks, within(frame, mark, top, cuts), false);
    }
  };
  visit(drawing.marks, { place: (point) => point, turn: 0, body: false, names: [] }, true);
  return { texts, strokes, fills, cuts: cuts.flatMap(cutOf) };
}

/** The body is what stands in groups at the top of a drawing, but those of the page itself. */
function within(frame: Frame, { at, turn = 0, name, marks: _ }: GroupMark, top: boolean, cuts: CutPaths[]): Frame {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const cut = name === "cut" ? { paths: [], card: top } : frame.cut;
  if (cut && cut !== frame.cut) cuts.push(cut);
  const ofPage = name !== undefined && (furniture.test(name) || (top && name === "cut"));
  return {
    place: ({ x, y }) => frame.place({ x: at.x + x * cos - y * sin, y: at.y + x * sin + y * cos }),
    turn: frame.turn + turn,
    body: top ? !ofPage : frame.body && !ofPage,
    names: name === undefined ? frame.names : [...frame.names, name],
    ...(cut && { cut }),
  };
}

/** A path as straight lines, within a hundredth of a millimetre; closed ones come back to their first point. */
function polylines(segments: readonly Segment[]): Point[][] {
  const lines: Point[][] = [];
  let line: Point[] | undefined;
  for (const segment of segments) {
    if (segment.to === "close") {
      if (line?.[0]) line.push(line[0]);
      line = undefined;
      continue;
    }
    if (line === undefined || segment.to === "move") {
      line = [];
      lines.push(line);
    }
    if (segment.to === "arc") line.push(...arcPoints(segment));
    else if (segment.to === "curve") line.push(...curvePoints(line.at(-1) ?? segment, segment));
    else line.push({ x: segment.x, y: segment.y });
  }
  return lines;
}

function arcPoints({ centre, radius, start, end }: Extract<Segment, { to: "arc" }>): Point[] {
  const step = 2 * Math.acos(1 - Math.min(1, 0.01 / Math.max(radius, 0.01)));
  const count = Math.max(2, Math.ceil(Math.abs(end - start) / step));
  return Array.from({ length: count + 1 }, (_, index) => {
    const angle = start + ((end - start) * index) / count;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}

function curvePoints(from: Point, { x1, y1, x2, y2, x, y }: Extract<Segment, { to: "curve" }>): Point[] {
  const parts = 12;
  return Array.from({ length: parts }, (_, index) => {
    const t = (index + 1) / parts;
    const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
    return { x: a * from.x + b * x1 + c * x2 + d * x, y: a * from.y + b * y1 + c * y2 + d * y };
  });
}

/** What a group of cut lines cuts out: closed outlines, the first with holes, or what lies between corner marks. Those are short
 *  lines that end before the piece: two that lie in one line mean the edge between them. */
function cutOf({ paths, card }: CutPaths): Cut[] {
  if (paths.length === 0) return [];
  const isClosed = ({ mark }: CutPaths["paths"][number]) => mark.segments.some(({ to }) => to === "close");
  const closed = paths.filter(isClosed);
  const outlines = closed.flatMap(({ lines }) => lines);
  const short = edgesOf(paths.filter((one) => !isClosed(one)).flatMap(({ lines }) => lines));
  const meant = short.flatMap(([a, b], index) =>
    short.slice(index + 1).flatMap(([c, d]): [Point, Point][] => (inLine(a, b, c, d) ? [farthest([a, b, c, d])] : [])),
  );
  const frame = meant.length < 2 ? [] : cornersOf(meant);
  const sides = edgesOf([[...frame, ...frame.slice(0, 1)]]);
  const [first, second] = sides;
  const framed = first && second ? Math.min(span(first), span(second)) : Number.POSITIVE_INFINITY;
  return [
    {
      edges: [...edgesOf(outlines), ...short, ...(sides.length > 0 ? sides : meant)],
      outlines: [...outlines, ...(frame.length > 0 ? [frame] : [])],
      narrow: closed.length > 0 ? Math.min(narrow(closed), framed) : framed,
      drawn: paths
        .filter(({ mark }) => mark.segments.every(({ to }) => to !== "arc" && to !== "curve"))
        .flatMap(({ lines }) => edgesOf(lines)),
      card,
    },
  ];
}

const edgesOf = (lines: readonly (readonly Point[])[]) =>
  lines.flatMap((line) => line.slice(1).map((to, index): readonly [Point, Point] => [line[index] as Point, to]));

const span = ([a, b]: readonly [Point, Point]) => Math.hypot(b.x - a.x, b.y - a.y);

const inLine = (a: Point, b: Point, c: Point, d: Point): boolean => {
  if (span([a, b]) < 1e-6) return false;
  return Math.abs(distance(a, b, c)) < 0.02 && Math.abs(distance(a, b, d)) < 0.02;
};

function farthest(points: readonly Point[]): [Point, Point] {
  let best: [Point, Point] = [points[0] as Point, points[1] as Point];
  for (const a of points) for (const b of points) if (span([a, b]) > span(best)) best = [a, b];
  return best;
}

/** Where the lines of corner marks meet, in order round the piece. */
function cornersOf(lines: readonly (readonly [Point, Point])[]): Point[] {
  const points: Point[] = [];
  for (const [index, [a, b]] of lines.entries())
    for (const [c, d] of lines.slice(index + 1)) {
      const cross = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
      if (Math.abs(cross) < 1e-3 * span([a, b]) * span([c, d])) continue;
      const t = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / cross;
      points.push({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
    }
  const middle = { x: mean(points.map(({ x }) => x)), y: mean(points.map(({ y }) => y)) };
  return points.sort((p, q) => Math.atan2(p.y - middle.y, p.x - middle.x) - Math.atan2(q.y - middle.y, q.x - middle.x));
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Least width of a piece: between the two arcs of a ring, else across the narrowest way of its first outline. */
function narrow(paths: CutPaths["paths"]): number {
  const arcs = paths.flatMap(({ mark }) => mark.segments.flatMap((one) => (one.to === "arc" ? [one] : [])));
  const radii = arcs.map(({ radius }) => radius);
  const [middle] = arcs;
  const ring = arcs.every(({ centre }) => middle && span([centre, middle.centre]) < 0.01);
  if (ring && Math.max(...radii) - Math.min(...radii) > 0.01) return Math.max(...radii) - Math.min(...radii);
  const points = paths[0]?.lines.flat() ?? [];
  let least = Number.POSITIVE_INFINITY;
  for (const [index, point] of points.entries()) {
    const next = points[index + 1];
    if (next === undefined || span([point, next]) < 1) continue;
    const across = points.map((other) => distance(point, next, other));
    least = Math.min(least, Math.max(...across) - Math.min(...across));
  }
  return least;
}

/** Of a point from the line through two others, with its side. */
const distance = (a: Point, b: Point, { x, y }: Point): number =>
  ((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / span([a, b]);
