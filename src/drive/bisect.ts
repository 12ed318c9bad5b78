/** Where a rising function passes zero, between two ends that lie on either side of it; undefined where they do not.
 *  Halves the interval until doubles can be told apart no more. */
export function risingZero(f: (x: number) => number, low: number, high: number): number | undefined {
  if (!(f(low) <= 0 && f(high) >= 0)) return undefined;
  let [below, above] = [low, high];
  for (let i = 0; i < 200; i++) {
    const middle = (below + above) / 2;
    if (middle === below || middle === above) break;
    if (f(middle) <= 0) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
