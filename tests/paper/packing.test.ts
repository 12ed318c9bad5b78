import fc from "fast-check";
import { expect, test } from "vitest";
import { type Placed, shelves } from "../../src/paper/packing.js";
import { packedOnPages } from "../../src/paper/pages.js";

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

const grouped = fc.array(
  fc.record({
    width: side,
    height: fc.double({ min: 3, max: 150, noNaN: true }),
    besides: fc.constantFrom("a", "b", undefined),
    explains: fc.option(fc.record({ width: side, height: side }), { nil: undefined, freq: 6 }),
  }),
  { minLength: 1, maxLength: 25 },
);
const room150 = { width: 190, height: 150 };
type Size = { readonly width: number; readonly height: number };
const given = (all: readonly (Size & { besides: string | undefined; explains?: Size | undefined })[]) =>
  all.map(({ besides, explains, ...size }, item) => ({
    ...size,
    item,
    ...(besides && { besides }),
    ...(explains && { explains: true as const, or: { ...explains, item } }),
  }));

test("property: on pages every piece is placed once, on the paper, and a gap away from all others", () => {
  fc.assert(
    fc.property(grouped, (all) => {
      const pages = packedOnPages(given(all), { width: 190, height: 150 }, 4);
      const items = pages.flatMap(({ placed }) => placed.map(({ item }) => item));
      expect(items.sort((a, b) => a - b)).toEqual(all.map((_, item) => item));
      for (const { height, placed } of pages) {
        expect(height).toBeLessThanOrEqual(150 + 1e-6);
        for (const [index, piece] of placed.entries()) {
          expect(piece.x >= 0 && piece.x + piece.width <= 190 + 1e-6).toBe(true);
          expect(piece.y >= 0 && piece.y + piece.height <= height + 1e-6).toBe(true);
          expect(placed.slice(index + 1).some((other) => overlap(piece, other, 4))).toBe(false);
        }
      }
      // In the order in which they are named, save the last, which has room for what follows or is the emptiest.
      const first = pages.map(({ placed }) => Math.min(...placed.map(({ item }) => item)));
      expect(first.slice(0, -1)).toEqual(first.slice(0, -1).sort((a, b) => a - b));
      const ends = pages.at(-1)?.height ?? 0;
      if (first.some((item) => item > (first.at(-1) ?? 0)))
        expect(ends + 4 <= 150 || ends === Math.min(...pages.map(({ height }) => height))).toBe(true);
    }),
    { numRuns: 100 },
  );
});

test("copies lie on one page where that takes no more pages", () => {
  const sizes = { ring: [60, 70], strip: [180, 45], bevel: [80, 65] } as const;
  const copies = Object.entries(sizes).flatMap(([besides, [width, height]]) =>
    [1, 2].map((copy) => ({ width, height, besides, item: `${besides} ${copy}` })),
  );
  const pages = packedOnPages(copies, { width: 190, height: 170 }, 4);
  expect(pages).toHaveLength(2);
  for (const kind of Object.keys(sizes))
    expect(pages.filter(({ placed }) => placed.some(({ besides }) => besides === kind))).toHaveLength(1);
});

test("page by page in the order of the pieces where that takes no more: the first copy first, its halves together, words last", () => {
  // Two copies of a strip in halves, of which a page holds three, and a wheel after it.
  const halves = [1, 2].flatMap((copy) =>
    [1, 2].map((half) => ({
      width: 180,
      height: 45,
      besides: "strip",
      set: `copy ${copy}`,
      item: `strip ${copy}.${half}`,
    })),
  );
  const ring = [1, 2].map((copy) => ({
    width: 60,
    height: 70,
    besides: "ring",
    set: `copy ${copy}`,
    item: `ring ${copy}`,
  }));
  const words = () => ({ width: 100, height: 60, item: "words" });
  const pages = packedOnPages([...halves, ...ring], room150, 4, { words: [words] });
  const onPage = pages.map(({ placed }) => placed.map(({ item }) => item));
  const pageOf = (item: string) => onPage.findIndex((items) => items.includes(item));
  expect(pageOf("strip 1.1")).toBe(0);
  expect(pageOf("strip 1.2")).toBe(0);
  expect(pageOf("strip 2.1")).toBe(pageOf("strip 2.2"));
  expect(pageOf("ring 1")).toBeLessThanOrEqual(pageOf("ring 2"));
  expect(pageOf("words")).toBe(pages.length - 1);
});

