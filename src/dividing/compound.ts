import { type Fraction, greatestCommonDivisor, quotient } from "../quantity/fraction.js";

/** Two movements on two circles of one plate: the crank by `first`, then crank and plate together by `second`, forward
 *  where its holes are positive, back where they are negative. `error` in turns of the crank, 0 where exact. */
export type CompoundMove = {
  readonly first: { readonly holes: number; readonly circle: number };
  readonly second: { readonly holes: number; readonly circle: number };
  /** Whole divisions that one double movement goes on: with 5, every fifth division is cut until all are. */
  readonly divisionsAtOnce: number;
  readonly error: number;
};

const EXACT = 1e-12;
/** More are no use to anybody. */
const MOST_MOVES = 5;

/** What gathers, turns of the crank, until each of the divisions has been cut: a double movement for each of them, whether it
 *  goes on by one or by several. */
export const gatheredError = ({ error }: CompoundMove, divisions: number): number => error * divisions;

/** Double movements for `turns` of the crank, on two circles of the same plate; best first: exact before near, then
 *  fewer holes to count. Movements shorter than half a hole are not two movements and are left out. */
export function compoundMoves(
  turns: Fraction,
  plates: readonly (readonly number[])[],
  most = MOST_MOVES,
): CompoundMove[] {
  return sorted(allMoves(quotient(turns), plates, 1)).slice(0, most);
}

/** The same, free to go on by several divisions at once: any number that has no factor in common with `divisions` comes
 *  to each of them in the end. Exact ones with fewer divisions at once come first. */
export function compoundForDivisions(
  ratio: number,
  divisions: number,
  plates: readonly (readonly number[])[],
  mostAtOnce = 7,
): CompoundMove[] {
  const found: CompoundMove[] = [];
  for (let at = 1; at <= Math.min(mostAtOnce, divisions - 1); at++) {
    if (greatestCommonDivisor(at, divisions) !== 1) continue;
    found.push(...allMoves((at * ratio) / divisions, plates, at));
    // None that goes on by more at once is better.
    if (found.filter(({ error }) => error === 0).length >= MOST_MOVES) break;
  }
  return sorted(found).slice(0, MOST_MOVES);
}

function allMoves(turns: number, plates: readonly (readonly number[])[], divisionsAtOnce: number): CompoundMove[] {
  return plates.flatMap((circles) =>
    circles.flatMap((one) =>
      circles.filter((other) => other !== one).flatMap((other) => pair(turns, one, other, divisionsAtOnce)),
    ),
  );
}

/** Nearest second movement to every first one; only what is exact, or the best of the rest. */
function pair(turns: number, one: number, other: number, divisionsAtOnce: number): CompoundMove[] {
  const moveOf = (holes: number, second: number, error: number): CompoundMove => ({
    first: { holes, circle: one },
    second: { holes: second, circle: other },
    divisionsAtOnce,
    error,
  });
  let [nearest, besides, off] = [0, 0, Number.POSITIVE_INFINITY];
  const exact: CompoundMove[] = [];
  const least = Math.max(1, Math.ceil((turns - 1) * one));
  for (let holes = least; holes < (turns + 1) * one; holes++) {
    const second = Math.round((turns - holes / one) * other);
    if (second === 0 || Math.abs(second) >= other) continue;
    const error = holes / one + second / other - turns;
    if (Math.abs(error) < EXACT) exact.push(moveOf(holes, second, 0));
    else if (Math.abs(error) < Math.abs(off)) [nearest, besides, off] = [holes, second, error];
  }
  if (exact.length > 0) return exact;
  return nearest > 0 ? [moveOf(nearest, besides, off)] : [];
}

/** Exact ones by the least counting; near ones by their error, which gathers alike with each movement. */
function sorted(moves: readonly CompoundMove[]): CompoundMove[] {
  const each = ({ error }: CompoundMove) => Math.abs(error);
  const counting = ({ first, second }: CompoundMove) =>
    first.holes / first.circle + Math.abs(second.holes) / second.circle;
  return [...moves].sort((a, b) => {
    if (Math.abs(each(a) - each(b)) > EXACT) return each(a) - each(b);
    if (a.divisionsAtOnce !== b.divisionsAtOnce) return a.divisionsAtOnce - b.divisionsAtOnce;
    if (Math.abs(counting(a) - counting(b)) > EXACT) return counting(a) - counting(b);
    return a.first.circle - b.first.circle;
  });
}
