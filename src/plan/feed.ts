import { type FeedRange, feedPerRevolution } from "../cutting/feeds.js";
import type { SpeedChoice } from "../cutting/finding.js";
import { type HandFeed, handFeed } from "../cutting/handFeed.js";
import { burns } from "../findings/chipFire.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { speedFor, speedToFeed } from "../findings/speedChoice.js";
import type { Job } from "../job/job.js";

/** A cut, and which published feed goes with it; for reaming there is none. */
export type FedCut = {
  readonly operation: string;
  readonly diameter: number;
  readonly fed?: "finishing" | "drilling" | "parting";
};

export type Fed = {
  readonly speed?: SpeedChoice;
  /** The published feed per revolution, of which the least is taken. */
  readonly published?: FeedRange;
  /** That feed counted at the handwheel that gives it. */
  readonly feed?: HandFeed;
  readonly feedWheel?: string;
};

/** The speed of a cut and its lightest published feed, counted at this handwheel; each absent where it is not known. */
export function speedAndFeed(
  { operation, diameter, fed }: FedCut,
  wheel: HandwheelFinding | undefined,
  { material, tool }: Pick<Job, "material" | "tool">,
  findings: Findings,
): Fed {
  const cut = { operation, diameter, material, tool };
  const published = fed && feedRange(fed, material, diameter);
  const perTurn = wheel?.feed?.perTurn;
  const speed =
    published && perTurn !== undefined
      ? speedToFeed(cut, { feed: published.from, perTurn }, findings)
      : speedFor(cut, findings);
  const known = { ...(speed && { speed }), ...(published && { published }) };
  if (published === undefined || speed?.rpm === undefined || wheel === undefined || perTurn === undefined) return known;
  const feed = handFeed(published.from, speed.rpm, perTurn, wheel.dial?.chosen.divisionsPerTurn);
  return { ...known, feed, feedWheel: wheel.handwheel.name };
}

/** A steel without figures of its own is fed like mild steel. */
const feedRange = (kind: NonNullable<FedCut["fed"]>, material: string, diameter: number): FeedRange | undefined =>
  feedPerRevolution(material, kind, diameter) ??
  (/steel/.test(material) && !burns(material) ? feedPerRevolution("mild steel", kind, diameter) : undefined);
