import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { axisLine, objectLine, rowLine, size } from "../shared/style.js";

/** A drill, reamer or thread on the axis: what is stamped on it, beside it the decimals where that is no number, and its diameter, mm. */
export type Sized = {
  readonly name: string;
  readonly decimals?: string;
  readonly diameter: number;
  /** One of the file's drills: named beside its neighbour where it has no room of its own. */
  readonly owned?: boolean;
};

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

/** What is stamped on the drills, over the line that the bars hang from, each exactly over its own tick: whoever looks straight down from
 *  it must meet its belt. Where they do not stand level they stand upright; where not even so, the rounder sizes are named, each of the file's own in line with the nearest of them. */
export function axisDrawing({ width, sizes, place }: Axis): Drawing {
  const lines = (one: Sized) => (one.decimals === undefined ? [one.name] : [one.name, one.decimals]);
  const wide = (words: string) => textWidth(words, size.text, "bold");
  const levelRoom = (one: Sized) => largestOf(lines(one).map(wide)) + between;
  const level = inPlace(sizes, place, width, levelRoom).length === sizes.length;
  const roomOf = level ? levelRoom : () => upright;
  const named = inPlace(sizes, place, width, roomOf);
  const rows = largestOf(named.map((one) => lines(one).length));
  const joined = joinedTo(named, sizes, place);
  const standing = (one: Sized) => {
    const [also] = joined.filter(([to]) => to === one).map(([, other]) => other.name);
    return also === undefined ? lines(one) : [...lines(one), "·", also];
  };
  const tall = level
    ? rows * size.text * 1.15
    : Math.max(...named.map((one) => standing(one).reduce((sum, words) => sum + wide(words) + between, 0)));
  const y = tall + leader + tick + 0.4;
  const labels = named.flatMap((one): Mark[] => {
    const x = within(place(one.diameter), roomOf(one), width);
    if (level) {
      const words = lines(one);
      return words.map((part, row) =>
        text(
          part,
          { x, y: tall - (words.length - 1 - row) * size.text * 1.15 - 0.25 * size.text },
          { size: size.text, anchor: "middle", weight: row === 0 ? "bold" : "regular" },
        ),
      );
    }
    let y = tall - 0.4;
    return standing(one).map((words) => {
      const weight = words === one.decimals ? "regular" : "bold";
      const mark = text(words, { x: x + size.text * 0.36, y }, { size: size.text, weight, turn: -Math.PI / 2 });
      y -= wide(words) + between;
      return mark;
    });
  });
  const leaders = named.map((one) => {
    const at = place(one.diameter);
    return line({ x: within(at, roomOf(one), width), y: tall + 0.4 }, { x: at, y: y - tick }, axisLine);
  });
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

/** Those that stand clear of each other when each stands over its own place: the ends first, then the rounder before the others. `room`: what
 *  one takes along the axis, mm. In their order. */
function inPlace(
  sizes: readonly Sized[],
  place: Axis["place"],
  width: number,
  room: (one: Sized) => number,
): readonly Sized[] {
  const ends = [sizes.at(-1), sizes[0]];
  const byRoundness = [...sizes].sort((a, b) => roughness(a) - roughness(b));
  const kept: Sized[] = [];
  for (const one of new Set([...ends.flatMap((end) => end ?? []), ...byRoundness])) {
    const at = within(place(one.diameter), room(one), width);
    const clear = kept.every(
      (other) =>
        Math.abs(within(place(other.diameter), room(other), width) - at) >= (room(one) + room(other)) / 2 - 1e-9,
    );
    // What an end pushes aside would not stand over its own place.
    const inPlace = ends.includes(one) || Math.abs(at - place(one.diameter)) < 1e-9;
    if (inPlace && clear) kept.push(one);
  }
  return sizes.filter((one) => kept.includes(one));
}

/** For each of the file's drills that has no room for its name the nearest named one that bears no other yet. */
function joinedTo(named: readonly Sized[], sizes: readonly Sized[], place: Axis["place"]): (readonly [Sized, Sized])[] {
  const joined: (readonly [Sized, Sized])[] = [];
  for (const one of sizes.filter(({ owned }) => owned)) {
    if (named.includes(one)) continue;
    const off = (other: Sized) => Math.abs(place(other.diameter) - place(one.diameter));
    const [nearest] = named
      .filter((other) => off(other) < upright && !joined.some(([to]) => to === other))
      .sort((a, b) => off(a) - off(b));
    if (nearest !== undefined) joined.push([nearest, one]);
  }
  return joined;
}

/** The middle of a label at a place, moved in from an end of the axis where it would stand out over it. */
const within = (at: number, room: number, width: number): number =>
  Math.max((room - between) / 2, Math.min(width - (room - between) / 2, at));

/** More than any fraction or decimals come to. */
const STAMPED = 10;

/** 0 of a whole number, 1 of halves or a single decimal, more of 64ths or further decimals, most of a drill's number or letter. */
function roughness({ name, decimals: stamped }: Sized): number {
  if (stamped !== undefined && !/^\d/.test(name)) return STAMPED;
  const [, below] = /\/(\d+)$/.exec(name) ?? [];
  if (below !== undefined) return Math.log2(Number(below));
  const [, decimals = ""] = /[.,](\d+)$/.exec(name) ?? [];
  return decimals === "" ? 0 : decimals === "5" ? 1 : 1 + decimals.length;
}
