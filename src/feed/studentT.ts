/** Student's t, the factor by which a standard error from few readings is widened. */

/** Above this the finite sums only cost time: the series in 1/ν is then good to 13 digits. */
const SUMMED_UP_TO = 2000;

/** 97.5 % quantile of the normal distribution, the limit for ever more degrees of freedom. */
const NORMAL_95 = 1.959963984540054;

/** Two-sided 95 % quantile: |t| stays below it in 95 % of cases. `degreesOfFreedom` is a whole number ≥ 1; at least 11
 *  digits are right. Abramowitz & Stegun, Handbook of Mathematical Functions (1964), 26.7.3 to 26.7.5 (memory).
 *  @throws RangeError for anything but a whole number ≥ 1. */
export function studentT95(degreesOfFreedom: number): number {
  if (!Number.isInteger(degreesOfFreedom) || degreesOfFreedom < 1) {
    throw new RangeError(`Degrees of freedom must be a whole number from 1 up, not ${degreesOfFreedom}.`);
  }
  if (degreesOfFreedom > SUMMED_UP_TO) return byExpansion(degreesOfFreedom);
  let low = 1.9;
  let high = 12.8;
  // Halving is slow but cannot fail; 60 halvings leave less than the spacing of doubles.
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, degreesOfFreedom) < 0.95) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability that |T| ≤ t, by finite sums in the angle whose tangent is t/√ν. */
function shareWithin(t: number, degreesOfFreedom: number): number {
  const tangent = t / Math.sqrt(degreesOfFreedom);
  const cosineSquared = 1 / (1 + tangent * tangent);
  const cosine = Math.sqrt(cosineSquared);
  const sine = tangent * cosine;
  const odd = degreesOfFreedom % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = 0;
  for (let j = odd ? 1 : 0; j < degreesOfFreedom - 1; j += 2) {
    sum += term;
    term *= (cosineSquared * (j + 1)) / (j + 2);
  }
  return odd ? (2 / Math.PI) * (Math.atan(tangent) + sine * sum) : sine * sum;
}

function byExpansion(degreesOfFreedom: number): number {
  const z = NORMAL_95;
  const z2 = z * z;
  const v = degreesOfFreedom;
  const first = (z * (z2 + 1)) / 4;
  const second = (z * ((5 * z2 + 16) * z2 + 3)) / 96;
  const third = (z * (((3 * z2 + 19) * z2 + 17) * z2 - 15)) / 384;
  return z + (first + (second + third / v) / v) / v;
}
