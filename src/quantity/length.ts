/** Exact: international yard and pound agreement, 1959. */
export const MM_PER_INCH = 25.4;
export const MM_PER_FOOT = 12 * MM_PER_INCH;

export type LengthUnit = "mm" | "in";
export const mmPer: Readonly<Record<LengthUnit, number>> = { mm: 1, in: MM_PER_INCH };
