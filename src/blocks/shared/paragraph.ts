import type { Ink, Weight } from "../../drawing/drawing.js";
import { text } from "../../drawing/shapes.js";
import { wrapText } from "../../drawing/text.js";
import type { Run } from "./block.js";
import { leading, size as sizes } from "./style.js";

export type ParagraphStyle = {
  /** Em, mm. */
  readonly size?: number;
  readonly weight?: Weight;
  readonly ink?: Ink;
  /** Space above, mm. */
  readonly gap?: number;
};

/** Lines of plain text as one run each. */
export function paragraph(words: string, width: number, style: ParagraphStyle = {}): Run[] {
  const size = style.size ?? sizes.text;
  const weight = style.weight ?? "regular";
  const step = size * leading;
  return wrapText(words, width, size, weight).map((part, index) => ({
    drawing: {
      width,
      height: step,
      marks: [text(part, { x: 0, y: step * 0.76 }, { size, weight, ink: style.ink ?? "black" })],
    },
    gap: index === 0 ? (style.gap ?? 0) : 0,
  }));
}
