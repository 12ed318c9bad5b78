import type { Point } from "../../src/drawing/drawing.js";

/** A rectangle that may stand askew: its middle, half its sides, and the angle of the first of them. */
export type Box = {
  readonly x: number;
  readonly y: number;
  readonly along: number;
  readonly across: number;
  readonly turn: number;
};

export const corners = ({ x, y, along, across, turn }: Box): Point[] => {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [
    [-along, -across],
    [along, -across],
    [along, across],
    [-along, across],
  ].map(([u = 0, v = 0]) => ({ x: x + u * cos - v * sin, y: y + u * sin + v * cos }));
};

/** How far apart two boxes are that do not overlap, at least, mm; 0 where they do. */
export const apart = (a: Box, b: Box): number =>
  Math.max(
    0,
    ...[a.turn, a.turn + Math.PI / 2, b.turn, b.turn + Math.PI / 2].map(
      (turn) => Math.abs((b.x - a.x) * Math.cos(turn) + (b.y - a.y) * Math.sin(turn)) - reach(a, turn) - reach(b, turn),
    ),
  );

/** How deep two boxes lie in each other: by so much one would have to be moved to come clear. Zero or less: they are clear. */
export function depth(a: Box, b: Box): number {
  let least = Number.POSITIVE_INFINITY;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const rounds = a.along + a.across + b.along + b.across;
  if (dx > rounds || dx < -rounds || dy > rounds || dy < -rounds) return -1;
  for (const turn of [a.turn, a.turn + Math.PI / 2, b.turn, b.turn + Math.PI / 2]) {
    const apart = Math.abs(dx * Math.cos(turn) + dy * Math.sin(turn));
    const overlap = reach(a, turn) + reach(b, turn) - apart;
    if (overlap <= 0) return overlap;
    least = Math.min(least, overlap);
  }
  return least;
}

/** Half of what a box measures in a direction. */
const reach = ({ along, across, turn }: Box, direction: number): number =>
  along * Math.abs(Math.cos(direction - turn)) + across * Math.abs(Math.sin(direction - turn));

/** A straight stroke as the box that its pen blackens; its ends are cut square, as a PDF's are. */
export const strokeBox = (from: Point, to: Point, pen: number): Box => ({
  x: (from.x + to.x) / 2,
  y: (from.y + to.y) / 2,
  along: Math.hypot(to.x - from.x, to.y - from.y) / 2,
  across: pen / 2,
  turn: Math.atan2(to.y - from.y, to.x - from.x),
});

export type Extent = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

export function extent(points: readonly Point[]): Extent {
  let [left, right, top, bottom] = [
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, right, top, bottom };
}

/** Whether a point lies in closed outlines, by the even-odd rule. */
export function inside(outlines: readonly (readonly Point[])[], { x, y }: Point): boolean {
  let within = false;
  for (const outline of outlines)
    for (let at = 0, before = outline.length - 1; at < outline.length; before = at++) {
      const [p, q] = [outline[at] as Point, outline[before] as Point];
      if (p.y > y !== q.y > y && x < ((q.x - p.x) * (y - p.y)) / (q.y - p.y) + p.x) within = !within;
    }
  return within;
}

/** Things found again by where they lie: each is entered under every square of the page that its extent touches. */
export class Squares<T> {
  private readonly squares = new Map<number, T[]>();

  add(item: T, where: Extent): void {
    for (const square of this.touched(where)) {
      const list = this.squares.get(square);
      if (list === undefined) this.squares.set(square, [item]);
      else list.push(item);
    }
  }

  near(where: Extent): Set<T> {
    const found = new Set<T>();
    for (const square of this.touched(where)) for (const item of this.squares.get(square) ?? []) found.add(item);
    return found;
  }

  private *touched({ left, right, top, bottom }: Extent): Generator<number> {
    const side = 6;
    for (let x = Math.floor(left / side); x <= Math.floor(right / side); x++)
      for (let y = Math.floor(top / side); y <= Math.floor(bottom / side); y++) yield x * 100_003 + y;
  }
}
