import type { Drawing } from "../drawing/drawing.js";
import type { Page, Print } from "../drawing/page.js";
import { type Affine, identity, pageCorrection } from "../paper/printerCorrection.js";
import type { FontBytes } from "./fonts.js";
import type { Format } from "./formats.js";
import type { Deflate } from "./packed.js";
import type { Picture } from "./png.js";

/** What a renderer is handed of the outside world. */
export type Tools = {
  /** Both weights as TrueType (`ttf`, for PDF) or as WOFF (for SVG). */
  readonly fonts: (kind: "ttf" | "woff") => FontBytes;
  readonly deflate: Deflate;
  /** What draws pictures; only there where one is asked for. */
  readonly picture?: Picture;
};

/** One file of a print: its name's ending after the sheet's name, as `.pdf` or `-2.svg`, and what it holds. */
export type Rendered = { readonly ending: string; readonly bytes: Uint8Array | string };

/** A print's files in a format; a page that is corrected for its printer says so. */
export async function render(
  arranged: Print,
  format: Format,
  printer: Parameters<typeof pageCorrection>[0],
  tools: Tools,
): Promise<Rendered[]> {
  const corrects = printer !== undefined && format !== "dxf" && isCorrected(arranged);
  const correction: Correction = corrects ? (page) => pageCorrection(printer, page) : () => identity;
  const noted = corrects ? withNotes(arranged) : arranged;
  const print = arranged.outlines ? (await import("./outlines.js")).outlined(noted, tools.fonts("ttf")) : noted;
  return renderers[format](print, correction, tools);
}

type Correction = (page: Drawing) => Affine;

/** What is not for a printer, and what a printer is measured on, is not corrected. */
export const isCorrected = ({ outlines, uncorrected }: Print): boolean => !outlines && !uncorrected;

/** With what each page says of its correction. */
export const withNotes = (print: Print): Print => ({
  ...print,
  pages: print.pages.map(({ drawing, correctionNote = [], ...page }) => ({
    ...page,
    drawing: { ...drawing, marks: [...drawing.marks, ...correctionNote] },
  })),
});

/** A PDF holds all its pages, the others have a file a page. Each is loaded only when it is asked for: the PDF library costs
 *  more time than all the drawing. */
const renderers: Readonly<Record<Format, (print: Print, correction: Correction, tools: Tools) => Promise<Rendered[]>>> =
  {
    async pdf(print, correction, { fonts, deflate }) {
      const { renderPdf } = await import("./pdf.js");
      return [{ ending: ".pdf", bytes: await renderPdf(print, correction, fonts("ttf"), deflate) }];
    },
    async svg(print, correction, tools) {
      const { renderSvg } = await import("./svg.js");
      const fonts = tools.fonts("woff");
      return eachPage(print, "svg", (page) => renderSvg(page, print, correction(page.drawing), fonts));
    },
    async dxf(print, _, tools) {
      const { renderDxf } = await import("./dxf.js");
      const fonts = tools.fonts("ttf");
      return eachPage(print, "dxf", (page) => renderDxf(page, print, fonts));
    },
    async png(print, correction, { picture }) {
      if (picture === undefined) throw new Error("nothing is there to draw pictures with");
      const { renderPng } = await import("./png.js");
      return eachPage(print, "png", (page) => renderPng(page, print, correction(page.drawing), picture));
    },
  };

const eachPage = ({ pages }: Print, ending: Format, bytes: (page: Page) => Rendered["bytes"]): Rendered[] =>
  pages.map((page, index) => ({ ending: `-${index + 1}.${ending}`, bytes: bytes(page) }));
