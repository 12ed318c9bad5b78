import { expect, test } from "vitest";
import { cutMinutes, handFeed, passes } from "../../src/cutting/handFeed.js";

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
