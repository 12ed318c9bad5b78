import type { Drawing } from "../../drawing/drawing.js";
import { group, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { byPages, type Piece, type Placed, pagesOf, type Shelf, shelves } from "../../paper/packing.js";
import type { Run } from "../shared/block.js";
import { leading, size } from "../shared/style.js";

/** Something to cut out, the room for its cut marks included, with words that stay outside the cut: in one size, or as a drawing. */
export type CutOut = {
  readonly drawing: Drawing;
  readonly caption: string | Drawing;
  readonly name: string;
  /** What lies beside or below all others of the same word, where that takes no more pages: copies of one piece. */
  readonly besides?: string;
};

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
  const boxes = pieces.map((item): Box => {
    const { drawing, name, besides } = item;
    const caption = captionOf(item, width);
    const size = { width: Math.max(drawing.width, caption.width), height: drawing.height + caption.height };
    return { ...size, item: [{ x: 0, y: 0, ...size, item: { drawing, name, caption } }], ...(besides && { besides }) };
  });
  const used = (page?.above ?? []).reduce((sum, run) => sum + run.drawing.height + (run.gap ?? 0), 0);
  const ordered = (these: readonly Box[]) => {
    const packed = shelves(these, width, gap);
    return page ? byPages(packed, page.height - used, page.height, gap) : packed;
  };
  const chosen = page ? fewestPages(boxes, width, page.height, ordered, page.height - used) : ordered(boxes);
  return chosen.map(({ placed, height }) => ({
    gap,
    drawing: {
      width,
      height,
      marks: placed.flatMap((box) =>
        box.item.flatMap(({ x, y, item: { drawing, name, caption } }) => [
          group({ x: box.x + x, y: box.y + y }, drawing.marks, { name }),
          group({ x: box.x + x, y: box.y + y + drawing.height }, caption.marks, { name: "caption" }),
        ]),
      ),
    },
  }));
}

type Box = Piece<readonly Placed<Cell>[]> & { readonly besides?: string };

/** More kinds than these are packed singly: each is tried by packing all anew. */
const MOST_KINDS = 24;

/** What belongs together is laid together, kind by kind, as long as that takes no more pages. */
function fewestPages(
  boxes: readonly Box[],
  width: number,
  height: number,
  ordered: (these: readonly Box[]) => Shelf<readonly Placed<Cell>[]>[],
  first: number,
): Shelf<readonly Placed<Cell>[]>[] {
  const pages = (of: ReturnType<typeof ordered>) => pagesOf(of, first, height, gap);
  const kinds = [...new Set(boxes.flatMap(({ besides }) => besides ?? []))];
  let [these, best] = [boxes, ordered(boxes)];
  for (const kind of kinds.length > MOST_KINDS ? [] : kinds) {
    const together = bundled(these, kind, width, height);
    const packed = ordered(together);
    if (pages(packed) <= pages(best)) [these, best] = [together, packed];
  }
  return best;
}

/** Those of a kind as one box, in as few rows as go into the width; singly where that is too high. */
function bundled(boxes: readonly Box[], kind: string, width: number, height: number): readonly Box[] {
  const own = boxes.filter(({ besides }) => besides === kind);
  const rows = shelves(own, width, gap);
  const tops = rows.map((_, row) => rows.slice(0, row).reduce((sum, one) => sum + one.height + gap, 0));
  const placed = rows.flatMap((row, index) => row.placed.map((one) => ({ ...one, y: one.y + (tops[index] ?? 0) })));
  const high = Math.max(...placed.map((one) => one.y + one.height));
  if (own.length < 2 || high > height) return boxes;
  const item = placed.flatMap(({ x, y, item }) => item.map((cell) => ({ ...cell, x: cell.x + x, y: cell.y + y })));
  const box = { width: Math.max(...placed.map((one) => one.x + one.width)), height: high, item };
  return boxes.flatMap((one) => (one.besides !== kind ? one : one === own[0] ? box : []));
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
