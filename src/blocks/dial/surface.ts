import type { Development } from "../../dial/development.js";
import type { Growth } from "../../dial/growth.js";
import type { Mark, PathMark, Pen, Point, Segment } from "../../drawing/drawing.js";
import { line, polyline } from "../../drawing/shapes.js";
import { TURN } from "../../quantity/angle.js";

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
  /** A line along the scale from one end to the other. */
  readonly rule: (across: number, pen: Pen) => PathMark;
  /** The outline, with a tab for glue of so many mm beyond one end. */
  readonly outline: (pen: Pen, tab?: number) => Mark[];
  /** Middle of a whole ring, where a centre cross goes. */
  readonly centre?: Point;
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
    rule: (across, pen) => line({ x: 0, y: y(across) }, { x: length, y: y(across) }, pen),
    outline: (pen) => [
      polyline(
        tab > 0
          ? [
              { x: 0, y: 0 },
              { x: length, y: 0 },
              { x: length + tab, y: band * 0.12 },
              { x: length + tab, y: band * 0.88 },
              { x: length, y: band },
              { x: 0, y: band },
            ]
          : [
              { x: 0, y: 0 },
              { x: length, y: 0 },
              { x: length, y: band },
              { x: 0, y: band },
            ],
        { pen },
        true,
      ),
    ],
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
  return {
    width: box.right - box.left,
    height: box.bottom - box.top,
    band: outer - inner,
    at: (along, across) => polar(angle(along), radius(across)),
    turn: (along) => angle(along) - upAt[options.index ?? (options.lowermost ? "bottom" : "top")],
    length: (across) => radius(across) * Math.min(span, TURN),
    rule: (across, pen) => ({
      kind: "path",
      segments: whole ? [arc(radius(across), -Math.PI, Math.PI), { to: "close" }] : [arc(radius(across), first, last)],
      pen,
    }),
    outline: (pen) => {
      if (whole)
        return [outer, inner]
          .filter((r) => r > 0)
          .map((r) => ({ kind: "path", segments: [arc(r, -Math.PI, Math.PI), { to: "close" }], pen }) as const);
      const [low, high] = [inner + (outer - inner) * 0.12, outer - (outer - inner) * 0.12];
      const edge: Segment[] =
        tab > 0 ? [arc(high, last + tabAngle * 0.2, end), arc(low, end, last + tabAngle * 0.2)] : [];
      const segments: Segment[] = [arc(outer, first, last), ...edge, arc(inner, last, first), { to: "close" }];
      return [{ kind: "path", segments, pen }];
    },
    ...(whole && { centre }),
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
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
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
