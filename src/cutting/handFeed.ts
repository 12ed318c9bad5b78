import { say } from "../words/say.js";

/** How a handwheel must be turned for a wanted feed per revolution of the spindle. */
export type HandFeed = {
  /** Turns of the handwheel a minute. */
  readonly turnsPerMinute: number;
  /** Seconds for one turn of it. */
  readonly secondsPerTurn: number;
  /** What to count while turning, in words. */
  readonly count: string;
  /** The same as numbers. */
  readonly counting: Counting;
};

/** So many turns, quarter turns or divisions in so many counts of a second; or why there is nothing to count. */
export type Counting =
  | { readonly of: "turn" | "quarter" | "division"; readonly parts: number; readonly counts: number }
  | "too fast"
  | "too slow";

/** Travel per minute is feed per revolution × rpm; the handwheel gives `perTurn` of it each turn. All lengths mm, all > 0.
 *  `divisions` of its dial once round, where it has one: slow feeds are counted by them.
 *  Multiplication; checked against the feed-time examples in tests/published/handFeed.test.ts.
 *  @example handFeed(0.1, 465, 2.117).secondsPerTurn   // 2.7… */
export function handFeed(feedPerRevolution: number, rpm: number, perTurn: number, divisions?: number): HandFeed {
  const turnsPerMinute = (feedPerRevolution * rpm) / perTurn;
  const secondsPerTurn = 60 / turnsPerMinute;
  return { turnsPerMinute, secondsPerTurn, ...told(nearest(secondsPerTurn, divisions)) };
}

/** The same, counted so that the feed never falls below: where fine chips burn. Slower than a count to a quarter turn is not told, since
 *  divisions are counted less surely. */
export function handFeedAtLeast(feedPerRevolution: number, rpm: number, perTurn: number): HandFeed {
  const fed = handFeed(feedPerRevolution, rpm, perTurn);
  const { secondsPerTurn: seconds } = fed;
  return { ...fed, ...told(atLeast(seconds)) };
}

function atLeast(seconds: number): Counting {
  if (seconds < fastestTurn) return "too fast";
  if (seconds < 2 / 3) return turns(2, 1);
  if (seconds < 1) return turns(3, 2);
  if (seconds < 1.5) return turns(1, 1);
  if (seconds < 2) return turns(2, 3);
  return seconds < 12
    ? turns(1, Math.floor(seconds + 1e-9))
    : { of: "quarter", parts: 1, counts: Math.floor(seconds / 4 + 1e-9) };
}

/** The fastest spindle at which a hand still gives that feed; lengths mm, all > 0. */
export const fastestFedRpm = (feedPerRevolution: number, perTurn: number): number =>
  ((60 / fastestTurn) * perTurn) / feedPerRevolution;

/** Minutes for a cut of `length`, mm; more than one pass takes as often as long. */
export const cutMinutes = (length: number, feedPerRevolution: number, rpm: number): number =>
  length / (feedPerRevolution * rpm);

/** Passes from one diameter to another with so much taken off the radius each time, mm, rounded up to whole ones.
 *  A tool maker's formula page (carbide.mmc.co.jp, read). */
export const passes = (from: number, to: number, depth: number): number =>
  Math.ceil(Math.abs(from - to) / 2 / depth - 1e-9);

/** Faster than this no hand turns evenly. Common practice. */
const fastestTurn = 0.5;

const turns = (parts: number, counts: number): Counting => ({ of: "turn", parts, counts });

/** Counted in seconds, as one speaks "one and two and". */
function nearest(seconds: number, divisions: number | undefined): Counting {
  if (seconds < fastestTurn) return "too fast";
  if (seconds < 0.85) return turns(3, 2);
  if (seconds < 1.25) return turns(1, 1);
  if (seconds < 1.75) return turns(2, 3);
  if (seconds < 12) return turns(1, Math.round(seconds));
  if (seconds / 4 < 12) return { of: "quarter", parts: 1, counts: Math.round(seconds / 4) };
  if (divisions === undefined) return "too slow";
  const perDivision = seconds / divisions;
  return perDivision < 0.75
    ? { of: "division", parts: Math.max(2, Math.round(1 / perDivision)), counts: 1 }
    : { of: "division", parts: 1, counts: Math.max(1, Math.round(perDivision)) };
}

const told = (counting: Counting): Pick<HandFeed, "count" | "counting"> => ({ count: countWords(counting), counting });

function countWords(counting: Counting): string {
  if (counting === "too fast") return say("hand feed.count too fast");
  if (counting === "too slow") return say("hand feed.too slow");
  const { of, parts, counts } = counting;
  if (of === "quarter") return say("hand feed.count a quarter", { count: counts });
  if (of === "division")
    return parts > 1
      ? say("hand feed.divisions a count", { count: parts })
      : counts === 1
        ? say("hand feed.1 division a count")
        : say("hand feed.count a division", { count: counts });
  if (parts === 1) return counts === 1 ? say("hand feed.1 a count") : say("hand feed.count a turn", { count: counts });
  return counts === 1 ? say("hand feed.2 a count") : parts === 3 ? say("hand feed.3 in 2") : say("hand feed.2 in 3");
}
