import type { Readings } from "../machine/machine.js";
import type { LostMotion } from "./finding.js";
import { mean } from "./fit.js";
import { NO_SCATTER, roundingOfDifference95 } from "./gauge.js";
import { levelsOf, spreadOf } from "./levels.js";
import { studentT95 } from "./studentT.js";

/** Play on reversal: mean of (return − out) at equal handwheel positions, `undefined` without return readings.
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
  const lost = mean(differences);
  const uncertainty = doubt(differences, lost, readings.turns, gauge);
  return {
    travel: lost,
    turn: lost / Math.abs(slope),
    pairs: differences.length,
    ...(uncertainty === undefined ? {} : { uncertainty }),
  };
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
