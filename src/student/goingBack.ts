import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { movesQuill } from "../findings/roles.js";
import type { Use } from "../findings/uses.js";

/** Of its travel a wheel that went too far goes back by no more than this part. */
const MOST_OF_TRAVEL = 1 / 8;
/** More lost motion than this, in turns, half a turn does not take up with room to come on again. */
const MOST_LOST = 0.4;

/** How far a beginner who went past a line goes back: half a turn where that is plainly enough and not a long way for what it moves,
 *  else a little more than the lost motion. A drill's wheel may go through its whole travel in less than a turn. */
export function goingBack(wheel: HandwheelFinding | undefined, use: Use): "half" | "little" {
  if (use === "drilling") return "little";
  const { feed, handwheel } = wheel ?? {};
  if (feed === undefined) return "half";
  const long = feed.perTurn / 2 > MOST_OF_TRAVEL * (handwheel?.travel ?? Number.POSITIVE_INFINITY);
  return long || (feed.lostMotion?.turn ?? 0) > MOST_LOST ? "little" : "half";
}

/** In whose words a wheel is told of: a quill carries a drill whatever the machine is used for. */
export const wordsOfWheel = (
  wheel: HandwheelFinding | undefined,
  use: Use,
  findings: Pick<Findings, "machine" | "handwheels">,
): Use => (wheel !== undefined && movesQuill(wheel, findings) ? "drilling" : use);
