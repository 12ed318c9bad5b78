import { describe, expect, test } from "vitest";
import { budget } from "../../src/feed/budget.js";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { lineBand } from "../../src/feed/lineBand.js";
import { normal, seeded } from "./screws.js";

describe("the band in which a fitted line lies", () => {
  const turns = Array.from({ length: 12 }, (_, k) => 2 * k);

  test("holds the true line in about 95 of 100 cases, at the ends and in the middle", () => {
    const cases = 1500;
    const places = [0, 11, 22];
    const held = places.map(() => 0);
    const random = seeded(11);
    for (let run = 0; run < cases; run++) {
      const readings = {
        from: "readings" as const,
        turns,
        travel: turns.map((turn) => 2.11 * turn + 0.01 * normal(random)),
      };
      const found = feedPerTurn(readings);
      if ("tooFew" in found || !found.fit) throw new Error("too few");
      const fitted = found.fit;
      const sources = budget(fitted, readings);
      if (sources === undefined) throw new Error("no budget");
      const half = lineBand(fitted, sources, turns);
      for (const [index, turn] of places.entries())
        if (Math.abs(fitted.intercept + fitted.slope * turn - 2.11 * turn) <= half(turn))
          held[index] = (held[index] ?? 0) + 1;
    }
    // Three standard deviations of such a count.
    for (const count of held) expect(Math.abs(count / cases - 0.95)).toBeLessThan(3 * Math.sqrt((0.95 * 0.05) / cases));
  });
});
