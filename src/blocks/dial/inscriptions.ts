import { COMMA_TAIL, TAIL } from "../../dial/bandRoom.js";
import type { Graduation } from "../../dial/finding.js";
import { textWidth } from "../../drawing/text.js";
import { size } from "../shared/style.js";
import { digitHeight } from "./scaleMarks.js";

/** Words that a dial must carry, and of which of its two scales they speak, or of which band; without either, of the whole dial.
 *  `dear`: numbers of the band stand farther apart to make room for them; any other band is better than none, and a short sign
 *  better than nothing. */
export type Inscription = {
  readonly words: string;
  readonly scale?: 0 | 1;
  readonly band?: number;
  readonly dear?: { readonly short: string };
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
  /** How far words may reach below the line of its numbers, as a part of their em; absent: as far as they do. */
  readonly tails?: number;
  readonly fixed?: readonly { readonly angle: number; readonly half: number }[];
};

export type Inscribed = {
  readonly placed: readonly { readonly band: number; readonly angle: number; readonly words: string }[];
  /** What found no place. */
  readonly left: readonly string[];
};

/** Clear space on either side of words, mm, and of words with figures: "rev 3" beside a 3 must not read "33". */
const CLEAR = 1.5;
const CLEAR_OF_FIGURES = 2.2;
const clearOf = (words: string): number => (/\d/.test(words) ? CLEAR_OF_FIGURES : CLEAR);

/** What words take between two numbers, mm. */
export const roomOf = (words: string, em: number): number => textWidth(words, em, "regular") + 2 * clearOf(words);

/** Room at a cut end, mm. */
const END = 0.5;
/** Letters that reach below the line. */
const TAILED = /[gjpqyçßµøØQ;()@|/_{}[\]]/;
const tailOf = (words: string): number => (TAILED.test(words) ? TAIL : words.includes(",") ? COMMA_TAIL : 0);
/** Capitals with something on top, which reach up to the marks. */
const CROWNED = /[À-ÖØ-ÝĀ-Ž]/;
/** What stands in the line of a band's numbers, mm from its beginning. */
type Standing = { readonly at: number; readonly half: number };

type Place = { readonly band: number; readonly at: number; readonly spare: number };

/** Finds a place for words between the numbers of a dial whose bands leave no room for a line of their own: in the lower band that has
 *  one, and there the widest gap. No number gives way. `from` to `to`: the piece, radians; `whole`: a ring, whose end is its
 *  beginning. */
export function inscribe(
  bands: readonly Band[],
  inscriptions: readonly Inscription[],
  { from, to, whole }: { readonly from: number; readonly to: number; readonly whole: boolean },
  em: number = size.source,
): Inscribed {
  const lines = bands.map((band) => standing(band, from, to, whole));
  const placed: { band: number; angle: number; words: string }[] = [];
  const left: string[] = [];
  const placeFor = (words: string, scale: 0 | 1 | undefined, only: number | undefined): Place | undefined =>
    bands
      .flatMap((band, index) =>
        band.number > 0 &&
        (band.tails === undefined || tailOf(words) <= band.tails + 1e-9) &&
        !CROWNED.test(words) &&
        (scale === undefined || band.scale === scale) &&
        (only === undefined || only === index)
          ? placesIn(lines[index] ?? [], textWidth(words, em, "regular") / 2 + clearOf(words), index)
          : [],
      )
      .sort((a, b) => b.band - a.band || b.spare - a.spare)[0];
  for (const { words: inFull, scale, band: own, dear } of inscriptions) {
    const ways = [
      { words: inFull, only: own },
      ...(dear === undefined ? [] : [inFull, dear.short].map((words) => ({ words, only: undefined }))),
    ];
    const found = ways.flatMap(({ words, only }) => {
      const place = placeFor(words, scale, only);
      return place === undefined ? [] : [{ words, place }];
    })[0];
    if (found === undefined) {
      left.push(inFull);
      continue;
    }
    const { words, place } = found;
    const half = textWidth(words, em, "regular") / 2;
    const { band, at } = place;
    placed.push({ band, angle: from + at / (bands[band] as Band).perRadian, words });
    const length = (to - from) * (bands[band] as Band).perRadian;
    const line = lines[band] as Standing[];
    const stands = (whole ? [at - length, at, at + length] : [at]).flatMap((at) =>
      reaches(line, at, half) ? [{ at, half }] : [],
    );
    lines[band] = [...line, ...stands].sort((a, b) => a.at - b.at);
  }
  return { placed, left };
}

const reaches = (line: readonly Standing[], at: number, half: number): boolean =>
  at + half > (line[0]?.at ?? at) && at - half < (line.at(-1)?.at ?? at);

function standing(band: Band, from: number, to: number, whole: boolean): Standing[] {
  const { marks, perRadian, number, tall, fixed = [] } = band;
  const standing = marks.flatMap(({ angle, label }): Standing[] =>
    label === undefined
      ? []
      : [
          {
            at: (angle - from) * perRadian,
            half: (tall === undefined ? textWidth(label, number, "bold") : number * digitHeight) / 2,
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

/** Between any two that stand beside each other in the line. `half`: of the words and what is clear beside them. */
function placesIn(line: readonly Standing[], half: number, band: number): Place[] {
  return line.slice(1).flatMap((next, index): Place[] => {
    const low = Math.max(...line.slice(0, index + 1).map((before) => before.at + before.half)) + half;
    const high = next.at - next.half - half;
    return low <= high + 1e-9 ? [{ band, at: (low + high) / 2, spare: high - low }] : [];
  });
}
