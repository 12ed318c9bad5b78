import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { leading, size } from "../shared/style.js";

/** A number beneath a piece, and small under it what it is. */
export type CellNumber = { readonly value: string; readonly label: string };

export type CellFoot = {
  readonly title: string;
  readonly numbers: readonly CellNumber[];
  /** Beside the numbers, or under them. */
  readonly picture?: Drawing;
  /** Small, below all. */
  readonly lines?: readonly string[];
};

/** Between two numbers, mm. */
const apart = 4;
/** A narrow piece may have words and numbers so much wider than itself, mm. */
const usual = 44;
const numbersWide = 66;

const valueStep = size.text * 1.3;
const labelStep = size.source * 1.35;

/** What stands beneath a piece: its name, its numbers side by side, the picture of its seam. `piece`: how wide that is. */
export function cellFoot({ title, numbers, picture, lines = [] }: CellFoot, piece: number, most: number): Drawing {
  const columns = numbers.map(({ value, label }) => {
    const own = Math.max(
      textWidth(value, size.text, "bold"),
      Math.min(textWidth(label, size.source, "regular"), usual),
    );
    return { value, label, width: own };
  });
  const all = columns.reduce((sum, { width }) => sum + width + apart, -apart);
  const natural = Math.max(all, textWidth(title, size.text, "bold")) + (picture ? picture.width + apart : 0);
  const width = Math.min(most, Math.max(piece, Math.min(numbers.length > 0 ? numbersWide : usual, natural + 0.5)));
  const marks: Mark[] = [];
  let y = 0.8;
  // The picture stands at the right where the numbers, in one line or two, leave it room.
  const beside = picture !== undefined && width - picture.width - apart >= Math.max(all / 2 + apart, 44);
  const room = beside ? width - picture.width - apart : width;
  const words = (said: string, em: number, step: number, weight: "regular" | "bold") => {
    for (const part of wrapText(said, room, em, weight)) {
      marks.push(text(part, { x: 0, y: y + step * 0.72 }, { size: em, weight }));
      y += step;
    }
  };
  words(title, size.text, valueStep, "bold");
  let [x, height, right] = [0, 0, textWidth(title, size.text, "bold")];
  for (const { value, label, width: own } of columns) {
    if (x > 0 && x + own > room + 1e-6) [x, y, height] = [0, y + height + 0.6, 0];
    const parts = wrapText(label, Math.min(room, own + 0.01), size.source, "regular");
    marks.push(text(value, { x, y: y + valueStep * 0.72 }, { size: size.text, weight: "bold" }));
    for (const [index, part] of parts.entries())
      marks.push(text(part, { x, y: y + valueStep + labelStep * (index + 0.68) }, { size: size.source }));
    right = Math.max(right, x + own);
    x += own + apart;
    height = Math.max(height, valueStep + parts.length * labelStep);
  }
  y += height;
  if (lines.length > 0) y += 0.4;
  for (const one of lines) words(one, size.source, size.source * leading, "regular");
  if (picture) {
    // Near the numbers, not at the far end of a long strip, where no line reaches under it.
    const at = beside
      ? { x: Math.min(width - picture.width, lines.length > 0 ? width : right + 2 * apart), y: 0.8 }
      : { x: 0, y: y + 0.8 };
    marks.push(group(at, picture.marks, { name: "seam" }));
    y = Math.max(y, at.y + picture.height);
  }
  return { width, height: y, marks };
}
