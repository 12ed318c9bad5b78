import { textWidth } from "../drawing/text.js";
import { digitHeight, leastOnPiece, size } from "../drawing/typeSizes.js";
import type { Units } from "../machine/machine.js";
import { largestOf } from "../quantity/extremes.js";
import { fromMm, inMm } from "../quantity/length.js";
import type { Development } from "./development.js";
import { bandOf } from "./development.js";
import type { DialFinding, Graduation } from "./finding.js";
import { countedAs } from "./labelling.js";

/** What marks and numbers take across the paper of a dial, mm. */

/** Below this width the words on a piece may be of the least size. */
export const NARROW = 8;
/** Below this a mark is a dot. */
export const LEAST_MARK = 0.6;
/** Between marks and numbers of a band that is too low for the usual room. */
export const TIGHT = 0.15;
/** Clear between numbers and what lies below them, at least. */
export const BELOW = 0.15;
/** From figures to the middle of the line between two rows, where marks need not be shorter than the least for it. */
export const TO_RULE = 0.33;
/** Clear between figures and a straight edge that a knife cuts along a rule, and between all ink and a hollow one that scissors follow. */
const TO_EDGE = 0.5;
const TO_HOLLOW = 0.8;
export const toEdge = (round: boolean): number => (round ? TO_HOLLOW : TO_EDGE);
/** A comma reaches this part of its em below the line; letters like g and p this one. */
export const COMMA_TAIL = 0.16;
export const TAIL = 0.26;
/** Letters like l stand this part of it above figures. */
export const RISE = 0.06;

/** The em of words on a piece: the usual least, on a narrow strip of a smaller one. A ring's hole is read from as far as any dial. */
export const wordsOn = (band: number, strip: boolean): number =>
  strip && band < NARROW - 1e-9 ? leastOnPiece : size.source;

/** The corners of straight numbers stand out on a ring by so much, times their em squared. `widest`: of them, for an em of 1. */
export const bendOf = (flat: Development, widest: number): number =>
  flat.kind === "ring" ? widest ** 2 / 8 / Math.max(1, flat.inner) : 0;

/** Of the widest of such numbers, for an em of 1. */
export const widestOf = (rows: readonly (readonly Graduation[])[]): number =>
  largestOf([0, ...rows.flatMap((row) => row.map(({ label = "" }) => textWidth(label, 1, "bold")))]);

/** The least height of a band with numbers of such an em. */
export const bandWith = (em: number, { bend = 0, tail = 0 } = {}): number =>
  LEAST_MARK + TIGHT + bend * em * em + em * (digitHeight + tail) + BELOW;

/** What the bands of a dial share where no line of words runs along their foot. */
export const sharedBand = (band: number, round = false): number => band - (toEdge(round) - BELOW);

/** The least height of a row whatever its numbers are: of three figures, a decimal comma among them. */
export const leastRow = (flat: Development): number =>
  bandWith(wordsOn(bandOf(flat), flat.kind === "strip"), { bend: bendOf(flat, 2.2), tail: COMMA_TAIL });

/** A dial of several rows, or of two scales, that are too low for their numbers: then nothing on it tells which turn a row is for, or what
 *  is read. `rows`: all its bands;
 *  `least`: the width that would do, mm; `fit`: so many rows would do as it is. Undefined where it can be read. */
export function rowsTooLow(
  dial: Pick<DialFinding, "chosen" | "rows" | "second" | "flat" | "labelUnit">,
): { readonly rows: number; readonly least: number; readonly fit: number } | undefined {
  const { rows, second, flat } = dial;
  const all = [...rows, ...(second?.rows ?? [])];
  if (flat === undefined || all.length < 2) return undefined;
  // What holds in English must hold in a language with decimal commas.
  const parts =
    [dial, ...(second ? [second] : [])].some((scale) => countedAs(scale) !== undefined) ||
    all.some((row) => row.some(({ label }) => label !== undefined && /[.,]/.test(label)));
  const room = { bend: bendOf(flat, widestOf(all)), tail: parts ? COMMA_TAIL : 0 };
  const widthFor = (em: number) => all.length * bandWith(em, room) + toEdge(flat.kind === "ring") - BELOW;
  const band = bandOf(flat);
  const em = wordsOn(band, flat.kind === "strip");
  if (band >= widthFor(em) - 1e-9) return undefined;
  const least = band < NARROW && widthFor(em) < NARROW ? widthFor(em) : widthFor(size.source);
  return {
    rows: all.length,
    least,
    fit: Math.floor(sharedBand(band, flat.kind === "ring") / bandWith(em, room) + 1e-9),
  };
}

/** A least width as it is told, which must do. */
export function roundedUp(least: number, units: Units): number {
  const step = units === "mm" ? 10 : 100;
  return inMm(Math.ceil(fromMm(least, units) * step - 1e-6) / step, units);
}
