import type { Mark, PathMark, Point } from "../../drawing/drawing.js";
import { group, line } from "../../drawing/shapes.js";
import { TURN } from "../../quantity/angle.js";
import { markRoom } from "../shared/cut.js";
import { axisLine, cutLine } from "../shared/style.js";

/** Marks run so far, mm, over the edge at which they are read: a cut a little wide or narrow still shows them to the very edge. */
export const bleed = 1;
/** From the paper's corner to the cut mark, mm: clear of what runs over the edge. */
const away = 1.5;
/** Of a square's corner about a ring, as a part of that ring's radius at most: clear of its marks. */
const SQUARE_ARM = 0.3;

/** A ring laid flat, or a part of one: angles clockwise from the top, `first` < `last`. `flip`: the inner edge carries the marks. */
export type RingPart = {
  readonly centre: Point;
  readonly outer: number;
  readonly inner: number;
  readonly first: number;
  readonly last: number;
  readonly whole: boolean;
  readonly flip: boolean;
};

/** What they take outside the paper, mm. */
export const ringCutRoom = ({ whole }: Pick<RingPart, "whole">): number => (whole ? bleed + 0.5 : markRoom);

/** Where scissors go round a ring: along the edge that carries marks by the ends of those, which all stand as far over it, in the corners of
 *  a square or, of a part of one, from where it goes on beyond either end; the other edge, which carries none, on a thin line of its own;
 *  the straight ends by a mark beyond either of their corners. */
export function ringCuts(part: RingPart): Mark[] {
  const { outer, inner, first, last, whole, flip } = part;
  const marked = flip ? inner : outer;
  const plain = flip ? outer : inner;
  return [
    ...(plain > 0 ? [cut([arcOf(part, plain)])] : []),
    ...(whole && !flip ? [squareCorners(part)] : []),
    ...(whole ? [] : [first, last].map((end) => endCut(part, end, end === first ? -1 : 1, marked))),
  ];
}

const cut = (marks: readonly Mark[]): Mark => group({ x: 0, y: 0 }, marks, { name: "cut" });

const polar = ({ centre }: RingPart, angle: number, radius: number): Point => ({
  x: centre.x + radius * Math.sin(angle),
  y: centre.y - radius * Math.cos(angle),
});

function arcOf({ centre, first, last, whole }: RingPart, radius: number): PathMark {
  const [start, end] = whole ? [-Math.PI, Math.PI] : [first, last];
  const arc = { to: "arc", centre, radius, start: start - Math.PI / 2, end: end - Math.PI / 2 } as const;
  return { kind: "path", segments: whole ? [arc, { to: "close" }] : [arc], pen: cutLine };
}

/** The corners of the square that touches a whole ring on four sides: cut out as that first, it is then turned into the scissors along the
 *  ends of its marks. */
function squareCorners({ centre, outer }: RingPart): Mark {
  const arm = Math.min(markRoom, outer * SQUARE_ARM);
  const marks = ([-1, 1] as const).flatMap((right) =>
    ([-1, 1] as const).flatMap((down) => {
      const at = (inX: number, inY: number): Point => ({
        x: centre.x + right * (outer - inX),
        y: centre.y + down * (outer - inY),
      });
      return [line(at(0, 0), at(arm, 0), axisLine), line(at(0, 0), at(0, arm), axisLine)];
    }),
  );
  return cut(marks);
}

/** Marks in line with a straight end, beyond its two corners, and one round which the marked edge would go on. */
function endCut(part: RingPart, angle: number, side: -1 | 1, marked: number): Mark {
  const { outer, inner, first, last } = part;
  const on = (along: number): number => angle + (side * along) / marked;
  const goesOn = side < 0 ? { first: on(markRoom), last: on(away) } : { first: on(away), last: on(markRoom) };
  const inward = Math.min(markRoom, inner - 0.2);
  const open = (TURN - (last - first)) * outer;
  return cut([
    line(polar(part, angle, outer + away), polar(part, angle, outer + markRoom), axisLine),
    ...(inward > away + 0.5
      ? [line(polar(part, angle, inner - away), polar(part, angle, inner - inward), axisLine)]
      : []),
    // Not where it would run into the other end of a ring that is all but closed.
    ...(open > 2 * markRoom + 1 ? [{ ...arcOf({ ...part, ...goesOn }, marked), pen: axisLine }] : []),
  ]);
}
