import type { Mark } from "../../drawing/drawing.js";
import { circle, group, line } from "../../drawing/shapes.js";
import { axisLine, cutLine } from "./style.js";

/** From the corner to the mark, and the length of one; mm. */
const away = 1.5;
const long = 4;
/** What corner marks take outside a piece. */
export const markRoom = away + long;

export type Joined = { readonly above?: boolean; readonly below?: boolean };

export type Hole = { readonly x: number; readonly y: number; readonly diameter: number };

/** Where a straight-sided piece is cut out: eight marks outside its corners, never a line along an edge. A knife laid from mark to
 *  mark cuts it. `joined`: to a piece like it above or below, with one cut for both, which the upper one marks. */
export function cornerMarks(at: { x: number; y: number }, width: number, height: number, joined: Joined = {}): Mark {
  const [right, bottom] = [at.x + width, at.y + height];
  const marks = ([at.x, right] as const).flatMap((x) =>
    ([at.y, bottom] as const).flatMap((y) => {
      const [outX, outY] = [x === at.x ? -1 : 1, y === at.y ? -1 : 1];
      const level = line({ x: x + outX * away, y }, { x: x + outX * (away + long), y }, axisLine);
      const upright = line({ x, y: y + outY * away }, { x, y: y + outY * (away + long) }, axisLine);
      if (outY < 0) return joined.above ? [] : [level, upright];
      return joined.below ? [level] : [level, upright];
    }),
  );
  return group({ x: 0, y: 0 }, marks, { name: "cut" });
}

/** Holes to cut round, each on a thin line of its own. */
export const holeCuts = (at: { x: number; y: number }, holes: readonly Hole[]): Mark[] =>
  holes.length === 0
    ? []
    : [
        group(
          { x: 0, y: 0 },
          holes.map(({ x, y, diameter }) =>
            circle({ x: at.x + x, y: at.y + y }, diameter / 2, { pen: cutLine, fill: "white" }),
          ),
          { name: "cut" },
        ),
      ];

/** Rounded corners, each on a thin line of its own: no knife laid on marks finds them. */
export function cornerCuts(at: { x: number; y: number }, width: number, height: number, radius: number): Mark[] {
  if (radius <= 0) return [];
  const quarter = Math.PI / 2;
  const [left, right] = [at.x + radius, at.x + width - radius];
  const [top, bottom] = [at.y + radius, at.y + height - radius];
  const bends = [
    { centre: { x: right, y: top }, start: -quarter },
    { centre: { x: right, y: bottom }, start: 0 },
    { centre: { x: left, y: bottom }, start: quarter },
    { centre: { x: left, y: top }, start: 2 * quarter },
  ];
  return [
    group(
      { x: 0, y: 0 },
      bends.map(({ centre, start }) => ({
        kind: "path" as const,
        segments: [{ to: "arc" as const, centre, radius, start, end: start + quarter }],
        pen: cutLine,
      })),
      { name: "corners" },
    ),
  ];
}
