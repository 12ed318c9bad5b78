import type { HandFeed } from "../../cutting/handFeed.js";
import { formatFixed } from "../../quantity/format.js";
import { say } from "../../words/say.js";

/** What to count, as short as a cell wants it: "4 s", one turn takes 4 seconds; "3 : 2 s", three take 2; "¼ : 9 s", a quarter turn takes 9. */
export function countSign({ counting, secondsPerTurn }: HandFeed): string {
  if (counting === "too fast") return say("hand feed.too fast");
  // No dial to count by: seconds of a clock.
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

/** Seconds for one turn, the same in every cell: to a tenth where a tenth matters. `least`: never told slower than it is. */
export function secondsSign({ counting, secondsPerTurn }: HandFeed, least: boolean): string {
  if (counting === "too fast") return say("hand feed.too fast");
  const places = secondsPerTurn < 9.95 ? 1 : 0;
  const shown = least ? Math.floor(secondsPerTurn * 10 ** places + 1e-9) / 10 ** places : secondsPerTurn;
  return say("hand feed.turn in", { counts: formatFixed(shown, places) });
}

/** What that means: of the signs that there are. */
export const secondsWords = (fed: readonly HandFeed[]): string[] => [
  ...(fed.some(({ counting }) => counting !== "too fast") ? [say("hand feed.sign turn")] : []),
  ...(fed.some(({ counting }) => counting === "too fast") ? [say("hand feed.sign too fast")] : []),
];

/** What these mean: of the signs that there are. */
export function countWords(fed: readonly HandFeed[]): string[] {
  const of = (is: (one: HandFeed["counting"]) => boolean) => fed.some(({ counting }) => is(counting));
  const kind = (one: HandFeed["counting"]) => (typeof one === "string" ? one : one.of);
  return [
    ...(of((one) => typeof one !== "string" && one.of === "turn" && one.parts === 1)
      ? [say("hand feed.sign turn")]
      : []),
    ...(of((one) => typeof one !== "string" && one.of === "turn" && one.parts > 1)
      ? [say("hand feed.sign turns")]
      : []),
    ...(of((one) => kind(one) === "quarter" || one === "too slow") ? [say("hand feed.sign quarter")] : []),
    ...(of((one) => kind(one) === "division") ? [say("hand feed.sign division")] : []),
    ...(of((one) => one === "too fast") ? [say("hand feed.sign too fast")] : []),
  ];
}
