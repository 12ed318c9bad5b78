import { DxfWriter, LWPolylineFlags, point2d, point3d, Units } from "@tarikjabiri/dxf";
import type { GroupMark, Mark, PathMark, Point, Segment } from "../drawing/drawing.js";
import { mark as ours } from "../drawing/ours.js";
import type { Page, Print } from "../drawing/page.js";
import type { FontBytes } from "./fonts.js";
import { outlined } from "./outlines.js";

/** One page as DXF, millimetres, y up, origin at the page's lower left corner: lines and true arcs on layers named after
 *  what they are, letters as outlines, nothing filled. The printer's correction is not for a laser, so none is made.
 *  `fonts`: TrueType. */
export function renderDxf(page: Page, print: Print, fonts: FontBytes): string {
  const [drawn] = outlined({ ...print, pages: [page] }, fonts).pages;
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  const layers = new Set<string>();
  const { height, marks } = drawn?.drawing ?? page.drawing;
  const place: Place = { x: 0, y: 0, turn: 0 };
  const draw = (mark: Mark, place: Place, names: readonly string[]): void => {
    if (mark.kind === "group") {
      const inner = within(place, mark);
      const named = mark.name === undefined ? names : [...names, mark.name];
      for (const one of mark.marks) draw(one, inner, named);
    } else if (mark.kind === "path" && mark.pen) {
      const layer = layerName(names);
      if (!layers.has(layer)) {
        writer.addLayer(layer, layerColour(layer), "Continuous");
        layers.add(layer);
      }
      writer.setCurrentLayerName(layer);
      path(mark, place, height, writer);
    }
  };
  for (const mark of marks) draw(mark, place, []);
  return `999\n${ours}\n${writer.stringify().replace(/^-?\d+\.\d{10,}(e-\d+)?$|^-?\d+e-\d+$/gm, rounded)}`;
}

/** To a millionth of a micrometre: the last binary digits of sines differ between one JavaScript engine and the next, and the same
 *  machine shall give the same file. */
const rounded = (number: string): string => String(Number(Number(number).toFixed(9)) || 0);

type Place = { readonly x: number; readonly y: number; readonly turn: number };

const within = (place: Place, { at, turn = 0 }: GroupMark): Place => ({
  ...onPage(place, at),
  turn: place.turn + turn,
});

function onPage({ x, y, turn }: Place, point: Point): Point {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return { x: x + point.x * cos - point.y * sin, y: y + point.x * sin + point.y * cos };
}

/** "GRADUATIONS_RANK_1", "NUMBERS", "CUT"; what has no name of its own lies on "DRAWING". */
export function layerName(names: readonly string[]): string {
  const last = names.at(-1);
  if (last === undefined) return "DRAWING";
  const before = names.at(-2);
  const name = /^rank \d$/.test(last) && before ? `${before} ${last}` : last;
  return name.toUpperCase().replace(/[^A-Z0-9]+/g, "_");
}

/** Colour numbers of the DXF format: 1 red for what is cut through, 7 black or white for the rest. */
const layerColour = (layer: string): number => (layer === "CUT" ? 1 : layer.startsWith("GRADUATIONS") ? 5 : 7);

/** Straight runs as lines or polylines, arcs as arcs, curves as polylines within a thousandth of a millimetre. */
function path({ segments }: PathMark, place: Place, height: number, writer: DxfWriter): void {
  const toDxf = (point: Point): Point => {
    const { x, y } = onPage(place, point);
    return { x, y: height - y };
  };
  let run: Point[] = [];
  let first: Point | undefined;
  let here: Point | undefined;
  let straight = true;
  const flush = (closed: boolean) => {
    const points = run.map(toDxf);
    run = [];
    if (points.length < 2) return;
    const [a, b] = points as [Point, Point];
    if (points.length === 2 && !closed) writer.addLine(point3d(a.x, a.y), point3d(b.x, b.y));
    else
      writer.addLWPolyline(
        points.map(({ x, y }) => ({ point: point2d(x, y) })),
        { flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
      );
  };
  for (const segment of segments) {
    if (segment.to === "move") {
      flush(false);
      [run, first, here, straight] = [[segment], segment, segment, true];
    } else if (segment.to === "line") {
      run.push(segment);
      here = segment;
    } else if (segment.to === "curve") {
      const points = here === undefined ? [] : flattened(here, segment);
      run.push(...points);
      here = segment;
    } else if (segment.to === "arc") {
      const start = polar(segment, segment.start);
      if (here !== undefined && apart(here, start) > 1e-9) run.push(start);
      flush(false);
      first ??= start;
      here = polar(segment, segment.end);
      run = [here];
      straight = false;
      arc(segment, toDxf(segment.centre), place.turn, writer);
    } else {
      if (straight) flush(true);
      else {
        if (first !== undefined && here !== undefined && apart(first, here) > 1e-9) run.push(first);
        flush(false);
      }
      here = first;
      run = here ? [here] : [];
    }
  }
  flush(false);
}

const polar = ({ centre, radius }: Extract<Segment, { to: "arc" }>, angle: number): Point => ({
  x: centre.x + radius * Math.cos(angle),
  y: centre.y + radius * Math.sin(angle),
});

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** DXF arcs run counter-clockwise with y up: from what is our end, since our angles run clockwise with y down. */
function arc({ radius, start, end }: Extract<Segment, { to: "arc" }>, centre: Point, turn: number, writer: DxfWriter) {
  const middle = point3d(centre.x, centre.y);
  if (Math.abs(end - start) > 2 * Math.PI - 1e-9) {
    writer.addCircle(middle, radius);
    return;
  }
  const [low, high] = [Math.min(start, end) + turn, Math.max(start, end) + turn];
  const degrees = (angle: number) => ((((-angle * 180) / Math.PI) % 360) + 360) % 360;
  writer.addArc(middle, radius, degrees(high), degrees(low));
}

/** Points after the first along a cubic curve, dense enough that letters of a few millimetres stay within 0.001 mm. */
function flattened(from: Point, curve: Extract<Segment, { to: "curve" }>): Point[] {
  const size =
    apart(from, { x: curve.x1, y: curve.y1 }) +
    apart({ x: curve.x1, y: curve.y1 }, { x: curve.x2, y: curve.y2 }) +
    apart({ x: curve.x2, y: curve.y2 }, curve);
  // A bow of length s in n chords is off by less than about s / (8 n²).
  const steps = Math.max(2, Math.ceil(Math.sqrt(size / 0.008)));
  return Array.from({ length: steps }, (_, index) => {
    const t = (index + 1) / steps;
    const u = 1 - t;
    const mix = (a: number, b: number, c: number, d: number) =>
      u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
    return { x: mix(from.x, curve.x1, curve.x2, curve.x), y: mix(from.y, curve.y1, curve.y2, curve.y) };
  });
}
