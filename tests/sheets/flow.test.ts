import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Run } from "../../src/blocks/shared/block.js";
import type { Mark } from "../../src/drawing/drawing.js";
import { text } from "../../src/drawing/shapes.js";
import { flow } from "../../src/sheets/flow.js";

const HEIGHT = 100;
const run = (name: string, height: number, more: Partial<Run> = {}): Run => ({
  drawing: { width: 40, height, marks: [text(name, { x: 0, y: height }, { size: 3 })] },
  ...more,
});
type Seen = { readonly name: string; readonly x: number; readonly bottom: number };
const seenOn = (marks: readonly Mark[], x = 0, y = 0): Seen[] =>
  marks.flatMap((mark): Seen[] =>
    mark.kind === "group"
      ? seenOn(mark.marks, x + mark.at.x, y + mark.at.y)
      : mark.kind === "text"
        ? [{ name: mark.text, x: x + mark.at.x, bottom: y + mark.at.y }]
        : [],
  );
const pages = (runs: readonly Run[], height = HEIGHT) => flow(runs, height).map((marks) => seenOn(marks ?? []));
const names = (runs: readonly Run[]) => pages(runs).map((page) => page.map(({ name }) => name));

const rows = (count: number, more: Partial<Run> = {}) =>
  Array.from({ length: count }, (_, index) => run(String(index), 10, more));

test("runs fill a page and go on with the next, the heading of a broken table again above them", () => {
  const heading = run("heading", 5).drawing;
  expect(names([...rows(9), ...rows(6, { heading })])).toEqual([
    ["0", "1", "2", "3", "4", "5", "6", "7", "8", "0"],
    ["heading", "1", "2", "3", "4", "5"],
  ]);
});

test("a page says at its head whose rows go on there, over their heading, and a list says so once", () => {
  const goesOn = run("whose", 6).drawing;
  const heading = run("heading", 5).drawing;
  expect(names([...rows(9), ...rows(6, { heading, goesOn })])[1]?.slice(0, 3)).toEqual(["whose", "heading", "1"]);
  const list = { columns: 2, step: 50 };
  const [, second] = pages([run("head", 10), ...rows(30, { heading, goesOn, list })]);
  expect(second?.filter(({ name }) => name === "whose")).toHaveLength(1);
  expect(second?.filter(({ name }) => name === "heading").map(({ bottom }) => bottom)).toEqual([11, 11]);
});

describe("what comes in parts", () => {
  const goesOn = run("whose", 6).drawing;
  const parts = [run("first", 30), run("then", 15, { goesOn }), run("last", 10, { goesOn })];
  const whole = run("whole", 60, { parts });

  test("stands whole where it has room, or leaves no more than a third of the page before it empty", () => {
    expect(names([run("a", 40), whole])).toEqual([["a", "whole"]]);
    expect(names([run("a", 68), whole, run("b", 35)])).toEqual([["a"], ["whole", "b"]]);
  });

  test("else its first part stands there, what has no room beside it overleaf under its name", () => {
    expect(names([run("a", 62), whole, run("b", 50)])).toEqual([
      ["a", "first"],
      ["whose", "then", "last", "b"],
    ]);
    expect(names([run("a", 50), whole, run("b", 50)])).toEqual([
      ["a", "first", "then"],
      ["whose", "last", "b"],
    ]);
  });

  test("begins a page where not even its first part has room", () =>
    expect(names([run("a", 60), run("tall", 60, { parts: [run("first", 45), run("then", 10)] })])).toEqual([
      ["a"],
      ["tall"],
    ]));
});

describe("what signs mean", () => {
  const [first, second] = [run("! tight", 8).drawing, run("? unknown", 8).drawing];

  test("stands once below each page that has them, and takes its room there", () => {
    const signed = rows(16).map((row, index) => (index === 2 || index === 4 ? { ...row, keys: [first] } : row));
    const last = run("16", 10, { keys: [second, first] });
    const sheet = pages([...signed, last]);
    expect(sheet.map((page) => page.map(({ name }) => name))).toEqual([
      ["0", "1", "2", "3", "4", "5", "6", "7", "8", "! tight"],
      ["9", "10", "11", "12", "13", "14", "15", "16", "? unknown", "! tight"],
    ]);
    for (const { bottom } of sheet.flat()) expect(bottom).toBeLessThanOrEqual(HEIGHT);
  });

  test("stands below all that shares a page, and of a list on each of its pages", () => {
    const sections = [run("a", 30, { keys: [first] }), run("b", 30, { startsPage: "unless it fits", keys: [first] })];
    expect(names(sections)).toEqual([["a", "b", "! tight"]]);
    const list = { columns: 2, step: 50 };
    for (const page of pages(rows(30, { list, keys: [first] }))) {
      expect(page.at(-1)?.name).toBe("! tight");
      expect(page.at(-1)?.bottom).toBeLessThanOrEqual(HEIGHT);
    }
  });
});

