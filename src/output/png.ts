import { mark as ours } from "../drawing/ours.js";
import type { Page, Print } from "../drawing/page.js";
import type { Affine } from "../paper/printerCorrection.js";
import { renderSvg } from "./svg.js";

/** What draws a picture, handed in: a page's SVG becomes a PNG so many pixels wide. It brings the fonts, which are not in the SVG
 *  then. */
export type Picture = {
  readonly dpi: number;
  readonly drawn: (svg: string, width: number) => Uint8Array;
  /** Check number of a part of the file (ISO 3309). */
  readonly crc32: (bytes: Uint8Array) => number;
};

const mmPerInch = 25.4;
const none = new Uint8Array();

/** One page as a picture of its SVG that knows its size on paper. */
export function renderPng(page: Page, print: Print, correction: Affine, { dpi, drawn, crc32 }: Picture): Uint8Array {
  const svg = renderSvg(page, print, correction, { regular: none, bold: none });
  // What draws it knows only the older way to say that several spaces stay several.
  const spaced = svg.replace("<svg ", '<svg xml:space="preserve" ');
  if (spaced === svg) throw new Error("a page's picture does not begin as an SVG");
  const width = Math.max(1, Math.round((page.drawing.width / mmPerInch) * dpi));
  return withParts(drawn(spaced, width), [sizePart(dpi), originPart()], crc32);
}

/** A PNG is a signature, its head, and parts after it: length, kind, bytes, check number (ISO 15948, 5.3). */
const HEAD_ENDS = 8 + 4 + 4 + 13 + 4;
type Part = { readonly kind: "pHYs" | "tEXt"; readonly bytes: Uint8Array };

function withParts(png: Uint8Array, parts: readonly Part[], crc32: Picture["crc32"]): Uint8Array {
  if (new TextDecoder("latin1").decode(png.subarray(1, 16)) !== "PNG\r\n\x1a\n\0\0\0\rIHDR")
    throw new Error("what was drawn does not begin as a PNG");
  const written = parts.map(({ kind, bytes }) => {
    const part = new Uint8Array(12 + bytes.length);
    const view = new DataView(part.buffer);
    view.setUint32(0, bytes.length);
    part.set(new TextEncoder().encode(kind), 4);
    part.set(bytes, 8);
    view.setUint32(8 + bytes.length, crc32(part.subarray(4, 8 + bytes.length)));
    return part;
  });
  const whole = new Uint8Array(written.reduce((sum, part) => sum + part.length, png.length));
  let at = 0;
  for (const piece of [png.subarray(0, HEAD_ENDS), ...written, png.subarray(HEAD_ENDS)]) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** Pixels to the metre across and down, so that it is shown and printed at true size. */
function sizePart(dpi: number): Part {
  const bytes = new Uint8Array(9);
  const perMetre = Math.round((dpi / mmPerInch) * 1000);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, perMetre);
  view.setUint32(4, perMetre);
  bytes[8] = 1;
  return { kind: "pHYs", bytes };
}

const originPart = (): Part => ({ kind: "tEXt", bytes: new TextEncoder().encode(`Software\0${ours}`) });
