import { feedPerRevolution } from "../cutting/feeds.js";
import type { SpeedChoice } from "../cutting/finding.js";
import { type HandFeed, handFeed } from "../cutting/handFeed.js";
import type { HandwheelFinding } from "../findings/findings.js";
import type { Job } from "../job/job.js";

/** The lightest published feed, counted at this handwheel; nothing where it is not known. */
export function feedOf(
  operation: "finishing" | "drilling" | "parting",
  speed: SpeedChoice | undefined,
  wheel: HandwheelFinding | undefined,
  { material }: Job,
  diameter?: number,
): { readonly feed?: HandFeed; readonly feedWheel?: string } {
  // A steel without figures of its own is fed like mild steel.
  const range =
    feedPerRevolution(material, operation, diameter) ??
    (/steel/.test(material) ? feedPerRevolution("mild steel", operation, diameter) : undefined);
  if (range === undefined || speed?.rpm === undefined || wheel?.feed === undefined) return {};
  const divisions = wheel.dial?.chosen.divisionsPerTurn;
  return { feed: handFeed(range.from, speed.rpm, wheel.feed.perTurn, divisions), feedWheel: wheel.handwheel.name };
}
