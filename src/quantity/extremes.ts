/** The smallest and the largest of any number of values. `Math.min(...values)` puts every value on the stack at once, which a
 *  file of many readings, sizes or rows overflows; so arrays that grow with what a user writes go through here. Of no values
 *  they are what `Math.min` and `Math.max` are of none. */
export const smallestOf = (values: readonly number[]): number =>
  values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);

export const largestOf = (values: readonly number[]): number =>
  values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
