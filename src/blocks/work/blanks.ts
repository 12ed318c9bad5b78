import type { Mark } from "../../drawing/drawing.js";
import { line, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import type { Run } from "../shared/block.js";
import type { ParagraphStyle } from "../shared/paragraph.js";
import { leading, rowLine, size as sizes } from "../shared/style.js";

/** A row that is written on by hand. */
const ROOM_TO_WRITE = 6.4;
/** What stands for a blank in the words, as wide as a figure written by hand. */
const BLANK = "____________";

/** A paragraph whose blanks ("____" in the words) are lines to write on. */
export function fillIn(words: string, width: number, style: ParagraphStyle = {}): Run[] {
  const { size = sizes.text, weight = "regular", ink = "black", gap = 0 } = style;
  const lines = wrapText(words.replace(/_{3,}/g, BLANK), width, size, weight);
  return lines.map((part, index): Run => {
    const written = part.includes("___");
    const height = written ? ROOM_TO_WRITE : size * leading;
    const baseline = height - 0.24 * size * leading;
    let x = 0;
    const marks = part.split(/(_{3,})/).flatMap((piece): Mark[] => {
      const from = x;
      x += textWidth(piece, size, weight);
      if (piece === "") return [];
      if (!piece.startsWith("___")) return [text(piece, { x: from, y: baseline }, { size, weight, ink })];
      return [line({ x: from + 0.5, y: baseline + 0.6 }, { x: x - 0.5, y: baseline + 0.6 }, rowLine)];
    });
    return { drawing: { width, height, marks }, gap: index === 0 ? gap : 0 };
  });
}
