import type { Page, Print } from "../drawing/page.js";
import type { Affine } from "../paper/printerCorrection.js";
import type { FontBytes } from "./fonts.js";

/** Each format is loaded only when it is asked for: the PDF library costs more time than all the drawing. */
export async function renderPdf(print: Print, correction: Affine, fonts: FontBytes): Promise<Uint8Array> {
  return (await import("./pdf.js")).renderPdf(print, correction, fonts);
}

export async function renderDxf(page: Page, print: Print, fonts: FontBytes): Promise<string> {
  return (await import("./dxf.js")).renderDxf(page, print, fonts);
}

/** Letters as outlines. */
export async function outlined(print: Print, fonts: FontBytes): Promise<Print> {
  return (await import("./outlines.js")).outlined(print, fonts);
}

export async function renderSvg(page: Page, print: Print, correction: Affine, fonts: FontBytes): Promise<string> {
  return (await import("./svg.js")).renderSvg(page, print, correction, fonts);
}
