import type { Graduation } from "../dial/finding.js";
import { TURN } from "../quantity/angle.js";
import { fraction, quotient } from "../quantity/fraction.js";
import { type CompoundMove, compoundForDivisions } from "./compound.js";
import { type Differential, differentials } from "./differential.js";
import { type GearIndex, type GearPairIndex, gearIndexes, gearPairIndexes } from "./gearIndex.js";
import { type Move, type NearMove, nearestMove, simpleMoves, turnsPerDivision } from "./simple.js";

/** How to come to the marks of a ring with what is at hand. Errors in turns of the crank. */
export type RingIndexing = {
  /** Equal movements that come to every mark exactly; empty where there are none, or the marks are not equal. */
  readonly simple: readonly Move[];
  /** Double movements, best first; asked for only where no simple one is exact. */
  readonly compound: readonly CompoundMove[];
  /** Crank position of every mark from zero, each to its nearest hole, so that no error gathers. */
  readonly nearest?: { readonly circle: number; readonly moves: readonly NearMove[]; readonly worst: number };
  /** Change gears between spindle and plate that make the division exact; only where no simple movement is. */
  readonly differential: readonly Differential[];
  readonly gears: readonly GearIndex[];
  readonly gearPairs: readonly GearPairIndex[];
};

/** @param equal how many equal divisions the ring has; absent where the marks are not equal (a true dial's short one)
 *  @param marks angles of the marks from zero, radians */
export function ringIndexing(
  marks: readonly Pick<Graduation, "angle">[],
  equal: number | undefined,
  head: { readonly ratio: number; readonly plates: readonly (readonly number[])[] } | undefined,
  gears: readonly number[],
): RingIndexing {
  const singles = equal === undefined ? [] : gearIndexes(equal, gears);
  const pairs = equal === undefined || singles.length > 0 ? [] : gearPairIndexes(equal, gears);
  const none = { simple: [], compound: [], differential: [], gears: singles, gearPairs: pairs };
  const circles = [...new Set(head?.plates.flat() ?? [])];
  if (head === undefined || circles.length === 0) return none;
  const simple = equal === undefined ? [] : simpleMoves(turnsPerDivision(head.ratio, equal), circles);
  if (simple.length > 0) return { ...none, simple };
  const compound = equal === undefined ? [] : compoundForDivisions(head.ratio, equal, head.plates);
  const differential = equal === undefined ? [] : differentials(head.ratio, equal, circles, gears);
  return { ...none, compound, differential, nearest: nearestPositions(marks, head.ratio, circles) };
}

/** The one circle on which the worst mark is least off, since changing circles on the way loses the zero. */
function nearestPositions(marks: readonly Pick<Graduation, "angle">[], ratio: number, circles: readonly number[]) {
  const tried = circles.map((circle) => {
    const moves = marks.map(({ angle }) => nearestMove((angle / TURN) * ratio, [circle]));
    return { circle, moves, worst: Math.max(0, ...moves.map(({ error }) => Math.abs(error))) };
  });
  return tried.reduce((best, one) => (one.worst < best.worst - 1e-12 ? one : best));
}

/** The simple movements to each mark in turn, from zero. */
export function positionsOf(move: Move, count: number): Move[] {
  return Array.from({ length: count }, (_, index) => {
    const holes = index * (move.turns * move.circle + move.holes);
    return { turns: Math.floor(holes / move.circle), holes: holes % move.circle, circle: move.circle };
  });
}

/** Error of the reading that an error of the crank makes, in what the dial reads. */
export const readingError = (crankTurns: number, ratio: number, turn: number): number => (crankTurns / ratio) * turn;

/** Exactly the same movement written in lowest terms: "10/23 of a turn". */
export const movementWritten = (ratio: number, divisions: number): string => {
  const { numerator, denominator } = fraction(ratio, divisions);
  return denominator === 1
    ? String(numerator)
    : `${numerator}/${denominator} (${quotient(fraction(ratio, divisions)).toFixed(6)})`;
};
