import fc from "fast-check";
import { expect, test } from "vitest";
import { byPages, type Placed, shelves } from "../../src/paper/packing.js";

const side = fc.double({ min: 3, max: 180, noNaN: true });
const pieces = fc.array(fc.record({ width: side, height: side }), { minLength: 1, maxLength: 25 });

const overlap = (a: Placed<number>, b: Placed<number>, gap: number) =>
  a.x < b.x + b.width + gap - 1e-9 &&
  b.x < a.x + a.width + gap - 1e-9 &&
  a.y < b.y + b.height + gap - 1e-9 &&
  b.y < a.y + a.height + gap - 1e-9;

test("property: every piece is placed once, inside its shelf, and a gap away from all others", () => {
  fc.assert(
    fc.property(pieces, (sizes) => {
      const all = sizes.map((size, item) => ({ ...size, item }));
      const packed = shelves(all, 190, 4);
      const items = packed.flatMap(({ placed }) => placed.map(({ item }) => item));
      expect(items.sort((a, b) => a - b)).toEqual(all.map(({ item }) => item));
      for (const { height, placed } of packed)
        for (const [index, piece] of placed.entries()) {
          expect(piece.x >= 0 && piece.x + piece.width <= 190 + 1e-6).toBe(true);
          expect(piece.y >= 0 && piece.y + piece.height <= height + 1e-6).toBe(true);
          expect(placed.slice(index + 1).some((other) => overlap(piece, other, 4))).toBe(false);
        }
      expect(shelves(all, 190, 4)).toEqual(packed);
    }),
    { numRuns: 100 },
  );
});

test("a low piece goes under another low one beside a high one", () => {
  const [shelf, ...rest] = shelves(
    [
      { width: 60, height: 60, item: "ring" },
      { width: 100, height: 20, item: "strip" },
      { width: 100, height: 20, item: "spare" },
    ],
    190,
    4,
  );
  expect(rest).toEqual([]);
  expect(shelf?.placed.map(({ item, x, y }) => [item, x, y])).toEqual([
    ["ring", 0, 0],
    ["strip", 64, 0],
    ["spare", 64, 24],
  ]);
});

test("a piece wider than the paper is refused", () => {
  expect(() => shelves([{ width: 191, height: 5, item: 0 }], 190, 4)).toThrow(RangeError);
});

test("property: stacked in page order, no shelf is lost and no page runs over", () => {
  const heights = fc.array(fc.double({ min: 5, max: 100, noNaN: true }), { maxLength: 15 });
  fc.assert(
    fc.property(heights, fc.double({ min: 0, max: 150, noNaN: true }), (all, first) => {
      const shelves = all.map((height, index) => ({ height, index }));
      const ordered = byPages(shelves, first, 150, 4);
      expect(ordered.map(({ index }) => index).sort((a, b) => a - b)).toEqual(shelves.map(({ index }) => index));
      // Stack as a page is stacked: what does not fit begins the next page. First fit is never more than twice the area.
      let [pages, left] = [1, first];
      for (const { height } of ordered) {
        if (height + 4 > left + 1e-9) [pages, left] = [pages + 1, 150];
        left -= height + 4;
        expect(left).toBeGreaterThanOrEqual(-1e-9);
      }
      const area = all.reduce((sum, height) => sum + height + 4, 0);
      expect(pages - 1).toBeLessThanOrEqual(Math.ceil((2 * area) / 150));
    }),
    { numRuns: 100 },
  );
});
