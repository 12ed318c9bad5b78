import type { Print } from "../../drawing/page.js";
import type { Machine } from "../../machine/machine.js";
import { isCorrected, withNotes } from "../../output/render.js";
import { renderSvg } from "../../output/svg.js";
import { identity } from "../../paper/printerCorrection.js";
import type { DrawnPage } from "./protocol.js";

/** A print's pages to look at: as they come out of the printer, with the note of their correction, but not stretched by it. */
export function pagesAsSeen(print: Print, { paper }: Machine): DrawnPage[] {
  const seen = paper.printer !== undefined && isCorrected(print) ? withNotes(print) : print;
  return seen.pages.map((page) => {
    const { width, height } = page.drawing;
    return { svg: renderSvg(page, seen, identity), width, height };
  });
}
