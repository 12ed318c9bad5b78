import fc from "fast-check";
import { expect, test } from "vitest";
import { size } from "../../../src/blocks/shared/style.js";
import { table } from "../../../src/blocks/shared/table.js";
import type { Mark, TextMark } from "../../../src/drawing/drawing.js";
import { textWidth } from "../../../src/drawing/text.js";

const columns = [
  { heading: ["first", "mm"], align: "start" },
  { heading: ["second"], align: "middle" },
  { heading: ["third"], align: "end", optional: true },
  { heading: ["fourth"], align: "decimal", optional: true },
] as const;
const row = ["word", "middle words", "left out second", "12.345"].map((text) => ({ text }));

function texts(marks: readonly Mark[]): TextMark[] {
  return marks.flatMap((mark) => (mark.kind === "text" ? [mark] : mark.kind === "group" ? texts(mark.marks) : []));
}
const words = (width: number) => texts(table(columns, [row], { width }).flatMap(({ drawing }) => drawing.marks));

test("on narrow paper letters shrink first, then optional columns go, the last first", () => {
  const shown = (width: number) => words(width).map(({ text }) => text);
  expect(shown(150)).toContain("12.345");
  const shrunk = Array.from({ length: 80 }, (_, index) => 30 + index).filter(
    (width) =>
      shown(width).includes("fourth") && (words(width).find(({ text }) => text === "word")?.size ?? 9) < size.body,
  );
  expect(shrunk.length).toBeGreaterThan(2);
  const seen = [150, ...shrunk, 50, 40, 32].map((width) => ({
    third: shown(width).includes("third"),
    fourth: shown(width).includes("fourth"),
  }));
  for (const { third, fourth } of seen) if (fourth) expect(third).toBe(true);
  expect(seen.at(-1)).toEqual({ third: false, fourth: false });
  expect(shown(32)).toContain("middle words");
});

test("no letter is smaller than a sheet may use, and none overlaps its neighbour while the columns have room", () => {
  fc.assert(
    fc.property(fc.integer({ min: 34, max: 200 }), (width) => {
      const found = words(width);
      for (const { size: em } of found) expect(em).toBeGreaterThanOrEqual(1.764);
      const spans = found
        .filter(({ text }) => row.some((cell) => cell.text.startsWith(text) || text.startsWith(cell.text)))
        .map(({ at, text, size: em, weight, anchor }) => {
          const wide = textWidth(text, em, weight);
          const left = at.x - (anchor === "start" ? 0 : anchor === "end" ? wide : wide / 2);
          return [left, left + wide] as const;
        })
        .sort((a, b) => a[0] - b[0]);
      for (const [index, [left]] of spans.entries())
        if (index > 0) expect(left).toBeGreaterThanOrEqual((spans[index - 1]?.[1] ?? 0) - 1e-6);
    }),
    { numRuns: 60 },
  );
});
