import { deflateSync } from "node:zlib";
import { readFonts } from "../../scripts/font.js";
import type { Print } from "../../src/drawing/page.js";
import { renderPdf } from "../../src/output/pdf.js";
import { identity } from "../../src/paper/printerCorrection.js";

const fonts = readFonts();

/** Bytes of a print as PDF, as the command line makes them. */
export const pdfOf = (print: Print, correction = identity): Promise<Uint8Array> =>
  renderPdf(print, () => correction, fonts, deflateSync);
