import type { OncePerTurn, Zone } from "../feed/alongTravel.js";
import type { FeedFinding } from "../feed/finding.js";
import type { Handwheel, Units } from "../machine/machine.js";
import type { Path, Remark } from "../machine/problem.js";
import { formatDoubted, formatFixed, formatSize, plural, sizeFigure } from "../quantity/format.js";
import { say } from "../words/say.js";
import type { HandwheelFinding } from "./findings.js";
import { returnRemarks } from "./returnRemarks.js";

/** What a handwheel's readings show to be wrong or worn; nothing is ever left out of the fit in silence. */
export function readingRemarks(wheel: HandwheelFinding, index: number, units: Units): Remark[] {
  const { feed } = wheel.handwheel;
  const places = feed?.from === "readings" ? feed.places : undefined;
  const told = ofReadings(wheel, index, units);
  return places === undefined ? told : told.map((remark) => ({ ...remark, path: inLists(remark.path, places) }));
}

/** The same place in the file's lists, where some of those were left empty. */
function inLists(path: Path, places: readonly number[]): Path {
  const at = path.at(-1);
  return typeof at === "number" ? [...path.slice(0, -1), places[at] ?? at] : path;
}

/** Where the first reading stands that does not belong to the others; undefined where all do. */
export function wildReadingAt({ handwheel: { feed }, study }: HandwheelFinding, index: number): Path | undefined {
  const [wild] = study?.wild ?? [];
  if (wild === undefined || feed?.from !== "readings") return undefined;
  const path: Path = ["handwheels", index, "feed", "readings", "travel", wild.index];
  return feed.places ? inLists(path, feed.places) : path;
}

/** Whether readings leave a feed that may as well be none: it is not one to print. */
export const tellNoFeed = ({ from, perTurn, uncertainty = 0 }: FeedFinding): boolean =>
  from === "readings" && (perTurn === 0 || uncertainty >= perTurn);

