import { decimalMark, say } from "../words/say.js";
import { fromMm, type LengthUnit } from "./length.js";

/** True minus sign, U+2212, as wide as the plus. */
export const MINUS = "−";
/** Beyond it toFixed changes to powers of ten. */
const MOST = 1e21;
/** Places beyond these would show what binary fractions leave behind. */
const MOST_PLACES = 12;

const USUAL_PLACES: Readonly<Record<LengthUnit, number>> = { mm: 3, in: 4 };

/** A number with just so many places, the decimal mark of the paper's language and a true minus; never a minus before nothing.
 *  @throws RangeError for what is not finite or reaches 1e21: nothing on paper may say "NaN". */
export const formatFixed = (value: number, places: number): string => shown(fixed(value, places));

function fixed(value: number, places: number): string {
  if (!(Math.abs(value) < MOST)) throw new RangeError(`${value} cannot be written as a number`);
  const text = halfAway(value, places).toFixed(places);
  if (!text.startsWith("-")) return text;
  return /[1-9]/.test(text) ? MINUS + text.slice(1) : text.slice(1);
}

/** A decimal half goes away from zero, as in a hand's own reckoning: 3/32 is 0.0938 as 5/32 is 0.1563. Its double may lie a hair below
 *  that, and what is reckoned (12.7 / 0.4) a few hairs; toFixed, which takes the double as it is, would go by them: so it is put on 14
 *  digits first. */
function halfAway(value: number, places: number): number {
  const steps = Math.abs(value) * 10 ** places;
  // Far from a half toFixed goes the same way, and much quicker.
  if (Math.abs(steps - Math.floor(steps) - 0.5) > 1e-9 * Math.max(1, steps)) return value;
  const [digits = "", power = "0"] = String(Number(Math.abs(value).toPrecision(14))).split("e");
  const shifted = Number(`${digits}e${Number(power) + places}`);
  // Beyond the digits of a double nothing is a half.
  if (!(shifted < 2 ** 52)) return value;
  const whole = Math.floor(shifted);
  const [rounded, last = "0"] = String(shifted - whole >= 0.5 ? whole + 1 : whole).split("e");
  return Math.sign(value) * Number(`${rounded}e${Number(last) - places}`);
}

/** In the language of the paper. */
function shown(text: string): string {
  const mark = decimalMark();
  return mark === "." ? text : text.replace(".", mark);
}

/** The same without the zeros at its end: "0.02", "25", "1.5875". */
export const trimmed = (value: number, maxPlaces: number): string => shown(fixedTrimmed(value, maxPlaces));

function fixedTrimmed(value: number, maxPlaces: number): string {
  const text = fixed(value, maxPlaces);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** How many places a number has when it is written so. */
export const placesOf = (value: number, maxPlaces: number): number =>
  fixedTrimmed(value, maxPlaces).split(".")[1]?.length ?? 0;

/** A unit as it stands behind a number or in a heading: in German "Zoll". */
export const unitName = (unit: LengthUnit): string => say(`units and numbers.unit ${unit}`);

/** A length in mm as text in `unit`: "1.270 mm", "0.0500 in". By default down to 0.001 mm or 0.0001 in.
 *  @example formatLength(1.27, "in", 3)   // "0.050 in" */
export function formatLength(mm: number, unit: LengthUnit, places: number = USUAL_PLACES[unit]): string {
  return `${formatFixed(fromMm(mm, unit), places)} ${unitName(unit)}`;
}

/** What is measured on paper or on a part: so many places in mm, and one more in inches, which tells about as much.
 *  @example formatSize(120.17, "in")   // "4.731 in" */
export const formatSize = (mm: number, unit: LengthUnit, mmPlaces = 2): string =>
  `${sizeFigure(mm, unit, mmPlaces)} ${unitName(unit)}`;

/** Its number alone, for a column whose heading holds the unit. */
export const sizeFigure = (mm: number, unit: LengthUnit, mmPlaces = 2): string =>
  formatFixed(fromMm(mm, unit), sizePlaces(unit, mmPlaces));

/** How much, whatever its sign, down to 0.0001 mm: what is there is never told as nothing. */
export function sizeAmount(mm: number, unit: LengthUnit): string {
  const told = formatSize(Math.abs(mm), unit, 4);
  return mm !== 0 && !/[1-9]/.test(told) ? formatBound(Math.abs(mm), unit) : told;
}

/** The same without the zeros at its end. */
export const trimmedSize = (mm: number, unit: LengthUnit, mmPlaces = 2): string =>
  `${trimmed(fromMm(mm, unit), sizePlaces(unit, mmPlaces))} ${unitName(unit)}`;

const sizePlaces = (unit: LengthUnit, mmPlaces: number): number => (unit === "mm" ? mmPlaces : mmPlaces + 1);

/** A size that must be kept within `tolerance` (mm, > 0; undefined where none is given), as a number in `unit`: its last place is
 *  at most a fifth of the tolerance, which rounding then moves by a tenth of itself at most (common practice of measuring), and a size that is given to one place more than is usual keeps it.
 *  @example figureWithin(7.985, 0.02, "mm")   // "7.985" */
export function figureWithin(mm: number, tolerance: number | undefined, unit: LengthUnit): string {
  const usual = unit === "mm" ? 2 : 4;
  const value = fromMm(mm, unit);
  const given = placesOf(value, usual + 2);
  // A size that came out of another unit has no last figure: what its tolerance needs is enough.
  const own = given > usual + 1 ? usual : given;
  const needed = tolerance === undefined ? 0 : Math.ceil(-Math.log10(fromMm(tolerance, unit) / 5) - 1e-9);
  return formatFixed(value, Math.min(MOST_PLACES, Math.max(usual, own, needed)));
}

/** Uncertainty (> 0) to two significant digits and the value to the same place, GUM 7.2.6. An uncertainty of 0 is
 *  written "0", with the value as it is. */
export function formatUncertain(
  value: number,
  uncertainty: number,
): { readonly value: string; readonly uncertainty: string } {
  if (uncertainty === 0) return { value: trimmed(value, MOST_PLACES), uncertainty: "0" };
  const [digits = "", power = ""] = uncertainty.toExponential(1).split("e");
  const places = 1 - Number(power);
  if (places >= 0) {
    const shown = Math.min(places, MOST_PLACES);
    return { value: formatFixed(value, shown), uncertainty: formatFixed(Number(`${digits}e${power}`), shown) };
  }
  const step = 10 ** -places;
  return {
    value: formatFixed(Math.round(value / step) * step, 0),
    uncertainty: formatFixed(Number(`${digits}e${power}`), 0),
  };
}

/** "2.1127 ± 0.0009 mm"; to `places` alone where nothing tells the doubt, a half-width in mm. */
export function formatDoubted(
  mm: number,
  doubt: number | undefined,
  unit: LengthUnit,
  places: number = USUAL_PLACES[unit],
): string {
  if (doubt === undefined) return formatLength(mm, unit, places);
  const { value, uncertainty } = formatUncertain(fromMm(mm, unit), fromMm(doubt, unit));
  return `${value} ± ${uncertainty} ${unitName(unit)}`;
}

/** A half-width or a bound (≥ 0, mm) to two significant digits, never a bare nought: "0.0037 mm". */
export const formatBound = (mm: number, unit: LengthUnit): string =>
  `${formatUncertain(0, fromMm(mm, unit)).uncertainty} ${unitName(unit)}`;

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** "1 turn", "3 turns"; give the plural where it is not made with an s. */
export function plural(count: number, one: string, many = `${one}s`): string {
  return `${trimmed(count, MOST_PLACES)} ${count === 1 ? one : many}`;
}
