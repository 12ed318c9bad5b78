import { inflateSync } from "node:zlib";
import fontkit from "@pdf-lib/fontkit";
import fc from "fast-check";
import { PDFArray, PDFDict, PDFDocument, PDFName, type PDFRawStream } from "pdf-lib";
import { describe, expect, test } from "vitest";
import { readFonts } from "../../scripts/font.js";
import { text } from "../../src/drawing/shapes.js";
import { advance } from "../../src/drawing/text.js";
import { glyphNumber } from "../../src/output/glyphNumber.js";
import { glyphOrder } from "../../src/output/glyphOrder.generated.js";
import { glyphOutline, type Stroke } from "../../src/output/glyphOutline.js";
import { outlined } from "../../src/output/outlines.js";
import { fontName } from "../../src/output/pdfContent.js";
import { boundingBox, subset } from "../../src/output/trueType.js";
import { pdfOf } from "../support/pdfOf.js";

const fonts = readFonts();
const weights = ["regular", "bold"] as const;
const letters = [...glyphOrder].filter((letter) => letter !== "\0");

const svgOf = (outline: readonly Stroke[]): string =>
  outline
    .map((one) => {
      if (one.to === "close") return "Z";
      return one.to === "bend"
        ? `Q${one.x1} ${one.y1} ${one.x} ${one.y}`
        : `${one.to === "move" ? "M" : "L"}${one.x} ${one.y}`;
    })
    .join("");

describe.each(weights)("%s", (weight) => {
  const whole = fontkit.create(fonts[weight]);

  test("whatever letters are kept, each draws as in the whole font, under its own number, and no other draws anything", () =>
    fc.assert(
      fc.property(fc.subarray(letters), (kept) => {
        const numbers = new Set(kept.map(glyphNumber));
        const font = fontkit.create(subset(fonts[weight], numbers));
        expect(font.numGlyphs).toBe(whole.numGlyphs);
        for (let number = 0; number < whole.numGlyphs; number++) {
          const drawn = font.getGlyph(number).path.toSVG();
          expect(drawn).toBe(numbers.has(number) ? whole.getGlyph(number).path.toSVG() : "");
          expect(font.getGlyph(number).advanceWidth).toBe(whole.getGlyph(number).advanceWidth);
        }
      }),
      { numRuns: 20 },
    ));

  test("every letter has the number, the outline and the advance of its glyph", () => {
    for (const letter of letters) {
      const glyph = whole.glyphForCodePoint(letter.codePointAt(0) ?? 0);
      expect(glyphNumber(letter)).toBe(glyph.id);
      expect(svgOf(glyphOutline(fonts[weight], letter))).toBe(glyph.path.toSVG());
      expect(advance(letter, weight)).toBe(glyph.advanceWidth);
    }
  });

  test("the outer box is the font's own", () => {
    const { minX, minY, maxX, maxY } = whole.bbox;
    expect(boundingBox(fonts[weight])).toEqual([minX, minY, maxX, maxY]);
  });
});

test.each(weights)("a PDF shows each letter by the outline of that letter: %s", async (weight) => {
  const words = letters.join("");
  const mark = text(words, { x: 10, y: 10 }, { size: 3, weight });
  const page = { title: "P", drawing: { width: 210, height: 297, marks: [mark] } };
  const pdf = await PDFDocument.load(await pdfOf({ sheet: "trial", title: "T", pages: [page] }));
  const { node } = pdf.getPage(0);
  const unpacked = (stream: unknown) => inflateSync((stream as PDFRawStream).contents);
  const codes = /<([0-9a-f]+)> Tj/.exec(unpacked(node.lookup(PDFName.of("Contents"))).toString("latin1"))?.[1] ?? "";
  const type0 = node.Resources()?.lookup(PDFName.of("Font"), PDFDict).lookup(PDFName.of(fontName[weight]), PDFDict);
  const descendant = type0?.lookup(PDFName.of("DescendantFonts"), PDFArray).lookup(0, PDFDict);
  const descriptor = descendant?.lookup(PDFName.of("FontDescriptor"), PDFDict);
  const shown = fontkit.create(unpacked(descriptor?.lookup(PDFName.of("FontFile2"))));
  const whole = fontkit.create(fonts[weight]);
  expect(codes.length).toBe(4 * letters.length);
  for (const [index, letter] of letters.entries()) {
    const number = Number.parseInt(codes.slice(4 * index, 4 * index + 4), 16);
    expect(shown.getGlyph(number).path.toSVG()).toBe(whole.glyphForCodePoint(letter.codePointAt(0) ?? 0).path.toSVG());
  }
});

test("a letter that the font lacks is its empty box, in outlines as in a PDF", () => {
  const mark = text("\u2126", { x: 10, y: 10 }, { size: 3, weight: "bold" });
  const page = { title: "P", drawing: { width: 210, height: 297, marks: [mark] } };
  const [drawn] = outlined({ sheet: "trial", title: "T", pages: [page] }, fonts).pages;
  const [letter] = drawn?.drawing.marks ?? [];
  expect(glyphNumber("\u2126")).toBe(0);
  expect(fontkit.create(fonts.bold).getGlyph(0).path.toSVG()).toBe(svgOf(glyphOutline(fonts.bold, "\u2126")));
  expect(letter?.kind === "group" && letter.marks.length).toBe(1);
});
