import {
  BELOW,
  bandWith,
  bendOf,
  COMMA_TAIL,
  LEAST_MARK,
  NARROW,
  RISE,
  sharedBand,
  TAIL,
  TIGHT,
  TO_RULE,
  toEdge,
  widestOf,
  wordsOn,
} from "../../dial/bandRoom.js";
import { bandOf, type Development } from "../../dial/development.js";
import type { DialFinding, Graduation } from "../../dial/finding.js";
import { countedAs } from "../../dial/labelling.js";
import { textWidth } from "../../drawing/text.js";
import { smallestOf } from "../../quantity/extremes.js";
import { unitName } from "../../quantity/format.js";
import { leastOnPiece, size } from "../shared/style.js";
import { bleed } from "./cutMarks.js";
import { digitHeight, numbersAbove, numbersAcross, type ScaleStyle } from "./scaleMarks.js";
import type { IndexPlace } from "./surface.js";

export { wordsOn };

/** Lengths of the three ranks of mark where there is room for them, mm; smaller together. */
const LONGEST = 5;
const ranks = [1, 0.7, 0.5] as const;
/** Clear between numbers and what lies below them where there is room, mm. */
const WELL_BELOW = 0.6;

export const markLengths = (longest: number): ScaleStyle["marks"] => [
  longest * ranks[0],
  longest * ranks[1],
  longest * ranks[2],
];

/** Words among numbers stand so much higher than those, mm. */
const RAISED = 0.1;

/** Middle of words among a band's numbers, mm from the reading edge. */
export const wordsAcross = (style: ScaleStyle): number => numbersAcross(style) - raised(style);

const raised = ({ tight = false }: Pick<ScaleStyle, "tight">): number => (tight ? 0 : RAISED);

/** How far words of such an em may reach below their line, as a part of it, and clear what lies below a band's numbers: a rule, or the
 *  cut. `down`: to where, mm from the reading edge; as far as the figures they always do. */
export function tailRoom({ number, ...style }: ScaleStyle, em: number, down: number): number {
  const low = numbersAcross({ number, ...style }) + (em * digitHeight) / 2;
  return Math.max(0, down - low + raised(style)) / em;
}

/** What a line of words takes along the edge that carries no marks, mm. */
export const legendRoom = (em: number, round = false): number =>
  em * (round ? digitHeight + TAIL : 1) + toEdge(round) + 0.3;

/** Its middle, mm from the reading edge. `feet`: on the side of the cut, so that letters like g reach towards it. */
export const legendAcross = (band: number, em: number, round: boolean, feet = true): number =>
  round ? band - toEdge(true) - em * (digitHeight / 2 + (feet ? TAIL : RISE)) : band - legendRoom(em) / 2 - 0.1;

/** Whether a line of words leaves marks that are easily seen, in so many bands. */
export const legendFits = (
  band: number,
  count: number,
  em: number,
  { round = false, tall = digitHeight }: { readonly round?: boolean; readonly tall?: number | undefined } = {},
): boolean => (band - legendRoom(em, round)) / count >= 2 * LEAST_MARK + numbersAbove + em * tall + BELOW - 1e-9;

/** The least height of a band that has numbers. */
export const leastNumberedBand = (flat: Development): number =>
  bandWith(flat.kind === "strip" && flat.width < NARROW ? leastOnPiece : size.source);

/** Marks and numbers of bands of equal height, one below the other. `tall`: what the numbers take across the band for each mm of
 *  their em, where they do not stand along it. `bend`: by so much, times their em squared, the corners of straight numbers stand out on a
 *  ring. `labels`: the numbers, of which a decimal comma reaches below its line. */
export function bandStyles(
  room: {
    readonly height: number;
    readonly count: number;
    readonly least: number;
    readonly tall?: number;
    readonly bend?: number;
    readonly labels?: readonly (string | undefined)[];
  },
  spacings: readonly (number | undefined)[],
): ScaleStyle[] {
  const { height, count, least, tall = digitHeight, bend = 0, labels = [] } = room;
  const tail = labels.some((label) => label?.includes(",")) ? COMMA_TAIL : 0;
  const each = height / count;
  const above = (em: number, usual: number) => usual + bend * em * em;
  const wanted = (em: number, longest: number, usual = TIGHT) =>
    longest + above(em, usual) + em * (tall + tail) + BELOW;
  const sizes = [size.text, size.source, least];
  // Long marks first, then large numbers; small numbers before none.
  const number =
    sizes.find((em, index) => each >= wanted(em, index === 0 ? 4 : index === 1 ? 1.2 : LEAST_MARK) - 1e-9) ?? 0;
  const roomy = each - wanted(number, WELL_BELOW - BELOW, numbersAbove);
  const tight = number > 0 && roomy < 1;
  // Marks give some of their length that figures stand clear of the line below them.
  const shared = each - wanted(number, 0);
  const clear = count > 1 ? Math.max(0, Math.min(TO_RULE - BELOW, shared - LEAST_MARK)) : 0;
  const longest = Math.min(LONGEST, number === 0 ? each * 0.9 : tight ? shared - clear : roomy);
  return Array.from({ length: count }, (_, index) => ({
    across: index * each,
    marks: markLengths(longest),
    number,
    bleed: index === 0 ? bleed : 0,
    above: above(number, tight ? TIGHT : numbersAbove),
    ...(tight && { tight }),
    ...(tall !== digitHeight && { tall }),
    ...(spacings[index] !== undefined && { spacing: spacings[index] }),
  }));
}

type Dial = Pick<DialFinding, "chosen" | "rows" | "increases" | "second" | "labelUnit">;

