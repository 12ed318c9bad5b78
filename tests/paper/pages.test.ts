import fc from "fast-check";
import { expect, test } from "vitest";
import { astray } from "../../src/paper/gathered.js";
import { packedOnPages } from "../../src/paper/pages.js";
import { type Grouped, placedIn, ways } from "../../src/paper/placing.js";

const room = { width: 190, height: 150 };
const gap = 4;
type Named = Grouped<string>;
const piece = (item: string, height: number, more: Partial<Named> = {}): Named => ({
  item,
  width: 180,
  height,
  ...more,
});
const words = (...sizes: readonly (readonly [number, number])[]) =>
  sizes.map(([width, height], at) => () => ({ width, height, item: `words ${at}` }));
type More = Parameters<typeof packedOnPages<string>>[3];
const laid = (pieces: readonly Named[], more?: More) =>
  packedOnPages(pieces, room, gap, more).map(({ placed }) =>
    placed.map(({ item, x, y }) => `${item} ${x},${y}`).join(" "),
  );
const order = (pieces: readonly Named[], more?: More) =>
  packedOnPages(pieces, room, gap, more).map(({ placed }) => placed.map(({ item }) => item).join(" "));

test("nothing takes no page, with words or without", () => {
  expect(packedOnPages([], room, gap)).toEqual([]);
  expect(packedOnPages([], room, gap, { words: words([10, 10]) })).toEqual([]);
});

test("a piece as wide as the paper goes on it; a hair more is refused by name", () => {
  expect(laid([piece("a", 10, { width: 190 })])).toEqual(["a 0,0"]);
  expect(() => laid([piece("a", 10, { width: 190.001 })])).toThrow("a piece wider than its paper");
});

test("words stand topmost and then leftmost, a gap from what lies there, in the first of their shapes that has room", () => {
  const square = [piece("a", 60, { width: 60 })];
  expect(laid(square, { words: words([50, 20]) })).toEqual(["a 0,0 words 0 64,0"]);
  expect(laid(square, { words: words([126, 20]) })).toEqual(["a 0,0 words 0 64,0"]);
  expect(laid(square, { words: words([126.1, 20]) })).toEqual(["a 0,0 words 0 0,64"]);
  expect(laid(square, { words: words([190, 86]) })).toEqual(["a 0,0 words 0 0,64"]);
  expect(laid(square, { words: words([190, 86.1], [190, 86]) })).toEqual(["a 0,0 words 1 0,64"]);
  expect(laid(square, { words: words([190, 86.1]) })).toEqual(["a 0,0"]);
  expect(packedOnPages(square, room, gap, { words: words([50, 100]) })[0]?.height).toBe(100);
  expect(packedOnPages(square, room, gap, { words: words([50, 20]) })[0]).toMatchObject({
    height: 60,
    placed: [{}, { words: true }],
  });
});

test("words leave room for what follows them, a gap away", () => {
  const square = [piece("a", 60, { width: 60 })];
  expect(laid(square, { words: words([190, 52]), below: 30 })).toEqual(["a 0,0 words 0 0,64"]);
  expect(laid(square, { words: words([190, 52.1]), below: 30 })).toEqual(["a 0,0"]);
});

test("where the last page is too full for words they stand on an earlier one that has room", () => {
  const pieces = [piece("low", 100), piece("high", 140)];
  expect(order(pieces, { words: words([180, 40]) })).toEqual(["high", "low words 0"]);
  // With what follows, low is the only page that may end; the words lie on the other, beside a narrow piece.
  const narrow = [piece("low", 100), piece("high", 140, { width: 100 })];
  expect(order(narrow, { words: words([80, 120]), below: 30 })).toEqual(["high words 0", "low"]);
});

test("pages come as their pieces are named, a nearly empty one last", () => {
  const [a, b] = [piece("a", 100), piece("b", 140)];
  expect(order([a, b])).toEqual(["a", "b"]);
  expect(order([piece("c", 60), a, b])).toEqual(["c", "a", "b"]);
  expect(order([piece("c", 50), a, b])).toEqual(["a", "b", "c"]);
  // Of 150 mm just under or over 38 parts in a hundred are 57.
  expect(order([piece("c", 57), a, b])[0]).toBe("c");
  expect(order([piece("c", 56.9), a, b])[2]).toBe("c");
});

test("the page on which what follows has room stands last, of several the one that is named last", () => {
  const [a, b] = [piece("a", 100), piece("b", 140)];
  expect(order([a, b], { below: 30 })).toEqual(["b", "a"]);
  expect(order([a, b], { below: 46 })).toEqual(["b", "a"]);
  expect(order([piece("c", 90), a, b], { below: 30 })).toEqual(["c", "b", "a"]);
  expect(order([a, piece("c", 90), b], { below: 30 })).toEqual(["a", "b", "c"]);
  // None has room: the emptiest.
  expect(order([a, b, piece("c", 120)], { below: 60 })).toEqual(["b", "c", "a"]);
});

test("pieces that share a page with as few pages do", () => {
  const pieces = [
    piece("a1", 70, { besides: "a" }),
    piece("b1", 70, { besides: "b" }),
    piece("a2", 70, { besides: "a" }),
  ];
  expect(order([...pieces, piece("b2", 70, { besides: "b" })])).toEqual(["a1 a2", "b1 b2"]);
});

/** Few sizes, so that many are alike. */
const some = fc.array(
  fc.record({
    size: fc.constantFrom([60, 40], [90, 70], [180, 45], [120, 100]),
    besides: fc.constantFrom("a", "b", undefined),
  }),
  { minLength: 1, maxLength: 14 },
);
const given = (all: readonly { size: readonly number[]; besides: string | undefined }[]) =>
  all.map(({ size: [width = 0, height = 0], besides }, item) => ({ width, height, item, ...(besides && { besides }) }));

test("property: pieces that are alike lie in the order in which they are named, page by page, downwards and to the right", () => {
  fc.assert(
    fc.property(some, fc.constantFrom(0, 20), (all, below) => {
      const pages = packedOnPages(given(all), room, gap, { below });
      const lies = pages.flatMap(({ placed }, page) => placed.map((one) => ({ ...one, page })));
      const alike = new Map<string, typeof lies>();
      for (const one of lies) {
        const key = `${one.width} ${one.height} ${one.besides}`;
        alike.set(key, [...(alike.get(key) ?? []), one]);
      }
      for (const kind of alike.values()) {
        const inPlace = kind.sort((one, other) => one.page - other.page || one.y - other.y || one.x - other.x);
        const items = inPlace.map(({ item }) => item);
        expect(items).toEqual([...items].sort((one, other) => one - other));
      }
    }),
    { numRuns: 60 },
  );
});

test("property: no way of placing takes fewer pages, and none that takes as few scatters less", () => {
  fc.assert(
    fc.property(some, (all) => {
      const pieces = given(all);
      const pages = packedOnPages(pieces, room, gap);
      for (const way of ways) {
        const found = placedIn(pieces, way, new Set(), room, gap) ?? [];
        expect(pages.length).toBeLessThanOrEqual(found.length);
        // What follows has room on some page here: nothing but the count and what is parted comes before.
        if (found.length === pages.length) expect(astray(pages)).toBeLessThanOrEqual(astray(found));
      }
    }),
    { numRuns: 60 },
  );
});
