import fc from "fast-check";
import { expect, test } from "vitest";
import { clearOfEachOther, type Seen } from "../../../src/blocks/dial/nearZero.js";
import { textWidth } from "../../../src/drawing/text.js";

const em = 2.47;
const numbers = (count: number, apart: number, text: (index: number) => string): Seen[] =>
  Array.from({ length: count }, (_, index) => {
    const at = index <= count / 2 ? index : index - count;
    return { degrees: at * apart, rank: 1, label: text(at < 0 ? at + count : at) };
  });
const shown = (seen: readonly Seen[], perDegree: number, most: number, sure?: number) =>
  [...clearOfEachOther(seen, ({ degrees }) => degrees * perDegree, most, sure)].sort((a, b) => a.degrees - b.degrees);

test("the numbers of a small picture have one step throughout, on either side of zero, and stand clear", () => {
  const any = fc.tuple(fc.integer({ min: 4, max: 60 }), fc.double({ min: 0.03, max: 0.6, noNaN: true }));
  fc.assert(
    fc.property(any, ([count, perDegree]) => {
      const found = shown(
        numbers(count, 360 / count, (index) => String(index / 10)),
        perDegree,
        180 * perDegree,
      );
      expect(found.some(({ degrees }) => degrees === 0)).toBe(true);
      const gaps = found.slice(1).map(({ degrees }, index) => degrees - (found[index]?.degrees ?? 0));
      for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 6);
      for (const [index, { degrees, label }] of found.slice(1).entries()) {
        const before = found[index];
        const halves = (textWidth(label, em, "bold") + textWidth(before?.label ?? "", em, "bold")) / 2;
        expect((degrees - (before?.degrees ?? 0)) * perDegree).toBeGreaterThanOrEqual(halves);
      }
    }),
  );
});
