import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, polyline, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { axisLine, objectLine, rowLine, size } from "../shared/style.js";
import { apart } from "./apart.js";

/** A drill, reamer or thread on the axis: what is stamped on it, beside it the decimals where that is no number, and its diameter, mm. */
export type Sized = { readonly name: string; readonly decimals?: string; readonly diameter: number };

/** Diameters by ratio, so that positions evenly spread by ratio are equally long. */
export type Axis = {
  readonly width: number;
  readonly from: number;
  readonly to: number;
  readonly sizes: readonly Sized[];
  /** Where a diameter lies, mm from the left. */
  place(diameter: number): number;
};

/** From just below the smallest to the largest: what lies beyond is none of the drills. A single one has a bar to either side of it, up
 *  to the most there is (mm). */
export function axisOf(sizes: readonly Sized[], most: number, width: number): Axis {
  const diameters = sizes.map(({ diameter }) => diameter);
  const [least, largest] = [smallestOf(diameters), largestOf(diameters)];
  const from = least / 1.04;
  const to = largest / least > 1.1 ? largest : Math.max(largest, Math.min(most, 1.3 * largest));
  const place = (diameter: number) => (width * Math.log(diameter / from)) / Math.log(to / from);
  return { width, from, to, sizes, place };
}

/** Between two labels side by side, and from one upright label to the next. */
const between = 1.6;
const upright = 1.1 * size.text;
const tick = 1.4;
const leader = 2.6;

/** What is stamped on the drills, over the line that the bars hang from. Where there are too many to stand level they stand upright; of
 *  still more every other is named. */
export function axisDrawing({ width, sizes, place }: Axis): Drawing {
  const lines = (one: Sized) => (one.decimals === undefined ? [one.name] : [one.name, one.decimals]);
  const wide = (words: string) => textWidth(words, size.text, "bold");
  const widest = largestOf(sizes.flatMap(lines).map(wide));
  const level = sizes.length * (widest + between) <= width;
  const every = level ? 1 : Math.ceil((sizes.length * upright) / width);
  const named = sizes.filter((_, index) => (sizes.length - 1 - index) % every === 0);
  const step = level ? widest + between : upright;
  const places = apart(
    named.map(({ diameter }) => place(diameter)),
    step,
    step / 2,
    width - step / 2,
  );
  const rows = largestOf(named.map((one) => lines(one).length));
  const tall = level
    ? rows * size.text * 1.15
    : Math.max(...named.map((one) => lines(one).reduce((sum, words) => sum + wide(words) + between, 0)));
  const y = tall + leader + tick + 0.4;
  const labels = named.flatMap((one, index): Mark[] => {
    const x = places[index] as number;
    const words = lines(one);
    if (level)
      return words.map((part, row) =>
        text(
          part,
          { x, y: tall - (words.length - 1 - row) * size.text * 1.15 - 0.25 * size.text },
          { size: size.text, anchor: "middle", weight: row === 0 ? "bold" : "regular" },
        ),
      );
    const at = x + size.text * 0.36;
    const [name = "", decimals] = words;
    return [
      text(name, { x: at, y: tall - 0.4 }, { size: size.text, weight: "bold", turn: -Math.PI / 2 }),
      ...(decimals === undefined
        ? []
        : [text(decimals, { x: at, y: tall - 0.4 - wide(name) - between }, { size: size.text, turn: -Math.PI / 2 })]),
    ];
  });
  const leaders = named.map(({ diameter }, index) =>
    polyline(
      [
        { x: places[index] as number, y: tall + 0.4 },
        { x: place(diameter), y: y - tick },
      ],
      { pen: axisLine },
    ),
  );
  return {
    width,
    height: y + 0.3,
    marks: [
      ...labels,
      ...leaders,
      group(
        { x: 0, y: 0 },
        sizes.map(({ diameter }) => line({ x: place(diameter), y: y - tick }, { x: place(diameter), y }, rowLine)),
        { name: "drills" },
      ),
      line({ x: 0, y }, { x: width, y }, objectLine),
    ],
  };
}
