import { splitUnit } from "./number.js";

/** Exact: international yard and pound agreement, 1959. */
export const MM_PER_INCH = 25.4;
export const MM_PER_FOOT = 12 * MM_PER_INCH;

/** The unit systems that people write and read in. */
export type LengthUnit = "mm" | "in";

/** Behind the word "in", which the sign of the inch would repeat; the terminal is English. */
export const inWords: Readonly<Record<LengthUnit, string>> = { mm: "millimetres", in: "inches" };

/** mm in one of each. */
export const mmPer: Readonly<Record<LengthUnit, number>> = { mm: 1, in: MM_PER_INCH };

/** What may stand behind a number, and how many mm it means. A thou goes by division, so that 50 thou is 0.05 in
 *  to the last bit. "mil" is left out: it is a thou to some and a millimetre to others. */
const UNITS: ReadonlyMap<string, (size: number) => number> = new Map([
  ...named(["mm", "millimetre", "millimetres", "millimeter", "millimeters"], (size) => size),
  ...named(["cm", "centimetre", "centimetres", "centimeter", "centimeters"], (size) => size * 10),
  ...named(["m", "metre", "metres", "meter", "meters"], (size) => size * 1000),
  ...named(["µm", "μm", "um", "micron", "microns"], (size) => size / 1000),
  ...named(["in", "in.", "inch", "inches", '"', "″"], (size) => size * MM_PER_INCH),
  ...named(["thou", "thous", "thousandth", "thousandths"], (size) => (size / 1000) * MM_PER_INCH),
  ...named(["ft", "ft.", "foot", "feet", "'", "′"], (size) => size * MM_PER_FOOT),
]);

function named(names: readonly string[], toMm: (size: number) => number): [string, (size: number) => number][] {
  return names.map((name) => [name, toMm]);
}

/** Without the sign for a diameter that a drawing puts before a size: Ø16. */
export const withoutDiameterSign = (text: string): string => text.trim().replace(/^[Øø⌀]\s*/, "");

/** `1.27 mm`, `0.050 in`, `50 thou`, `1-1/2 in` in mm; a bare number is in `units`. Undefined where it is no length.
 *  The sign is kept: readings may be negative.
 *  @example parseLength("50 thou", "mm")   // 1.27 */
export function parseLength(text: string, units: LengthUnit): number | undefined {
  const parts = splitUnit(withoutDiameterSign(text));
  if (parts === undefined) return undefined;
  if (parts.unit === "") return inMm(parts.number, units);
  return UNITS.get(parts.unit.toLowerCase())?.(parts.number);
}

/** mm of a number that is in `unit`. */
export function inMm(value: number, unit: LengthUnit): number {
  return value * mmPer[unit];
}

/** The number in `unit` of a length in mm. */
export function fromMm(mm: number, unit: LengthUnit): number {
  return mm / mmPer[unit];
}

/** A usual length, mm, in round figures of whichever unit is worked in: nobody sets 0.0394 in. */
export const roundIn = (mm: number, inches: number): Readonly<Record<LengthUnit, number>> => ({
  mm,
  in: inMm(inches, "in"),
});
