/** How often the belt is moved from position to position; what goes by hand (undefined) leaves it where it is. */
export function beltChanges(positions: readonly (string | undefined)[]): number {
  const known = positions.filter((position) => position !== undefined);
  return known.filter((position, place) => place > 0 && position !== known[place - 1]).length;
}
