import type { FeedFinding } from "./finding.js";

/** How far a length told by turns is in doubt, half-width at 95 %, in whatever the length is told in; undefined where nothing
 *  says how good the feed is. */
export const doubtOver = (length: number, { perTurn, uncertainty }: FeedFinding): number | undefined =>
  uncertainty === undefined ? undefined : (length * uncertainty) / perTurn;
