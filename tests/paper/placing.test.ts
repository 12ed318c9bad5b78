import fc from "fast-check";
import { expect, test } from "vitest";
import {
  filledWith,
  type Grouped,
  isFree,
  numbered,
  type Put,
  placedIn,
  thousandths,
  type Way,
  ways,
} from "../../src/paper/placing.js";

const asNamed = (rest: "under" | "beside", tightly?: true): Way => ({
  first: () => 0,
  rest,
  ...(tightly && { tightly }),
});
const room = { width: 100, height: 100 };
const gap = 2;
type Named = Grouped<string>;
const piece = (item: string, width: number, height: number, more: Partial<Named> = {}): Named => ({
  item,
  width,
  height,
  ...more,
});

/** "a 0,0 b 42,0 | c 0,0": page by page. */
const laid = (pieces: readonly Named[], way: Way, whole: readonly string[] = []) =>
  (placedIn(pieces, way, new Set(whole), room, gap) ?? [])
    .map(({ placed }) => placed.map(({ item, x, y }) => `${item} ${x},${y}`).join(" "))
    .join(" | ");

test("what is left under a piece over the whole width, or beside it down to the bottom, holds what just fits", () => {
  const first = piece("a", 40, 30);
  expect(laid([first, piece("b", 58, 30), piece("c", 100, 68)], asNamed("under"))).toBe("a 0,0 b 42,0 c 0,32");
  expect(laid([first, piece("b", 58, 30.01)], asNamed("under"))).toBe("a 0,0 b 0,32");
  expect(laid([first, piece("b", 58.01, 30)], asNamed("under"))).toBe("a 0,0 b 0,32");
  expect(laid([first, piece("b", 100, 68.01)], asNamed("under"))).toBe("a 0,0 | b 0,0");
  expect(laid([first, piece("b", 58, 100), piece("c", 40, 68)], asNamed("beside"))).toBe("a 0,0 b 42,0 c 0,32");
  expect(laid([first, piece("b", 58, 100.01)], asNamed("beside"))).toBe("a 0,0 | b 0,0");
  expect(laid([first, piece("b", 58, 100), piece("c", 40.01, 68)], asNamed("beside"))).toBe("a 0,0 b 42,0 | c 0,0");
});

test("a piece goes topmost and then leftmost, or where it leaves the least", () => {
  const first = piece("a", 40, 30);
  expect(laid([first, piece("b", 40, 20)], asNamed("beside"))).toBe("a 0,0 b 42,0");
  expect(laid([first, piece("b", 40, 20)], asNamed("beside", true))).toBe("a 0,0 b 0,32");
  // By height as well as by width.
  expect(laid([first, piece("b", 20, 68)], asNamed("beside", true))).toBe("a 0,0 b 0,32");
  expect(laid([first, piece("b", 20, 68)], asNamed("beside"))).toBe("a 0,0 b 42,0");
  // Two places at the same height: under a, and under b, which is as high.
  const level = [first, piece("b", 58, 30), piece("c", 30, 20), piece("d", 30, 20)];
  expect(laid(level, asNamed("beside"))).toBe("a 0,0 b 42,0 c 0,32 d 42,32");
});

test("a rest as narrow as the gap is none", () => {
  expect(laid([piece("a", 98, 50), piece("b", 0.5, 10)], asNamed("under"))).toBe("a 0,0 b 0,52");
  expect(laid([piece("a", 97, 50), piece("b", 0.5, 10)], asNamed("under"))).toBe("a 0,0 b 99,0");
});

test("the largest are placed first, as that way calls large; of equals, even to the last bit, the first named", () => {
  const high: Way = { first: ({ height }) => height, rest: "under" };
  expect(laid([piece("low", 90, 10), piece("high", 20, 60), piece("middle", 30, 40)], high)).toBe(
    "high 0,0 middle 22,0 low 0,62",
  );
  expect(laid([piece("a", 90, 30), piece("b", 90, 30 + 1e-9)], high)).toBe("a 0,0 b 0,32");
});

test("a group goes on a page together, or on the next; what was tried is taken back", () => {
  const x = { besides: "x" };
  const pieces = [piece("a", 100, 40, x), piece("b", 100, 40), piece("c", 100, 40, x)];
  expect(laid(pieces, asNamed("under"))).toBe("a 0,0 b 0,42 | c 0,0");
  expect(laid(pieces, asNamed("under"), ["x"])).toBe("a 0,0 c 0,42 | b 0,0");
  expect(laid(pieces, asNamed("under"), ["y"])).toBe("a 0,0 b 0,42 | c 0,0");
  const after = [piece("b", 100, 60), piece("a", 100, 38, x), piece("c", 100, 38, x), piece("d", 100, 38)];
  expect(laid(after, asNamed("under"), ["x"])).toBe("b 0,0 d 0,62 | a 0,0 c 0,40");
});

test("within a group the largest first; the group stands where its largest belongs", () => {
  const high: Way = { first: ({ height }) => height, rest: "under" };
  const x = { besides: "x" };
  const pieces = [piece("small", 100, 20, x), piece("other", 100, 30), piece("large", 100, 40, x)];
  expect(laid(pieces, high, ["x"])).toBe("large 0,0 small 0,42 other 0,64");
});

