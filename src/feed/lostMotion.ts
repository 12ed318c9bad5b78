import type { Readings } from "../machine/machine.js";
import { REAL_BELOW } from "./alongTravel.js";
import type { LostMotion } from "./finding.js";
import { mean } from "./fit.js";
import { NO_SCATTER, roundingOfDifference95 } from "./gauge.js";
import { levelsOf, spreadOf } from "./levels.js";
import { median } from "./outliers.js";
import { alongPlaces, chanceOfPattern } from "./pattern.js";
import { studentT95 } from "./studentT.js";

/** Play on reversal: mean of (return − out) at equal handwheel positions, `undefined` without return readings. Where it is not the
 *  same along the travel, it is that of the stretch where it is largest: whoever goes back by the mean does not take it up there.
 *  `slope` is the fitted travel per turn with its sign, mm, not 0. On the way back a slide with lost motion lags behind the
 *  handwheel, so the gauge stands further on in the sense of the outward travel; that sense counts as positive,
 *  whichever way the gauge ran. A negative value therefore says that the readings do not belong together.
 *  The uncertainty is Student's t over the pairs' scatter, but never less than what the rounding of two readings
 *  leaves: where every pair is rounded alike, more pairs do not help.
 *  @throws RangeError when there is not one return reading for each reading out. */
export function lostMotion(readings: Readings, slope: number): LostMotion | undefined {
  const { back, travel, gauge } = readings;
  if (back === undefined || back.length === 0) return undefined;
  if (back.length !== travel.length) {
    throw new RangeError(`${back.length} return readings but ${travel.length} outward: one for each.`);
  }
  const sense = Math.sign(slope);
  const differences = back.map((reading, i) => sense * (reading - (travel[i] as number)));
  const zone = worst(readings.turns, differences, gauge);
  const inside = (_: number, i: number) => {
    const turn = readings.turns[i] ?? 0;
    return zone === undefined || (turn >= zone.fromTurn && turn <= zone.toTurn);
  };
  const counted = differences.filter(inside);
  const lost = mean(counted);
  const uncertainty = doubt(counted, lost, readings.turns.filter(inside), gauge);
  return {
    travel: lost,
    turn: lost / Math.abs(slope),
    pairs: counted.length,
    ...(uncertainty === undefined ? {} : { uncertainty }),
    ...(zone && { worst: zone }),
  };
}

/** The stretch in which play is largest, where neighbours are more alike than chance makes them and its ends differ by more than two
 *  rounded readings can. It reaches as far as play lies nearer to the most than to the least; a single place makes neither. */
function worst(turns: readonly number[], differences: readonly number[], gauge = 0): LostMotion["worst"] | undefined {
  const along = alongPlaces(turns, differences);
  const middle = mean(along.values);
  const chance = chanceOfPattern(
    along.turns,
    along.values.map((value) => value - middle),
    "mean",
  );
  if (chance === undefined || chance >= REAL_BELOW) return undefined;
  const smooth = along.values.slice(1, -1).map((_, i) => median(along.values.slice(i, i + 3)));
  const most = smooth.reduce((a, b) => Math.max(a, b));
  const least = smooth.reduce((a, b) => Math.min(a, b));
  if (most - least <= 2 * Math.max(roundingOfDifference95(gauge), NO_SCATTER)) return undefined;
  const high = (index: number) => (along.values[index] ?? Number.NEGATIVE_INFINITY) > (most + least) / 2;
  let from = smooth.indexOf(most) + 1;
  if (!high(from)) from = high(from - 1) ? from - 1 : from + 1;
  let to = from;
  while (high(from - 1)) from--;
  while (high(to + 1)) to++;
  return { least, fromTurn: along.turns[from] ?? 0, toTurn: along.turns[to] ?? 0 };
}

/** Why a lost motion cannot be what was measured: less than none beyond its doubt, or more than half a turn, where the two ways
 *  were more likely counted from different turns. Half a turn: common practice; a nut that loose is past measuring. */
export function contradiction({
  travel,
  turn,
  uncertainty = 0,
}: LostMotion): "negative" | "over half a turn" | "scattered" | undefined {
  // So far apart from place to place that the mean says nothing: another slope on the way back, or slips of the pen.
  if (uncertainty > Math.max(Math.abs(travel), Math.abs(travel / turn) / 10)) return "scattered";
  if (travel < -Math.max(uncertainty, NO_SCATTER)) return "negative";
  return turn > 0.5 ? "over half a turn" : undefined;
}

/** Of several runs as of one: what play differs by from place to place comes again with every run. */
function doubt(
  differences: readonly number[],
  lost: number,
  turns: readonly number[],
  gauge: number | undefined,
): number | undefined {
  const levels = levelsOf(turns);
  if (levels.places < 2) return undefined;
  const { single } = spreadOf(
    differences.map((difference) => difference - lost),
    { ...levels, runs: 1 },
    0,
  );
  if (gauge === undefined && single < NO_SCATTER) return undefined;
  const byScatter = (studentT95(levels.places - 1) * single) / Math.sqrt(levels.places);
  return Math.max(byScatter, roundingOfDifference95(gauge ?? 0));
}
