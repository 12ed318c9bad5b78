import type { HandFeed } from "../../cutting/handFeed.js";
import { formatFixed, trimmed } from "../../quantity/format.js";
import { say } from "../../words/say.js";

/** From so many seconds a turn on nobody counts: told in half minutes, which from here on are within a tenth, and from ten minutes on
 *  in whole ones. */
const LONG = 150;
const isLong = ({ secondsPerTurn }: HandFeed): boolean => secondsPerTurn >= LONG;
const minutesSign = ({ secondsPerTurn }: HandFeed, least = false): string => {
  const step = secondsPerTurn < 600 ? 0.5 : 1;
  const steps = secondsPerTurn / 60 / step;
  const minutes = step * (least ? Math.floor(steps + 1e-9) : Math.round(steps));
  return say("hand feed.minutes in", { minutes: trimmed(minutes, 1) });
};

/** What to count, as short as a cell wants it: "4 s", one turn takes 4 seconds; "3 : 2 s", three take 2; "¼ : 9 s", a quarter turn takes 9. */
export function countSign(fed: HandFeed): string {
  const { counting, secondsPerTurn } = fed;
  if (counting === "too fast") return say("hand feed.too fast");
  // No dial to count by: seconds of a clock.
  if (counting === "too slow" && isLong(fed)) return minutesSign(fed);
  if (counting === "too slow") return say("hand feed.quarter in", { counts: Math.round(secondsPerTurn / 4) });
  const { of, parts, counts } = counting;
  switch (of) {
    case "turn":
      return parts === 1 ? say("hand feed.turn in", { counts }) : say("hand feed.turns in", { parts, counts });
    case "quarter":
      return say("hand feed.quarter in", { counts });
    case "division":
      return say("hand feed.divisions in", { parts, counts });
  }
}

/** Faster than this, in seconds a turn, nobody keeps by the clock: what would be told as less than a second. */
const QUICKEST = 0.95;
const isTooQuick = ({ counting, secondsPerTurn }: HandFeed): boolean =>
  counting === "too fast" || secondsPerTurn < QUICKEST;

/** Seconds for one turn, the same in every cell: to a tenth where a tenth matters. `least`: never told slower than it is. */
export function secondsSign(fed: HandFeed, least: boolean): string {
  const { secondsPerTurn } = fed;
  if (isTooQuick(fed)) return say("hand feed.too fast");
  if (isLong(fed)) return minutesSign(fed, least);
  const places = secondsPerTurn < 9.95 ? 1 : 0;
  const shown = least ? Math.floor(secondsPerTurn * 10 ** places + 1e-9) / 10 ** places : secondsPerTurn;
  return say("hand feed.turn in", { counts: formatFixed(shown, places) });
}

/** What that means: of the signs that there are. */
export const secondsWords = (fed: readonly HandFeed[]): string[] => [
  ...(fed.some((one) => !isTooQuick(one) && !isLong(one)) ? [say("hand feed.sign turn")] : []),
  ...(fed.some(isLong) ? [say("hand feed.sign minutes")] : []),
  ...(fed.some(isTooQuick) ? [say("hand feed.sign too quick")] : []),
];

/** What these mean: of the signs that there are. */
export function countWords(fed: readonly HandFeed[]): string[] {
  const inMinutes = (one: HandFeed) => one.counting === "too slow" && isLong(one);
  const of = (is: (one: HandFeed["counting"]) => boolean) => fed.some((one) => !inMinutes(one) && is(one.counting));
  const kind = (one: HandFeed["counting"]) => (typeof one === "string" ? one : one.of);
  return [
    ...(of((one) => typeof one !== "string" && one.of === "turn" && one.parts === 1)
      ? [say("hand feed.sign turn")]
      : []),
    ...(of((one) => typeof one !== "string" && one.of === "turn" && one.parts > 1)
      ? [say("hand feed.sign turns")]
      : []),
    ...(of((one) => kind(one) === "quarter" || one === "too slow") ? [say("hand feed.sign quarter")] : []),
    ...(fed.some(inMinutes) ? [say("hand feed.sign minutes")] : []),
    ...(of((one) => kind(one) === "division") ? [say("hand feed.sign division")] : []),
    ...(of((one) => one === "too fast") ? [say("hand feed.sign too fast")] : []),
  ];
}
