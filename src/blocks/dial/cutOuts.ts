import type { Drawing } from "../../drawing/drawing.js";
import { group, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { type Piece, type Placed, type Shelf, shelves } from "../../paper/packing.js";
import { packedOnPages } from "../../paper/pages.js";
import type { Grouped } from "../../paper/placing.js";
import type { Run } from "../shared/block.js";
import { leading, size } from "../shared/style.js";

/** Something to cut out, the room for its cut marks included, with words that stay outside the cut: in one size, or as a drawing. */
export type CutOut = {
  readonly drawing: Drawing;
  readonly caption: string | Drawing;
  readonly name: string;
  /** What lies on the page of all others of the same word, where that takes no more pages: the pieces of one wheel. */
  readonly besides?: string;
  /** Of those, what makes one whole: the pieces of one copy. */
  readonly set?: string;
  /** It tells of the others of its word; with these words at its right it is less high, where that brings it to them. */
  readonly explains?: { readonly aside: Drawing };
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

/** What it takes of the paper with what stands beneath it, mm². */
export const areaOf = (cut: CutOut): number =>
  Math.max(cut.drawing.width, typeof cut.caption === "string" ? 0 : cut.caption.width) * cellHeight(cut);

/** Pieces packed on shelves, one run a shelf. None may be wider than `width`. */
export const cutOuts = (pieces: readonly CutOut[], width: number): Run[] =>
  shelves(pieces.map(boxed(width)), width, gap).map((shelf) => runOf(shelf, width));

/** Pieces packed for pages of that size with what is said of them, `words` in the lengths of line that they may have, the most wanted
 *  first, where a page has room for them, and so that what follows, `below` mm high, has room on the last. */
export function cutOutPages(
  pieces: readonly CutOut[],
  { width, height }: { readonly width: number; readonly height: number },
  { words = [], below = 0 }: { readonly words?: readonly (() => Drawing)[]; readonly below?: number } = {},
): CutOutPages {
  const said = words.map((drawn) => (): Piece<Cell> => {
    const drawing = drawn();
    return { width: drawing.width, height: drawing.height, item: { drawing, name: "note", caption: EMPTY } };
  });
  const pages = packedOnPages(pieces.map(boxed(width)), { width, height }, gap, { words: said, below });
  return {
    heights: pages.map((page) => page.height),
    hasWords: pages.some(({ placed }) => placed.some((one) => one.words)),
    // A page's pieces stay together, lest what was packed as one set be parted after all.
    runs: pages.flatMap(({ placed }, at) =>
      bandsOf(placed).map((band, index) => ({
        ...runOf(band, width),
        ...(at > 0 && index === 0 && { startsPage: "unless it fits" as const }),
      })),
    ),
  };
}

/** `heights`: how far down each page reaches, mm. */
export type CutOutPages = {
  readonly runs: readonly Run[];
  readonly heights: readonly number[];
  readonly hasWords: boolean;
};

const EMPTY: Drawing = { width: 0, height: 0, marks: [] };

const boxed =
  (width: number) =>
  (cut: CutOut): Grouped<Cell> => {
    const { drawing, name, besides, set, explains } = cut;
    const caption = captionOf(cut, width);
    return {
      width: Math.max(drawing.width, caption.width),
      height: drawing.height + caption.height,
      item: { drawing, name, caption },
      ...(besides && { besides }),
      ...(set && { set }),
      ...(explains && { explains: true, or: withAside(cut, explains.aside) }),
    };
  };

const withAside = ({ drawing, name }: CutOut, aside: Drawing): Piece<Cell> => ({
  width: drawing.width + gap + aside.width,
  height: Math.max(drawing.height, aside.height),
  item: { drawing, name, caption: aside, beside: true },
});

const runOf = ({ placed, height }: Shelf<Cell>, width: number): Run => ({
  gap,
  drawing: {
    width,
    height,
    marks: placed.flatMap(({ x, y, item: { drawing, name, caption, beside } }) => {
      const at = beside ? { x: x + drawing.width + gap, y } : { x, y: y + drawing.height };
      return [
        group({ x, y }, drawing.marks, { name }),
        ...(caption === EMPTY ? [] : [group(at, caption.marks, { name: "caption" })]),
      ];
    }),
  },
});

/** A page parted where no piece crosses from above, the highest part first: it goes least on the page before; words last. */
function bandsOf(placed: readonly Placed<Cell>[]): Shelf<Cell>[] {
  const bands: { top: number; bottom: number; placed: Placed<Cell>[] }[] = [];
  for (const piece of [...placed].sort((one, other) => one.y - other.y)) {
    const [open, bottom] = [bands.at(-1), piece.y + piece.height];
    if (open === undefined || piece.y > open.bottom) bands.push({ top: piece.y, bottom, placed: [piece] });
    else {
      open.placed.push(piece);
      open.bottom = Math.max(open.bottom, bottom);
    }
  }
  return bands
    .map(({ top, bottom, placed }) => ({
      height: bottom - top,
      placed: placed.map((piece) => ({ ...piece, y: piece.y - top })),
    }))
    .sort((one, other) => hasWords(one) - hasWords(other) || Math.round(1e3 * (other.height - one.height)));
}

const hasWords = ({ placed }: Shelf<Cell>): number => (placed.some(({ item }) => item.name === "note") ? 1 : 0);

type Cell = {
  readonly drawing: Drawing;
  readonly name: string;
  readonly caption: Drawing;
  /** Not below: at its right. */
  readonly beside?: true;
};

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
