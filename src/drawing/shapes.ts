import type { Anchor, GroupMark, Ink, Mark, PathMark, Pen, Point, Segment, TextMark, Weight } from "./drawing.js";

/** What a closed shape is drawn with. */
export type Look = { readonly pen?: Pen; readonly fill?: Ink };

export const line = (from: Point, to: Point, pen: Pen): PathMark => polyline([from, to], { pen });

export function polyline(points: readonly Point[], look: Look, closed = false): PathMark {
  const segments: Segment[] = points.map(({ x, y }, index) => ({ to: index === 0 ? "move" : "line", x, y }));
  return { kind: "path", segments: closed ? [...segments, { to: "close" }] : segments, ...look };
}

/** With a `corner` radius, the corners are quarter circles. */
export function rectangle(at: Point, width: number, height: number, look: Look, corner = 0): PathMark {
  const { x, y } = at;
  const [right, bottom] = [x + width, y + height];
  if (corner <= 0) return polyline([at, { x: right, y }, { x: right, y: bottom }, { x, y: bottom }], look, true);
  const quarter = Math.PI / 2;
  const bend = (cx: number, cy: number, start: number): Segment => ({
    to: "arc",
    centre: { x: cx, y: cy },
    radius: corner,
    start,
    end: start + quarter,
  });
  return {
    kind: "path",
    segments: [
      bend(right - corner, y + corner, -quarter),
      bend(right - corner, bottom - corner, 0),
      bend(x + corner, bottom - corner, quarter),
      bend(x + corner, y + corner, 2 * quarter),
      { to: "close" },
    ],
    ...look,
  };
}

export const circle = (centre: Point, radius: number, look: Look): PathMark => ({
  kind: "path",
  segments: [{ to: "arc", centre, radius, start: 0, end: 2 * Math.PI }, { to: "close" }],
  ...look,
});

export type TextStyle = {
  readonly size: number;
  readonly anchor?: Anchor;
  readonly weight?: Weight;
  readonly ink?: Ink;
  readonly turn?: number;
};

export const text = (words: string, at: Point, style: TextStyle): TextMark => ({
  kind: "text",
  at,
  text: words,
  size: style.size,
  anchor: style.anchor ?? "start",
  weight: style.weight ?? "regular",
  ink: style.ink ?? "black",
  ...(style.turn !== undefined && { turn: style.turn }),
});

export const group = (
  at: Point,
  marks: readonly Mark[],
  options: { name?: string; turn?: number } = {},
): GroupMark => ({ kind: "group", at, marks, ...options });
