import type { Fit, TooFewReadings } from "./finding.js";

/** Least squares of travel on turns, with an intercept: the gauge's zero is nobody's business. `turns` and `travel`
 *  are of equal length and in any order; at least 3 readings at 2 different turns, else `TooFewReadings`.
 *  Means are taken off first, so that readings far from zero lose no digits. Ordinary least squares: common practice,
 *  checked against certified values in tests/published/regression.test.ts.
 *  @throws RangeError for unequal lengths or a value that is no number. */
export function fit(turns: readonly number[], travel: readonly number[]): Fit | TooFewReadings {
  if (turns.length !== travel.length) {
    throw new RangeError(`${turns.length} turns but ${travel.length} readings of travel: one reading for each.`);
  }
  if (!turns.every(Number.isFinite) || !travel.every(Number.isFinite))
    throw new RangeError("Every reading must be a finite number.");
  const readings = turns.length;
  const differentTurns = new Set(turns).size;
  if (readings < 3 || differentTurns < 2) return { tooFew: true, readings, differentTurns };

  const meanTurns = mean(turns);
  const meanTravel = mean(travel);
  const x = turns.map((turn) => turn - meanTurns);
  const y = travel.map((reading) => reading - meanTravel);
  const spread = sum(x.map((v) => v * v));
  const slope = sum(x.map((v, i) => v * (y[i] as number))) / spread;
  const residuals = x.map((v, i) => (y[i] as number) - slope * v);
  const degreesOfFreedom = readings - 2;
  const residualDeviation = Math.sqrt(sum(residuals.map((r) => r * r)) / degreesOfFreedom);
  const leverage = slopeErrorFrom(1, turns);
  return {
    readings,
    runs: 1,
    places: differentTurns,
    slope,
    intercept: meanTravel - slope * meanTurns,
    slopeError: residualDeviation * leverage,
    interceptError: residualDeviation * Math.sqrt(1 / readings + (meanTurns * meanTurns) / spread),
    residualDeviation,
    degreesOfFreedom,
    residuals,
    leverage,
    withWave: false,
  };
}

/** Standard error of a slope over these turns when each reading scatters by `deviation`. */
export function slopeErrorFrom(deviation: number, turns: readonly number[]): number {
  const middle = mean(turns);
  return deviation / Math.sqrt(sum(turns.map((turn) => (turn - middle) ** 2)));
}

/** Arithmetic mean of at least one number. The second pass takes back what rounding took in the first. */
export function mean(values: readonly number[]): number {
  const rough = sum(values) / values.length;
  return rough + sum(values.map((value) => value - rough)) / values.length;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
