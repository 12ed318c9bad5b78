/** How likely chance alone does what was seen. */

/** Probability that a variance ratio with `over` and `under` degrees of freedom exceeds `ratio` ≥ 0 (Fisher's F).
 *  Abramowitz & Stegun, Handbook of Mathematical Functions (1964), 26.6.2 (memory). */
export function chanceOfRatio(ratio: number, over: number, under: number): number {
  return incompleteBeta(under / (under + over * ratio), under / 2, over / 2);
}

/** Probability that |T| exceeds `t` (Student's t, both sides): T² is a variance ratio of 1 and ν. */
export function chanceOfT(t: number, degreesOfFreedom: number): number {
  return chanceOfRatio(t * t, 1, degreesOfFreedom);
}

/** Regularized incomplete beta I_x(a, b), 0 ≤ x ≤ 1, by its continued fraction: Abramowitz & Stegun, 26.5.8 (memory). */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction runs fast on one side only; the other follows by symmetry.
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta(a, b)) / a;
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / orTiny(1 - ((a + b) * x) / (a + 1), tiny);
  let fraction = d;
  for (let m = 1; m <= 500; m++) {
    for (const step of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 / orTiny(1 + step * d, tiny);
      c = orTiny(1 + step / c, tiny);
      fraction *= c * d;
    }
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return front * fraction;
}

const orTiny = (value: number, tiny: number): number => (Math.abs(value) < tiny ? tiny : value);

const logBeta = (a: number, b: number): number => logGamma(a) + logGamma(b) - logGamma(a + b);

/** ln Γ(x), x > 0: Stirling's series after stepping up to 10, Abramowitz & Stegun 6.1.41 (memory). */
function logGamma(x: number): number {
  let shift = 0;
  let z = x;
  while (z < 10) shift -= Math.log(z++);
  const r = 1 / (z * z);
  const series = (1 / 12 - r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r / 1188)))) / z;
  return shift + (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series;
}
