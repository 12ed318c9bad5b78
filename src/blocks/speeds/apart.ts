/** Pushes places apart to at least `least`, about where they were, and keeps them between `from` and `to` where there is room for all;
 *  spread evenly where there is not. Rising places in, rising places out. */
export function apart(places: readonly number[], least: number, from: number, to: number): number[] {
  const step = places.length < 2 ? least : Math.min(least, (to - from) / (places.length - 1));
  // Neighbours that are too close make a group about their middle; groups that then touch, a larger one.
  const groups: { middle: number; count: number }[] = [];
  for (const place of places) {
    let own = { middle: place, count: 1 };
    for (let last = groups.at(-1); last !== undefined; last = groups.at(-1)) {
      if (own.middle - last.middle >= ((last.count + own.count) / 2) * step) break;
      groups.pop();
      const count = last.count + own.count;
      own = { middle: (last.middle * last.count + own.middle * own.count) / count, count };
    }
    groups.push(own);
  }
  const spread = groups.flatMap(({ middle, count }) =>
    Array.from({ length: count }, (_, index) => middle + (index - (count - 1) / 2) * step),
  );
  const kept: number[] = [];
  for (const [index, place] of spread.entries())
    kept.push(Math.max(place, index === 0 ? from : (kept[index - 1] ?? 0) + step));
  for (let index = kept.length - 1; index >= 0; index--)
    kept[index] = Math.min(kept[index] ?? 0, index === kept.length - 1 ? to : (kept[index + 1] ?? 0) - step);
  return kept;
}
