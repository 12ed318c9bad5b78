import type { Segment } from "../drawing/drawing.js";

type Arc = Extract<Segment, { to: "arc" }>;
type Curve = Extract<Segment, { to: "curve" }>;

/** An arc as cubic curves of at most 22.5°, each within 2·10⁻⁸ of the radius, for formats that know no arcs. */
export function arcCurves({ centre, radius, start, end }: Arc): Curve[] {
  const count = Math.max(1, Math.ceil(Math.abs(end - start) / (Math.PI / 8)));
  const step = (end - start) / count;
  const reach = (4 / 3) * Math.tan(step / 4) * radius;
  return Array.from({ length: count }, (_, index) => {
    const from = start + index * step;
    const to = from + step;
    const [x0, y0] = onArc(centre, radius, from);
    const [x, y] = onArc(centre, radius, to);
    return {
      to: "curve",
      x1: x0 - reach * Math.sin(from),
      y1: y0 + reach * Math.cos(from),
      x2: x + reach * Math.sin(to),
      y2: y - reach * Math.cos(to),
      x,
      y,
    };
  });
}

export const onArc = (centre: { x: number; y: number }, radius: number, angle: number): [number, number] => [
  centre.x + radius * Math.cos(angle),
  centre.y + radius * Math.sin(angle),
];
