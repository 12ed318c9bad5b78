import type { Mark } from "../../src/drawing/drawing.js";
import type { Print } from "../../src/drawing/page.js";

/** All that a print says, in the order of drawing, wrapped lines joined by a space. */
export const wordsOf = ({ pages }: Print): string =>
  pages
    .flatMap(({ drawing }) => drawing.marks.flatMap(words))
    .join(" ")
    .replace(/\s+/g, " ");

const words = (mark: Mark): string[] =>
  mark.kind === "text" ? [mark.text] : mark.kind === "group" ? mark.marks.flatMap(words) : [];
