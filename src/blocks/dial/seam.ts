import type { Graduation } from "../../dial/finding.js";
import { textWidth } from "../../drawing/text.js";
import { TURN } from "../../quantity/angle.js";

/** A gap between marks. Angles in radians from zero, the others in mm of paper: how wide it is, and how far the place of a cut in it lies
 *  from the nearest number. */
export type Gap = { readonly angle: number; readonly width: number; readonly clearance: number };

/** Room between two marks that a cut needs, mm. */
const LEAST_GAP = 0.02;
/** From a cut to the nearest number where that can be had, mm. */
const CLEAR = 0.4;
/** Of a division a cut stays so far from either mark, in its middle where no number is in the way. */
const LEAST_PART = 0.3;
const ASIDE = [0, 0.05, -0.05, 0.1, -0.1, 0.15, -0.15, LEAST_PART - 0.5, 0.5 - LEAST_PART];
/** A seam as wide as this part of the widest gap is as good as that. */
const AS_WIDE = 0.75;

/** The numbered marks of a band, the em of its numbers, and mm of paper for a radian where these stand: less than at the edge of a ring. */
export type Numbered = { readonly marks: readonly Graduation[]; readonly number: number; readonly along?: number };

/** Where a cut lies in the gaps between marks of any band. `perRadian`: mm of paper at the edge. */
export function gapsOf(bands: readonly Numbered[], perRadian: number): Gap[] {
  const angles = [...new Set(bands.flatMap(({ marks }) => marks.map(({ angle }) => angle)))].sort((a, b) => a - b);
  const labels = bands.flatMap(({ marks, number, along = perRadian }) =>
    marks.flatMap(({ angle, label }) =>
      label === undefined || number === 0 ? [] : [{ angle, half: textWidth(label, number, "bold") / 2, along }],
    ),
  );
  const clearance = (at: number): number =>
    Math.min(TURN * perRadian, ...labels.map(({ angle, half, along }) => apart(angle, at) * along - half));
  const gaps = angles.flatMap((angle, index): Gap[] => {
    const next = angles[index + 1] ?? (angles[0] ?? 0) + TURN;
    const width = (next - angle) * perRadian;
    // Marks of two bands may all but coincide; no knife cuts between them.
    if (width < LEAST_GAP) return [];
    const places = ASIDE.map((part) => angle + (0.5 + part) * (next - angle));
    const place = places.find((one) => clearance(one) >= CLEAR) ?? (places[0] as number);
    return [{ angle: place, width, clearance: clearance(place) }];
  });
  return gaps.length > 0 ? gaps : [{ angle: Math.PI, width: TURN * perRadian, clearance: 0 }];
}

/** Where the ends of a dial in so many pieces meet: in a division, no number cut, as far from zero as all its joints can be,
 *  which is half a piece: opposite it, or beside that where their number is even. A short last division lies beside zero, so it is
 *  never this one. */
export function seamOf(gaps: readonly Gap[], pieces = 1): Gap {
  const wanted = pieces % 2 === 1 ? Math.PI : Math.PI * (1 - 1 / pieces);
  const off = ({ angle }: Gap) => Math.abs(fromZero(angle) - wanted);
  return bestOf(gaps, off, Math.PI / 2 / pieces);
}

/** Where a strip that is too long is cut on the way: in such a gap near a wanted angle from the seam, moved by no more than `spare` where
 *  there is one. */
export const cutNear = (gaps: readonly Gap[], seam: number, wanted: number, spare: number): number =>
  bestOf(gaps, ({ angle }) => Math.abs(after(angle, seam) - wanted), spare).angle;

/** Within `spare` of a place: clear of numbers, then wide, then near. */
function bestOf(gaps: readonly Gap[], off: (gap: Gap) => number, spare: number): Gap {
  const near = gaps.filter((gap) => off(gap) <= spare);
  if (near.length === 0) return gaps.reduce((best, gap) => (off(gap) < off(best) - 1e-9 ? gap : best));
  const clear = some(
    some(near, ({ clearance }) => clearance > 0),
    ({ clearance }) => clearance >= CLEAR,
  );
  const widest = clear.reduce((most, { width }) => Math.max(most, width), 0);
  const wide = some(clear, ({ width }) => width >= AS_WIDE * widest);
  return wide.reduce((best, gap) => (off(gap) < off(best) - 1e-9 ? gap : best));
}

/** Those that meet a wish, or all where none does. */
function some<T>(all: readonly T[], wish: (one: T) => boolean): readonly T[] {
  const found = all.filter(wish);
  return found.length > 0 ? found : all;
}

/** Angle from `origin` on, in [0, 2π). */
export const after = (angle: number, origin: number): number => (((angle - origin) % TURN) + TURN) % TURN;

const apart = (a: number, b: number): number => {
  const one = after(a, b);
  return Math.min(one, TURN - one);
};

const fromZero = (angle: number): number => apart(angle, 0);