test("property: words lie on one page, a gap away from all pieces, with room for what follows, or on none", () => {
  const shape = fc.record({ width: side, height: fc.double({ min: 3, max: 150, noNaN: true }) });
  fc.assert(
    fc.property(
      grouped,
      fc.array(shape, { minLength: 1, maxLength: 4 }),
      fc.constantFrom(0, 14),
      (all, shapes, below) => {
        const words = shapes.map((size) => () => ({ ...size, item: -1 }));
        const pages = packedOnPages(given(all), room150, 4, { words, below });
        const hosts = pages.filter(({ placed }) => placed.some((one) => one.words));
        expect(hosts.length).toBeLessThanOrEqual(1);
        const pieces = pages.flatMap(({ placed }) => placed.filter((one) => !one.words).map(({ item }) => item));
        expect(pieces.sort((a, b) => a - b)).toEqual(all.map((_, item) => item));
        for (const { placed, height } of hosts) {
          const said = placed.find((one) => one.words) as Placed<number>;
          expect(shapes).toContainEqual({ width: said.width, height: said.height });
          expect(said.x + said.width <= room150.width + 1e-6 && said.y + said.height <= height + 1e-6).toBe(true);
          expect(height).toBeLessThanOrEqual(room150.height + 1e-6);
          expect(placed.filter((one) => one !== said).some((one) => overlap(one, said, 4))).toBe(false);
          if (below > 0) expect(pages.at(-1)?.height).toBeLessThanOrEqual(room150.height - below - 4 + 1e-6);
        }
        // A page that is empty but for what is below would have held the first shape.
        if (hosts.length === 0 && pages.length > 0) {
          const reaches = Math.min(...pages.map((page) => page.height));
          const least = Math.min(...shapes.map(({ height }) => height));
          expect(reaches + least + 8 + below).toBeGreaterThan(room150.height - 1e-6);
        }
      },
    ),
    { numRuns: 200 },
  );
});

test("words take the first of their shapes that has room, on the last page rather than a page of their own", () => {
  const strip = (item: string) => ({ width: 120, height: 140, item });
  const shapes = [
    [190, 30],
    [60, 90],
    [50, 110],
  ].map(([width = 0, height = 0]) => () => ({ width, height, item: "words" }));
  const [first, second, ...rest] = packedOnPages([strip("one"), strip("two")], room150, 4, { words: shapes });
  expect(rest).toEqual([]);
  expect(first?.placed.map(({ item }) => item)).toEqual(["one"]);
  expect(second?.placed.map(({ item, x, y, width }) => [item, x, y, width])).toEqual([
    ["two", 0, 0, 120],
    ["words", 124, 0, 60],
  ]);
});

test("a picture lies with what it explains, in another shape where that takes no more pages", () => {
  const strips = [1, 2].map((copy) => ({ width: 180, height: 90, besides: "strip", item: `strip ${copy}` }));
  const rings = [1, 2].map((copy) => ({ width: 110, height: 140, besides: "ring", item: `ring ${copy}` }));
  const pictures = ["strip", "ring"].map((besides) => ({
    width: 60,
    height: 60,
    besides,
    item: `picture of ${besides}`,
    explains: true as const,
    or: { width: 110, height: 40, item: `flat picture of ${besides}` },
  }));
  const pages = packedOnPages([...strips, ...rings, ...pictures], room150, 4);
  expect(pages).toHaveLength(4);
  const of = (item: string) => pages.find(({ placed }) => placed.some((one) => one.item === item))?.placed;
  expect(of("flat picture of strip")?.map(({ besides }) => besides)).toEqual(["strip", "strip"]);
  expect(of("picture of ring")?.map(({ besides }) => besides)).toEqual(["ring", "ring"]);
});

test("of a scale the first part comes before the second, though that is the larger", () => {
  const parts = [90, 120].map((width, at) => ({ width, height: 40, besides: "scale", set: "copy 1", item: at + 1 }));
  const others = [
    { width: 30, height: 80, item: 3 },
    { width: 110, height: 60, item: 4 },
  ];
  const pages = packedOnPages([...others, ...parts], room150, 4);
  const places = pages.flatMap(({ placed }, page) =>
    placed.map((one) => ({ ...one, place: 1e6 * page + 1e3 * one.y + one.x })),
  );
  const [first, second] = [1, 2].map((item) => places.find((one) => one.item === item)?.place ?? Number.NaN);
  expect(first).toBeLessThan(second as number);
});

test("of as many pages those that scatter the pieces of a kind over the fewest", () => {
  const sizes = [
    [160, 100, "ring"],
    [100, 50, "strip"],
    [50, 100, "ring"],
    [50, 50, "ring"],
    [70, 70, "plate"],
    [90, 90, "ring"],
  ] as const;
  const pages = packedOnPages(
    sizes.map(([width, height, besides], item) => ({ width, height, besides, item })),
    room150,
    4,
  );
  expect(pages).toHaveLength(3);
  expect(pages.filter(({ placed }) => placed.some(({ besides }) => besides === "ring"))).toHaveLength(2);
});

