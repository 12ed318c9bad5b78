import fc from "fast-check";
import type { Outline, Stretch } from "../../src/part/outline.js";

/** Outlines at random, and their diameters read in the plainest way: what the properties compare with. */

/** Whole quarters meet each other's edges, as those of drawings do; thousandths seldom do, and then but for the rounding of
 *  sums. Nothing lies nearer to anything, so that the places below find every gap. */
const sizes = (least: number, most: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.integer({ min: Math.ceil(4 * least), max: 4 * most }).map((quarters) => quarters / 4),
    fc.integer({ min: Math.ceil(1000 * least), max: 1000 * most }).map((thousandths) => thousandths / 1000),
  );

const size = (most: number): fc.Arbitrary<number> => sizes(0.2, most);

const piece = fc.record({
  length: size(10),
  start: size(20),
  end: size(20),
  straight: fc.boolean(),
  there: fc.boolean(),
});

const laid = (pieces: readonly { length: number; start: number; end: number; straight: boolean }[], from: number) => {
  let at = from;
  return pieces.map(({ length, start, end, straight }): Stretch => {
    const stretch = { from: at, to: at + length, start, end: straight ? start : end };
    at = stretch.to;
    return stretch;
  });
};

const pieces = fc.array(piece, { minLength: 1, maxLength: 6 });
const begin = fc.integer({ min: -8, max: 8 }).map((halves) => halves / 2);

/** Metal from one end to the other. */
export const whole: fc.Arbitrary<Outline> = fc.tuple(pieces, begin).map(([all, from]) => laid(all, from));

/** With gaps between. */
export const gapped: fc.Arbitrary<Outline> = fc
  .tuple(pieces, begin)
  .map(([all, from]) => laid(all, from).filter((_, index) => all[index]?.there));

export const place: fc.Arbitrary<number> = sizes(-10, 50);

export const stretch: fc.Arbitrary<Stretch> = fc
  .tuple(place, size(30), size(20), size(20), fc.boolean())
  .map(([from, length, start, end, straight]) => ({ from, to: from + length, start, end: straight ? start : end }));

/** The diameter in the middle of metal, or undefined where none is. */
export function readAt(outline: Outline, at: number): number | undefined {
  const found = outline.filter(({ from, to }) => from < at && at < to);
  if (found.length > 1) throw new Error(`${found.length} stretches lie over each other at ${at}`);
  const [one] = found;
  return one && one.start * ((one.to - at) / (one.to - one.from)) + one.end * ((at - one.from) / (one.to - one.from));
}

/** How near to an edge the places below go, and what a diameter may differ there on the steepest of the cones above. */
export const BESIDE = 1e-5;

/** Places close to both sides of every edge, and between them: of straight stretches these tell all. */
export function places(...outlines: readonly Outline[]): number[] {
  const edges = outlines.flat().flatMap(({ from, to }) => [from, to]);
  const sorted = [...new Set(edges)].sort((a, b) => a - b);
  const all = sorted.flatMap((edge, index) => [
    edge - BESIDE,
    edge + BESIDE,
    edge + 0.37 * ((sorted[index + 1] ?? edge + 2) - edge),
    edge + 0.71 * ((sorted[index + 1] ?? edge + 2) - edge),
  ]);
  // Two edges may lie closer together than that.
  return all.filter((at) => edges.every((edge) => Math.abs(edge - at) > BESIDE / 2));
}

/** In its order, of some length, none over another. */
export function faultOf(outline: Outline): string | undefined {
  for (const [index, { from, to }] of outline.entries()) {
    if (!(to > from)) return `stretch ${index} has no length`;
    const next = outline[index + 1];
    if (next !== undefined && next.from < to - 1e-9) return `stretch ${index + 1} begins before ${index} ends`;
  }
  return undefined;
}
