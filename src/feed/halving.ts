import type { Readings } from "../machine/machine.js";
import { budget } from "./budget.js";
import type { Fit } from "./finding.js";
import { slopeErrorFrom } from "./fit.js";

/** How many readings more, going on by the spacing that they have, would halve the doubt that they leave the feed, if they scatter no
 *  more than those so far: the whole doubt, of which more readings take nothing but length off what the gauge or the warmth brings.
 *  Undefined where there is no spacing to go on by, nothing to halve, or `most` more would not do. */
export function readingsToHalve(line: Fit, readings: Readings, most = 60): number | undefined {
  const { turns } = readings;
  const places = [...new Set(turns)].sort((a, b) => a - b);
  const last = places.at(-1);
  const before = places.at(-2);
  const now = budget(line, readings)?.expanded;
  if (last === undefined || before === undefined || now === undefined || now === 0) return undefined;
  const step = last - before;
  const more: number[] = [];
  while (more.length < most) {
    more.push(last + step * (more.length + 1));
    const longer: Fit = {
      ...line,
      degreesOfFreedom: line.degreesOfFreedom + more.length,
      leverage: (line.leverage * slopeErrorFrom(1, [...places, ...more])) / slopeErrorFrom(1, places),
    };
    const then = budget(longer, { ...readings, turns: [...turns, ...more] })?.expanded;
    if (then !== undefined && then <= now / 2) return more.length;
  }
  return undefined;
}
