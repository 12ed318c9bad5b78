import { overOnDial } from "../dial/overOnDial.js";
import { boundOver } from "../feed/doubtOver.js";
import type { ReturnStudy } from "../feed/returnStudy.js";
import type { Units } from "../machine/machine.js";
import { isFarFromNominal } from "../machine/nominalSlip.js";
import { formatBound, formatFixed, formatLength } from "../quantity/format.js";
import { say } from "../words/say.js";
import type { HandwheelFinding } from "./findings.js";

type Measured = NonNullable<HandwheelFinding["feed"]>["measured"];

/** What every sheet that gives turns of a handwheel must say of its travel, one line for each: worn, wavy, doubtful readings.
 *  Empty where nothing is wrong. */
export function travelWords({ handwheel, feed, study }: HandwheelFinding, units: Units): string[] {
  const { measured } = feed ?? {};
  const { most, sway } = measured?.uneven ?? {};
  const name = handwheel.name;
  const builtIn = handwheel.dial?.oncePerTurn === true;
  const wild = study?.wild.length ?? 0;
  return [
    ...questioned({ handwheel, feed }).map((why) => say("remarks.feed questioned", { wheel: name, why })),
    ...(measured && most ? [say("remarks.worn", { wheel: name, most: formatBound(most.at(-1) ?? 0, units) })] : []),
    ...(sway !== undefined && !builtIn
      ? [
          say("remarks.wavy", {
            wheel: name,
            most: formatBound(boundOver(0.5, measured && { ...measured, uneven: { sway } }), units),
          }),
        ]
      : []),
    ...(curve(study, measured) !== undefined
      ? [say("remarks.curved", { wheel: name, most: formatBound(curve(study, measured) ?? 0, units) })]
      : []),
    ...(wild > 0 ? [say("remarks.wild readings", { wheel: name, n: wild })] : []),
  ];
}

/** How far readings lie off an even feed that follow a curve of which no bend was told, mm. */
const curve = (study: HandwheelFinding["study"], measured: Measured): number | undefined =>
  measured?.uneven === undefined && study?.pattern?.real ? study.pattern.most : undefined;

/** What speaks against a feed as a whole. */
function questioned({ handwheel, feed }: Pick<HandwheelFinding, "handwheel" | "feed">): string[] {
  if (feed === undefined) return [];
  const { perTurn, nominal, measured } = feed;
  const { travel } = handwheel;
  return [
    ...(nominal !== undefined && isFarFromNominal(perTurn, nominal)
      ? [say("remarks.far from nominal", { times: formatFixed(perTurn / nominal, 2) })]
      : []),
    // A tenth more is a slide that goes a little beyond its working travel.
    ...(measured && travel !== undefined && (measured.to - measured.from) * perTurn > 1.1 * travel
      ? [say("remarks.readings beyond travel")]
      : []),
  ];
}

/** What was not measured within a turn, where a feed was measured at one place of the turn alone. */
export const withinTurnWords = ({ feed }: HandwheelFinding): string | undefined =>
  feed?.measured && !feed.measured.withinTurn ? say("remarks.whole turns only") : undefined;

/** Why no lost motion is told though it was read. */
export function lostMotionWords({ miscounted, wild, contradiction }: ReturnStudy): string {
  if (miscounted) return say("remarks.lost motion miscounted");
  if (wild.length > 0) return say("remarks.lost motion wild", { n: wild.length });
  if (contradiction?.why === "over half a turn")
    return say("remarks.lost motion questioned", { turn: formatFixed(contradiction.turn, 2) });
  return say("remarks.lost motion unknown");
}

/** Why nothing can be told of a handwheel's turns. */
export const noFeedWords = ({ miscounted, study }: Pick<HandwheelFinding, "miscounted" | "study">): string =>
  miscounted ? say(study?.jump ? "remarks.readings jump" : "remarks.turn miscounted") : say("remarks.feed not given");

/** What a student must know of it, in plain words; undefined where nothing is wrong. */
export function plainTravelWords(
  { handwheel, feed, reading, dial, study }: HandwheelFinding,
  units: Units,
): string | undefined {
  if (questioned({ handwheel, feed }).length > 0) return say("student.dial not proved");
  const { measured } = feed ?? {};
  const show = (mm: number) => formatLength(mm, units, units === "mm" ? 2 : 3);
  // As the dial shows it: on diameter twice what the slide does.
  const factor = reading?.factor ?? 1;
  if (measured?.uneven !== undefined) {
    const most = Math.max(...[0.25, 0.5, 0.75, measured.to - measured.from].map((turns) => boundOver(turns, measured)));
    return say("student.slide not even", { most: show(most * factor) });
  }
  const strays = curve(study, measured);
  if (strays !== undefined) return say("student.slide not even", { most: show(strays * factor) });
  if (dial === undefined) return undefined;
  const { doubtOverTravel = 0, divisionValue } = dial.chosen;
  return doubtOverTravel > divisionValue
    ? say("student.slide out over", { travel: overOnDial(dial.chosen, show), most: show(doubtOverTravel) })
    : undefined;
}

/** The place at which a slide stood at turn 0 of its readings, in the file's words; undefined where it does not say. */
export const placeOfTurn0 = ({ handwheel: { feed } }: HandwheelFinding): string | undefined =>
  feed?.from === "readings" ? feed.zeroAt : undefined;

/** Where turn 0 of the readings is, for a rule; or that nobody said so, and nothing is corrected. */
export function zeroWords(wheel: HandwheelFinding): string {
  const where = placeOfTurn0(wheel);
  return where === undefined ? say("remarks.turn 0 not told") : say("remarks.turn 0", { where });
}

/** That the figures of a slide are not corrected though it was found worn; undefined where they are, or it was not. */
export const notCorrectedWords = (wheel: HandwheelFinding): string | undefined =>
  wheel.feed?.measured?.uneven?.ahead !== undefined && placeOfTurn0(wheel) === undefined ? zeroWords(wheel) : undefined;
