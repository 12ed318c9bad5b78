import type { DialFinding } from "../dial/finding.js";
import { boundOver } from "../feed/doubtOver.js";
import type { HandwheelFinding } from "./findings.js";

/** What would help where no dial is made since its feed is not known well enough: `short` for a line of `check`, `whole` for the
 *  message. In English, as all that is told of a file is. */
export function doubtRemedy(
  finding: HandwheelFinding,
  doubtful: DialFinding,
): { readonly short: string; readonly whole: string } {
  const { measured } = finding.feed ?? {};
  const forced = "or force a dial with divisions: or closure:, which then carries its doubt";
  if (measured === undefined)
    return { short: "measure it", whole: `measure the feed (the measuring-form sheet says how), ${forced}` };
  if (measured.uneven?.wave)
    return {
      short: "build its once-per-turn error in with oncePerTurn: true",
      whole: `build the once-per-turn error into the marks with oncePerTurn: true, ${forced}`,
    };
  if (isWear(finding, doubtful))
    return {
      short: "that is wear: ask for one with closure: and mind its ±",
      whole:
        "that is wear, which more readings do not lessen and no dial takes out: ask for a dial with closure: (it then carries this doubt), or go by the corrected distances of turns and plan, which begin where a rule tells how far the slide stands",
    };
  return {
    short: "measure over more of the travel",
    whole: `measure over more of the travel (the measuring-form sheet says how), ${forced}`,
  };
}

/** Whether a worn travel alone is out by more than a division, so that readings however many and fine leave it so. */
function isWear({ feed, handwheel, reading }: HandwheelFinding, { chosen }: DialFinding): boolean {
  if (feed?.measured?.uneven?.most === undefined) return false;
  const turns = (handwheel.travel ?? chosen.overTravel) / feed.perTurn;
  return boundOver(turns, feed.measured) * (reading?.factor ?? 1) > chosen.divisionValue;
}
