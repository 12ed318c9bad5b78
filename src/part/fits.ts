/** Limits of size after ISO 286-1 and -2 for the usual fits up to 120 mm, from memory: neither standard was opened. The tests
 *  recompute the grades and most letters from the standard's own formulas, which it leaves up to 3 mm. Diameters in mm, figures of the tables in µm. */

/** A range takes in its upper end: over 3 up to 6. */
const upTo = [3, 6, 10, 18, 30, 50, 80, 120] as const;

/** Width of each grade. */
const grades: Readonly<Record<number, readonly number[]>> = {
  5: [4, 5, 6, 8, 9, 11, 13, 15],
  6: [6, 8, 9, 11, 13, 16, 19, 22],
  7: [10, 12, 15, 18, 21, 25, 30, 35],
  8: [14, 18, 22, 27, 33, 39, 46, 54],
  9: [25, 30, 36, 43, 52, 62, 74, 87],
  10: [40, 48, 58, 70, 84, 100, 120, 140],
  11: [60, 75, 90, 110, 130, 160, 190, 220],
};

/** How far the nearer limit of a shaft lies below the nominal size; of a hole of the same capital letter, above it. */
const clearances: Readonly<Record<string, readonly number[]>> = {
  d: [20, 30, 40, 50, 65, 80, 100, 120],
  e: [14, 20, 25, 32, 40, 50, 60, 72],
  f: [6, 10, 13, 16, 20, 25, 30, 36],
  g: [2, 4, 5, 6, 7, 9, 10, 12],
  h: [0, 0, 0, 0, 0, 0, 0, 0],
};

/** How far the lower limit of a shaft lies above the nominal size; k in grades 4 to 7 alone. */
const interferences: Readonly<Record<string, readonly number[]>> = {
  k: [0, 1, 1, 1, 2, 2, 2, 3],
  m: [2, 4, 6, 7, 8, 9, 11, 13],
  n: [4, 8, 10, 12, 15, 17, 20, 23],
  p: [6, 12, 15, 18, 22, 26, 32, 37],
};

/** Upper limits of holes that bind, which the standard gives for this grade alone. */
const tightHoles: Readonly<Record<string, readonly number[]>> = {
  K7: [0, 3, 5, 6, 6, 7, 9, 10],
  N7: [-4, -4, -4, -5, -7, -8, -9, -10],
  P7: [-6, -8, -9, -11, -14, -17, -21, -24],
};

/** How far both limits lie from the nominal size, mm; upper ≥ lower. */
export type Deviations = { readonly upper: number; readonly lower: number };

const FIT = /^(JS|js|[A-Za-z])([1-9]\d?)$/;

export const looksLikeFit = (text: string): boolean => FIT.test(text.trim());

/** What can be given, for messages. */
export const KNOWN_FITS =
  "shafts d e f g h js k m n p, holes D E F G H JS in grades 5 to 11, and K7 N7 P7, up to 120 mm";

/** Deviations of a fit such as "h7" (a shaft) or "H8" (a hole); undefined where it is not among the usual ones. */
export function fitDeviations(fit: string, nominal: number): Deviations | undefined {
  const [, letters = "", grade = ""] = FIT.exec(fit.trim()) ?? [];
  const range = nominal > 0 ? upTo.findIndex((most) => nominal <= most + 1e-9) : -1;
  const width = grades[Number(grade)]?.[range];
  if (width === undefined) return undefined;
  const microns = (upper: number): Deviations => ({ upper: upper / 1000, lower: (upper - width) / 1000 });
  if (letters.toLowerCase() === "js") return microns(width / 2);
  const tight = tightHoles[`${letters}${grade}`]?.[range];
  if (tight !== undefined) return microns(tight);
  const clearance = clearances[letters.toLowerCase()]?.[range];
  if (clearance !== undefined)
    return letters === letters.toLowerCase() ? microns(0 - clearance) : microns(clearance + width);
  const interference = interferences[letters]?.[range];
  if (interference === undefined || (letters === "k" && Number(grade) > 7)) return undefined;
  return microns(interference + width);
}

/** True of a fit that is given to holes. */
export const isHoleFit = (fit: string): boolean => /^[A-Z]/.test(fit.trim());
