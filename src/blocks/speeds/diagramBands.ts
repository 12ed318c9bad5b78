import type { Mark } from "../../drawing/drawing.js";
import { line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { largestOf } from "../../quantity/extremes.js";
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

/** Across one band's bar: two lines of its name. */
export const barWidth = 5.8;

/** A bar for each material in a column of its own, left of the frame, its name inside it or in the free part of its column (no shade behind it,
 *  which a printer of one ink makes into dots); its edges
 *  go on across the frame in dashes of their own. */
export function bandMarks(bands: readonly Band[], y: Scale, left: number, frame: Frame): Mark[] {
  return bands.flatMap((band, index): Mark[] => {
    const edge = pen(weight.axis, "black", dashes[index % dashes.length]);
    const at = left + index * barWidth;
    const [top, bottom] = [y(band.most), y(band.least)];
    const levels = band.least === band.most ? [top] : [top, bottom];
    return [
      ...levels.map((level) => line({ x: frame.left, y: level }, { x: frame.right, y: level }, edge)),
      rectangle({ x: at + 0.3, y: top }, barWidth - 0.6, Math.max(0.4, bottom - top), {
        pen: objectLine,
        fill: "white",
      }),
      ...nameMarks(at + barWidth / 2, top, bottom, placed(band.material, top, bottom, frame)),
    ];
  });
}

/** The names of which only the beginning has room at their bars. */
export function cutNames(bands: readonly Band[], y: Scale, frame: Frame): string[] {
  return bands.flatMap(({ material, least, most }) =>
    placed(material, y(most), y(least), frame).cut ? [material] : [],
  );
}

/** Where a name stands, in which lines. */
type Placed = {
  readonly lines: readonly string[];
  readonly em: number;
  readonly where: "inside" | "above" | "below";
  readonly cut?: true;
};

/** Inside the bar where it fits, else in the larger free part of its column, smaller or in two lines; of a name that is longer than
 *  that the beginning. */
function placed(name: string, top: number, bottom: number, frame: Frame): Placed {
  const [above, below] = [top - frame.top - 1.5, frame.bottom - bottom - 1.5];
  const where = above >= below ? "above" : "below";
  const room = Math.max(above, below);
  for (const own of [size.text, size.source]) {
    const long = textWidth(name, own, "regular");
    if (long + 3 <= bottom - top) return { lines: [name], em: own, where: "inside" };
    if (long <= room) return { lines: [name], em: own, where };
  }
  const small = size.source;
  const widest = (lines: readonly string[]) => largestOf(lines.map((part) => textWidth(part, small, "regular")));
  const [first = "", ...more] = wrapText(name, room, small, "regular");
  if (more.length === 1 && widest([first, ...more]) <= room) return { lines: [first, ...more], em: small, where };
  const [begun = ""] = wrapText(name, Math.max(1, room - textWidth("…", small, "regular")), small, "regular");
  return { lines: [`${begun.replace(/,$/, "")}…`], em: small, where, cut: true };
}

/** From one line of a name to the next, in ems: what hangs below the one is clear of what rises from the other. */
const LINE = 1.2;

function nameMarks(middle: number, top: number, bottom: number, { lines, em, where }: Placed): Mark[] {
  const style = { size: em, turn: -Math.PI / 2 } as const;
  return lines.map((part, line) => {
    const x = middle + em * 0.3 + (line - (lines.length - 1) / 2) * em * LINE;
    return where === "inside"
      ? text(part, { x, y: (top + bottom) / 2 }, { ...style, anchor: "middle" })
      : where === "above"
        ? text(part, { x, y: top - 1.2 }, { ...style, anchor: "start" })
        : text(part, { x, y: bottom + 1.2 }, { ...style, anchor: "end" });
  });
}
