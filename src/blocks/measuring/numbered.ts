import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { circle, text } from "../../drawing/shapes.js";
import { wrapText } from "../../drawing/text.js";
import { leading, rowLine, size } from "../shared/style.js";

const RADIUS = 2.3;

/** A number in a circle, as it stands in a picture and before the words that belong to it. */
export const numberSign = (number: number, at: Point): Mark[] => [
  circle(at, RADIUS, { pen: rowLine, fill: "white" }),
  text(String(number), { x: at.x, y: at.y + size.text * 0.36 }, { size: size.text, anchor: "middle", weight: "bold" }),
];

/** Numbered steps, in columns: down the first, then the next. `before`: how many stand elsewhere. */
export function numbered(steps: readonly string[], width: number, columns = 1, before = 0): Drawing {
  const gap = 5;
  const own = (width - gap * (columns - 1)) / columns;
  const step = size.text * leading;
  const inset = 2 * RADIUS + 1.6;
  const wrapped = steps.map((words) => wrapText(words, own - inset, size.text, "regular"));
  const heights = wrapped.map((lines) => Math.max(2 * RADIUS + 0.6, lines.length * step) + 1.1);
  const total = heights.reduce((sum, one) => sum + one, 0);
  const marks: Mark[] = [];
  let [column, y, tallest] = [0, 0, 0];
  for (const [index, lines] of wrapped.entries()) {
    const height = heights[index] ?? 0;
    if (column < columns - 1 && y > 0 && y + height / 2 > total / columns) [column, y] = [column + 1, 0];
    const x = column * (own + gap);
    marks.push(...numberSign(before + index + 1, { x: x + RADIUS, y: y + RADIUS + 0.2 }));
    for (const [row, words] of lines.entries())
      marks.push(
        text(words, { x: x + inset, y: y + 0.2 + RADIUS + size.text * 0.36 + row * step }, { size: size.text }),
      );
    y += height;
    tallest = Math.max(tallest, y);
  }
  return { width, height: tallest, marks };
}
