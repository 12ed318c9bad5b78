/** Hole circles of plates that are often met; for a machine file that names none. */
export const usualPlates: readonly (readonly number[])[] = [
  // Three plates of six circles: schsm.org, article on compound indexing.
  [15, 16, 17, 18, 19, 20],
  [21, 23, 27, 29, 31, 33],
  [37, 39, 41, 43, 47, 49],
];

/** One plate drilled on both sides: US Army OD1644, dividing. */
export const twoSidedPlate: readonly (readonly number[])[] = [
  [24, 25, 28, 30, 34, 37, 38, 39, 41, 42, 43],
  [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66],
];
