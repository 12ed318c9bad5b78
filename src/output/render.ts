import type { Page, Print } from "../drawing/page.js";
import type { Affine } from "../paper/printerCorrection.js";
import type { FontBytes } from "./fonts.js";
import type { Deflate } from "./packed.js";

/** Each format is loaded only when it is asked for: the PDF library costs more time than all the drawing. */
export async function renderPdf(
  print: Print,
  correction: Affine,
  fonts: FontBytes,
  deflate: Deflate,
): Promise<Uint8Array> {
  return (await import("./pdf.js")).renderPdf(print, correction, fonts, deflate);
}

export async function renderDxf(page: Page, print: Print): Promise<string> {
  return (await import("./dxf.js")).renderDxf(page, print);
}

/** Letters as outlines. */
export async function outlined(print: Print): Promise<Print> {
  return (await import("./outlines.js")).outlined(print);
}

export async function renderSvg(page: Page, print: Print, correction: Affine, fonts: FontBytes): Promise<string> {
  return (await import("./svg.js")).renderSvg(page, print, correction, fonts);
}
