import { type Fraction, fraction, quotient } from "../quantity/fraction.js";

/** What the change gears between spindle and plate must do so that `holes` taken on `circle` give `divisions`: turns of the
 *  plate for one of the spindle. Positive: the plate turns with the crank, negative: against it. 0: no gears needed.
 *  Brown & Sharpe, Practical Treatise on Milling: x = (H V − N n) / H. */
export function differentialRatio(ratio: number, divisions: number, circle: number, holes: number): Fraction {
  return fraction(circle * ratio - divisions * holes, circle);
}

/** Gears from the spindle to the plate: `drivers` on spindle and second stud, `driven` on first stud and plate; one each
 *  for a simple train, two for a compound one. */
export type Differential = {
  readonly circle: number;
  readonly holes: number;
  readonly ratio: Fraction;
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
};

/** Trains from the gears at hand (each once) that divide exactly; simple ones first, then the slowest plate. */
export function differentials(
  ratio: number,
  divisions: number,
  circles: readonly number[],
  gears: readonly number[],
  most = 2,
): Differential[] {
  const counts = [...new Set(gears)].sort((a, b) => a - b);
  const wanted = circles
    .flatMap((circle) => nearHoles((circle * ratio) / divisions).map((holes) => ({ circle, holes })))
    .map((move) => ({ ...move, ratio: differentialRatio(ratio, divisions, move.circle, move.holes) }))
    .filter((move) => move.ratio.numerator !== 0)
    .sort((one, other) => Math.abs(quotient(one.ratio)) - Math.abs(quotient(other.ratio)) || one.circle - other.circle);
  const found: Differential[] = [];
  // Compound trains, which take much longer to find, only where simple ones are too few.
  for (const trainFor of [simpleTrain, compoundTrain])
    for (const move of wanted) {
      if (found.length >= most) return found;
      if (found.some(({ circle, holes }) => circle === move.circle && holes === move.holes)) continue;
      const train = trainFor(Math.abs(move.ratio.numerator), move.ratio.denominator, counts);
      if (train) found.push({ ...move, ...train });
    }
  return found;
}

/** Moves of whole holes either side of what plain indexing would ask. */
function nearHoles(wanted: number): number[] {
  const below = Math.floor(wanted);
  return [below - 1, below, below + 1, below + 2].filter((holes) => holes > 0);
}

type Train = Pick<Differential, "drivers" | "driven">;

/** One pair that makes above/below exactly: whole numbers alone are compared. */
function simpleTrain(above: number, below: number, counts: readonly number[]): Train | undefined {
  const driver = counts.find((teeth) => {
    const driven = (teeth * below) / above;
    return driven !== teeth && counts.includes(driven);
  });
  return driver === undefined ? undefined : { drivers: [driver], driven: [(driver * below) / above] };
}

/** Two pairs of four different gears: both products are multiples of what the fraction in lowest terms says. */
function compoundTrain(above: number, below: number, counts: readonly number[]): Train | undefined {
  const known = new Set(counts);
  const pairsOf = (product: number): [number, number][] =>
    counts.flatMap((one): [number, number][] => {
      const other = product / one;
      return known.has(other) ? [[one, other]] : [];
    });
  for (const first of counts)
    for (const second of counts) {
      if (first === second || (first * second) % above !== 0) continue;
      const driven = pairsOf(((first * second) / above) * below).find(
        (pair) => new Set([first, second, ...pair]).size === 4,
      );
      if (driven) return { drivers: [first, second], driven };
    }
  return undefined;
}
