import type { HandwheelFinding } from "../findings/findings.js";
import type { JobStep, Wanted } from "../job/job.js";
import type { Units } from "../machine/machine.js";
import { asOnPaper } from "../machine/written.js";
import { say } from "../words/say.js";
import { alike, atMost, atMostFromZero, MEASURED, TOUCHED } from "./doubt.js";
import type { Making } from "./making.js";
import type { PlannedSize, SizedPass } from "./plannedStep.js";
import type { Show } from "./words.js";
import { readingAt, type Zero } from "./zero.js";

/** Places of a millimetre: a limit that follows from a fit has as many as its table in millimetres, and one more in inches would be
 *  what nobody measures. */
const LIMITS = 4;

/** "12 h7 (11.982 to 12)": as the drawing has it, and the limits. */
export function wantedWords({ aim, least, most, words }: Wanted, show: Show): string {
  if (least === undefined || most === undefined) return show(aim);
  return words === undefined
    ? show(aim)
    : say("plan.size with limits", { size: asOnPaper(words), least: show(least, LIMITS), most: show(most, LIMITS) });
}

/** How far a size may be off either way, mm: what is aimed at lies in the middle. Undefined where no tolerance was given. */
export const marginOf = ({ least, most }: PlannedSize): number | undefined =>
  least === undefined || most === undefined ? undefined : (most - least) / 2;

/** A size reached by measuring before the last cut: the gauge, then both readings and the slide over what was left. Where nothing is
 *  left to measure, as one that is fed in to at once. */
export function diameterSize(
  to: Wanted,
  { wheels: { across }, findings }: Making,
  list: readonly SizedPass[],
): PlannedSize {
  const last = list.findLast(({ kind }) => kind === "finish");
  if (last === undefined || list.every(({ kind }) => kind !== "rough")) {
    const size = dialSize(to, across, last?.travel, findings.machine.units);
    // What the first part had by the touch alone, the next ones have by a zero that was mended since.
    return size.alike === undefined ? size : { ...size, alike: size.alike + 2 * TOUCHED };
  }
  const over = across && atMost(across, last.depth);
  const same = across && alike(across);
  return {
    what: "diameter",
    ...to,
    ...(over !== undefined && { doubt: MEASURED[findings.machine.units] + 2 * over }),
    ...(same !== undefined && { alike: 2 * same }),
  };
}

/** A diameter that is gone to by the dial alone, so much travel from where the outside was touched. */
export function dialSize(
  to: Wanted,
  wheel: HandwheelFinding | undefined,
  travel: number | undefined,
  units: Units,
): PlannedSize {
  const moved = wheel && travel !== undefined ? atMostFromZero(wheel, travel, units) : undefined;
  const same = wheel && alike(wheel);
  return {
    what: "diameter",
    ...to,
    ...(moved !== undefined && { doubt: 2 * (TOUCHED + moved.off), ...byRule(moved) }),
    ...(same !== undefined && { alike: 2 * same }),
  };
}

/** Both ends of a taper. The one where the cut begins is gone to by the dial, the tip at its place along the work; the other follows from
 *  the slope, which is proved by a micrometer at both ends. `perRadius`: travel of the slide across for a millimetre of radius. */
export function taperSizes(
  step: Extract<JobStep, { do: "taper" }>,
  wheel: HandwheelFinding | undefined,
  travel: number | undefined,
  { along, perRadius, units }: { readonly along: Zero | undefined; readonly perRadius: number; readonly units: Units },
): PlannedSize[] {
  const { large, small, length, at, smallAt } = step;
  const moved = wheel && travel !== undefined ? atMostFromZero(wheel, travel, units) : undefined;
  const begins = at > 0 ? lengthSize(at, along, at, units).doubt : TOUCHED;
  if (moved === undefined || begins === undefined) return [];
  const nearer = (2 * (TOUCHED + moved.off)) / perRadius + (begins * (large - small)) / length;
  const farther = nearer + 2 * MEASURED[units];
  const thinFirst = smallAt === "end";
  const thinEnd: PlannedSize = { what: "small end", aim: small, doubt: thinFirst ? nearer : farther, ...byRule(moved) };
  const thickEnd: PlannedSize = {
    what: "large end",
    aim: large,
    doubt: thinFirst ? farther : nearer,
    ...byRule(moved),
  };
  return thinFirst ? [thinEnd, thickEnd] : [thickEnd, thinEnd];
}

/** A length by a dial from a touched face. */
export function lengthSize(aim: number, zero: Zero | undefined, at: number, units: Units): PlannedSize {
  const travel = zero && readingAt(zero.wheel, at - zero.at)?.travel;
  const moved = travel === undefined ? undefined : zero && atMostFromZero(zero.wheel, travel, units);
  const same = zero && alike(zero.wheel);
  return {
    ...{ what: "length", aim },
    ...(moved !== undefined && { doubt: TOUCHED + moved.off, ...byRule(moved) }),
    ...(same !== undefined && { alike: same }),
  };
}

/** That a size's doubt holds only where it is dialled by the place of a worn slide, if it was reckoned so. */
export const byRule = ({ byRule: by }: { readonly byRule?: true }): Pick<PlannedSize, "byRule"> =>
  by ? { byRule: by } : {};
