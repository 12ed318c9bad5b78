import type { Feed, Readings } from "../machine/machine.js";
import { rackTravel } from "../machine/rackTravel.js";
import { greatest, least, partsTheTurn, type Shape, shape, steepened } from "./alongTravel.js";
import { budget } from "./budget.js";
import type { FeedFinding, Fit, Measured, TooFewReadings } from "./finding.js";
import { fitRuns } from "./fitRuns.js";
import { roundingDeviation } from "./gauge.js";
import { lostMotion } from "./lostMotion.js";
import { studentT95 } from "./studentT.js";
import { unevenOf } from "./uneven.js";

/** True travel for one turn of a handwheel, mm, always positive, with its doubt where something tells it.
 *  `TooFewReadings` where readings are given but cannot carry a line: the caller must look, and say so on paper.
 *
 *  From readings only the way out is fitted. A dial is set and read with the lost motion taken up, going out, and there the
 *  screw's own errors stand at the same turns on the way back: pooling both ways would count them twice as though
 *  they were chance, and claim less doubt than there is. Where it grows along the travel, the return has another
 *  slope altogether. The return readings serve for the lost motion.
 *
 *  `builtIn`: the dial is to have a once-per-turn error in its marks. Line and wave are then fitted together, as they are
 *  wherever the readings show a wave: a wave over a few turns leans on the line. */
export function feedPerTurn(feed: Feed, builtIn = false): FeedFinding | TooFewReadings {
  const nominal = feed.nominal === undefined ? {} : { nominal: feed.nominal };
  switch (feed.from) {
    case "stated": {
      const uncertainty = feed.uncertainty === undefined ? {} : { uncertainty: feed.uncertainty };
      return { from: "stated", perTurn: feed.perTurn, ...uncertainty, ...nominal };
    }
    case "screw":
      return { from: "screw", perTurn: feed.pitch * feed.starts, ...nominal };
    case "rack":
      return { from: "rack", perTurn: rackTravel(feed), ...nominal };
    case "readings": {
      const finding = fromReadings(feed, builtIn);
      return "tooFew" in finding ? finding : { ...finding, ...nominal };
    }
  }
}

function fromReadings(readings: Readings, builtIn: boolean): FeedFinding | TooFewReadings {
  const straight = fitRuns(readings.turns, readings.travel);
  if ("tooFew" in straight) return straight;
  const first = shape(readings, straight.slope);
  const waving = first.oncePerTurn !== undefined && (builtIn || first.oncePerTurn.real);
  const together = waving ? fitRuns(readings.turns, readings.travel, true) : straight;
  const line = "tooFew" in together ? straight : together;
  // Undefined where the readings show no scatter at all and nothing is known of the gauge.
  const uncertainty = budget(line, readings)?.expanded;
  // Where the gauge never moved there is no feed to measure it by.
  const lost = line.slope === 0 ? undefined : lostMotion(readings, line.slope);
  return {
    from: "readings",
    perTurn: Math.abs(line.slope),
    ...(uncertainty === undefined ? {} : { uncertainty }),
    fit: line,
    ...(lost === undefined ? {} : { lostMotion: lost }),
    measured: measuredBy(readings, line, first, Math.abs(line.slope) - Math.abs(straight.slope), builtIn),
  };
}

/** `steeper`: by how much the line is steeper than the one that `first` was found against. */
function measuredBy({ turns, gauge }: Readings, line: Fit, first: Shape, steeper: number, builtIn: boolean): Measured {
  const [from, to] = [least(turns), greatest(turns)];
  const found = steepened(first, steeper, from, to);
  const uneven = unevenOf(found, builtIn);
  // What is worn or wavy is told by its bound: it does not count as scatter once more.
  const scatter =
    uneven && found.left
      ? found.left
      : { deviation: line.residualDeviation, degreesOfFreedom: Math.max(1, line.degreesOfFreedom) };
  const deviation = Math.max(scatter.deviation, roundingDeviation(gauge ?? 0));
  return {
    from,
    to,
    position: studentT95(scatter.degreesOfFreedom) * deviation,
    withinTurn: partsTheTurn(turns),
    shape: found,
    ...(uneven && { uneven }),
  };
}
