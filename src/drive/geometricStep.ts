/** Ratio of each speed to the one below when `count` speeds are spread evenly by ratio: (fastest / slowest)^(1/(count − 1)).
 *  1 for a single speed. */
export const geometricStep = (slowest: number, fastest: number, count: number): number =>
  count < 2 ? 1 : (fastest / slowest) ** (1 / (count - 1));

/** `count` speeds from slowest to fastest, each the same ratio above the last. */
export function geometricSpeeds(slowest: number, fastest: number, count: number): number[] {
  const step = geometricStep(slowest, fastest, count);
  return Array.from({ length: count }, (_, index) => slowest * step ** index);
}

export type Spread = {
  /** Even ratio between the slowest and the fastest. */
  readonly step: number;
  /** Each speed ÷ the one below, from the second on; rising order. */
  readonly ratios: readonly number[];
  /** Index i: between speed i and i + 1, more than half a step too wide: work falls between the two. */
  readonly gaps: readonly number[];
  /** Index i: speeds i and i + 1 lie closer than half a step: two positions do nearly the same. */
  readonly overlaps: readonly number[];
};

/** How evenly speeds (rising, > 0) are spread. The half-step bounds are this program's own. */
export function spread(rpms: readonly number[]): Spread {
  const [slowest = 1] = rpms;
  const step = geometricStep(slowest, rpms.at(-1) ?? 1, rpms.length);
  const ratios = rpms.slice(1).map((rpm, index) => rpm / (rpms[index] ?? rpm));
  const steps = ratios.map((ratio) => (step > 1 + 1e-9 ? Math.log(ratio) / Math.log(step) : 1));
  const where = (test: (share: number) => boolean) => steps.flatMap((share, index) => (test(share) ? [index] : []));
  return { step, ratios, gaps: where((share) => share > 1.5), overlaps: where((share) => share < 0.5) };
}
