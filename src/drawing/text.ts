import { advances } from "./advances.generated.js";
import type { Weight } from "./drawing.js";

/** Font units from one letter to the next; a letter that the font lacks takes the room of a figure. */
export const advance = (letter: string, weight: Weight): number =>
  advances[weight][letter] ?? advances[weight]["0"] ?? 0;

/** Width, mm, of one line of text set at `size` mm em. Kerning is off in every renderer, so widths simply add up. */
export function textWidth(text: string, size: number, weight: Weight): number {
  let units = 0;
  for (const letter of text) units += advance(letter, weight);
  return (units * size) / advances.unitsPerEm;
}

/** Breaks words into lines no wider than `width`; a single longer word stands alone. */
export function wrapText(text: string, width: number, size: number, weight: Weight): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && textWidth(longer, size, weight) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}

/** Characters of a text that the font cannot show. */
export const missingGlyphs = (text: string, weight: Weight): string[] =>
  [...text].filter((char) => advances[weight][char] === undefined);
