import type { Mark } from "../../drawing/drawing.js";
import { line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { objectLine, pen, size, weight } from "../shared/style.js";
import type { Frame, Scale } from "./diagramScales.js";

/** In the units of the scale upwards. */
export type Band = { readonly material: string; readonly least: number; readonly most: number };

/** Dashes by which bands are told apart without colour. */
const dashes: readonly (readonly number[] | undefined)[] = [
  undefined,
  [2.4, 1],
  [0.7, 0.7],
  [3, 0.8, 0.7, 0.8],
  [5, 1.5],
];

/** Across one band's bar; where there are many they are as narrow as the least letters allow. */
export const barWidth = (count: number): number => (count <= 8 ? 5 : 4.2);

/** A bar for each material in a column of its own, left of the frame, its name inside it or in the free part of its column (no shade behind it,
 *  which a printer of one ink makes into dots); its edges
 *  go on across the frame in dashes of their own. */
export function bandMarks(bands: readonly Band[], y: Scale, left: number, frame: Frame): Mark[] {
  const wide = barWidth(bands.length);
  const em = wide < 5 ? size.source : size.text;
  return bands.flatMap((band, index): Mark[] => {
    const edge = pen(weight.axis, "black", dashes[index % dashes.length]);
    const at = left + index * wide;
    const [top, bottom] = [y(band.most), y(band.least)];
    const levels = band.least === band.most ? [top] : [top, bottom];
    return [
      ...levels.map((level) => line({ x: frame.left, y: level }, { x: frame.right, y: level }, edge)),
      rectangle({ x: at + 0.3, y: top }, wide - 0.6, Math.max(0.4, bottom - top), { pen: objectLine, fill: "white" }),
      ...barName(band.material, at + wide / 2, top, bottom, frame, em),
    ];
  });
}

/** Turned, inside the bar where it fits, else in the larger free part of its column; of a name that is longer than that the beginning. */
function barName(name: string, middle: number, top: number, bottom: number, frame: Frame, em: number): Mark[] {
  const long = textWidth(name, em, "regular");
  const style = { size: em, turn: -Math.PI / 2 } as const;
  const x = middle + em * 0.3;
  if (long + 3 <= bottom - top) return [text(name, { x, y: (top + bottom) / 2 }, { ...style, anchor: "middle" })];
  const [above, below] = [top - frame.top - 1.5, frame.bottom - bottom - 1.5];
  const room = Math.max(above, below);
  if (long > room && em > size.source) return barName(name, middle, top, bottom, frame, size.source);
  const shown = long <= room ? name : `${wrapText(name, room - textWidth("…", em, "regular"), em, "regular")[0]}…`;
  return above >= below
    ? [text(shown, { x, y: top - 1.2 }, { ...style, anchor: "start" })]
    : [text(shown, { x, y: bottom + 1.2 }, { ...style, anchor: "end" })];
}
