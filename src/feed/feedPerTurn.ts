import type { Feed, Readings } from "../machine/machine.js";
import { rackTravel } from "../machine/rackTravel.js";
import { budget } from "./budget.js";
import type { FeedFinding, TooFewReadings } from "./finding.js";
import { fit } from "./fit.js";
import { lostMotion } from "./lostMotion.js";

/** True travel for one turn of a handwheel, mm, always positive, with its doubt where something tells it.
 *  `TooFewReadings` where readings are given but cannot carry a line: the caller must look, and say so on paper.
 *
 *  From readings only the way out is fitted. A dial is set and read with the lost motion taken up, going out, and there the
 *  screw's own errors stand at the same turns on the way back: pooling both ways would count them twice as though
 *  they were chance, and claim less doubt than there is. Where it grows along the travel, the return has another
 *  slope altogether. The return readings serve for the lost motion. */
export function feedPerTurn(feed: Feed): FeedFinding | TooFewReadings {
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
      const finding = fromReadings(feed);
      return "tooFew" in finding ? finding : { ...finding, ...nominal };
    }
  }
}

function fromReadings(readings: Readings): FeedFinding | TooFewReadings {
  const line = fit(readings.turns, readings.travel);
  if ("tooFew" in line) return line;
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
  };
}
