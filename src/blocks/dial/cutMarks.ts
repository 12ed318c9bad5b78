import type { Mark, Point } from "../../drawing/drawing.js";
import { group, line } from "../../drawing/shapes.js";
import { TURN } from "../../quantity/angle.js";
import { markRoom } from "../shared/cut.js";
import { axisLine, cutLine } from "../shared/style.js";

/** Marks run so far, mm, over the edge at which they are read: a cut a little wide or narrow still shows them to the very edge. */
export const bleed = 1;
/** From the paper's corner to the cut mark, mm: clear of what runs over the edge. */
const away = 1.5;
/** From the circle to the marks that touch it in line: clear of the same, mm. */
const touchingAway = 2.2;
/** Of a mark that touches an arc, mm. */
const touching = 2.5;

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
export const ringCutRoom = ({ whole }: Pick<RingPart, "whole">): number => (whole ? 4 : markRoom);

/** Where scissors go round a ring: the edge that carries marks by short straight lines outside it, each pair of which touches it between
 *  the two; the other edge, which carries none, on a thin line of its own; the straight ends by a mark beyond either of their corners. */
export function ringCuts(part: RingPart): Mark[] {
  const { outer, inner, first, last, whole, flip } = part;
  const marked = flip ? inner : outer;
  const plain = flip ? outer : inner;
  return [
    ...(plain > 0 ? [cut([arcOf(part, plain)])] : []),
    ...(flip ? [] : tangentsOf(part, marked)),
    ...(whole ? [] : [first, last].map((end) => endCut(part, end, end === first ? -1 : 1, marked))),
  ];
}

const cut = (marks: readonly Mark[]): Mark => group({ x: 0, y: 0 }, marks, { name: "cut" });

const polar = ({ centre }: RingPart, angle: number, radius: number): Point => ({
  x: centre.x + radius * Math.sin(angle),
  y: centre.y - radius * Math.cos(angle),
});

function arcOf({ centre, first, last, whole }: RingPart, radius: number): Mark {
  const [start, end] = whole ? [-Math.PI, Math.PI] : [first, last];
  const arc = { to: "arc", centre, radius, start: start - Math.PI / 2, end: end - Math.PI / 2 } as const;
  return { kind: "path", segments: whole ? [arc, { to: "close" }] : [arc], pen: cutLine };
}

/** Pairs in one straight line that touches the circle half way between them. */
function tangentsOf(part: RingPart, radius: number): Mark[] {
  const near = Math.sqrt((radius + touchingAway) ** 2 - radius ** 2);
  const span = part.last - part.first;
  const step = Math.max(TURN / 12, 1.15 * Math.atan((near + touching) / radius));
  const count = Math.floor(span / step + 1e-9);
  const angles = part.whole
    ? Array.from({ length: 12 }, (_, index) => (index * TURN) / 12)
    : Array.from({ length: Math.max(0, count - 1) }, (_, index) => part.first + ((index + 1) * span) / count);
  return angles.map((angle) =>
    cut(
      [-1, 1].map((side) => {
        const at = (along: number): Point => {
          const { x, y } = polar(part, angle, radius);
          return { x: x + side * along * Math.cos(angle), y: y + side * along * Math.sin(angle) };
        };
        return line(at(near), at(near + touching), axisLine);
      }),
    ),
  );
}

/** Marks in line with a straight end, beyond its two corners, and one that goes on where the marked edge ends. */
function endCut(part: RingPart, angle: number, side: -1 | 1, marked: number): Mark {
  const { outer, inner, first, last } = part;
  const corner = polar(part, angle, marked);
  const on = (along: number): Point => ({
    x: corner.x + side * along * Math.cos(angle),
    y: corner.y + side * along * Math.sin(angle),
  });
  const inward = Math.min(markRoom, inner - 0.2);
  const open = (TURN - (last - first)) * outer;
  return cut([
    line(polar(part, angle, outer + away), polar(part, angle, outer + markRoom), axisLine),
    ...(inward > away + 0.5
      ? [line(polar(part, angle, inner - away), polar(part, angle, inner - inward), axisLine)]
      : []),
    // Not where it would run into the other end of a ring that is all but closed.
    ...(open > 2 * markRoom + 1 ? [line(on(away), on(markRoom), axisLine)] : []),
  ]);
}