test("a group that no page holds is parted by sets, then pieces alike stay together", () => {
  const of = (item: string, height: number, set?: string) =>
    piece(item, 100, height, { besides: "x", ...(set !== undefined && { set }) });
  const way = asNamed("under");
  expect(laid([of("a1", 40, "1"), of("a2", 40, "2"), of("b1", 40, "1"), of("b2", 40, "2")], way, ["x"])).toBe(
    "a1 0,0 b1 0,42 | a2 0,0 b2 0,42",
  );
  expect(laid([of("a", 40), of("b", 30), of("c", 40), of("d", 30)], way, ["x"])).toBe("a 0,0 c 0,42 | b 0,0 d 0,32");
  expect(laid([of("a", 40), of("b", 40), of("c", 40)], way, ["x"])).toBe("a 0,0 | b 0,0 c 0,42");
  // What differs by less than is seen is alike; what differs in width alone is not.
  expect(laid([of("a", 40), of("b", 30), of("c", 40 + 1e-8), of("d", 30)], way, ["x"])).toMatch(/^a 0,0 c 0,42/);
  const narrow = [of("a", 40), piece("b", 90, 40, { besides: "x" }), of("c", 40), of("d", 40)];
  expect(laid(narrow, way, ["x"])).toBe("a 0,0 b 0,42 | c 0,0 d 0,42");
});

test("what is higher than the paper stands alone, and its page tells how high", () => {
  const [page, next] =
    placedIn([piece("a", 20, 120), piece("b", 20, 20)], asNamed("under"), new Set(), room, gap) ?? [];
  expect(page).toMatchObject({ height: 120, placed: [{ item: "a", x: 0, y: 0 }] });
  expect(next).toMatchObject({ height: 20, placed: [{ item: "b", x: 0, y: 0 }] });
});

test("property: a place is free when what lies there, grown by the gap, does not reach into it", () => {
  const tenths = (max: number) => fc.integer({ min: 0, max });
  const box = fc.record({ x: tenths(12), y: tenths(12), width: tenths(8), height: tenths(8) }).map((one) => ({
    ...one,
    width: one.width + 1,
    height: one.height + 1,
  }));
  fc.assert(
    fc.property(box, fc.array(box, { maxLength: 3 }), fc.integer({ min: 0, max: 3 }), (place, others, between) => {
      // Millimetre by millimetre.
      const taken = (one: typeof place) => {
        for (let x = place.x; x < place.x + place.width; x++)
          for (let y = place.y; y < place.y + place.height; y++)
            if (
              x >= one.x - between &&
              x < one.x + one.width + between &&
              y >= one.y - between &&
              y < one.y + one.height + between
            )
              return true;
        return false;
      };
      const placed = others.map((one) => ({ ...one, item: "" }));
      expect(isFree(place, placed, between)).toBe(!others.some(taken));
    }),
    { numRuns: 500 },
  );
});

test("pieces are counted as they are named, in either shape; what is none of them comes last", () => {
  const pieces = [piece("a", 1, 1), piece("b", 1, 1, { or: piece("flat b", 2, 0.5) })];
  const numberOf = numbered(pieces);
  expect(["a", "b", "flat b", "words"].map((item) => numberOf({ item }))).toEqual([0, 1, 1, 2]);
});

test("a page is as high as its lowest edge; lengths alike to half a thousandth", () => {
  const at = (y: number, height: number): Put<string> => ({ ...piece("", 1, height), x: 0, y });
  expect(filledWith([at(0, 50), at(20, 40), at(50, 5)]).height).toBe(60);
  expect([thousandths(1.0004), thousandths(1.0006), thousandths(-0.0002) + 0]).toEqual([1000, 1001, 0]);
});

test("more pages than are asked for at most are none", () => {
  const three = [piece("a", 90, 90), piece("b", 90, 90), piece("c", 90, 90)];
  expect(placedIn(three, asNamed("under"), new Set(), room, gap, 2)).toBeUndefined();
  expect(placedIn(three, asNamed("under"), new Set(), room, gap, 3)).toHaveLength(3);
});

test("ways call a piece large by nothing, by its height, by its longer side, or by its area", () => {
  const sizes = ways.map(({ first }) => [first({ width: 3, height: 8 }), first({ width: 10, height: 4 })]);
  expect(sizes).toEqual([
    [0, 0],
    [0, 0],
    [8, 4],
    [8, 4],
    [8, 10],
    [24, 40],
    [24, 40],
  ]);
});

test("tight is what leaves the least on one side, whichever that is", () => {
  const tight = asNamed("beside", true);
  // Beside a 46 fits to the hair in width; under it 6 are left across and 38 down.
  expect(laid([piece("a", 52, 40), piece("b", 46, 20)], tight)).toBe("a 0,0 b 54,0");
  // Under a 68 fits to the hair in height, though beside it less is left across.
  expect(laid([piece("a", 60, 30), piece("b", 28, 68)], tight)).toBe("a 0,0 b 0,32");
});

test("a group goes on a page that has others already; pieces alike are alike in both sides", () => {
  const x = { besides: "x" };
  const beside = [piece("b", 100, 20), piece("a", 100, 30, x), piece("c", 100, 30, x)];
  expect(laid(beside, asNamed("under"), ["x"])).toBe("b 0,0 a 0,22 c 0,54");
  const oneNarrow = [piece("a", 100, 40, x), piece("b", 90, 40, x), piece("c", 100, 40, x)];
  expect(laid(oneNarrow, asNamed("under"), ["x"])).toBe("a 0,0 c 0,42 | b 0,0");
});
