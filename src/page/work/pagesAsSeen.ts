import type { Print } from "../../drawing/page.js";
import type { Machine } from "../../machine/machine.js";
import { isCorrected, withNotes } from "../../output/render.js";
import { renderSvg } from "../../output/svg.js";
import { identity, pageCorrection } from "../../paper/printerCorrection.js";
import { printerOf } from "../../printing/files.js";
import type { DrawnPage } from "./protocol.js";

/** A print's pages to look at: as they come out of the printer, with the note of their correction, but not stretched by it; that
 *  is done when they are printed. */
export function pagesAsSeen(print: Print, machine: Machine): DrawnPage[] {
  const printer = printerOf(machine);
  const corrects = printer !== undefined && isCorrected(print);
  const seen = corrects ? withNotes(print) : print;
  return seen.pages.map((page) => {
    const { width, height } = page.drawing;
    const correction = corrects ? pageCorrection(printer, page.drawing) : identity;
    return { svg: renderSvg(page, seen, identity), width, height, correction };
  });
}
