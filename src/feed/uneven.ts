import type { Shape } from "./alongTravel.js";
import type { Measured, Uneven } from "./finding.js";

/** What is worn or wavy beyond chance, as every sheet reckons with it; undefined where nothing is. `builtIn`: the dial has
 *  the wave in its marks, so that only the wave's doubt is left. */
export function unevenOf({ alongTravel, ahead, aheadDoubt, oncePerTurn }: Shape, builtIn: boolean): Uneven | undefined {
  const worn = alongTravel?.real ? ahead : undefined;
  const wave = oncePerTurn?.real ? oncePerTurn.found : undefined;
  if (worn === undefined && wave === undefined) return undefined;
  return {
    ...(worn && { ahead: worn, aheadDoubt, most: mostOver(worn) }),
    ...(wave && { sway: (builtIn ? 0 : wave.amplitude) + wave.uncertainty }),
    ...(wave && !builtIn && { wave: true }),
  };
}

/** The most that two places so many steps apart, or fewer, differ. */
function mostOver(ahead: readonly number[]): number[] {
  let most = 0;
  return ahead.map((_, apart) => {
    for (let i = 0; i + apart < ahead.length; i++)
      most = Math.max(most, Math.abs((ahead[i + apart] ?? 0) - (ahead[i] ?? 0)));
    return most;
  });
}

/** How many turns move the slide by `travel` when begun at turn `from` of the readings, by the wear that was measured; both less
 *  than 0 where it goes back. Undefined where that ends beyond what was measured. `perTurn` and `travel` mm. By halving: the curve
 *  rises. A wave in every turn is left out: no rule tells where in a turn a movement begins. */
export function correctedTurns(travel: number, from: number, perTurn: number, measured: Measured): number | undefined {
  const gone = (turn: number) => perTurn * (turn - from) + aheadAt(turn, measured) - aheadAt(from, measured);
  if (from < measured.from || from > measured.to || gone(measured.to) < travel || gone(measured.from) > travel)
    return undefined;
  let [low, high] = travel < 0 ? [measured.from, from] : [from, measured.to];
  for (let halving = 0; halving < 45; halving++) {
    const middle = (low + high) / 2;
    if (gone(middle) < travel) low = middle;
    else high = middle;
  }
  return (low + high) / 2 - from;
}

function aheadAt(turn: number, { from, to, uneven }: Measured): number {
  const { ahead = [] } = uneven ?? {};
  const at = Math.max(0, ((turn - from) / (to - from)) * (ahead.length - 1));
  const before = Math.min(Math.floor(at), ahead.length - 1);
  const low = ahead[Math.max(0, before)] ?? 0;
  const high = ahead[before + 1] ?? low;
  return low + (high - low) * Math.min(1, at - before);
}
