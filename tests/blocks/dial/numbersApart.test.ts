import { expect, test } from "vitest";
import { numbersApart } from "../../../src/blocks/dial/numbersApart.js";
import type { Graduation } from "../../../src/dial/finding.js";
import { textWidth } from "../../../src/drawing/text.js";

const em = 2.47;
const marks = Array.from({ length: 21 }, (_, index): Graduation => {
  const value = index - 10;
  return { angle: value / 10, rank: 1, value, label: `${value}.5` };
});

test("numbers keep clear of each other and of the ends, and the zero keeps its own; no mark is lost", () => {
  const kept = numbersApart(marks, 30, em, { from: -1, to: 1 });
  expect(kept.map(({ angle }) => angle)).toEqual(marks.map(({ angle }) => angle));
  const numbered = kept.flatMap(({ angle, label }) =>
    label === undefined ? [] : [{ at: angle * 30, half: textWidth(label, em, "bold") / 2 }],
  );
  expect(kept[10]?.label).toBe("0.5");
  expect(numbered.length).toBeGreaterThan(4);
  expect(numbered.length).toBeLessThan(marks.length);
  numbered.slice(1).forEach(({ at, half }, index) => {
    const before = numbered[index] as (typeof numbered)[number];
    expect(at - half - (before.at + before.half)).toBeGreaterThan(0.5);
  });
  for (const { at, half } of numbered) expect(Math.abs(at) + half).toBeLessThanOrEqual(30);
});
