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
  if (seconds < fastestTurn) return { ...fed, ...told("too fast") };
  return { ...fed, ...told(inTurns(seconds, "at least")) };
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

type Need = "nearest" | "at least";

/** A count that gives the feed told to within this part of it is as true as a hand turns. On one side alone as close a one would be
 *  such as 11 turns in 6 seconds, which nobody keeps. */
const nearEnough: Readonly<Record<Need, number>> = { nearest: 0.1, "at least": 0.15 };

/** Counted in seconds, as one speaks "one and two and". */
function nearest(seconds: number, divisions: number | undefined): Counting {
  if (seconds < fastestTurn) return "too fast";
  if (seconds < 4 * slowestCount) return inTurns(seconds, "nearest");
  if (divisions === undefined) return "too slow";
  return { of: "division", ...counted(seconds / divisions, "nearest") };
}

/** Nobody counts on and on: from so many counts on, a part of a turn. */
const slowestCount = 12;

/** By whole turns, and slow ones by quarters; some speeds between three and six counts to a quarter are nearer by the turn. */
function inTurns(seconds: number, need: Need): Counting {
  const turns: Counting = { of: "turn", ...counted(seconds, need) };
  if (seconds < slowestCount) return turns;
  const quarters = wholeCounts(seconds / 4, need);
  return Math.abs(seconds / 4 / quarters - 1) > nearEnough[need]
    ? turns
    : { of: "quarter", parts: 1, counts: quarters };
}

/** The fewest parts in the fewest counts that come near enough, where one of them takes so many seconds; else the nearest of those that
 *  can be kept. "At least": none that would be slower, for which no parts or counts beyond 7 to 8 are near enough. */
function counted(seconds: number, need: Need): { readonly parts: number; readonly counts: number } {
  const most = need === "nearest" ? 4 : 7;
  const off = ({ parts, counts }: { parts: number; counts: number }) => Math.abs((seconds * parts) / counts - 1);
  // One or two of either come first, so that the first that is near enough is the one most easily kept.
  const ways = Array.from({ length: most }, (_, index) => index + 1).flatMap((few) => [
    { parts: few, counts: wholeCounts(few * seconds, need) },
    { parts: need === "nearest" ? Math.round(few / seconds) : Math.ceil(few / seconds - 1e-9), counts: few },
  ]);
  return (
    ways.find((way) => off(way) <= nearEnough[need]) ??
    ways.reduce((best, way) => (off(way) < off(best) - 1e-9 ? way : best))
  );
}

const wholeCounts = (seconds: number, need: Need): number =>
  need === "nearest" ? Math.round(seconds) : Math.floor(seconds + 1e-9);

const told = (counting: Counting): Pick<HandFeed, "count" | "counting"> => ({ count: countWords(counting), counting });

function countWords(counting: Counting): string {
  if (counting === "too fast") return say("hand feed.count too fast");
  if (counting === "too slow") return say("hand feed.too slow");
  const { of, parts, counts } = counting;
  if (of === "quarter") return say("hand feed.count a quarter", { count: counts });
  if (of === "division") {
    if (counts === 1)
      return parts === 1 ? say("hand feed.1 division a count") : say("hand feed.divisions a count", { count: parts });
    return parts === 1
      ? say("hand feed.count a division", { count: counts })
      : say("hand feed.divisions to counts", { parts, counts });
  }
  if (counts === 1) return parts === 1 ? say("hand feed.1 a count") : say("hand feed.2 a count");
  return parts === 1
    ? say("hand feed.count a turn", { count: counts })
    : say("hand feed.turns to counts", { parts, counts });
}
