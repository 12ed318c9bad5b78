import type { Drawing } from "../../drawing/drawing.js";
import { group, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { byPages, type Piece, shelves } from "../../paper/packing.js";
import type { Run } from "../shared/block.js";
import { leading, size } from "../shared/style.js";

/** Something to cut out, the room for its cut marks included, with words that stay outside the cut: in one size, or as a drawing. */
export type CutOut = { readonly drawing: Drawing; readonly caption: string | Drawing; readonly name: string };

const gap = 3;

/** A piece with the room that its cut marks take. */
export const withCutRoom = ({ width, height, marks }: Drawing, room: number): Drawing => ({
  width: width + 2 * room,
  height: height + 2 * room,
  marks: [group({ x: room, y: room }, marks)],
});

/** Of a piece with what stands beneath it, mm. */
export const cellHeight = ({ drawing, caption }: CutOut): number =>
  drawing.height + (typeof caption === "string" ? 0 : caption.height);

/** Pieces packed on shelves, one run a shelf. None may be wider than `width`. With `page`, what is low fills up the page that the runs
 *  `above` began. */
export function cutOuts(
  pieces: readonly CutOut[],
  width: number,
  page?: { readonly height: number; readonly above: readonly Run[] },
): Run[] {
  const boxes = pieces.map((item): Piece<Cell> => {
    const { drawing, name } = item;
    const caption = captionOf(item, width);
    return {
      width: Math.max(drawing.width, caption.width),
      height: drawing.height + caption.height,
      item: { drawing, name, caption },
    };
  });
  const used = (page?.above ?? []).reduce((sum, run) => sum + run.drawing.height + (run.gap ?? 0), 0);
  const packed = shelves(boxes, width, gap);
  const ordered = page ? byPages(packed, page.height - used, page.height, gap) : packed;
  return ordered.map(({ placed, height }) => ({
    gap,
    drawing: {
      width,
      height,
      marks: placed.flatMap(({ x, y, item: { drawing, name, caption } }) => [
        group({ x, y }, drawing.marks, { name }),
        group({ x, y: y + drawing.height }, caption.marks, { name: "caption" }),
      ]),
    },
  }));
}

type Cell = { readonly drawing: Drawing; readonly name: string; readonly caption: Drawing };

function captionOf({ drawing, caption }: CutOut, width: number): Drawing {
  if (typeof caption !== "string") return caption;
  // A narrow piece may have words somewhat wider than itself rather than in many short lines.
  const wide = Math.min(
    width - 0.4,
    Math.max(drawing.width, Math.min(34, textWidth(caption, size.source, "regular") + 0.5)),
  );
  const lines = wrapText(caption, wide, size.source, "regular");
  return {
    width: wide + 0.4,
    height: lines.length * size.source * leading + 0.8,
    marks: lines.map((words, line) =>
      text(words, { x: 0.4, y: 0.3 + size.source * leading * (line + 0.76) }, { size: size.source }),
    ),
  };
}
