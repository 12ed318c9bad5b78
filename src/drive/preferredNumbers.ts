/** Preferred numbers of ISO 3, one decade, as rounded there. R5 read; R10 to R40 from memory, checked against the exact
 *  series (root of ten) in tests/published/series.test.ts. */
const decade = {
  R5: [1, 1.6, 2.5, 4, 6.3],
  R10: [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8],
  R20: [1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9],
  R40: [
    1, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 2.12, 2.24, 2.36, 2.5, 2.65, 2.8, 3, 3.15, 3.35,
    3.55, 3.75, 4, 4.25, 4.5, 4.75, 5, 5.3, 5.6, 6, 6.3, 6.7, 7.1, 7.5, 8, 8.5, 9, 9.5,
  ],
} as const;

export type Series = keyof typeof decade;

/** Every preferred number from `least` to `most`, both included, rising. Both > 0. */
export function preferredNumbers(series: Series, least: number, most: number): number[] {
  const numbers: number[] = [];
  for (let power = Math.floor(Math.log10(least)); power <= Math.ceil(Math.log10(most)); power++)
    for (const number of decade[series]) {
      // Through the decimal text, so that 3.15 × 100 is 315 and not a hair beside it.
      const value = Number(`${number}e${power}`);
      if (value >= least && value <= most) numbers.push(value);
    }
  return numbers;
}

/** The nearest preferred number by ratio. `value` > 0. */
export function nearestPreferred(series: Series, value: number): number {
  return preferredNumbers(series, value / 2, value * 2).reduce((best, next) =>
    Math.abs(Math.log(next / value)) < Math.abs(Math.log(best / value)) ? next : best,
  );
}