/** Every band of marks on the dial, in the order in which they stand from the reading edge inwards. */
export const bandsOf = ({ rows, second }: Dial): readonly (readonly Graduation[])[] => [
  ...rows,
  ...(second?.rows ?? []),
];

export type DialStyle = {
  readonly bands: readonly ScaleStyle[];
  /** Em of the words on it. */
  readonly words: number;
  /** Height of the line of words along the edge that carries no marks; 0 for none. */
  readonly legend: number;
  /** Numbers stand across the band: upright for an index at the side of a ring. */
  readonly sideways: boolean;
};

/** Marks hang from the edge that faces the index; numbers stand under them; the legend runs along the other edge. */
export function dialStyle({
  dial,
  flat,
  index = "top",
}: {
  readonly dial: Dial;
  readonly flat: Development;
  readonly index?: IndexPlace;
}): DialStyle {
  const count = Math.max(1, bandsOf(dial).length);
  const band = bandOf(flat);
  const words = wordsOn(band, flat.kind === "strip");
  const round = flat.kind === "ring";
  const line = legendRoom(words, round);
  const labels = bandsOf(dial).flatMap((row) => row.map(({ label }) => label));
  const widest = widestOf(bandsOf(dial));
  const wishes = flat.kind === "ring" && (index === "left" || index === "right") && widest > 0;
  const height = (legend: number) => (legend > 0 ? band - legend : sharedBand(band, round));
  const spacings = bandsOf(dial).map(
    (_, row) => (row < dial.rows.length ? dial : (dial.second ?? dial)).chosen.spacing,
  );
  const sideways = wishes && height(0) / count >= 2 * LEAST_MARK + numbersAbove + words * widest + BELOW - 1e-9;
  const tall = sideways ? widest : undefined;
  const bend = sideways ? 0 : bendOf(flat, widest);
  const bandsWith = (legend: number): readonly ScaleStyle[] => {
    // What the numbers count stands in their line, and may have a comma where they have none; but numbers come before it.
    const counted = legend > 0 ? [] : [dial, ...(dial.second ? [dial.second] : [])].map((scale) => countedAs(scale));
    const room = { height: height(legend), count, least: words, ...(tall !== undefined && { tall }), bend };
    const [bands = []] = [[...labels, ...counted], labels]
      .map((all) => bandStyles({ ...room, labels: all }, spacings))
      .filter((all, index) => index === 1 || all.some(({ number }) => number > 0));
    return bands;
  };
  const told = legendFits(band, count, words, { round, tall }) ? bandsWith(line) : undefined;
  // Round a ring straight numbers and a bent line of words run into each other where both are short of room.
  if (told === undefined || (round && told.some(({ tight }) => tight)))
    return { legend: 0, words, sideways, bands: bandsWith(0) };
  return { legend: line, words, sideways, bands: told };
}

/** What hangs beside the zero of a band where there is no line of words: its unit. Numbers that count parts of it say so elsewhere. */
export const unitOf = (scale: Pick<DialFinding, "chosen" | "labelUnit">): string | undefined =>
  countedAs(scale) === undefined ? unitName(scale.chosen.unit) : undefined;

/** Clear beside a number, mm. */
const CLEAR = 0.7;

/** So many numbers as stand clear of each other, at round steps of what they count; those that give way leave their marks. `room`: mm of
 *  paper for one of the scale's measure along the numbers; `round`: once round in that measure, where the last stands beside the first;
 *  `apart`: more than the usual room between them, mm. */
export function thinned(
  marks: readonly Graduation[],
  { number, tall }: Pick<ScaleStyle, "number" | "tall">,
  room: number,
  round?: number,
  apart = CLEAR,
): Graduation[] {
  const labelled = marks.filter(({ label }) => label !== undefined);
  const between = Math.max(CLEAR, apart);
  if (number === 0 || labelled.length < 2) return [...marks];
  const values = labelled.map(({ value }) => value).sort((a, b) => a - b);
  const step = smallestOf(values.slice(1).map((value, index) => value - (values[index] as number)));
  const half = ({ label = "" }: Graduation) =>
    tall === undefined ? textWidth(label, number, "bold") / 2 : (number * digitHeight) / 2;
  const clear = (kept: readonly Graduation[]): boolean => {
    const placed = [...kept].sort((a, b) => a.angle - b.angle);
    return placed.every((one, index) => {
      const next = placed[index + 1];
      const [first] = placed;
      const way = next
        ? next.angle - one.angle
        : round && first !== one && first
          ? first.angle + round - one.angle
          : undefined;
      // Words find room between others; the last number before the zero need only be clear of that.
      const wanted = next ? between : CLEAR;
      return way === undefined || way * room >= half(one) + half(next ?? first ?? one) + wanted - 1e-9;
    });
  };
  for (const every of [1, 2, 5, 10, 20, 50, 100]) {
    const kept = labelled.filter(
      ({ value }) => Math.abs(value / step / every - Math.round(value / step / every)) < 1e-6,
    );
    // Beside the zero the last number before it goes, and not every other all the way round.
    const [first] = kept;
    const without = kept.slice(0, -1);
    const chosen = clear(kept)
      ? kept
      : round !== undefined && kept.length > 2 && first && clear(without)
        ? without
        : undefined;
    if (chosen === undefined) continue;
    return marks.map((mark) => (mark.label === undefined || chosen.includes(mark) ? mark : bare(mark)));
  }
  return marks.map((mark) => (mark === labelled[0] ? mark : bare(mark)));
}

export function bare({ label: _, ...mark }: Graduation): Graduation {
  return mark;
}