function ofReadings({ handwheel, feed, study }: HandwheelFinding, index: number, units: Units): Remark[] {
  const path: Path = ["handwheels", index, "feed", "readings"];
  const { perTurn = 1, uncertainty = 0 } = feed ?? {};
  // Whatever else they show.
  if (feed !== undefined && tellNoFeed(feed))
    return [
      {
        severity: "error",
        code: "no-feed",
        path,
        what: `the readings of "${handwheel.name}" tell no feed: ${formatDoubted(perTurn, uncertainty, units, 3)} a turn`,
        remedy: "look for a slip in the turns or the readings, or take them again, at 8 places or more over the travel",
      },
    ];
  if (study === undefined) return unmeasuredWave(handwheel, index);
  const warn = (code: string, at: Path, what: string, remedy: string): Remark => ({
    severity: "warning",
    code,
    path: at,
    what,
    remedy,
  });
  const { alongTravel, oncePerTurn } = study.shape;
  const { fit } = feed ?? {};
  // Of a feed that is not told no curve is either: the slip makes one.
  const placeUnknown = handwheel.feed?.from === "readings" && handwheel.feed.zeroAt === undefined;
  const stopped = study.miscounted ?? study.jump;
  return [
    ...(fit && fit.degreesOfFreedom < 1
      ? [
          warn(
            "two-places",
            [...path, "turns"],
            `the readings of "${handwheel.name}" stand at two places alone, which tell no doubt however often they are read`,
            "read at 8 places or more, spread over the travel",
          ),
        ]
      : []),
    ...(study.miscounted
      ? [
          warn(
            "miscounted",
            [...path, "travel", study.miscounted.index],
            `from here on ${plural(Math.abs(study.miscounted.turns), "turn")} too ${study.miscounted.turns > 0 ? "many" : "few"} ${Math.abs(study.miscounted.turns) === 1 ? "seems" : "seem"} to have been made (${handwheel.name})`,
            "count again from the reading before and mend the turns or take it out; until then nothing is told of this feed, and no dial is made",
          ),
        ]
      : []),
    ...(study.jump
      ? [
          warn(
            "jump",
            [...path, "travel", study.jump.index],
            `from here on all readings of "${handwheel.name}" stand ${formatSize(Math.abs(study.jump.off), units, 3)} ${study.jump.off > 0 ? "above" : "below"} those before: the gauge was moved, lost motion was taken up, or a part of a turn was lost`,
            "take the run again from its beginning, or only the readings on one side; until then nothing is told of this feed, and no dial is made",
          ),
        ]
      : []),
    ...study.wild.map(({ index: at, off, like }) =>
      warn(
        "wild-reading",
        [...path, "travel", at],
        `this reading lies ${formatSize(Math.abs(off), units, 3)} ${off > 0 ? "above" : "below"} the line of the others${like ? ` (${like})` : ""}`,
        "take it again; until then it still stands in the fit, and its doubt with it",
      ),
    ),
    ...study.otherZeros.map(({ from, run, off }) =>
      warn(
        "other-zero",
        [...path, "travel", from],
        `run ${run} of "${handwheel.name}", from here on, stands ${formatSize(Math.abs(off), units, 3)} ${off > 0 ? "above" : "below"} the others: its gauge had another zero`,
        "the feed allows for it; mend a slip of the pen, and read each run from the same zero to learn how alike a place comes again",
      ),
    ),
    ...returnRemarks(handwheel.name, study, path, units),
    ...(alongTravel?.real && !stopped
      ? [
          warn(
            "uneven-travel",
            [...path, "travel"],
            `the feed of "${handwheel.name}" is not the same along the travel: ${zoneWords(alongTravel.found, units)}`,
            `one dial serves all of it only on average: the sheets hold the difference in their doubt, turns and plan have corrected distances, measured-report each zone${placeUnknown ? "; say with zeroAt: where the slide stood at turn 0, or nobody finds the place where these begin" : ""}`,
          ),
        ]
      : []),
    ...(oncePerTurn?.real ? [] : unmeasuredWave(handwheel, index)),
    ...(oncePerTurn?.real && !stopped && !handwheel.dial?.oncePerTurn
      ? [
          warn(
            "once-per-turn",
            [...path, "travel"],
            `"${handwheel.name}" leads and lags once per turn by ${waveWords(oncePerTurn.found, units)}`,
            "look for an eccentric dial or thrust face, or build it into the dial with oncePerTurn: true; whole turns are not touched by it",
          ),
        ]
      : []),
  ];
}

/** A dial that asks for a wave which the readings do not show. */
const unmeasuredWave = ({ name, dial }: Handwheel, index: number): Remark[] =>
  dial?.oncePerTurn
    ? [
        {
          severity: "warning",
          code: "no-wave",
          path: ["handwheels", index, "dial", "oncePerTurn"],
          what: `the readings of "${name}" show no once-per-turn error to build in`,
          remedy: "read at quarters of a turn, at least 8 readings; until then the marks are evenly spaced",
        },
      ]
    : [];

/** The stretches that differ most, in words. */
export function zoneWords(zones: readonly Zone[], units: Units): string {
  const by = (pick: (a: Zone, b: Zone) => boolean) => zones.reduce((found, zone) => (pick(zone, found) ? zone : found));
  const [least, most] = [by((a, b) => a.perTurn < b.perTurn), by((a, b) => a.perTurn > b.perTurn)];
  const zone = ({ fromTurn, toTurn, perTurn }: Zone) =>
    say("remarks.zone", {
      perTurn: formatSize(perTurn, units, 4),
      from: formatFixed(fromTurn, 1),
      to: formatFixed(toTurn, 1),
    });
  return `${zone(least)}, ${zone(most)}`;
}

export const waveWords = ({ amplitude, uncertainty, crest }: OncePerTurn, units: Units): string =>
  say("remarks.wave", {
    size: sizeFigure(amplitude, units, 4),
    off: formatSize(uncertainty, units, 4),
    crest: formatFixed(crest, 2),
  });
