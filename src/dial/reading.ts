import type { FeedFinding } from "../feed/finding.js";
import type { Handwheel } from "../machine/machine.js";

/** What a dial shows for each mm that the slide goes: twice as much where it reads the diameter. */
export const readingFactor = ({ reads }: Pick<Handwheel, "reads">): number => (reads === "diameter" ? 2 : 1);

/** What a dial reads in one turn, mm: the feed, or twice the feed where it reads the diameter. */
export function readingPerTurn(feed: Pick<FeedFinding, "perTurn">, reads: Handwheel["reads"]): number {
  return feed.perTurn * readingFactor({ reads });
}
