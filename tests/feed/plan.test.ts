import { describe, expect, test } from "vitest";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { readingsPlan } from "../../src/feed/readingsPlan.js";
import { normal, rounded, seeded, trueFeed } from "./screws.js";

const thousands = 3000;
/** Of n cases at 95 %, fewer than this happen once in a thousand times by chance (normal approximation). */
const least = 0.95 - 3.09 * Math.sqrt((0.95 * 0.05) / thousands);

/** Measures `thousands` worn screws by the plan; how often the stated half-width, and the wish, held the truth. */
function measured(wish: { feed: number; travel: number; gauge: number; within: number }, wear: number, seed: number) {
  const plan = readingsPlan(wish);
  const random = seeded(seed);
  let [stated, wished] = [0, 0];
  const last = plan.turns.at(-1) ?? 0;
  for (let screw = 0; screw < thousands; screw++) {
    const feed = wish.feed * (1 + 0.004 * (random() - 0.5));
    const [depth, centre, width] = [wear * random(), last * (0.3 + 0.4 * random()), last * (0.15 + 0.2 * random())];
    const zero = random();
    const travelAt = (turn: number) => feed * turn - depth * Math.exp(-(((turn - centre) / width) ** 2));
    const turns = Array.from({ length: plan.runs }, () => plan.turns).flat();
    // Half a graduation in all: what rounding does not bring, the hand does.
    const hand = wish.gauge * Math.sqrt(0.25 - 1 / 12);
    const travel = turns.map((turn) => rounded(zero + travelAt(turn) + hand * normal(random), wish.gauge));
    const found = feedPerTurn({ from: "readings", gauge: wish.gauge, turns, travel });
    if ("tooFew" in found) throw new Error("a plan of too few readings");
    const error = Math.abs(found.perTurn - trueFeed(travelAt, last));
    if (error <= (found.uncertainty ?? 0)) stated++;
    if ((error * wish.travel) / wish.feed <= wish.within) wished++;
  }
  return { stated: stated / thousands, wished: wished / thousands, plan };
}

describe("as many readings as the plan says", () => {
  test.each([
    ["sound screws, 0.01 mm gauge", { feed: 2.1167, travel: 60, gauge: 0.01, within: 0.01 }, 0, 1],
    ["worn screws, 0.01 mm gauge", { feed: 2.1167, travel: 60, gauge: 0.01, within: 0.01 }, 0.03, 2],
    ["worn screws, coarse gauge, wide wish", { feed: 1.5, travel: 40, gauge: 0.02, within: 0.03 }, 0.05, 3],
    ["worn screws, thousandths of an inch", { feed: 1.5875, travel: 50.8, gauge: 0.0254, within: 0.0254 }, 0.05, 4],
  ])("%s: the stated half-width holds the truth in 95 of 100, and so does the wish", (_, wish, wear, seed) => {
    const { stated, wished, plan } = measured(wish, wear, seed);
    expect(plan.enough).toBe(true);
    expect(stated).toBeGreaterThan(least);
    expect(wished).toBeGreaterThan(least);
  });

  test("half of the readings of a tight plan would not do: the plan is not simply generous", () => {
    const wish = { feed: 2, travel: 150, gauge: 0.01, within: 0.0075 };
    const plan = readingsPlan(wish);
    const looser = readingsPlan({ ...wish, within: 0.02 });
    expect(plan.turns.length * plan.runs).toBeGreaterThan(looser.turns.length * looser.runs);
    expect(plan.doubtOverTravel).toBeLessThanOrEqual(wish.within);
    expect(plan.doubtOverTravel).toBeGreaterThan(wish.within / 2);
  });

  test("says so where no number of readings would do", () => {
    expect(readingsPlan({ feed: 2, travel: 60, gauge: 0.1, within: 0.01 }).enough).toBe(false);
  });

  test("a rack of one long turn is read at parts of a turn", () => {
    const plan = readingsPlan({ feed: 44, travel: 150, gauge: 0.1, within: 1 });
    expect(plan.every).toBeLessThan(1);
    expect((plan.turns.at(-1) ?? 0) * 44).toBeLessThanOrEqual(150);
  });
});
