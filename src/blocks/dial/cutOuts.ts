import type { Drawing } from "../../drawing/drawing.js";
import { group, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { byPages, type Piece, shelves } from "../../paper/packing.js";
import type { Run } from "../shared/block.js";
import { leading, size } from "../shared/style.js";

/** Something to cut out, with words that stay outside the cut. */
export type CutOut = { readonly drawing: Drawing; readonly caption: string; readonly name: string };

/** Half a millimetre about every piece, so that its cut line keeps its whole width. */
const edge = 0.5;
const gap = 4;

/** Pieces packed on shelves, one run a shelf. Each must be narrower than `width` by a millimetre. With `page`, what is
 *  low fills up the page that the runs `above` began. */
export function cutOuts(
  pieces: readonly CutOut[],
  width: number,
  page?: { readonly height: number; readonly above: readonly Run[] },
): Run[] {
  const boxes = pieces.map((item): Piece<CutOut> => {
    const own = item.drawing.width + 2 * edge;
    // A narrow piece may have words somewhat wider than itself rather than in many short lines.
    const wide = Math.min(width, Math.max(own, Math.min(34, textWidth(item.caption, size.tiny, "regular") + 0.5)));
    const lines = wrapText(item.caption, wide, size.tiny, "regular").length;
    return { width: wide, height: item.drawing.height + 2 * edge + lines * size.tiny * leading + 0.5, item };
  });
  const used = (page?.above ?? []).reduce((sum, run) => sum + run.drawing.height + (run.gap ?? 0), 0);
  const packed = shelves(boxes, width, gap);
  const ordered = page ? byPages(packed, page.height - used, page.height, gap) : packed;
  return ordered.map(({ placed, height }) => ({
    gap,
    drawing: {
      width,
      height,
      marks: placed.flatMap(({ x, y, width: wide, item }) => [
        group({ x: x + edge, y: y + edge }, item.drawing.marks, { name: item.name }),
        group(
          { x, y: y + item.drawing.height + 2 * edge + 0.3 },
          wrapText(item.caption, wide, size.tiny, "regular").map((words, line) =>
            text(words, { x: 0, y: size.tiny * leading * (line + 0.76) }, { size: size.tiny }),
          ),
          { name: "caption" },
        ),
      ]),
    },
  }));
}
