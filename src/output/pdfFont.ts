import { type PDFContext, type PDFRef, PDFString } from "pdf-lib";
import { advances, heights } from "../drawing/advances.generated.js";
import type { Weight } from "../drawing/drawing.js";
import { advance } from "../drawing/text.js";
import { glyphNumber } from "./glyphNumber.js";
import { type Deflate, packed } from "./packed.js";
import { boundingBox, subset } from "./trueType.js";

type Glyph = { readonly letter: string; readonly number: number };

/** Puts a font with these letters into a PDF, to be shown by glyph number (ISO 32000-1, 9.7.4 and 9.7.5.2). */
export function embedFont(
  context: PDFContext,
  weight: Weight,
  trueType: Uint8Array,
  letters: Iterable<string>,
  deflate: Deflate,
): PDFRef {
  const glyphs = [...new Map([...letters].map((letter) => [glyphNumber(letter), letter]))]
    .map(([number, letter]): Glyph => ({ letter, number }))
    .sort((a, b) => a.number - b.number);
  const program = subset(trueType, new Set([0, ...glyphs.map(({ number }) => number)]));
  const name = `${subsetTag(glyphs)}+B612-${weight === "bold" ? "Bold" : "Regular"}`;
  const { ascender, descender, capHeight } = heights[weight];
  const descriptor = context.obj({
    Type: "FontDescriptor",
    FontName: name,
    Flags: 4, // symbolic: glyphs are chosen by number
    FontBBox: boundingBox(trueType).map(thousandths),
    ItalicAngle: 0,
    Ascent: thousandths(ascender),
    Descent: thousandths(descender),
    CapHeight: thousandths(capHeight),
    StemV: weight === "bold" ? 140 : 80,
    FontFile2: packed(context, deflate, program, { Length1: program.length }),
  });
  const descendant = context.obj({
    Type: "Font",
    Subtype: "CIDFontType2",
    BaseFont: name,
    CIDSystemInfo: { Registry: PDFString.of("Adobe"), Ordering: PDFString.of("Identity"), Supplement: 0 },
    FontDescriptor: context.register(descriptor),
    W: widths(glyphs, weight),
    CIDToGIDMap: "Identity",
  });
  const font = context.obj({
    Type: "Font",
    Subtype: "Type0",
    BaseFont: name,
    Encoding: "Identity-H",
    DescendantFonts: [context.register(descendant)],
    ToUnicode: packed(context, deflate, new TextEncoder().encode(toUnicode(glyphs))),
  });
  return context.register(font);
}

/** Widths of glyphs that follow each other as one list after the first's number (9.7.4.3). */
function widths(glyphs: readonly Glyph[], weight: Weight): (number | number[])[] {
  const result: (number | number[])[] = [];
  let list: number[] = [];
  for (const [index, { letter, number }] of glyphs.entries()) {
    if (number - 1 !== glyphs[index - 1]?.number) {
      list = [];
      result.push(number, list);
    }
    list.push(thousandths(advance(letter, weight)));
  }
  return result;
}

/** Glyph space of a PDF: a thousandth of the em. */
const thousandths = (units: number): number => (units * 1000) / advances.unitsPerEm;

/** Six letters that two subsets of other glyphs hardly share (9.6.4). */
function subsetTag(glyphs: readonly Glyph[]): string {
  let hash = 0;
  for (const { number } of glyphs) hash = (hash * 31 + number) % 26 ** 6;
  return Array.from({ length: 6 }, (_, place) => String.fromCharCode(65 + (Math.floor(hash / 26 ** place) % 26))).join(
    "",
  );
}

/** From glyphs back to letters, so that text can be searched and copied (9.10.3); a list holds at most 100 lines. */
function toUnicode(glyphs: readonly Glyph[]): string {
  const known = glyphs.filter(({ number }) => number > 0);
  const lists: string[] = [];
  for (let from = 0; from < known.length; from += 100) {
    const list = known.slice(from, from + 100);
    const lines = list.map(({ letter, number }) => `<${hex(number)}> <${hex(letter.charCodeAt(0))}>`);
    lists.push(`${list.length} beginbfchar\n${lines.join("\n")}\nendbfchar`);
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <ffff>
endcodespacerange
${lists.join("\n")}
endcmap
CMapName currentdict /CMap defineresource pop
end
end`;
}

const hex = (number: number): string => number.toString(16).padStart(4, "0");
