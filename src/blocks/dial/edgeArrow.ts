import type { Mark, Point } from "../../drawing/drawing.js";
import { line } from "../../drawing/shapes.js";
import { objectLine } from "../shared/style.js";
import type { Surface } from "./surface.js";

/** Between a piece and the arrow beside it, mm. */
const BESIDE = 3.5;
/** The other end of a ring that is all but closed is nearer than this: no room between them, mm. */
const OPEN = 10;

/** An arrow outside the paper, towards the edge that meets the index: beside its left end, or in the hole of a ring that is all but closed.
 *  A whole ring needs none, whose marks stand at its rim: alone in the hole it is taken for the index. `from`, `to`: of the piece, in the
 *  scale's own measure. */
export function edgeArrow(surface: Surface, from: number, to: number): Mark[] {
  if (surface.centre !== undefined) return [];
  const { band } = surface;
  const perLength = (to - from) / surface.length(0);
  const ends = [from - BESIDE * perLength, to + BESIDE * perLength] as const;
  const [one, other] = [surface.at(from, 0), surface.at(to, 0)];
  if (surface.hole !== undefined && Math.hypot(one.x - other.x, one.y - other.y) < OPEN) {
    const long = Math.min(6, surface.hole - 4);
    // Clear of the cross in the middle, and of words that may stand upright there.
    const at = from + (to - from) * 0.4;
    return long < 2 ? [] : arrow(surface.at(at, band + 1.2 + long), surface.at(at, band + 1.2));
  }
  const beside = one.x < other.x ? ends[0] : ends[1];
  return arrow(surface.at(beside, band - 0.9), surface.at(beside, 0.9));
}

/** A stroke with a filled head. */
export function arrow(tail: Point, tip: Point, head = 1.8): Mark[] {
  const length = Math.hypot(tip.x - tail.x, tip.y - tail.y);
  const [u, v] = [(tip.x - tail.x) / length, (tip.y - tail.y) / length];
  const long = Math.min(head, length);
  const foot = { x: tip.x - u * long, y: tip.y - v * long };
  const half = long * 0.35;
  return [
    line(tail, foot, objectLine),
    {
      kind: "path",
      segments: [
        { to: "move", x: tip.x, y: tip.y },
        { to: "line", x: foot.x - v * half, y: foot.y + u * half },
        { to: "line", x: foot.x + v * half, y: foot.y - u * half },
        { to: "close" },
      ],
      fill: "black",
    },
  ];
}
