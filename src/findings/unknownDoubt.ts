import type { FeedFinding } from "../feed/finding.js";

/** Why nothing tells how well a measured feed is known, and what would; undefined where something does. */
export const unknownDoubt = ({ from, uncertainty }: Pick<FeedFinding, "from" | "uncertainty">): string | undefined =>
  from === "readings" && uncertainty === undefined
    ? "± not known: the readings show no scatter, and no gauge is given; add gauge:, its smallest graduation"
    : undefined;
