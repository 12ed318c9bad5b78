import fontkit from "@pdf-lib/fontkit";
import { describe, expect, test } from "vitest";
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

describe("what belongs together stands on one line", () => {
  /** The widths, from where it has room, at which a text is parted there. */
  const parted = (text: string, together: string): number[] =>
    Array.from({ length: 40 }, (_, index) => textWidth(`(${together})`, 3, "regular") + 5 + index).filter(
      (width) => !wrapText(text, width, 3, "regular").some((line) => line.includes(together)),
    );
  test.each([
    ["1 1/2", "a bar that is 1 1/2 in thick, and long enough"],
    ["1 1/2 in", "a bar that is 1 1/2 in thick, and long enough"],
    ["5 mm", "let it stand out 5 mm, no more than that"],
    ["5 mm)", "let it stand out (by 5 mm) no more than that"],
    ["5 div : 1 s", "feed by the carriage: 5 div : 1 s at the most"],
    ["0.1 mm/turn", "fed at about 0.1 mm/turn and without a halt"],
    ["± 0.05 mm", "diameter 14.00 mm ± 0.05 mm, parts alike"],
    ["0,5 mm × 45°", "eine Fase mit 0,5 mm × 45° am Ende des Stifts"],
    ["475 U/min", "die Spindel läuft hier 475 U/min im Mittel"],
    ["II A", "nearly the same: I B and II A; the others are apart"],
    ["III IV", "the belt lies on III IV, as it is drawn on the card"],
    ["B 2", "go on with B 2, the next one to it"],
    ["M8 × 1", "then tap it M8 × 1 as deep as it will go"],
  ])("%s", (together, text) => expect(parted(text, together)).toEqual([]));

  test("where the line is narrower than that it parts between words all the same", () => {
    for (const line of wrapText("5 div : 1 s", 5, 3, "regular"))
      expect(textWidth(line, 3, "regular")).toBeLessThanOrEqual(5);
  });
});

test("a sign stays with what it stands for, and a number with its no.", () => {
  const lines = (words: string, width: number) => wrapText(words, width, 3.2, "regular");
  for (let width = 24; width < 60; width += 0.5) {
    for (const line of lines("A = large step · 1 = main drive slow", width)) expect(line).not.toMatch(/^=|=$/);
    for (const line of lines("School bench drill No. 3", width)) expect(line).not.toMatch(/No\.$/);
  }
});
