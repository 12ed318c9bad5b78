import fontkit from "@pdf-lib/fontkit";
import { expect, test } from "vitest";
import { readFonts } from "../../scripts/font.js";
import { missingGlyphs, textWidth, wrapText } from "../../src/drawing/text.js";

const fonts = readFonts();

test.each(["regular", "bold"] as const)("%s: figures are of even width", (weight) =>
  expect(new Set([..."0123456789"].map((figure) => textWidth(figure, 1, weight))).size).toBe(1),
);

test.each(["regular", "bold"] as const)("%s: a text is as wide as the font sets it with kerning off", (weight) => {
  const font = fontkit.create(fonts[weight]);
  for (const text of ["Cross slide, Ø 38.17 mm ±0.02", "AVATAR To WAY", "½ turn × 12 − 0.001″"]) {
    const { glyphs } = font.layout(text, { kern: false, liga: false });
    const units = glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0);
    expect(textWidth(text, 3.2, weight)).toBeCloseTo((units * 3.2) / font.unitsPerEm, 9);
  }
});

test("what the font lacks is named, and what it has is not", () => {
  expect(missingGlyphs("½ ° × Ø µ − ± ′ ″ · – —", "bold")).toEqual([]);
  expect(missingGlyphs("π ≤ 3", "regular")).toEqual(["π", "≤"]);
});

test("wrapped lines keep every word in order and stay within the width", () => {
  const text = "Never change a belt before the plug is drawn and the spindle stands still";
  const lines = wrapText(text, 30, 3, "regular");
  expect(lines.join(" ")).toBe(text);
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) expect(textWidth(line, 3, "regular")).toBeLessThanOrEqual(30);
});
