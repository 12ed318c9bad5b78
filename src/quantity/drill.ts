import { MM_PER_INCH } from "./length.js";

/** Thousandths of an inch, no. 1 to no. 80, from memory (ASME B94.11M). */
export const numberDrills: readonly number[] = [
  228, 221, 213, 209, 205.5, 204, 201, 199, 196, 193.5, 191, 189, 185, 182, 180, 177, 173, 169.5, 166, 161, 159, 157,
  154, 152, 149.5, 147, 144, 140.5, 136, 128.5, 120, 116, 113, 111, 110, 106.5, 104, 101.5, 99.5, 98, 96, 93.5, 89, 86,
  82, 81, 78.5, 76, 73, 70, 67, 63.5, 59.5, 55, 52, 46.5, 43, 42, 41, 40, 39, 38, 37, 36, 35, 33, 32, 31, 29.2, 28, 26,
  25, 24, 22.5, 21, 20, 18, 16, 14.5, 13.5,
];
/** Thousandths of an inch, A to Z, from memory (ASME B94.11M). */
export const letterDrills: readonly number[] = [
  234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348, 358, 368, 377, 386,
  397, 404, 413,
];

/** Diameter, mm, of a number or letter drill by its name: "#21", "no. 21", "letter F"; a bare letter, but no bare number, which is a
 *  size. Undefined where it is no such name. */
export function drillNamed(name: string): number | undefined {
  const stamped = drillNameIn(name);
  if (stamped === undefined) return undefined;
  const thou = typeof stamped === "number" ? numberDrills[stamped - 1] : letterDrills[stamped.charCodeAt(0) - 65];
  return thou === undefined ? undefined : (thou / 1000) * MM_PER_INCH;
}

/** What is stamped on such a drill: a number or a letter. */
export type DrillName = number | string;

/** Out of its name as one writes it; whether there is such a drill is not asked. */
export function drillNameIn(words: string): DrillName | undefined {
  const [, number] = /^(?:#|no\.?)\s*(\d{1,2})$/i.exec(words.trim()) ?? [];
  const [, letter] = /^(?:letter\s+)?([A-Z])$/i.exec(words.trim()) ?? [];
  return number === undefined ? letter?.toUpperCase() : Number(number);
}
