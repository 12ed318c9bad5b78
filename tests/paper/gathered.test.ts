import { expect, test } from "vitest";
import { astray, gathered, less, scattered } from "../../src/paper/gathered.js";
import { type FilledPage, filledWith, type Put } from "../../src/paper/placing.js";

const room = { width: 100, height: 100 };
const gap = 2;
type Named = Put<string>;
const at = (item: string, y: number, height: number, more: Partial<Named> = {}): Named => ({
  item,
  width: 100,
  height,
  x: 0,
  y,
  ...more,
});
/** A page of pieces under each other, "a" being of the group of its letter. */
const page = (
  ...pieces: readonly (readonly [item: string, height: number, more?: Partial<Named>])[]
): FilledPage<string> => {
  let y = 0;
  return filledWith(
    pieces.map(([item, height, more]) => {
      const one = at(item, y, height, { besides: item[0] as string, ...more });
      y += height + gap;
      return one;
    }),
  );
};
const named = (pages: readonly FilledPage<string>[]) => pages.map(({ placed }) => placed.map(({ item }) => item));
const brought = (pages: readonly FilledPage<string>[]) =>
  gathered(
    pages,
    pages.flatMap(({ placed }) => placed),
    room,
    gap,
  );

test("of costs the first that differs decides, what rounding leaves does not", () => {
  expect(less([1, 5], [2, 0])).toBe(true);
  expect(less([2, 0], [1, 5])).toBe(false);
  expect(less([1, 2], [1, 2])).toBe(false);
  expect(less([1 + 1e-12, 0], [1, 1])).toBe(true);
  expect(less([1 - 1e-12, 1], [1, 0])).toBe(false);
  expect(less([1, -1], [1])).toBe(true);
  expect(less([1, 1], [1])).toBe(false);
  expect(less([1], [2])).toBe(true);
});

test("a group counts for each further page that it lies on, not for each piece; what belongs to none counts never", () => {
  expect(scattered([page(["a1", 10], ["a2", 10], ["b1", 10]), page(["a3", 10]), page(["a4", 10], ["b2", 10])])).toEqual(
    ["a", "a", "b"],
  );
  const loose = filledWith([at("loose", 0, 10)]);
  expect(scattered([loose, loose, loose])).toEqual([]);
  expect(scattered([page(["a1", 10]), page(["b1", 10])])).toEqual([]);
});

test("copies of what comes in sets count once more for each further page", () => {
  const copy = (set: string) => [["a", 10, { set }]] as const;
  expect(astray([page(...copy("1")), page(...copy("2"))])).toBe(2);
  expect(astray([page(["a1", 10]), page(["a2", 10])])).toBe(1);
  expect(astray([page(...copy("1"), ...copy("2"))])).toBe(0);
  // A part without a set beside them on another page is scattered, but no copy.
  expect(astray([page(...copy("1")), page(["a2", 10])])).toBe(1);
});

test("a picture misleads beside pieces of another group alone: not with its own, not with other pictures, not with what has no group", () => {
  const explains = { explains: true as const };
  expect(astray([page(["a picture", 10, explains], ["b1", 10])])).toBe(1);
  expect(astray([page(["a picture", 10, explains], ["b picture", 10, explains], ["c1", 10])])).toBe(2);
  expect(astray([page(["a picture", 10, explains], ["a1", 10], ["b1", 10])])).toBe(0);
  expect(astray([page(["a picture", 10, explains], ["b picture", 10, explains])])).toBe(0);
  expect(astray([filledWith([...page(["a picture", 10, explains]).placed, at("loose", 20, 10)])])).toBe(0);
  expect(astray([page(["a picture", 10, explains])])).toBe(0);
  expect(astray([page(["a1", 10], ["b1", 10])])).toBe(0);
});

test("a single piece goes to the others of its group where they have room, and a page that is empty then is gone", () => {
  expect(named(brought([page(["a1", 40]), page(["a2", 58]), page(["b1", 90])]))).toEqual([["a1", "a2"], ["b1"]]);
  // A hair too high for both.
  const apart = [page(["a1", 40]), page(["a2", 58.1])];
  expect(brought(apart)).toBe(apart);
  // Its neighbour stays where it is.
  expect(named(brought([page(["a1", 40]), page(["a2", 40], ["b1", 50])]))).toEqual([["b1"], ["a1", "a2"]]);
});

