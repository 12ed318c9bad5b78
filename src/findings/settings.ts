import { FARTHEST_TOLD } from "../dial/penalty.js";
import { factorOf } from "../dial/reading.js";
import { readsPerTurn, type Setting, settingFor } from "../dial/setting.js";
import { doubtOver } from "../feed/doubtOver.js";
import { dialToRead, oldDialToRead } from "./dialToRead.js";
import type { HandwheelFinding } from "./findings.js";

/** How to turn a wheel until its dial has gone on by `distance`, mm of what it reads; undefined where the wheel has no feed. */
export const settingToRead = (wheel: HandwheelFinding, distance: number): Setting | undefined =>
  wheel.reading && settingFor(distance, wheel.reading.perTurn, dialToRead(wheel)?.chosen);

/** How to move the slide by `travel`, mm. */
export const settingToMove = (wheel: HandwheelFinding, travel: number): Setting | undefined =>
  wheel.reading && settingToRead(wheel, travel * wheel.reading.factor);

/** The same distance on the dial that the handwheel had; undefined where the file does not say what that reads. `distance` is
 *  what the new dial reads; what is told is what the old one reads, which may be the slide's travel where the other shows the
 *  diameter. `outBy`: what the old one then shows too much, mm of what the new one reads. */
export function oldSettingToRead(wheel: HandwheelFinding, distance: number) {
  const { reading } = wheel;
  const old = oldDialToRead(wheel);
  if (old?.old === undefined || reading === undefined) return undefined;
  const { wholeTurns, divisions = 0 } = settingFor(distance, reading.perTurn, old.chosen);
  // What the old one shows in a turn, in what the new one reads.
  const shows = (readsPerTurn(old.chosen, reading.perTurn) / factorOf(old.old)) * reading.factor;
  return {
    wholeTurns,
    reading: divisions * old.chosen.divisionValue,
    outBy: distance * (shows / reading.perTurn - 1),
  };
}

/** What an eye can split of a division, as travel of the slide; 0 without a dial. */
export const tenthOfDivision = ({ reading, dial }: HandwheelFinding): number =>
  reading === undefined || dial === undefined ? 0 : dial.divisionWorth / 10 / reading.factor;

/** What the dial's own numbers say at a setting, mm; undefined without a dial. A tool that feeds outwards (boring) runs the
 *  dial backwards from its zero. */
export function dialReading(wheel: HandwheelFinding, setting: Setting, outwards: boolean): number | undefined {
  const { reading } = wheel;
  const dial = dialToRead(wheel);
  if (reading === undefined || dial === undefined || setting.divisions === undefined) return undefined;
  const { divisionValue, rows } = dial.chosen;
  const round = readsPerTurn(dial.chosen, reading.perTurn) * rows;
  const forward = setting.reading ?? setting.divisions * divisionValue;
  return outwards && forward > 1e-9 ? round - forward : forward;
}

/** By how much the dial's own numbers have gone on beyond the whole turns of a setting, mm: to be added to wherever a dial stood
 *  that cannot be set to 0. Undefined without a dial. */
export function dialGain(wheel: HandwheelFinding, { divisions }: Setting): number | undefined {
  const dial = dialToRead(wheel);
  return dial === undefined || divisions === undefined ? undefined : divisions * dial.chosen.divisionValue;
}

/** What the dial's own numbers go on by in a whole turn, mm; undefined without a dial. */
export function dialTurn(wheel: HandwheelFinding): number | undefined {
  const dial = dialToRead(wheel);
  return wheel.reading && dial && readsPerTurn(dial.chosen, wheel.reading.perTurn);
}

/** How far along the slide, mm, its error and doubt may be told: not far beyond what was measured. */
export const farthestTold = ({ feed }: Pick<HandwheelFinding, "feed">): number =>
  feed?.measured === undefined
    ? Number.POSITIVE_INFINITY
    : FARTHEST_TOLD * (feed.measured.to - feed.measured.from) * feed.perTurn + 1e-9;

/** How far a distance set by a wheel is in doubt, half-width at 95 %, mm of what its dial reads: feed, both ends of the movement, reading the
 *  dial at each, and worn or wavy travel. Come to from one side: lost motion does not enter. Undefined where nothing says how good the feed is. */
export function doubtToRead(wheel: HandwheelFinding, distance: number): number | undefined {
  const { feed, reading } = wheel;
  if (feed === undefined || reading === undefined) return undefined;
  const doubt = doubtOver(distance / reading.perTurn, feed, tenthOfDivision(wheel));
  return doubt === undefined ? undefined : doubt * reading.factor;
}

/** By how much a movement of so much travel, mm, may be off that was set by its place on a worn slide, half-width, mm of the slide:
 *  as `doubtToRead`, and in place of the wear what is in doubt of its curve. */
export function doubtCorrected(wheel: HandwheelFinding, travel: number): number | undefined {
  const { feed } = wheel;
  const { measured } = feed ?? {};
  if (feed === undefined || measured === undefined) return undefined;
  const { sway = 0, aheadDoubt = 0 } = measured.uneven ?? {};
  const even = doubtOver(
    travel / feed.perTurn,
    { ...feed, measured: { ...measured, uneven: { sway } } },
    tenthOfDivision(wheel),
  );
  return even === undefined ? undefined : Math.hypot(even, aheadDoubt);
}
