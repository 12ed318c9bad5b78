import type { Weight } from "../../drawing/drawing.js";
import { textWidth, wrapText } from "../../drawing/text.js";

/** Cut short with a sign where there is no room for it all: behind a whole word, as long as the most of what has room still stands. */
export function shortened(words: string, room: number, em: number, weight: Weight): string {
  if (textWidth(words, em, weight) <= room) return words;
  // By whole letters, each measured once.
  const letters = [...words];
  let used = textWidth("…", em, weight);
  const end = letters.findIndex((letter) => {
    used += textWidth(letter, em, weight);
    return used > room;
  });
  const kept = letters.slice(0, Math.max(1, end)).join("");
  const whole = letters[end] === " " ? kept : kept.slice(0, Math.max(0, kept.lastIndexOf(" ")));
  return `${(whole.length >= kept.length * LEAST_SHARE ? whole : kept).replace(/[\s,;:.–-]+$/, "")}…`;
}

/** So much of what has room is kept where a word's end is looked for. */
const LEAST_SHARE = 0.5;

/** In so many lines at most, the last of them cut short where the words go on. */
export function fewLines(words: string, most: number, room: number, em: number, weight: Weight): string[] {
  const lines = wrapText(words, room, em, weight);
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), shortened(lines.slice(most - 1).join(" "), room, em, weight)];
}

/** A name in one line of the first of these sizes that holds it, else in two of the last: what stands at its end tells two machines
 *  apart. Cut short only where two lines are too few. */
export function nameLines(
  words: string,
  room: number,
  sizes: readonly [number, ...number[]],
  weight: Weight,
): { readonly lines: readonly string[]; readonly em: number } {
  const em = sizes.find((own) => textWidth(words, own, weight) <= room);
  if (em !== undefined) return { lines: [words], em };
  const least = sizes.at(-1) ?? sizes[0];
  return { lines: fewLines(words, 2, room, least, weight), em: least };
}

/** True of letters that neither reach below the line nor bear anything above. */
export const onlyCapitals = (words: string): boolean => /^[A-PR-Z0-9 +.]*$/.test(words);