test("what follows finds room on the last page where it would else begin one", () => {
  const strips = Array.from({ length: 4 }, (_, item) => ({ width: 90, height: 30, item }));
  const high = { width: 60, height: 100, item: 4 };
  const room = { width: 190, height: 110 };
  const [, last] = packedOnPages([...strips, high], room, 4, { below: 40 });
  expect((last?.height ?? 0) + 4 + 40).toBeLessThanOrEqual(room.height);
});

test("a piece wider than its page is refused, one that is higher stands alone", () => {
  expect(() => packedOnPages([{ width: 191, height: 5, item: 0 }], { width: 190, height: 100 }, 4)).toThrow(RangeError);
  const pages = packedOnPages(
    [
      { width: 20, height: 120, item: 0 },
      { width: 20, height: 20, item: 1 },
    ],
    { width: 190, height: 100 },
    4,
  );
  expect(pages.map(({ placed }) => placed.length)).toEqual([1, 1]);
});

test("what belongs together and is too much for a page is parted, pieces alike last", () => {
  const strips = [1, 2].map((copy) => ({ width: 180, height: 60, besides: "wheel", item: `strip ${copy}` }));
  const others = ["picture", "index"].map((item, at) => ({ width: 170 - at, height: 50, besides: "wheel", item }));
  const pages = packedOnPages(
    [others[0], strips[0], strips[1], others[1]].flatMap((one) => one ?? []),
    room150,
    4,
  );
  expect(pages).toHaveLength(2);
  expect(pages.map(({ placed }) => placed.map(({ item }) => item.split(" ")[0]).sort())).toContainEqual([
    "strip",
    "strip",
  ]);
});

/** Where each piece lies, by name: shelf, x, y. */
const onShelves = (
  sizes: readonly (readonly [width: number, height: number, name: string])[],
  width: number,
  gap: number,
) =>
  Object.fromEntries(
    shelves(
      sizes.map(([width, height, item]) => ({ width, height, item })),
      width,
      gap,
    ).flatMap(({ placed }, shelf) => placed.map(({ item, x, y }) => [item, [shelf, x, y]])),
  );

test("pieces just fit side by side, a gap between them; by a hair more they begin a shelf", () => {
  expect(
    onShelves(
      [
        [93, 10, "a"],
        [93, 10, "b"],
      ],
      190,
      4,
    ),
  ).toEqual({ a: [0, 0, 0], b: [0, 97, 0] });
  expect(
    onShelves(
      [
        [93, 10, "a"],
        [93.01, 10, "b"],
      ],
      190,
      4,
    ),
  ).toEqual({ a: [0, 0, 0], b: [1, 0, 0] });
  expect(onShelves([[190, 10, "a"]], 190, 4)).toEqual({ a: [0, 0, 0] });
  expect(() => onShelves([[190.01, 10, "a"]], 190, 4)).toThrow("wider than its paper");
});

test("pieces just fit under each other in the shelf's height, and no wider than what they hang under", () => {
  const high = [20, 60, "high"] as const;
  expect(onShelves([high, [100, 28, "a"], [100, 28, "b"]], 130, 4)).toMatchObject({ a: [0, 24, 0], b: [0, 24, 32] });
  expect(onShelves([high, [100, 28.1, "a"], [100, 28, "b"]], 130, 4)).toMatchObject({ a: [0, 24, 0], b: [1, 0, 0] });
  expect(onShelves([high, [100, 28, "a"], [100.1, 28, "b"]], 130, 4)).toMatchObject({ b: [1, 0, 0] });
});

test("what is left beside a narrow piece under a wide one takes another, at the same height, and below each there is more", () => {
  const sizes = [
    [20, 60, "high"],
    [100, 20, "wide"],
    [40, 16, "left"],
    [56, 15, "right"],
    [40, 12, "left below"],
    [56, 10, "right below"],
  ] as const;
  expect(onShelves(sizes, 130, 4)).toEqual({
    high: [0, 0, 0],
    wide: [0, 24, 0],
    left: [0, 24, 24],
    right: [0, 68, 24],
    "left below": [0, 24, 44],
    "right below": [0, 68, 43],
  });
  // Half a millimetre more is too much for what is left beside.
  expect(onShelves([...sizes.slice(0, 3), [56.5, 15, "right"]], 130, 4).right).not.toEqual([0, 68, 24]);
});

test("under what stands goes before beside it, an earlier shelf before a later one, the higher before the lower", () => {
  expect(
    onShelves(
      [
        [40, 10, "low"],
        [40, 50, "high"],
        [40, 20, "middle"],
      ],
      100,
      4,
    ),
  ).toEqual({
    high: [0, 0, 0],
    middle: [0, 44, 0],
    low: [0, 44, 24],
  });
  expect(
    onShelves(
      [
        [80, 50, "one"],
        [80, 40, "two"],
        [15, 5, "last"],
      ],
      100,
      4,
    ),
  ).toEqual({
    one: [0, 0, 0],
    two: [1, 0, 0],
    last: [0, 84, 0],
  });
});