test("of a list no fewer than three rows in each column are left for another page", () => {
  const list = { columns: 2, step: 50 };
  const lengths = (count: number, foot: number) =>
    pages([...rows(count, { list }), run("foot", foot)]).map((page) => page.length);
  for (const count of [21, 24]) expect(lengths(count, 40)).toEqual([count - 6, 7]);
  expect(lengths(27, 40)).toEqual([20, 8]);
});

test("words that accompany what stands before them take some of it with them to their page", () => {
  const words = (name: string, height: number) => run(name, height, { accompanies: true });
  const thirds = ["a", "b", "c"].map((name) => run(name, 30));
  expect(names([...thirds, words("notes", 40), words("strip", 15)])).toEqual([
    ["a", "b"],
    ["c", "notes", "strip"],
  ]);
  expect(names([...thirds, run("table", 40), words("strip", 15)])).toEqual([
    ["a", "b", "c"],
    ["table", "strip"],
  ]);
});

describe("what stands at the head of the pages that name something", () => {
  const over = (marks: readonly Mark[]) => seenOn(marks).some(({ name }) => name.startsWith("wood"));
  const headed = (runs: readonly Run[]) =>
    flow(runs, HEIGHT, { height: 30, over }).map((marks) => seenOn(marks ?? []).map(({ name }) => name));

  test("takes its room there, and leaves the other pages whole", () => {
    expect(headed([run("a", 50), run("b", 50), run("wood", 40), run("c", 30), run("d", 50)])).toEqual([
      ["a", "b"],
      ["wood", "c"],
      ["d"],
    ]);
    const named = run("wood", 5).drawing;
    expect(headed(rows(10, { heading: named })).map((page) => page.length)).toEqual([7, 5]);
  });

  test("counts for a page that would else be nearly empty", () => {
    expect(headed([...rows(10), run("wood", 20)])).toEqual([
      ["0", "1", "2", "3", "4", "5", "6", "7", "8", "9"],
      ["wood"],
    ]);
  });

  test("and on a page that what follows shares", () => {
    const section = (name: string, height: number) => run(name, height, { startsPage: "unless it fits" });
    expect(headed([section("wood", 40), section("b", 40)])).toEqual([["wood"], ["b"]]);
    expect(headed([section("wood", 40), section("wood b", 30)])).toEqual([["wood", "wood b"]]);
  });
});

