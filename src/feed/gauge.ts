/** What a gauge of a given smallest graduation cannot see. */

/** Standard deviation, mm, of one reading rounded to the graduation `gauge`, mm: rounding is as likely to be anything
 *  within one graduation. Rectangular distribution: ISO/IEC Guide 98-3 (GUM), F.2.2.1 (memory). */
export function roundingDeviation(gauge: number): number {
  return gauge / Math.sqrt(12);
}

/** Half-width at 95 % of what a gauge's own error, anywhere within its limit, makes of a length read with it, mm: rectangular, as above,
 *  with the factor of chance beside which it stands. */
export const gaugeErrorOver95 = (limit: number): number => (1.96 * limit) / Math.sqrt(3);

/** Half-width at 95 % of the difference of two such readings, mm: it is triangular over ± one graduation. Computed. */
export function roundingOfDifference95(gauge: number): number {
  return gauge * (1 - Math.sqrt(0.05));
}

/** Scatter below this, mm, is arithmetic and not measurement: no workshop gauge sees a millionth of a micrometre. */
export const NO_SCATTER = 1e-9;
