import { type LengthUnit, mmPer } from "./length.js";

/** Fixed decimals, a true minus sign, and no minus before a zero. */
export function formatFixed(value: number, places: number): string {
  const digits = Math.abs(value).toFixed(places);
  return value < 0 && Number(digits) !== 0 ? `−${digits}` : digits;
}

/** The shortest number that is right to `maxPlaces` decimals: "0.02", "25", "1.5875". */
export function trimmed(value: number, maxPlaces: number): string {
  const digits = formatFixed(value, maxPlaces);
  return digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
}

/** A length in mm, written with its unit; by default to 0.001 mm or 0.0001 in. */
export function formatLength(mm: number, unit: LengthUnit, places = unit === "mm" ? 3 : 4): string {
  return `${formatFixed(mm / mmPer[unit], places)} ${unit}`;
}

/** Value and uncertainty to the same decimals, the uncertainty with two significant digits (GUM, JCGM 100:2008, 7.2.6). */
export function formatUncertain(value: number, uncertainty: number): { value: string; uncertainty: string } {
  const places =
    uncertainty > 0 ? Math.min(12, Math.max(0, 1 - Math.floor(Math.log10(Number(uncertainty.toPrecision(2)))))) : 6;
  return { value: formatFixed(value, places), uncertainty: formatFixed(uncertainty, places) };
}

/** "1 turn", "2 turns". */
export const plural = (count: number, noun: string, nouns = `${noun}s`): string =>
  `${count} ${count === 1 ? noun : nouns}`;