describe("no page is nearly empty", () => {
  test("the last page is half full, at the cost of the one before it", () => {
    expect(names(rows(11))).toEqual([
      ["0", "1", "2", "3", "4", "5"],
      ["6", "7", "8", "9", "10"],
    ]);
  });

  test("what follows a full page is half full, unless that would tear a table or a paragraph", () => {
    const heading = run("heading", 5).drawing;
    expect(pages([...rows(10, { gap: 0 }), run("a", 30, { gap: 1 })]).map((page) => page.length)).toEqual([10, 1]);
    expect(pages(rows(13, { gap: 0.1 })).map((page) => page.length)).toEqual([8, 5]);
    const tabled = (count: number) =>
      rows(count).map((row, at) => ({ ...row, ...(at === 0 ? { gap: 1 } : { heading }) }));
    expect(pages([...tabled(10), run("a", 30, { gap: 1 })]).map((page) => page.length)).toEqual([10, 1]);
    expect(pages([run("b", 40), ...tabled(9)]).map((page) => page.length)).toEqual([5, 6]);
  });

  test("of a table no three rows or fewer stand alone at the foot of a page or the head of the next", () => {
    const heading = run("heading", 5).drawing;
    const tabled = (count: number) =>
      rows(count).map((row, at) => ({ ...row, ...(at === 0 ? { gap: 1 } : { heading }) }));
    expect(pages([run("b", 75), ...tabled(9)]).map((page) => page.length)).toEqual([1, 9]);
    expect(pages([run("b", 20), ...tabled(10), run("c", 50, { gap: 1 })]).map((page) => page.length)).toEqual([7, 6]);
  });

  test("nor is one in the middle, where what follows it wants a page to itself", () => {
    const sheet = pages([...rows(11), run("large", 95)]);
    expect(sheet.map((page) => page.length)).toEqual([6, 5, 1]);
  });

  test("whatever is on it", () => {
    const any = fc.array(fc.integer({ min: 2, max: 20 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(any, (heights) => {
        const runs = heights.map((height, index) => run(String(index), height));
        const found = pages(runs);
        expect(found.flat().map(({ name }) => Number(name))).toEqual(heights.map((_, index) => index));
        for (const page of found) {
          expect(Math.max(...page.map(({ bottom }) => bottom))).toBeLessThanOrEqual(HEIGHT + 1e-9);
          if (found.length > 1) expect(Math.max(...page.map(({ bottom }) => bottom))).toBeGreaterThanOrEqual(25);
        }
      }),
    );
  });

  test("what begins a page goes on the last one where it fits there wholly, unless it must begin one", () => {
    const second = (startsPage: Run["startsPage"]) => [...rows(4), run("a", 10, { startsPage }), run("b", 30)];
    expect(names(second("unless it fits"))).toEqual([["0", "1", "2", "3", "a", "b"]]);
    expect(names(second("always"))).toEqual([
      ["0", "1", "2", "3"],
      ["a", "b"],
    ]);
    expect(names([...rows(7), run("a", 10, { startsPage: "unless it fits" }), run("b", 30)])[1]).toEqual(["a", "b"]);
  });
});

describe("sections that begin a page", () => {
  test("one that would stand nearly alone on the last page brings along what stands before it", () => {
    const section = (name: string, height: number) => run(name, height, { startsPage: "unless it fits" });
    expect(names([section("a", 60), section("b", 35), section("c", 10)])).toEqual([["a"], ["b", "c"]]);
    expect(names([section("a", 20), section("b", 75), section("c", 10)])).toEqual([["a", "b"], ["c"]]);
  });
});

describe("what belongs together", () => {
  test("a heading stays with what it is over, a caution with what stands before it", () => {
    expect(names([...rows(9), run("heading", 10, { keepWithNext: true }), run("body", 40)])[1]).toEqual([
      "heading",
      "body",
    ]);
    const last = names([...rows(10), run("caution", 10, { keepWithPrevious: true })]).at(-1);
    expect(last?.at(-1)).toBe("caution");
    expect(last?.length).toBeGreaterThan(1);
  });

  test("is torn in its middle where a page would else stay nearly empty", () => {
    const chain = rows(9).map((one, index) => ({ ...one, keepWithNext: index < 8 }));
    const [first, second] = names([...chain, run("note", 15, { gap: 0 })]);
    expect(first?.length).toBeLessThan(9);
    expect(second?.at(-1)).toBe("note");
    expect(second?.length).toBeGreaterThan(1);
  });

  test("a chain that is larger than a page breaks all the same; one run that is larger is no page", () => {
    expect(names(rows(15, { keepWithNext: true })).flat()).toHaveLength(15);
    expect(flow([run("tall", HEIGHT + 1)], HEIGHT)).toContain(undefined);
    expect(flow([run("tall", HEIGHT)], HEIGHT)).not.toContain(undefined);
  });
});

describe("a list", () => {
  const list = { columns: 3, step: 50 };

  test("goes down one column and on to the next, columns as short as will do", () => {
    const [page] = pages(rows(9, { list }));
    expect(page?.map(({ name, x }) => [Number(name), x / 50])).toEqual(
      Array.from({ length: 9 }, (_, index) => [index, Math.floor(index / 3)]),
    );
  });

  test("fills its columns to the foot of the page before it goes on to the next, headed anew", () => {
    const heading = run("heading", 5).drawing;
    const found = pages(rows(40, { list, heading }));
    expect(found).toHaveLength(2);
    for (const page of found) expect(Math.max(...page.map(({ bottom }) => bottom))).toBeLessThanOrEqual(HEIGHT);
    expect(found[0]?.filter(({ name }) => name === "heading").map(({ x }) => x)).toEqual([0, 50, 100]);
    expect(
      found
        .flat()
        .filter(({ name }) => name !== "heading")
        .map(({ name }) => Number(name)),
    ).toEqual(Array.from({ length: 40 }, (_, index) => index));
  });

  test("does not begin with a row or two at the foot of a page, nor does its heading stand there alone", () => {
    const [first, second] = names([...rows(8), run("heading", 5, { keepWithNext: true }), ...rows(14, { list })]);
    expect(first).toHaveLength(8);
    expect(second?.[0]).toBe("heading");
  });
});
