import { between, diameterOf, type Outline } from "../part/outline.js";
import type { Workpiece } from "../part/workpiece.js";
import { largestOf, smallestOf } from "../quantity/extremes.js";
import type { Holding } from "./stage.js";

/** How slender work is that stands free; mm. */
export type Slenderness = {
  /** Length over diameter of an even bar that bends as much. */
  readonly ratio: number;
  readonly length: number;
  readonly thinnest: number;
  readonly thickest: number;
};

/** Steps of the sum along the work. */
const STEPS = 400;

/** By the bending of a beam (any handbook of strength of materials): held at one end, a force at the other bends it by the sum of
 *  x² / I; held at both, one in the middle by that of (x / 2)² / I from either end. An even bar of diameter d gives L³ / 3 I and
 *  L³ / 48 I, and I grows as d⁴; a bore takes little off while its wall stands (which is judged by itself). So a short neck or a broken edge counts for what it is, and no more. */
export function slenderness(work: Workpiece, { held, jaws }: Pick<Holding, "held" | "jaws">): Slenderness {
  const free = between(work.outside, Number.NEGATIVE_INFINITY, jaws);
  const [from, to] = [free[0]?.from ?? 0, free.at(-1)?.to ?? 0];
  const length = to - from;
  const diameters = free.flatMap(({ start, end }) => [start, end]).filter((diameter) => diameter > 0);
  if (length <= 0 || diameters.length === 0) return { ratio: 0, length: 0, thinnest: 0, thickest: 0 };
  const alone = held === "chuck";
  let sum = 0;
  for (let step = 0; step < STEPS; step++) {
    const at = ((step + 0.5) / STEPS) * length;
    const stiff = Math.max(1e-6, widthAt(free, from + at) ** 4);
    const lever = alone ? at : Math.min(at, length - at) / 2;
    sum += (lever ** 2 / stiff) * (length / STEPS);
  }
  const even = length ** 3 / (alone ? 3 : 48);
  return {
    ratio: length / (even / sum) ** 0.25,
    length,
    thinnest: smallestOf(diameters),
    thickest: largestOf(diameters),
  };
}

function widthAt(outside: Outline, at: number): number {
  const found = outside.find(({ from, to }) => from <= at && at <= to);
  return found === undefined ? 0 : diameterOf(found, at);
}