test("pages on which nothing can come nearer are the same pages", () => {
  const pages = [page(["a1", 40], ["b1", 40]), page(["c1", 40])];
  expect(brought(pages)).toBe(pages);
  const none: FilledPage<string>[] = [];
  expect(brought(none)).toBe(none);
});

test("two pieces change places where each page is full", () => {
  const found = named(brought([page(["a1", 48], ["b2", 48]), page(["b1", 48], ["a2", 48])]));
  expect(found.map((items) => [...items].sort())).toEqual([
    ["b1", "b2"],
    ["a1", "a2"],
  ]);
});

test("what has to make room goes to a third page where neither has any", () => {
  // a1 belongs to a2; y is in the way there, is too high for what a1 leaves, and has room on the third.
  const found = named(brought([page(["a1", 48], ["x", 48]), page(["a2", 40], ["y", 58]), page(["z", 40])]));
  expect(found.map((items) => [...items].sort())).toEqual([["x"], ["a1", "a2"], ["y", "z"]]);
});

test("what is brought may take its other shape, and keeps what it is", () => {
  const or = { item: "flat a2", width: 100, height: 30 };
  const pages = [page(["a1", 68]), page(["a2", 60, { or, explains: true }], ["b1", 30])];
  const found = brought(pages);
  expect(named(found)).toEqual([["a1", "flat a2"], ["b1"]]);
  expect(found[0]?.placed[1]).toMatchObject({ besides: "a", explains: true, height: 30, y: 70 });
});

test("what explains is brought before what does not", () => {
  // The first page has room for one more of either; b2's page comes before the picture's.
  const pages = [
    page(["a1", 20], ["a2", 16], ["b1", 10], ["b3", 10]),
    page(["b2", 36]),
    page(["a picture", 36, { explains: true }], ["d1", 62]),
  ];
  expect(named(brought(pages))).toEqual([["a1", "a2", "b1", "b3", "a picture"], ["b2"], ["d1"]]);
});

test("pieces that would fill less than a page and yet do not lie on one stay apart", () => {
  const square = { width: 60 };
  const pages = [page(["a1", 60, square]), page(["a2", 60, square])];
  expect(brought(pages)).toBe(pages);
  const withOther = [page(["a1", 60, square]), page(["a2", 60, square], ["b1", 36, square])];
  expect(brought(withOther)).toBe(withOther);
});

test("a picture does not go where nothing of its own lies, though it would mislead there no more", () => {
  const pages = [
    page(["a picture", 20, { explains: true }], ["b1", 20]),
    page(["a1", 98]),
    filledWith([{ item: "loose", width: 100, height: 20, x: 0, y: 0 }]),
  ];
  expect(brought(pages)).toBe(pages);
});

test("what would be as bad as before stays as it is", () => {
  // a1 would come to its picture, and that of b would mislead beside it.
  const pages = [
    page(["a1", 40], ["z", 50]),
    page(["a picture", 20, { explains: true }], ["b picture", 20, { explains: true }]),
    page(["b1", 98]),
  ];
  expect(brought(pages)).toBe(pages);
});

test("what makes room is on one page in the end, and on no other", () => {
  expect(named(brought([page(["a2", 20], ["a3", 18], ["b1", 10]), page(["a1", 50], ["c1", 30])]))).toEqual([
    ["a2", "a3", "a1"],
    ["b1", "c1"],
  ]);
});

test("pieces come to lie in the order in which they are named, a gap apart", () => {
  const pieces = [page(["a1", 20], ["a2", 20]), page(["a3", 20])];
  const [only, ...rest] = gathered(
    [pieces[1] as FilledPage<string>, pieces[0] as FilledPage<string>],
    pieces.flatMap(({ placed }) => placed),
    room,
    gap,
  );
  expect(rest).toEqual([]);
  expect(only?.placed.map(({ item, y }) => [item, y])).toEqual([
    ["a1", 0],
    ["a2", 22],
    ["a3", 44],
  ]);
});
