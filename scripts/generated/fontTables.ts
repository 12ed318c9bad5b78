import fontkit from "@pdf-lib/fontkit";
import { readFonts } from "../font.js";

type Fonts = { readonly regular: Uint8Array; readonly bold: Uint8Array };

/** What sheets and renderers know of the font, from path to text. */
export function fontTables(): Readonly<Record<string, string>> {
  const fonts = readFonts();
  return {
    "src/drawing/advances.generated.ts": advancesSource(fonts),
    "src/output/glyphOrder.generated.ts": glyphOrderSource(fonts),
  };
}

function advancesSource(fonts: Fonts): string {
  const regular = measures(fonts.regular);
  const bold = measures(fonts.bold);
  return `/** What text measures in our font; written by \`npm run generate\` from the font itself, never by hand.
 *  Font units: divide by unitsPerEm and multiply by the size. Heights are above the baseline, descender is negative. */
export const unitsPerEm = ${regular.unitsPerEm};
${table(regular, bold)}`;
}

type Measures = ReturnType<typeof measures>;

function table(regular: Measures, bold: Measures): string {
  const heights = ({ heights }: Measures) => JSON.stringify(heights);
  const advances = ({ advances }: Measures) => JSON.stringify(Object.fromEntries(advances));
  return `
export const heights = {
  regular: ${heights(regular)},
  bold: ${heights(bold)},
};

type Advances = { unitsPerEm: number; regular: Record<string, number>; bold: Record<string, number> };

export const advances: Advances = {
  unitsPerEm,
  regular: ${advances(regular)},
  bold: ${advances(bold)},
};
`;
}

function measures(bytes: Uint8Array) {
  const font = fontkit.create(bytes);
  const advances = lettersOf(font).map((letter): [string, number] => [letter, glyphOf(font, letter).advanceWidth]);
  return {
    unitsPerEm: font.unitsPerEm,
    advances,
    heights: {
      ascender: font.ascent,
      descender: font.descent,
      capHeight: font.capHeight,
      xHeight: font.xHeight,
      digitHeight: font.glyphForCodePoint(0x31).bbox.maxY,
    },
  };
}

function glyphOrderSource(fonts: Fonts): string {
  const order = glyphOrder(fonts.regular);
  if (glyphOrder(fonts.bold) !== order) throw new Error("The two weights number their glyphs differently");
  return `/** The letters of our font in the order of its glyph numbers, the same in both weights; U+0000 where a glyph stands for
 *  none. Written by \`npm run generate\` from the font itself, never by hand. */
export const glyphOrder =
  ${JSON.stringify(order)};
`;
}

function glyphOrder(bytes: Uint8Array): string {
  const font = fontkit.create(bytes);
  const order = Array<string>(font.numGlyphs).fill("\0");
  for (const letter of lettersOf(font)) order[glyphOf(font, letter).id] = letter;
  return order.join("");
}

type Font = ReturnType<typeof fontkit.create>;

const lettersOf = (font: Font): string[] =>
  font.characterSet
    .filter((code) => code >= 0x20 && code < 0xfff0)
    .sort((a, b) => a - b)
    .map((code) => String.fromCodePoint(code));

const glyphOf = (font: Font, letter: string) => font.glyphForCodePoint(letter.codePointAt(0) ?? 0);
