/** Sizes apart by less, mm, are the same on any drawing. */
export const SAME = 1e-6;
