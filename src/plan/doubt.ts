import { boundOver } from "../feed/doubtOver.js";
import { byTheRule } from "../findings/byPlace.js";
import type { HandwheelFinding } from "../findings/findings.js";
import { doubtCorrected, farthestTold, tenthOfDivision } from "../findings/settings.js";
import type { Units } from "../machine/machine.js";
import { roundIn } from "../quantity/length.js";

/** A light touch with the tool is felt to this, mm, either way. Common practice. */
export const TOUCHED = 0.03;

/** A micrometer read by hand is right to this, mm, either way. Common practice. */
export const MEASURED = roundIn(0.01, 0.0005);

/** By how much a slide may be off after so much travel, mm, half-width: doubt of the feed at 95 %, both readings to a tenth of a
 *  division, worn or wavy travel and what each end strays by, all added, since parts must fit at the worst. Undefined where
 *  nothing says how good the feed is, or there is no dial to read. */
export const atMost = (wheel: HandwheelFinding, travel: number): number | undefined =>
  wheel.dial === undefined ? undefined : knownAtMost(wheel, travel);

/** What of that is known though there is no dial whose division says how finely it is read: no promise, but what more than that is. */
export function knownAtMost(wheel: HandwheelFinding, travel: number): number | undefined {
  const { feed } = wheel;
  if (feed?.uncertainty === undefined) return undefined;
  // Far beyond what was measured nothing is promised.
  if (Math.abs(travel) > farthestTold(wheel)) return undefined;
  const turns = Math.abs(travel) / feed.perTurn;
  return turns * feed.uncertainty + bothEnds(wheel) + boundOver(turns, feed.measured);
}

/** The same for a movement from where the slide's zero was touched. On a worn slide that is dialled by its place: what is in doubt of the
 *  wear's curve, and what its stretch leaves, take the place of the wear. */
export function atMostFromZero(
  wheel: HandwheelFinding,
  travel: number,
  units: Units,
): { readonly off: number; readonly byRule?: true } | undefined {
  const off = atMost(wheel, travel);
  if (off === undefined) return undefined;
  const [placed] = byTheRule(wheel, travel, units)?.placed ?? [];
  const { perTurn, measured } = wheel.feed ?? {};
  const { most, aheadDoubt = 0, ...even } = measured?.uneven ?? {};
  if (placed === undefined || perTurn === undefined || measured === undefined || most === undefined) return { off };
  const turns = Math.abs(travel) / perTurn;
  const wear = boundOver(turns, measured) - boundOver(turns, { ...measured, uneven: even });
  const ofStretch = placed.within - (doubtCorrected(wheel, travel) ?? 0);
  return { off: off - wear + aheadDoubt + ofStretch, byRule: true };
}

/** What two readings and the slide at each of them stray by, added; mm of travel. */
const bothEnds = (wheel: HandwheelFinding): number =>
  2 * (tenthOfDivision(wheel) + (wheel.feed?.measured?.position ?? 0));

/** What gauge and readings leave in doubt of a diameter however little is left to go, mm, half-width: the feed's own part falls with
 *  the way, and where nobody measured it this is all that is known. */
export const measuredAtBest = (wheel: HandwheelFinding, units: Units): number => MEASURED[units] + 2 * bothEnds(wheel);

/** How far two parts may differ that are cut to the same reading of a wheel that was not zeroed between, mm of travel. */
export const alike = (wheel: HandwheelFinding): number | undefined =>
  wheel.feed === undefined || wheel.dial === undefined ? undefined : bothEnds(wheel);
