import type { Graduation } from "../../dial/finding.js";
import { textWidth } from "../../drawing/text.js";
import { size } from "../shared/style.js";
import { digitHeight } from "./scaleMarks.js";

/** Words for a dial, and of which of its two scales they speak, or of which band; without either, of the whole dial. `must`: without them
 *  its numbers cannot be read, so that some of those give way to them; to other words none does. */
export type Inscription = {
  readonly words: string;
  readonly scale?: 0 | 1;
  readonly band?: number;
  readonly must?: true;
};

/** One band of a dial's marks. `marks`: in growing angle. `perRadian`: mm of paper along its numbers for one radian.
 *  `number`: em size of its numbers, 0 where it has none; `tall`: they stand across the band, so that along it each takes its height.
 *  `fixed`: what else stands in their line. */
export type Band = {
  readonly scale: 0 | 1;
  readonly marks: readonly Graduation[];
  readonly perRadian: number;
  readonly number: number;
  readonly tall?: number;
  /** There is room below its numbers for the tail of a g. */
  readonly tails?: boolean;
  readonly fixed?: readonly { readonly angle: number; readonly half: number }[];
};

export type Inscribed = {
  /** The bands' marks, without the numbers in whose place words stand. */
  readonly bands: readonly (readonly Graduation[])[];
  readonly placed: readonly { readonly band: number; readonly angle: number; readonly words: string }[];
  /** What found no place. */
  readonly left: readonly string[];
};

/** Clear space on either side of words, mm: "rev 3" beside a 3 must not read "33". */
const CLEAR = 1.5;
/** Room at a cut end, mm. */
const END = 0.5;
/** Letters that reach below the line. */
const TAILED = /[gjpqyçßµøØQ,;()@|/_{}[\]]/;
/** Capitals with something on top, which reach up to the marks. */
const CROWNED = /[À-ÖØ-ÝĀ-Ž]/;
/** So many numbers may give way to one inscription: as many again stand on either side to count from. */
const MOST_NUMBERS = 3;

/** What stands in the line of a band's numbers, mm from its beginning. `index`: of its mark; absent where it may not go. */
type Standing = { readonly at: number; readonly half: number; readonly index?: number };

type Place = { readonly band: number; readonly at: number; readonly gone: readonly number[]; readonly spare: number };

/** Finds a place for words among the numbers of a dial whose bands leave no room for a line of their own: in a gap between
 *  two numbers if there is one, else, for what must be there, in the place of as few numbers as may be, the lower band of equals, and
 *  there the widest gap. A zero never goes. `from` to `to`: the piece, radians; `whole`: a ring, whose end is its beginning. */
export function inscribe(
  bands: readonly Band[],
  inscriptions: readonly Inscription[],
  { from, to, whole }: { readonly from: number; readonly to: number; readonly whole: boolean },
  em: number = size.source,
): Inscribed {
  const lines = bands.map((band) => standing(band, from, to, whole));
  const marks = bands.map((band) => [...band.marks]);
  const placed: { band: number; angle: number; words: string }[] = [];
  const left: string[] = [];
  for (const { words, scale, band: only, must } of inscriptions) {
    const half = textWidth(words, em, "regular") / 2;
    const places = bands.flatMap((band, index) =>
      band.number > 0 &&
      (band.tails !== false || !TAILED.test(words)) &&
      !CROWNED.test(words) &&
      (scale === undefined || band.scale === scale) &&
      (only === undefined || only === index)
        ? placesIn(lines[index] ?? [], half, index, must ? MOST_NUMBERS : 0)
        : [],
    );
    const [place] = places.sort((a, b) => a.gone.length - b.gone.length || b.band - a.band || b.spare - a.spare);
    if (place === undefined) {
      left.push(words);
      continue;
    }
    const { band, at, gone } = place;
    placed.push({ band, angle: from + at / (bands[band] as Band).perRadian, words });
    const length = (to - from) * (bands[band] as Band).perRadian;
    const line = lines[band] as Standing[];
    const kept = line.filter(({ index }) => index === undefined || !gone.includes(index));
    const stands = (whole ? [at - length, at, at + length] : [at]).flatMap((at) =>
      reaches(line, at, half) ? [{ at, half }] : [],
    );
    lines[band] = [...kept, ...stands].sort((a, b) => a.at - b.at);
    for (const index of gone) {
      const { label: _, ...bare } = (marks[band] as Graduation[])[index] as Graduation;
      (marks[band] as Graduation[])[index] = bare;
    }
  }
  return { bands: marks, placed, left };
}

const reaches = (line: readonly Standing[], at: number, half: number): boolean =>
  at + half > (line[0]?.at ?? at) && at - half < (line.at(-1)?.at ?? at);

function standing(band: Band, from: number, to: number, whole: boolean): Standing[] {
  const { marks, perRadian, number, tall, fixed = [] } = band;
  const standing = marks.flatMap(({ angle, label, value }, index): Standing[] =>
    label === undefined
      ? []
      : [
          {
            at: (angle - from) * perRadian,
            half: (tall === undefined ? textWidth(label, number, "bold") : number * digitHeight) / 2,
            ...(value !== 0 && { index }),
          },
        ],
  );
  const length = (to - from) * perRadian;
  const others = fixed.map(({ angle, half }): Standing => ({ at: (angle - from) * perRadian, half }));
  const numbers = [...standing, ...others].sort((a, b) => a.at - b.at);
  const [first, last] = [numbers[0], numbers.at(-1)];
  // Round a ring what stands last also stands before the first.
  const ends: Standing[] =
    whole && first && last
      ? [
          { at: last.at - length, half: last.half },
          { at: first.at + length, half: first.half },
        ]
      : [
          { at: 0, half: END },
          { at: length, half: END },
        ];
  return [ends[0] as Standing, ...numbers, ends[1] as Standing];
}

/** Between any two that stand in the line, as long as all between them may go, `most` of them, and clear of all the others. */
function placesIn(line: readonly Standing[], half: number, band: number, most: number): Place[] {
  return line.flatMap((_, start): Place[] => {
    const low = Math.max(...line.slice(0, start + 1).map((before) => before.at + before.half)) + CLEAR + half;
    const places: Place[] = [];
    const gone: number[] = [];
    for (let end = start + 1; end < line.length; end++) {
      const high = Math.min(...line.slice(end).map((after) => after.at - after.half)) - CLEAR - half;
      if (low <= high) places.push({ band, at: (low + high) / 2, gone: [...gone], spare: high - low });
      const { index } = line[end] as Standing;
      if (index === undefined || gone.length === most) break;
      gone.push(index);
    }
    return places;
  });
}
