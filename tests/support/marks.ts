import type { Mark, Point, TextMark } from "../../src/drawing/drawing.js";
import { textWidth } from "../../src/drawing/text.js";

/** A point of a mark as it lies on the page. */
type ToPage = (point: Point) => Point;

/** Every mark of a page with its place, groups resolved. */
export function walk(
  marks: readonly Mark[],
  visit: (mark: Exclude<Mark, { kind: "group" }>, toPage: ToPage, names: readonly string[]) => void,
  toPage: ToPage = (point) => point,
  names: readonly string[] = [],
): void {
  for (const mark of marks) {
    if (mark.kind !== "group") visit(mark, toPage, names);
    else {
      const [cos, sin] = [Math.cos(mark.turn ?? 0), Math.sin(mark.turn ?? 0)];
      walk(
        mark.marks,
        visit,
        ({ x, y }) => toPage({ x: mark.at.x + x * cos - y * sin, y: mark.at.y + x * sin + y * cos }),
        mark.name === undefined ? names : [...names, mark.name],
      );
    }
  }
}

/** The four corners of a line of text, ascent and descent included. */
export function textCorners(mark: TextMark): Point[] {
  const width = textWidth(mark.text, mark.size, mark.weight);
  const left = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? -width / 2 : -width;
  const [cos, sin] = [Math.cos(mark.turn ?? 0), Math.sin(mark.turn ?? 0)];
  return [
    [left, -0.78],
    [left + width, -0.78],
    [left + width, 0.22],
    [left, 0.22],
  ].map(([x = 0, rise = 0]) => {
    const y = rise * mark.size;
    return { x: mark.at.x + x * cos - y * sin, y: mark.at.y + x * sin + y * cos };
  });
}

/** Points that bound a mark: its path's ends and control points, arcs by steps of a degree, text by its box. */
export function outline(mark: Exclude<Mark, { kind: "group" }>): Point[] {
  if (mark.kind === "text") return textCorners(mark);
  return mark.segments.flatMap((segment): Point[] => {
    if (segment.to === "close") return [];
    if (segment.to === "curve")
      return [
        { x: segment.x1, y: segment.y1 },
        { x: segment.x2, y: segment.y2 },
        { x: segment.x, y: segment.y },
      ];
    if (segment.to !== "arc") return [{ x: segment.x, y: segment.y }];
    const steps = Math.max(2, Math.ceil((Math.abs(segment.end - segment.start) * 180) / Math.PI));
    return Array.from({ length: steps + 1 }, (_, index) => {
      const angle = segment.start + ((segment.end - segment.start) * index) / steps;
      return {
        x: segment.centre.x + segment.radius * Math.cos(angle),
        y: segment.centre.y + segment.radius * Math.sin(angle),
      };
    });
  });
}
