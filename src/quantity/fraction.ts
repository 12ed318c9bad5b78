/** A ratio of whole numbers in lowest terms, denominator > 0. Exact as long as both stay below 2⁵³. */
export type Fraction = { readonly numerator: number; readonly denominator: number };

export function greatestCommonDivisor(a: number, b: number): number {
  let [larger, smaller] = [Math.abs(a), Math.abs(b)];
  while (smaller > 0) [larger, smaller] = [smaller, larger % smaller];
  return larger;
}

/** Both whole, denominator not 0.
 *  @example fraction(40, 64)   // 5/8 */
export function fraction(numerator: number, denominator: number): Fraction {
  const common = greatestCommonDivisor(numerator, denominator) * Math.sign(denominator);
  return { numerator: numerator / common + 0, denominator: denominator / common };
}

export const quotient = ({ numerator, denominator }: Fraction): number => numerator / denominator;

/** The best rational approximations of a number ≥ 0: each convergent is nearer than any fraction of a smaller
 *  denominator (theory of continued fractions). Ends at a denominator above `most`, or where the number is met to the
 *  rounding of doubles.
 *  @example convergents(1.27, 100)   // 1, 4/3 … 33/26, 47/37, 127/100 */
export function convergents(value: number, most: number): Fraction[] {
  const found: Fraction[] = [];
  let [h0, h1, k0, k1] = [0, 1, 1, 0];
  let rest = value;
  for (let step = 0; step < 40; step++) {
    const whole = Math.floor(rest + 1e-9);
    const next = { numerator: whole * h1 + h0, denominator: whole * k1 + k0 };
    if (next.denominator > most) break;
    found.push(next);
    if (Math.abs(value - quotient(next)) <= 1e-12 * Math.max(1, value)) break;
    [h0, h1, k0, k1] = [h1, next.numerator, k1, next.denominator];
    rest = 1 / (rest - whole);
  }
  return found;
}

/** Whole sixty-fourths as the fraction that they are, in lowest terms; undefined for other numbers.
 *  @example inSixtyFourths(1.5)   // "1 1/2" */
export function inSixtyFourths(value: number): string | undefined {
  const parts = value * 64;
  if (Math.abs(parts - Math.round(parts)) > 1e-9) return undefined;
  const { numerator, denominator } = fraction(Math.round(parts), 64);
  const whole = Math.floor(numerator / denominator);
  const rest = numerator - whole * denominator;
  return rest === 0 ? String(whole) : `${whole > 0 ? `${whole} ` : ""}${rest}/${denominator}`;
}
