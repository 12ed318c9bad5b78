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
  const pairs = counts.flatMap((driver) =>
    counts.filter((other) => other !== driver).map((driven) => ({ driver, driven })),
  );
  const found = circles.flatMap((circle) =>
    nearHoles((circle * ratio) / divisions).flatMap((holes): Differential[] => {
      const wanted = differentialRatio(ratio, divisions, circle, holes);
      const train =
        wanted.numerator === 0 ? undefined : trainFor(Math.abs(wanted.numerator), wanted.denominator, pairs);
      return train ? [{ circle, holes, ratio: wanted, ...train }] : [];
    }),
  );
  return found
    .sort(
      (one, other) =>
        one.drivers.length - other.drivers.length ||
        Math.abs(quotient(one.ratio)) - Math.abs(quotient(other.ratio)) ||
        one.circle - other.circle,
    )
    .slice(0, most);
}

/** Moves of whole holes either side of what plain indexing would ask. */
function nearHoles(wanted: number): number[] {
  const below = Math.floor(wanted);
  return [below - 1, below, below + 1, below + 2].filter((holes) => holes > 0);
}

type Pair = { readonly driver: number; readonly driven: number };

/** One pair, or two of four different gears, that make above/below exactly: whole numbers alone are compared. */
function trainFor(
  above: number,
  below: number,
  pairs: readonly Pair[],
): Pick<Differential, "drivers" | "driven"> | undefined {
  const single = pairs.find(({ driver, driven }) => driver * below === driven * above);
  if (single) return { drivers: [single.driver], driven: [single.driven] };
  for (const one of pairs)
    for (const two of pairs) {
      if (one.driver * two.driver * below !== one.driven * two.driven * above) continue;
      if (new Set([one.driver, one.driven, two.driver, two.driven]).size < 4) continue;
      return { drivers: [one.driver, two.driver], driven: [one.driven, two.driven] };
    }
  return undefined;
}
