import fc from "fast-check";
import { expect, test } from "vitest";
import { type Placed, shelves } from "../../src/paper/packing.js";

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
