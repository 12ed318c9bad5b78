import { boundOver } from "../feed/doubtOver.js";
import type { ReturnStudy } from "../feed/returnStudy.js";
import type { Units } from "../machine/machine.js";
import { isFarFromNominal } from "../machine/nominalSlip.js";
import { formatBound, formatFixed, formatLength } from "../quantity/format.js";
import type { HandwheelFinding } from "./findings.js";

/** What every sheet that gives turns of a handwheel must say of its travel, one line for each: worn, wavy, doubtful readings.
 *  Empty where nothing is wrong. */
export function travelWords({ handwheel, feed, study }: HandwheelFinding, units: Units): string[] {
  const { measured } = feed ?? {};
  const { most, sway } = measured?.uneven ?? {};
  const name = handwheel.name;
  const builtIn = handwheel.dial?.oncePerTurn === true;
  const wild = study?.wild.length ?? 0;
  return [
    ...questioned({ handwheel, feed }).map((why) => `${name}: ${why}: measure again before you trust it.`),
    ...(measured && most
      ? [
          `${name} is worn: from place to place its travel differs from the mean by up to ${formatBound(most.at(-1) ?? 0, units)}, which every doubt here holds.`,
        ]
      : []),
    ...(sway !== undefined && !builtIn
      ? [
          `${name} leads and lags once a turn by up to ${formatBound(boundOver(0.5, measured && { ...measured, uneven: { sway } }), units)}, which every doubt here holds; whole turns are free of it.`,
        ]
      : []),
    ...(wild > 0
      ? [
          `${name}: ${wild === 1 ? "one reading lies" : `${wild} readings lie`} off the others; it stands in the feed and its doubt until it is taken again.`,
        ]
      : []),
  ];
}

/** What speaks against a feed as a whole. */
function questioned({ handwheel, feed }: Pick<HandwheelFinding, "handwheel" | "feed">): string[] {
  if (feed === undefined) return [];
  const { perTurn, nominal, measured } = feed;
  const { travel } = handwheel;
  return [
    ...(nominal !== undefined && isFarFromNominal(perTurn, nominal)
      ? [`its feed is ${formatFixed(perTurn / nominal, 2)} times what the maker meant`]
      : []),
    // A tenth more is a slide that goes a little beyond its working travel.
    ...(measured && travel !== undefined && (measured.to - measured.from) * perTurn > 1.1 * travel
      ? ["its readings reach farther than it travels"]
      : []),
  ];
}

/** What was not measured within a turn, where a feed was measured at one place of the turn alone. */
export const withinTurnWords = ({ feed }: HandwheelFinding): string | undefined =>
  feed?.measured && !feed.measured.withinTurn
    ? "read at whole turns only: an error within the turn was not measured"
    : undefined;

/** Why no lost motion is told though it was read. */
export function lostMotionWords({ contradiction }: ReturnStudy): string {
  if (contradiction?.why === "over half a turn")
    return `lost motion of ${formatFixed(contradiction.turn, 2)} of a turn questioned: a very loose nut, or the two ways counted from different turns`;
  return "lost motion not known: its readings contradict each other";
}

/** Why nothing can be told of a handwheel's turns. */
export const noFeedWords = ({ miscounted, study }: Pick<HandwheelFinding, "miscounted" | "study">): string =>
  miscounted
    ? `${study?.jump ? "The readings of this handwheel jump on the way" : "A turn was miscounted in the readings of this handwheel"}: until they are mended no turns can be told.`
    : "The feed of this handwheel is not given: no turns can be told.";

/** What a student must know of it, in plain words; undefined where nothing is wrong. */
export function plainTravelWords(
  { handwheel, feed, reading, dial }: HandwheelFinding,
  units: Units,
): string | undefined {
  if (questioned({ handwheel, feed }).length > 0) return "Nobody has proved this dial. Ask before you trust it.";
  const { measured } = feed ?? {};
  const show = (mm: number) => formatLength(mm, units, units === "mm" ? 2 : 3);
  // As the dial shows it: on diameter twice what the slide does.
  const factor = reading?.factor ?? 1;
  if (measured?.uneven !== undefined) {
    const most = Math.max(...[0.25, 0.5, 0.75, measured.to - measured.from].map((turns) => boundOver(turns, measured)));
    return `This slide is not even: it can be out by ${show(most * factor)}. Measure the part.`;
  }
  const { doubtOverTravel = 0, divisionValue = Number.POSITIVE_INFINITY, overTravel = 0 } = dial?.chosen ?? {};
  return doubtOverTravel > divisionValue
    ? `Over ${show(overTravel * factor)} it can be out by ${show(doubtOverTravel)}. Measure the part.`
    : undefined;
}

/** Turns of the readings at which a stretch may begin, for the corrected distances: four, whole, spread over what was measured. */
export function startsOver(finding: HandwheelFinding): number[] {
  const { measured } = finding.feed ?? {};
  if (measured?.uneven === undefined) return [];
  const span = measured.to - measured.from;
  return [...new Set([0, 0.25, 0.5, 0.75].map((part) => Math.round(measured.from + part * span)))];
}

export const startWords = (turn: number): string => `from turn ${formatFixed(turn, 0)}`;
