import { expect, test } from "vitest";
import { cutMinutes, handFeed, handFeedAtLeast, passes } from "../../src/cutting/handFeed.js";
import { largestOf } from "../../src/quantity/extremes.js";

test("T2: 100 mm at 20 mm/min takes 5 min (a tool maker's course page, carbide.mmc.co.jp, Formulas; read)", () => {
  expect(cutMinutes(100, 0.02, 1000)).toBeCloseTo(5, 12);
});

test("T3: 100 mm in 1 min at 1000 rpm is 0.1 mm a revolution (same page, read; last step own arithmetic)", () => {
  expect(cutMinutes(100, 0.1, 1000)).toBeCloseTo(1, 12);
});

test("passes: (D1 − D2) ÷ 2 ÷ depth, rounded up (same maker's formula page, rule read; numbers own)", () => {
  expect(passes(25, 20, 1)).toBe(3);
  expect(passes(25, 20, 1.25)).toBe(2);
});

test("a handwheel of 2 mm a turn feeds 0.1 mm at 400 rpm with 20 turns a minute, a turn in 3 s (own arithmetic)", () => {
  expect(handFeed(0.1, 400, 2)).toMatchObject({ turnsPerMinute: 20, secondsPerTurn: 3, count: "count 3 a turn" });
  expect(handFeed(0.5, 2000, 1).count).toBe("too fast by hand");
  expect(handFeed(0.05, 30, 2, 80).count).toBe("1 division a count");
  expect(handFeed(0.05, 30, 2).count).toBe("too slow to count");
});

test("counts of a metric lathe's carriage and cross slide at three feeds (own arithmetic)", () => {
  // 43.6 divisions of 0.5 mm a minute: two in 2.75 s. One each second would be 60.
  expect(handFeed(0.05, 436, 50, 100).counting).toEqual({ of: "division", parts: 2, counts: 3 });
  expect(handFeed(0.05, 436, 50, 100).count).toBe("2 divisions to a count of 3");
  expect(handFeed(0.1, 436, 50, 100).counting).toEqual({ of: "division", parts: 3, counts: 2 });
  // 118.8 turns a minute.
  expect(handFeed(0.2, 594, 1).counting).toEqual({ of: "turn", parts: 2, counts: 1 });
});

/** Of the feed that is told, what the count gives. */
function given({ counting, secondsPerTurn }: ReturnType<typeof handFeed>, divisions: number): number {
  if (typeof counting === "string") throw new Error(counting);
  const { of, parts, counts } = counting;
  return (secondsPerTurn * parts) / counts / { turn: 1, quarter: 4, division: divisions }[of];
}

const speeds = Array.from({ length: 2400 }, (_, index) => 120 / 1.0027 ** index);

test("no count gives a feed more than an eighth from the one that is told, and most give it to a tenth", () => {
  const divisions = [20, 48, 100, 375];
  const off = divisions.flatMap((divisions) =>
    speeds.map((turnsPerMinute) => Math.abs(given(handFeed(1, turnsPerMinute, 1, divisions), divisions) - 1)),
  );
  expect(largestOf(off)).toBeLessThan(0.125);
  expect(off.filter((one) => one > 0.1).length / off.length).toBeLessThan(0.05);
});

test("where fine chips burn no count gives less than the least feed, nor much more", () => {
  for (const turnsPerMinute of speeds) {
    const fed = handFeedAtLeast(1, turnsPerMinute, 1);
    expect(given(fed, 1), `${fed.count}, ${turnsPerMinute} a minute`).toBeGreaterThan(1 - 1e-8);
    expect(given(fed, 1), `${fed.count}, ${turnsPerMinute} a minute`).toBeLessThan(1.151);
  }
});
