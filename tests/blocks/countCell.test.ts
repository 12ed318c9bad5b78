import { expect, test } from "vitest";
import { secondsSign, secondsWords } from "../../src/blocks/work/countCell.js";
import { handFeed } from "../../src/cutting/handFeed.js";

/** Seconds that a cell tells for a turn of so many. */
function told(seconds: number, least = false): number {
  const [, figure = "", unit] = /^([\d.]+) (min|s)$/.exec(secondsSign(handFeed(1, 60, seconds), least)) ?? [];
  return Number(figure) * (unit === "min" ? 60 : 1);
}

test("however long a turn takes, what is told of it is within a tenth", () => {
  for (let seconds = 5; seconds < 4000; seconds *= 1.003)
    expect(Math.abs(told(seconds) / seconds - 1), String(seconds)).toBeLessThan(0.1);
});

test("where the hand must not lag, no turn is told slower than it is", () => {
  for (let seconds = 5; seconds < 4000; seconds *= 1.003)
    expect(told(seconds, true), String(seconds)).toBeLessThanOrEqual(seconds + 1e-6);
});

test("a turn in less than a second is a dash with its reason: no clock is that quick", () => {
  for (const seconds of [0.1, 0.5, 0.8, 0.94]) {
    const fed = handFeed(1, 60, seconds);
    expect(secondsSign(fed, false)).toBe("–");
    expect(secondsWords([fed])).toEqual(["–: less than a second a turn, too fast by hand."]);
  }
  expect(secondsSign(handFeed(1, 60, 1), false)).toBe("1.0 s");
  expect(secondsWords([handFeed(1, 60, 1)]).join()).not.toContain("–");
});
