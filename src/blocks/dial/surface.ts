import type { Development } from "../../dial/development.js";
import type { Growth } from "../../dial/growth.js";
import type { Mark, PathMark, Pen, Point, Segment } from "../../drawing/drawing.js";
import { line, rectangle } from "../../drawing/shapes.js";
import { TURN } from "../../quantity/angle.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { cornerMarks, markRoom } from "../shared/cut.js";
import { ringCutRoom, ringCuts } from "./cutMarks.js";

/** Flat paper on which a scale lies, or a part of it. `along` is the place in the scale's own measure (radians of the
 *  wheel, mm of a straight scale); `across` is mm from the edge where it is read. */
export type Surface = {
  readonly width: number;
  readonly height: number;
  /** Room across the scale, mm. */
  readonly band: number;
  readonly at: (along: number, across: number) => Point;
  /** Clockwise turn of text that stands upright for who reads it there. */
  readonly turn: (along: number) => number;
  /** Length on paper, mm, of the whole part, `across` from the reading edge. */
  readonly length: (across: number) => number;
  /** A line along the scale from one end to the other, and so many mm over both. */
  readonly rule: (across: number, pen: Pen, over?: number) => PathMark;
  /** The outline, for what follows a line and cuts it: a laser. */
  readonly outline: (pen: Pen) => Mark[];
  /** Where scissors and knife go, outside the paper or on an edge that carries no marks; the tab for glue is cut with it. */
  readonly cuts: () => Mark[];
  /** What the cut marks take outside the paper, mm. */
  readonly cutRoom: number;
  /** Middle of a whole ring, where a centre cross goes. */
  readonly centre?: Point;
  /** Inner radius of a ring or a part of one whose edge is read from outside, mm. */
  readonly hole?: number;
};

/** Where the index stands, seen by the operator: numbers are upright there. */
export type IndexPlace = "top" | "right" | "bottom" | "left";

type Part = { readonly from: number; readonly to: number; readonly growth: Growth; readonly tab?: number };

/** A straight strip, `scale` mm to one of the scale's measure. With `flip` the reading edge is the lower one. */
export function stripSurface(scale: number, band: number, part: Part, flip = false): Surface {
  const { from, to, growth, tab = 0 } = part;
  const length = (to - from) * scale;
  const x = (along: number) => (growth === "leftward" ? (to - along) * scale : (along - from) * scale);
  const y = (across: number) => (flip ? band - across : across);
  return {
    width: length + tab,
    height: band,
    band,
    at: (along, across) => ({ x: x(along), y: y(across) }),
    turn: () => 0,
    length: () => length,
    rule: (across, pen, over = 0) => line({ x: -over, y: y(across) }, { x: length + over, y: y(across) }, pen),
    outline: (pen) => [rectangle({ x: 0, y: 0 }, length + tab, band, { pen })],
    cuts: () => [cornerMarks({ x: 0, y: 0 }, length + tab, band)],
    cutRoom: markRoom,
  };
}

const upAt: Readonly<Record<IndexPlace, number>> = { top: 0, right: Math.PI / 2, bottom: Math.PI, left: -Math.PI / 2 };

/** A ring or a part of one, its reading edge the outer one, with `flip` the inner. The middle of the part is uppermost
 *  (or lowermost, as an arc lies before who stands below it) and `along` grows to the left there where `growth` is
 *  leftward. `inner` may be 0.
 *  @param perAlong paper's angle for one of the scale's measure */
export function ringSurface(
  ring: { readonly outer: number; readonly inner: number },
  perAlong: number,
  part: Part,
  options: { readonly index?: IndexPlace; readonly flip?: boolean; readonly lowermost?: boolean } = {},
): Surface {
  const { outer, inner } = ring;
  const { from, to, growth, tab = 0 } = part;
  const base = options.lowermost ? Math.PI : 0;
  const sign = (growth === "leftward") === (options.lowermost ?? false) ? 1 : -1;
  const span = (to - from) * perAlong;
  const whole = span > TURN - 1e-9;
  const middle = whole ? 0 : (from + to) / 2;
  /** Paper's angle clockwise from the top. */
  const angle = (along: number) => base + sign * (along - middle) * perAlong;
  const radius = (across: number) => (options.flip ? inner + across : outer - across);
  const tabAngle = tab / outer;
  const [start, end] = whole ? [-Math.PI, Math.PI] : [base - span / 2, base + span / 2 + tabAngle];
  const box = bounds(outer, inner, start, end, whole);
  const centre = { x: -box.left, y: -box.top };
  const polar = (theta: number, r: number): Point => ({
    x: centre.x + r * Math.sin(theta),
    y: centre.y - r * Math.cos(theta),
  });
  const arc = (r: number, a: number, b: number): Segment => ({
    to: "arc",
    centre,
    radius: r,
    start: a - Math.PI / 2,
    end: b - Math.PI / 2,
  });
  const [first, last] = [base - span / 2, base + span / 2];
  const laid = { centre, outer, inner, first, last: whole ? last : end, whole, flip: options.flip ?? false };
  return {
    width: box.right - box.left,
    height: box.bottom - box.top,
    band: outer - inner,
    at: (along, across) => polar(angle(along), radius(across)),
    turn: (along) => angle(along) - upAt[options.index ?? (options.lowermost ? "bottom" : "top")],
    length: (across) => radius(across) * Math.min(span, TURN),
    rule: (across, pen, over = 0) => {
      const [r, more] = [radius(across), over / radius(across)];
      const segments: Segment[] = whole
        ? [arc(r, -Math.PI, Math.PI), { to: "close" }]
        : [arc(r, first - more, last + more)];
      return { kind: "path", segments, pen };
    },
    outline: (pen) => {
      if (whole)
        return [outer, inner]
          .filter((r) => r > 0)
          .map((r) => ({ kind: "path", segments: [arc(r, -Math.PI, Math.PI), { to: "close" }], pen }) as const);
      const segments: Segment[] = [arc(outer, first, end), arc(inner, end, first), { to: "close" }];
      return [{ kind: "path", segments, pen }];
    },
    cuts: () => ringCuts(laid),
    cutRoom: ringCutRoom(laid),
    ...(whole && { centre }),
    ...(!options.flip && { hole: inner }),
  };
}

/** Box round a ring's part whose centre is the origin; angles clockwise from the top. */
function bounds(outer: number, inner: number, start: number, end: number, whole: boolean) {
  if (whole) return { left: -outer, right: outer, top: -outer, bottom: outer };
  const quarter = Math.PI / 2;
  const angles = [start, end];
  for (let k = Math.ceil(start / quarter); k * quarter <= end; k++) angles.push(k * quarter);
  const points = angles.flatMap((a) => [outer, inner].map((r) => ({ x: r * Math.sin(a), y: -r * Math.cos(a) })));
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: smallestOf(xs), right: largestOf(xs), top: smallestOf(ys), bottom: largestOf(ys) };
}

/** Surface of a dial's part from one angle of the wheel to another. */
export function dialSurface(
  flat: Development,
  part: Part,
  options: { readonly index?: IndexPlace; readonly flip?: boolean } = {},
): Surface {
  const turn = TURN;
  if (flat.kind === "strip") return stripSurface(flat.length / turn, flat.width, part, options.flip);
  return ringSurface(flat, flat.sweep / turn, part, options);
}
