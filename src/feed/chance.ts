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

/** What makes a variance ratio larger than chance does. */
export type Effect = {
  /** Sum of squares that the tested columns take up, and that which they do not and which swells the scatter instead, both
   *  over the variance of a reading, for an effect of size 1. */
  readonly taken: number;
  readonly left: number;
  readonly over: number;
  readonly under: number;
};

/** How often an effect of a size is called real, at `falseAlarm`. */
export const powerOf = (size: number, falseAlarm: number, effect: Effect): number =>
  powerAt(size, criticalRatio(falseAlarm, effect), effect);

/** The size that an effect must have to be called real, at `falseAlarm`, in `power` of the cases; undefined where not even
 *  the largest would be, since it swells the scatter as much. */
export function sizeShown(power: number, falseAlarm: number, effect: Effect): number | undefined {
  const critical = criticalRatio(falseAlarm, effect);
  const most = 100 / Math.sqrt(effect.taken);
  if (powerAt(most, critical, effect) < power) return undefined;
  return rising((size) => powerAt(size, critical, effect), power);
}

const criticalRatio = (falseAlarm: number, { over, under }: Effect): number =>
  rising((ratio) => 1 - chanceOfRatio(ratio, over, under), 1 - falseAlarm);

/** Chance that the doubly noncentral variance ratio exceeds `critical`: a Poisson mixture of central ones (Abramowitz & Stegun,
 *  26.6.18, memory), its denominator by Patnaik's central chi-square of the same mean and variance (Biometrika 36, 1949,
 *  memory). */
function powerAt(size: number, critical: number, { taken, left, over, under }: Effect): number {
  const [moved, swollen] = [taken * size * size, left * size * size];
  const freedom = (under + swollen) ** 2 / (under + 2 * swollen);
  const ratio = (critical * (under + swollen)) / under;
  const x = (over * ratio) / (over * ratio + freedom);
  let sum = 0;
  // Poisson weights by their logarithms: the first ones vanish where the mean is large.
  const mean = moved / 2;
  const [from, to] = [Math.max(0, Math.floor(mean - 9 * Math.sqrt(mean))), Math.ceil(mean + 9 * Math.sqrt(mean) + 20)];
  for (let j = from; j <= to; j++) {
    const weight = mean === 0 ? Number(j === 0) : Math.exp(j * Math.log(mean) - mean - logGamma(j + 1));
    sum += weight * (1 - incompleteBeta(x, over / 2 + j, freedom / 2));
  }
  return sum;
}

/** Where a function that rises from 0 reaches `level`. */
function rising(value: (at: number) => number, level: number): number {
  let [low, high] = [0, 1];
  while (value(high) < level && high < 1e4) high *= 2;
  for (let halving = 0; halving < 40; halving++) {
    const middle = (low + high) / 2;
    if (value(middle) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Natural logarithm of how many ways there are to pick `some` of `all`. */
export const logWays = (all: number, some: number): number =>
  logGamma(all + 1) - logGamma(some + 1) - logGamma(all - some + 1);

/** Regularized incomplete beta I_x(a, b), 0 ≤ x ≤ 1, by its continued fraction: Abramowitz & Stegun, 26.5.8 (memory). */
export function incompleteBeta(x: number, a: number, b: number): number {
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
