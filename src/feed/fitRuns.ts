import type { Fit, TooFewReadings } from "./finding.js";
import { fit, mean } from "./fit.js";
import { type Levels, lessMeans, levelsOf, spreadOf } from "./levels.js";
import { regress } from "./regress.js";

/** The line through readings of one run or of several: each run with its own zero of the gauge, a slope common to all,
 *  and, where `withWave`, a wave once per turn fitted with it. Its doubt is that of one run: what is wrong at a place
 *  (the screw's pitch, the gauge's own error, its rounding) comes again with every run, so that only further places make
 *  the feed better known. One run without a wave is the ordinary line.
 *
 *  Of readings whose places hold common errors the slope's variance is σ² Σ_place (Σ_reading h)², where h is what each
 *  reading weighs in the slope. Cluster-robust form of the least-squares variance, for one run σ² / Σ(turns − mean)². */
export function fitRuns(turns: readonly number[], travel: readonly number[], withWave = false): Fit | TooFewReadings {
  const plain = fit(turns, travel);
  if ("tooFew" in plain) return plain;
  const levels = levelsOf(turns);
  if (!withWave && levels.places === turns.length) return plain;
  return byLevels(turns, travel, levels, withWave) ?? byLevels(turns, travel, levels, false) ?? plain;
}

function byLevels(
  turns: readonly number[],
  travel: readonly number[],
  levels: Levels,
  withWave: boolean,
): Fit | undefined {
  const centred = (values: ArrayLike<number>) => lessMeans(values, levels.run, levels.runs);
  const terms = withWave
    ? [(turn: number) => Math.cos(2 * Math.PI * turn), (turn: number) => Math.sin(2 * Math.PI * turn)]
    : [];
  const columns = [...terms.map((term) => centred(Float64Array.from(turns, term))), centred(turns)];
  if (turns.length <= columns.length || (withWave && levels.places <= columns.length + 1)) return undefined;
  const line = regress(columns, centred(travel));
  if (line === undefined) return undefined;
  const slope = line.coefficients.at(-1) ?? 0;
  const { residuals, weightsOfLast } = line;
  const spread = spreadOf(residuals, levels, columns.length);
  // Two places tell nothing of what repeats at each: no line is left to stray from.
  const known = spread.degreesOfFreedom > 0;
  const deviation = known ? spread.single : (spread.repeat?.deviation ?? 0);
  const weights = new Float64Array(levels.places);
  for (let i = 0; i < turns.length; i++) {
    const place = levels.place[i] ?? 0;
    weights[place] = (weights[place] ?? 0) + (weightsOfLast[i] ?? 0);
  }
  const leverage = Math.sqrt(weights.reduce((sum, weight) => sum + weight * weight, 0));
  const middle = mean(turns);
  return {
    readings: turns.length,
    slope,
    intercept: mean(travel) - slope * middle,
    slopeError: deviation * leverage,
    interceptError: deviation * Math.sqrt(1 / levels.places + (middle * leverage) ** 2),
    residualDeviation: deviation,
    degreesOfFreedom: Math.max(0, spread.degreesOfFreedom),
    residuals: Array.from(residuals),
    leverage,
    runs: levels.runs,
    places: levels.places,
    withWave,
    ...(spread.repeat && { repeat: spread.repeat }),
  };
}
