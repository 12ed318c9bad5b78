/** How a handwheel must be turned for a wanted feed per revolution of the spindle. */
export type HandFeed = {
  /** Turns of the handwheel a minute. */
  readonly turnsPerMinute: number;
  /** Seconds for one turn of it. */
  readonly secondsPerTurn: number;
  /** What to count while turning, in words. */
  readonly count: string;
};

/** Travel per minute is feed per revolution × rpm; the handwheel gives `perTurn` of it each turn. All lengths mm, all > 0.
 *  `divisions` of its dial once round, where it has one: slow feeds are counted by them.
 *  Multiplication; checked against the feed-time examples in tests/published/handFeed.test.ts.
 *  @example handFeed(0.1, 465, 2.117).secondsPerTurn   // 2.7… */
export function handFeed(feedPerRevolution: number, rpm: number, perTurn: number, divisions?: number): HandFeed {
  const turnsPerMinute = (feedPerRevolution * rpm) / perTurn;
  const secondsPerTurn = 60 / turnsPerMinute;
  return { turnsPerMinute, secondsPerTurn, count: countWords(secondsPerTurn, divisions) };
}

/** The same, counted so that the feed never falls below: where fine chips burn. Slower than a count to a quarter turn is not told, since
 *  divisions are counted less surely. */
export function handFeedAtLeast(feedPerRevolution: number, rpm: number, perTurn: number): HandFeed {
  const fed = handFeed(feedPerRevolution, rpm, perTurn);
  const { secondsPerTurn: seconds } = fed;
  const whole = Math.floor(seconds + 1e-9);
  const quarters = Math.floor(seconds / 4 + 1e-9);
  const count =
    seconds < fastestTurn
      ? "too fast by hand"
      : seconds < 2 / 3
        ? "2 turns a count"
        : seconds < 1
          ? "3 turns in a count of 2"
          : seconds < 1.5
            ? "1 turn a count"
            : seconds < 2
              ? "2 turns in a count of 3"
              : seconds < 12
                ? `count ${whole} a turn`
                : `count ${quarters} a quarter turn`;
  return { ...fed, count };
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

/** Counted in seconds, as one speaks "one and two and". */
function countWords(seconds: number, divisions: number | undefined): string {
  if (seconds < fastestTurn) return "too fast by hand";
  if (seconds < 0.85) return "3 turns in a count of 2";
  if (seconds < 1.25) return "1 turn a count";
  if (seconds < 1.75) return "2 turns in a count of 3";
  if (seconds < 12) return `count ${Math.round(seconds)} a turn`;
  if (seconds / 4 < 12) return `count ${Math.round(seconds / 4)} a quarter turn`;
  if (divisions === undefined) return "too slow to count";
  const perDivision = seconds / divisions;
  if (perDivision < 0.75) return `${Math.max(2, Math.round(1 / perDivision))} divisions a count`;
  return perDivision < 1.5 ? "1 division a count" : `count ${Math.round(perDivision)} a division`;
}
