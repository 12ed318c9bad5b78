import type { Graduation } from "../../dial/finding.js";
import { lineWidth } from "../../dial/legibility.js";
import type { Mark } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { digitHeight } from "../../drawing/typeSizes.js";
import { pen, weight } from "../shared/style.js";
import type { Surface } from "./surface.js";

export { digitHeight };

export type ScaleStyle = {
  /** Where the band of this scale begins, mm from the reading edge. */
  readonly across: number;
  /** Lengths of the three ranks of mark, mm, longest first. */
  readonly marks: readonly [number, number, number];
  /** Distance of neighbouring marks on paper, mm, where it may be too small for the usual lines. */
  readonly spacing?: number;
  /** Em size of the numbers; 0 where there is no room for any. */
  readonly number: number;
  /** Between the longest marks and the numbers, mm: less than usual in low bands, where nothing has room to spare. */
  readonly above?: number;
  readonly tight?: boolean;
  /** What the marks run over the edge at which they are read, mm. */
  readonly bleed?: number;
  /** The unit, which hangs beside a number without moving it, and where its middle lies along the scale. */
  readonly unit?: { readonly words: string; readonly along: number };
  /** What the widest number takes for each mm of its em, where numbers stand across the band. */
  readonly tall?: number;
};

const penWidth = [0.25, 0.18, 0.13] as const;

/** Between the longest marks and the numbers where a style says nothing else, mm. */
export const numbersAbove = 0.3;

/** Middle of the numbers, mm from the reading edge: below the longest marks. */
export const numbersAcross = ({
  across,
  marks,
  number,
  tall = digitHeight,
  above = numbersAbove,
}: ScaleStyle): number => across + marks[0] + above + (number * tall) / 2;

/** Marks and numbers of one scale on its paper, as groups: `graduations` holding `rank 1` to `rank 3`, and `numbers`. */
export function scaleMarks(surface: Surface, marks: readonly Graduation[], style: ScaleStyle): Mark[] {
  const ranks = ([1, 2, 3] as const).map((rank) => {
    const wished = penWidth[(rank - 1) as 0 | 1 | 2];
    const stroke = pen(Math.max(weight.axis, lineWidth(wished, style.spacing ?? 1)));
    return group(
      { x: 0, y: 0 },
      marks
        .filter((mark) => mark.rank === rank)
        .map(({ angle, part }) =>
          line(
            surface.at(angle, style.across - (style.bleed ?? 0)),
            surface.at(
              angle,
              style.across + (part === undefined ? style.marks[(rank - 1) as 0 | 1 | 2] : part * style.marks[0]),
            ),
            stroke,
          ),
        ),
      { name: `rank ${rank}` },
    );
  });
  const middle = numbersAcross(style);
  const { unit } = style;
  const numbers =
    style.number === 0
      ? []
      : [
          ...marks.flatMap(({ angle, label }) =>
            label === undefined ? [] : [textAt(surface, angle, middle, label, style.number, "bold")],
          ),
          ...(unit ? [textAt(surface, unit.along, middle, unit.words, style.number)] : []),
        ];
  return [
    group({ x: 0, y: 0 }, ranks, { name: "graduations" }),
    ...(numbers.length > 0 ? [group({ x: 0, y: 0 }, numbers, { name: "numbers" })] : []),
  ];
}

/** A mark of a piece, its number left out where a cut would touch that. `perAlong`: mm of paper for one of the scale's measure. */
export function clearOfEnds(
  mark: Graduation,
  { from, to }: { readonly from: number; readonly to: number },
  { number }: Pick<ScaleStyle, "number">,
  perAlong = 1,
): Graduation {
  if (mark.label === undefined) return mark;
  const half = (textWidth(mark.label, number, "bold") / 2 + 0.3) / perAlong;
  const { label: _, ...bare } = mark;
  return mark.angle - from > half && to - mark.angle > half ? mark : bare;
}

/** Between a number and the next, so that a unit can hang beside it, mm. */
export const hangRoom = (unit: string, number: number): number => {
  const { middle, half } = hanging("", unit, number);
  return middle + half + HUNG_CLEAR + 1e-6;
};

/** Between a unit and the next number, mm. */
export const HUNG_CLEAR = 0.5;

/** Where a unit hangs beside its number: its middle from the number's, and half of what it takes, mm. */
export function hanging(label: string, unit: string, number: number) {
  const half = textWidth(unit, number, "regular") / 2;
  const space = unit === "°" ? 0 : 0.35 * number;
  return { middle: textWidth(label, number, "bold") / 2 + space + half, half };
}

/** One word whose middle lies at a place of the scale, upright for who reads it there. */
export function textAt(
  surface: Surface,
  along: number,
  across: number,
  words: string,
  size: number,
  weight: "regular" | "bold" = "regular",
): Mark {
  const turn = surface.turn(along);
  const { x, y } = surface.at(along, across);
  const drop = (size * digitHeight) / 2;
  return text(
    words,
    { x: x - Math.sin(turn) * drop, y: y + Math.cos(turn) * drop },
    { size, weight, anchor: "middle", ...(turn !== 0 && { turn }) },
  );
}

/** A line of words bent along the scale, its middle at `along`, each letter square to it; upright as textAt does. */
export function textAlong(
  surface: Surface,
  along: number,
  across: number,
  words: string,
  size: number,
  perAlong: number,
  leftward: boolean,
): Mark[] {
  let at = -textWidth(words, size, "regular") / 2;
  return [...words].flatMap((letter): Mark[] => {
    const width = textWidth(letter, size, "regular");
    const middle = at + width / 2;
    at += width;
    if (letter === " ") return [];
    return [textAt(surface, along + ((leftward ? -1 : 1) * middle) / perAlong, across, letter, size)];
  });
}
