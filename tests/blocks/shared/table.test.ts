import fc from "fast-check";
import { expect, test } from "vitest";
import type { Run } from "../../../src/blocks/shared/block.js";
import { NoRoom } from "../../../src/blocks/shared/noRoom.js";
import { size } from "../../../src/blocks/shared/style.js";
import { type Column, table, tableWidth } from "../../../src/blocks/shared/table.js";
import type { Mark, TextMark } from "../../../src/drawing/drawing.js";
import { textWidth } from "../../../src/drawing/text.js";

const columns: readonly Column[] = [
  { heading: ["name"], align: "start" },
  { heading: ["of the way", "mm"], align: "decimal" },
  { heading: ["turns"], align: "end" },
  { heading: ["what to see to"], align: "start", optional: true },
];
const rows = [
  ["cross slide", "12.345", "5", "come to it from one side"],
  ["top slide", "0.5", "127", "lock it"],
].map((row) => row.map((text) => ({ text })));

type Placed = { readonly text: string; readonly left: number; readonly right: number; readonly y: number };
const placed = (marks: readonly Mark[], y = 0): Placed[] =>
  marks.flatMap((mark): Placed[] => {
    if (mark.kind === "group") return placed(mark.marks, y + mark.at.y);
    if (mark.kind !== "text") return [];
    return [{ text: mark.text, ...span(mark), y: y + mark.at.y }];
  });
function span({ text, size: em, weight, anchor, at }: TextMark): { left: number; right: number } {
  const wide = textWidth(text, em, weight);
  const left = at.x - (anchor === "start" ? 0 : anchor === "end" ? wide : wide / 2);
  return { left, right: left + wide };
}
const stacked = (runs: ReturnType<typeof table>): Placed[] => {
  let y = 0;
  return runs.flatMap(({ drawing, gap = 0 }) => {
    const found = placed(drawing.marks, y + gap);
    y += gap + drawing.height;
    return found;
  });
};
const shown = (width: number) => stacked(table(columns, rows, { width })).map(({ text }) => text);

test("a table is as wide as its cells, however wide the paper", () => {
  const narrow = tableWidth(columns, rows, { width: 150 });
  expect(tableWidth(columns, rows, { width: 500 })).toBe(narrow);
  expect(narrow).toBeLessThan(150);
});

test("where the paper is narrow words wrap, then optional columns go, then the table is split with its key repeated, then it is refused", () => {
  expect(shown(150)).toContain("come to it from one side");
  const wrapped = shown(75);
  expect(wrapped).not.toContain("come to it from one side");
  expect(wrapped.join(" ")).toMatch(/come.* side/);
  const without = shown(47);
  expect(without).toContain("127");
  expect(without).not.toContain("lock it");
  const split = stacked(table(columns, rows, { width: 31 }));
  expect(split.filter(({ text }) => text === "name")).toHaveLength(2);
  expect(split.some(({ text }) => text === "12.345") && split.some(({ text }) => text === "127")).toBe(true);
  expect(() => table(columns, rows, { width: 20 })).toThrow(NoRoom);
  expect(() => table(columns, rows, { width: 20 })).toThrow(/“name” needs \d+ mm across and has 20 mm/);
});

test("whatever the cells and the paper, nothing is printed over anything else or out of the table, and numbers stand on their points", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "m", "W", "i", " ", "-"), minLength: 0, maxLength: 40 });
  const number = fc.tuple(fc.nat(99999), fc.nat(4)).map(([whole, places]) => (whole / 10 ** places).toFixed(places));
  const cells = fc.array(fc.tuple(word, number, number, word), { minLength: 1, maxLength: 9 });
  let made = 0;
  fc.assert(
    fc.property(cells, fc.integer({ min: 30, max: 200 }), (given, width) => {
      const body = given.map((row) => row.map((text) => ({ text })));
      let runs: ReturnType<typeof table>;
      try {
        runs = table(columns, body, { width });
      } catch (fault) {
        expect(fault).toBeInstanceOf(NoRoom);
        return;
      }
      made++;
      for (const { drawing } of runs) {
        expect(drawing.width).toBeLessThanOrEqual(width + 1e-6);
        const texts = placed(drawing.marks);
        for (const [index, one] of texts.entries()) {
          expect(one.left).toBeGreaterThanOrEqual(-1e-6);
          expect(one.right).toBeLessThanOrEqual(drawing.width + 1e-6);
          expect(one.y).toBeLessThan(drawing.height);
          for (const other of texts.slice(index + 1))
            expect(
              Math.abs(one.y - other.y) > 0.8 * size.text ||
                one.right <= other.left + 1e-6 ||
                other.right <= one.left + 1e-6,
            ).toBe(true);
        }
      }
    }),
    { numRuns: 150 },
  );
  expect(made).toBeGreaterThan(80);
  const points = stacked(table(columns, rows, { width: 150 })).filter(({ text }) => /^\d+\.\d+$/.test(text));
  const [first, second] = points.map(
    ({ text, left }) => left + textWidth(text.slice(0, text.indexOf(".")), size.text, "regular"),
  );
  expect(first).toBeCloseTo(second ?? 0, 6);
});

test("rows stand in groups of five by space; a list goes down as many columns as the paper has room for", () => {
  const many = Array.from({ length: 20 }, (_, index) => ["row", String(index), "1"].map((text) => ({ text })));
  const grouped = (runs: readonly Run[]) => runs.flatMap(({ gap = 0 }, index) => (gap > 0 ? [index] : []));
  expect(grouped(table(columns.slice(0, 3), many, { width: 200 }))).toEqual([5, 10, 15]);
  const runs = table(columns.slice(0, 3), many, { width: 200, list: true });
  // Columns of a few rows would stand out of line.
  expect(grouped(runs)).toEqual([]);
  const own = tableWidth(columns.slice(0, 3), many, { width: 200 });
  const { list } = runs[0] ?? {};
  expect(list?.columns).toBeGreaterThan(1);
  expect((list?.columns ?? 9) * own + ((list?.columns ?? 9) - 1) * ((list?.step ?? 0) - own)).toBeLessThanOrEqual(200);
  expect(new Set(runs.map((run) => run.list)).size).toBe(1);
});
