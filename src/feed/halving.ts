import { slopeErrorFrom } from "./fit.js";
import { studentT95 } from "./studentT.js";

/** How many readings more, going on by the spacing that they have, would halve the doubt that they leave the feed, if they scatter no
 *  more than those so far. Undefined where there is no spacing to go on by, or `most` more would not do. */
export function readingsToHalve(turns: readonly number[], most = 60): number | undefined {
  const places = [...new Set(turns)].sort((a, b) => a - b);
  const last = places.at(-1);
  const before = places.at(-2);
  if (last === undefined || before === undefined || turns.length < 3) return undefined;
  const step = last - before;
  const doubt = (list: readonly number[]): number => studentT95(list.length - 2) * slopeErrorFrom(1, list);
  const wanted = doubt(turns) / 2;
  const more: number[] = [];
  while (more.length < most) {
    more.push(last + step * (more.length + 1));
    if (doubt([...turns, ...more]) <= wanted) return more.length;
  }
  return undefined;
}
