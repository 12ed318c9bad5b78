import type { Weight } from "../../drawing/drawing.js";
import { textWidth, wrapText } from "../../drawing/text.js";

/** Cut short with a sign where there is no room for it all. */
export function shortened(words: string, room: number, em: number, weight: Weight): string {
  if (textWidth(words, em, weight) <= room) return words;
  let kept = words;
  while (kept.length > 1 && textWidth(`${kept}…`, em, weight) > room) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}…`;
}

/** In so many lines at most, the last of them cut short where the words go on. */
export function fewLines(words: string, most: number, room: number, em: number, weight: Weight): string[] {
  const lines = wrapText(words, room, em, weight);
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), shortened(lines.slice(most - 1).join(" "), room, em, weight)];
}

/** True of letters that neither reach below the line nor bear anything above. */
export const onlyCapitals = (words: string): boolean => /^[A-PR-Z0-9 +.]*$/.test(words);
