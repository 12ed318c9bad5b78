import { advances } from "./advances.generated.js";
import type { Weight } from "./drawing.js";

/** Width, mm, of one line of text set at `size` mm em. Kerning is off in every renderer, so widths simply add up. */
export const textWidth = (text: string, size: number, weight: Weight): number => mm(advance(text, weight), size);

const mm = (units: number, size: number): number => (units * size) / advances.unitsPerEm;

/** Every sheet measures thousands of texts, so letters are looked up by their code. */
const byCode: Readonly<Record<Weight, Uint16Array>> = { regular: table("regular"), bold: table("bold") };

function table(weight: Weight): Uint16Array {
  const entries = Object.entries(advances[weight]);
  const widths = new Uint16Array(Math.max(...entries.map(([letter]) => letter.charCodeAt(0))) + 1);
  widths.fill(advances[weight]["0"] ?? 0);
  for (const [letter, units] of entries) widths[letter.charCodeAt(0)] = units;
  return widths;
}

/** Font units from the beginning of a text to its end; a letter that the font lacks takes the room of a figure. */
export function advance(text: string, weight: Weight): number {
  const widths = byCode[weight];
  const lacking = widths[0] as number;
  let units = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    // The second half of a surrogate pair belongs to the letter before.
    if (code < 0xdc00 || code > 0xdfff) units += widths[code] ?? lacking;
  }
  return units;
}

/** Breaks words into lines no wider than `width`; a single longer word stands alone. */
export function wrapText(text: string, width: number, size: number, weight: Weight): string[] {
  const space = advance(" ", weight);
  const lines: string[] = [];
  let line = "";
  let units = 0;
  for (const word of text.split(/\s+/)) {
    const own = advance(word, weight);
    if (line === "") [line, units] = [word, own];
    else if (mm(units + space + own, size) > width) {
      lines.push(line);
      [line, units] = [word, own];
    } else {
      line += ` ${word}`;
      units += space + own;
    }
  }
  return [...lines, line];
}

/** Characters of a text that the font cannot show. */
export const missingGlyphs = (text: string, weight: Weight): string[] =>
  [...text].filter((char) => advances[weight][char] === undefined);
