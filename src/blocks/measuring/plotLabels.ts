import type { Mark, Point } from "../../drawing/drawing.js";
import { text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { size } from "../shared/style.js";

type Dot = Point & { readonly label?: string | undefined };
type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/** Between a letter and whatever is drawn, mm. */
const CLEAR = 0.5;
const CAP = 0.73 * size.source;
/** How far from its dot, and in which directions, above all. */
const distances = [1.4, 2.4, 3.6];
const turns = [-90, 90, -45, -135, 45, 135, 0, 180].map((degrees) => (degrees * Math.PI) / 180);

/** The label of each dot beside it, where it touches no line, dot, edge or other label; a dot without such a place stays without: its
 *  number stands in the words beside the plot. */
export function placeLabels(dots: readonly Dot[], path: readonly Point[], frame: Box, zero: number): Mark[] {
  const placed: Box[] = [];
  return dots.flatMap((dot): Mark[] => {
    const { label } = dot;
    if (label === undefined) return [];
    const width = textWidth(label, size.source, "bold");
    for (const away of distances)
      for (const turn of turns) {
        const middle = {
          x: dot.x + Math.cos(turn) * (away + width / 2),
          y: dot.y + Math.sin(turn) * (away + CAP / 2),
        };
        const box = {
          left: middle.x - width / 2,
          right: middle.x + width / 2,
          top: middle.y - CAP / 2,
          bottom: middle.y + CAP / 2,
        };
        if (!isClear(box, dots, path, frame, zero, placed)) continue;
        placed.push(box);
        return [text(label, { x: middle.x, y: box.bottom }, { size: size.source, anchor: "middle", weight: "bold" })];
      }
    return [];
  });
}

function isClear(
  own: Box,
  dots: readonly Point[],
  path: readonly Point[],
  frame: Box,
  zero: number,
  placed: readonly Box[],
): boolean {
  const box = { left: own.left - CLEAR, right: own.right + CLEAR, top: own.top - CLEAR, bottom: own.bottom + CLEAR };
  if (box.left < frame.left || box.right > frame.right || box.top < frame.top || box.bottom > frame.bottom)
    return false;
  if (box.top < zero && box.bottom > zero) return false;
  const over = (other: Box) =>
    other.left < box.right && other.right > box.left && other.top < box.bottom && other.bottom > box.top;
  if (placed.some(over)) return false;
  if (dots.some(({ x, y }) => over({ left: x - 1, right: x + 1, top: y - 1, bottom: y + 1 }))) return false;
  return !path.some((from, index) => {
    const to = path[index + 1];
    return to !== undefined && crosses(from, to, box);
  });
}

/** Whether a stretch of line has a point in the box: what of it lies between the sides, level by level. */
function crosses(from: Point, to: Point, box: Box): boolean {
  let [start, end] = [0, 1];
  for (const [a, b, least, most] of [
    [from.x, to.x, box.left, box.right],
    [from.y, to.y, box.top, box.bottom],
  ] as const) {
    if (a === b) {
      if (a < least || a > most) return false;
      continue;
    }
    const [near, far] = [(least - a) / (b - a), (most - a) / (b - a)].sort((p, q) => p - q) as [number, number];
    start = Math.max(start, near);
    end = Math.min(end, far);
  }
  return start <= end;
}
