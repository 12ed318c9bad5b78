import { readFonts } from "../../scripts/font.js";
import { advances, heights } from "../../src/drawing/advances.generated.js";
import type { Point, TextMark, Weight } from "../../src/drawing/drawing.js";
import { textWidth } from "../../src/drawing/text.js";
import { glyphOutline } from "../../src/output/glyphOutline.js";
import type { Box } from "./boxes.js";

type Bounds = { readonly left: number; readonly right: number; readonly low: number; readonly high: number };

const fonts = readFonts();
const known: Readonly<Record<Weight, Map<string, Bounds | undefined>>> = { regular: new Map(), bold: new Map() };

/** What a letter blackens, font units, y up; undefined for one without ink. Bends reach their outermost on the outline
 *  itself, so that their control points add nothing. */
function boundsOf(letter: string, weight: Weight): Bounds | undefined {
  if (known[weight].has(letter)) return known[weight].get(letter);
  const strokes = glyphOutline(fonts[weight], letter);
  const xs = strokes.flatMap((one) => (one.to === "close" ? [] : one.to === "bend" ? [one.x1, one.x] : [one.x]));
  const ys = strokes.flatMap((one) => (one.to === "close" ? [] : one.to === "bend" ? [one.y1, one.y] : [one.y]));
  const bounds =
    xs.length === 0
      ? undefined
      : { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
  known[weight].set(letter, bounds);
  return bounds;
}

/** The ink of a text: a box for all of it, and one for each letter that has any, worked out when it is asked for. `place` and
 *  `turned` take the text's own surroundings to the page. Undefined where there is no ink. */
export function inkOfText(
  mark: TextMark,
  place: (point: Point) => Point,
  turned: number,
): { whole: Box; letters: () => readonly Box[] } | undefined {
  const scale = mark.size / advances.unitsPerEm;
  const width = textWidth(mark.text, mark.size, mark.weight);
  const start = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? -width / 2 : -width;
  const own = mark.turn ?? 0;
  const [cos, sin] = [Math.cos(own), Math.sin(own)];
  const box = (left: number, right: number, low: number, high: number): Box => {
    const [u, v] = [(left + right) / 2, -(low + high) / 2];
    const { x, y } = place({ x: mark.at.x + u * cos - v * sin, y: mark.at.y + u * sin + v * cos });
    return { x, y, along: (right - left) / 2, across: (high - low) / 2, turn: turned + own };
  };
  let pen = start;
  let [left, right, low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
  for (const letter of mark.text) {
    const bounds = boundsOf(letter, mark.weight);
    if (bounds !== undefined) {
      [low, high] = right < left ? [bounds.low, bounds.high] : [Math.min(low, bounds.low), Math.max(high, bounds.high)];
      left = Math.min(left, pen + bounds.left * scale);
      right = Math.max(right, pen + bounds.right * scale);
    }
    pen += textWidth(letter, mark.size, mark.weight);
  }
  if (right < left) return undefined;
  let letters: Box[] | undefined;
  const each = () => {
    let at = start;
    let before: number | undefined;
    const boxes: Box[] = [];
    for (const letter of mark.text) {
      const bounds = boundsOf(letter, mark.weight);
      if (bounds !== undefined) {
        const [from, to] = [at + bounds.left * scale, at + bounds.right * scale];
        boxes.push(box(from, to, bounds.low * scale, bounds.high * scale));
        // What runs between two letters parts the word as well.
        if (before !== undefined && from > before)
          boxes.push(box(before, from, 0, heights[mark.weight].xHeight * scale));
        before = to;
      }
      at += textWidth(letter, mark.size, mark.weight);
    }
    return boxes;
  };
  return {
    whole: box(left, right, low * scale, high * scale),
    letters: () => {
      letters ??= each();
      return letters;
    },
  };
}
