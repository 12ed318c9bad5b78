/** What a gauge of a given smallest graduation cannot see. */

/** Standard deviation, mm, of one reading rounded to the graduation `gauge`, mm: rounding is as likely to be anything
 *  within one graduation. Rectangular distribution: ISO/IEC Guide 98-3 (GUM), F.2.2.1 (memory). */
export function roundingDeviation(gauge: number): number {
  return gauge / Math.sqrt(12);
}

/** What a gauge's own error, anywhere within its limit, adds to a length read with it, mm, to be put together with half-widths at 95 % by
 *  their squares: its standard deviation, rectangular as above, times the 1.96 of chance. That is 1.13 times the limit, more than
 *  such an error ever is by itself: beside others of its size their sum spreads as chance does. */
export const gaugeErrorOver95 = (limit: number): number => (1.96 * limit) / Math.sqrt(3);

/** Half-width at 95 % of the difference of two such readings, mm: it is triangular over ± one graduation. Computed. */
export function roundingOfDifference95(gauge: number): number {
  return gauge * (1 - Math.sqrt(0.05));
}

/** Scatter below this, mm, is arithmetic and not measurement: no workshop gauge sees a millionth of a micrometre. */
export const NO_SCATTER = 1e-9;
