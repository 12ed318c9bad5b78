import { advances } from "./advances.generated.js";
import type { Weight } from "./drawing.js";
import { hyphenAt } from "./hyphen.js";
import { piecesOf } from "./together.js";

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

/** What sums of widths may differ by, mm. */
const HAIR = 1e-6;

/** Breaks words into lines no wider than `width`, a figure and its unit on one of them where they have room. A word that is wider
 *  alone is broken too: behind a hyphen, stroke or point where it has one, else with a hyphen between letters. */
export function wrapText(text: string, width: number, size: number, weight: Weight): string[] {
  const space = advance(" ", weight);
  const lines: string[] = [];
  let line = "";
  let units = 0;
  const fits = (piece: string) => mm(advance(piece, weight), size) <= width + HAIR;
  for (const word of piecesOf(text).flatMap((piece) => (fits(piece) ? [piece] : piece.split(" ")))) {
    for (const [index, part] of broken(word, width, size, weight).entries()) {
      const own = advance(part, weight);
      if (line === "") [line, units] = [part, own];
      // Parts of one word follow each other without a space.
      else if (index > 0 || mm(units + space + own, size) > width + HAIR) {
        lines.push(line);
        [line, units] = [part, own];
      } else {
        line += ` ${part}`;
        units += space + own;
      }
    }
  }
  return [...lines, line];
}

/** A word in parts no wider than `width`; itself where it is none too wide. */
function broken(word: string, width: number, size: number, weight: Weight): string[] {
  if (mm(advance(word, weight), size) <= width + HAIR) return [word];
  const letters = [...word];
  const parts: string[] = [];
  for (let from = 0; from < letters.length; ) {
    let to = from + 1;
    while (to < letters.length && mm(advance(letters.slice(from, to + 1).join(""), weight), size) <= width + HAIR) to++;
    const seam = letters.slice(from, to).findLastIndex((letter) => /[-–/_.,:]/.test(letter));
    const parted = to < letters.length && seam > 0 ? from + seam + 1 : undefined;
    const hyphen =
      to < letters.length && parted === undefined ? hyphenIn(letters, from, to, width, size, weight) : undefined;
    const end = parted ?? hyphen ?? to;
    parts.push(letters.slice(from, end).join("") + (hyphen === undefined ? "" : "-"));
    from = end;
  }
  return parts;
}

/** Where a word breaks so that its hyphen has room too. */
function hyphenIn(
  letters: readonly string[],
  from: number,
  to: number,
  width: number,
  size: number,
  weight: Weight,
): number | undefined {
  let most = to;
  while (most > from && mm(advance(`${letters.slice(from, most).join("")}-`, weight), size) > width + HAIR) most--;
  return hyphenAt(letters, from, most);
}

/** Width of the widest word of a text, where even what belongs together is parted. */
export const widestAlone = (text: string, size: number, weight: Weight): number =>
  Math.max(0, ...text.split(/\s+/).map((word) => textWidth(word, size, weight)));

/** Width of the widest part of a text that is not broken unless it must be. */
export const widestWord = (text: string, size: number, weight: Weight): number =>
  Math.max(0, ...piecesOf(text).map((piece) => textWidth(piece, size, weight)));

/** Characters of a text that the font cannot show. */
export const missingGlyphs = (text: string, weight: Weight): string[] =>
  [...text].filter((char) => advances[weight][char] === undefined);
