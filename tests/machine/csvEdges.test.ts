import { describe, expect, test } from "vitest";
import { MOST } from "../../src/machine/bounds.js";
import { readCsv } from "../../src/machine/csv.js";

const told = (text: string) =>
  readCsv(text, "r.csv").problems.map(({ line, column, what, remedy }) => `${line}:${column} ${what}; ${remedy}`);
const read = (text: string) => readCsv(text, "r.csv").readings;
const plain = (values: readonly number[]) => values.map((value) => ({ value, unit: "file" }));

test("a problem is an error, and its code is told with it", () => {
  expect(readCsv("", "slide.csv").problems).toEqual([
    {
      severity: "error",
      code: "empty-csv",
      file: "slide.csv",
      line: 1,
      column: 1,
      what: "the CSV holds nothing",
      remedy: "give it a header turns, travel, return and a row for each reading",
    },
  ]);
});

describe("what is wrong with a CSV is told in words, with what to do", () => {
  const plainNumber = "write a plain number, with a decimal point or comma";
  test.each([
    ["turns,travel\n0,0\n1,\n", [`3:3 travel is empty in this row; ${plainNumber}`]],
    ["turns,travel\n0,0\n,2\n", [`3:1 turns is empty in this row; ${plainNumber}`]],
    ["turns,travel\n0,0\n1,two\n", [`3:3 "two" is not a length; ${plainNumber}`]],
    ["turns,travel\n0,0\none,2\n", [`3:1 "one" is not a number; ${plainNumber}`]],
    [
      "turns,travel\n0,0\n1,02\n",
      [`3:3 "02" looks like the decimals of a number that its comma cut in two; ${plainNumber}`],
    ],
    [
      "turns,travel,in\n0,0,\n",
      ['1:14 "in" is a heading of its own; put the unit behind the column\'s name, in brackets: travel (in)'],
    ],
    ["turns,travel,retrun\n0,0,0\n", ['1:14 "retrun" is not a column of readings; did you mean "return"?']],
    [
      "turns,travel,out\n0,0,0\n",
      ["1:14 there are two columns for travel; keep one; further runs go into further rows"],
    ],
    [
      "turns (mm),travel\n0,0\n",
      ['1:1 "mm" is no unit for turns; give turns of the handwheel, with parts of a turn as decimals'],
    ],
    [
      "turns,travel (furlong)\n0,0\n",
      [
        '1:7 "furlong" is no unit for travel; name mm, in or thou; without one the numbers are in the machine file\'s unit',
      ],
    ],
    [
      "turns\n0\n",
      ["1:1 the header has no column travel; its first row must name turns, travel and, if taken, return"],
    ],
    [
      "turns,travel\n0,0\n1,1,99\n",
      [
        '3:5 3 cells under a header of 2: "99" belongs to no column; the comma parts the cells and marks decimals too: save with semicolons between the cells, or with decimal points',
      ],
    ],
    [
      "turns;travel\n0;0\n1;1;worn\n",
      [
        '3:5 3 cells under a header of 2: "worn" belongs to no column; give every column a heading, or clear what stands beside the readings',
      ],
    ],
    [
      "turns,travel,note\n0,0,\n1,1,99\n",
      [
        "1:14 whole numbers stand in this column and in the one before it, like decimals that their comma cut in two; save with semicolons between the cells, or with decimal points; or clear this column",
      ],
    ],
    [
      "turns,travel\n0,\uFFFD\n",
      ["2:3 the CSV is not plain text in UTF-8; save it again from the spreadsheet as CSV, UTF-8"],
    ],
  ])("%j", (text, words) => expect(told(text)).toEqual(words));
});

test("as many rows are read as are allowed, and one more is told at its line, blank ones not counted", () => {
  const rows = (count: number) => Array.from({ length: count }, (_, row) => `${row % 100},1`).join("\n");
  expect(read(`turns,travel\n\n${rows(MOST.readings)}\n`)?.turns).toHaveLength(MOST.readings);
  expect(told(`turns,travel\n\n${rows(MOST.readings + 1)}\n`)).toEqual([
    `${MOST.readings + 3}:1 the CSV has more than ${MOST.readings} rows of readings; keep those of one measurement, a reading each turn or every few`,
  ]);
});

test.each([
  ["revs,forward,backward\n1,2,3\n"],
  ["Revolutions;Reading;Reading back\n1;2;3\n"],
  ["turn\tout\tback\n1\t2\t3\n"],
  ["\n \nturns,travel,return\n1,2,3\n"],
  ["turns (turns),travel (),return\n1,2,3\n"],
  ["Turns ( turns ),Travel,Return\n1,2,3\n"],
  ["turns,travel,return,\n1,2,3,\n"],
])("%j is read: other names of the columns, blank lines before them", (text) =>
  expect(read(text)).toEqual({ turns: [1], travel: plain([2]), back: plain([3]) }),
);

test.each([
  ["1.5", 1.5],
  ["1.", 1],
  [".5", 0.5],
  ["-2", -2],
  ["+2", 2],
  ["−2.5", -2.5],
  ["1e2", 100],
  ["1.5E-1", 0.15],
  ["1e+1", 10],
  ["3/8", 0.375],
  ["1 1/2", 1.5],
  ["\u00a02.5\u00a0", 2.5],
  ["0", 0],
  ["0.5", 0.5],
  ["10", 10],
])("a cell %j is %d", (cell, value) => expect(read(`turns,travel\n1,${cell}\n`)?.travel).toEqual(plain([value])));

test.each(["1.2.3", "1,2 3", "e5", "x1", "1 2", "-", ".", "1/0", "1ee2", "--1"])("a cell %j is none", (cell) =>
  expect(read(`turns;travel\n1;${cell}\n`)).toBeUndefined(),
);

test.each([
  ["travel (in)", 25.4],
  ["travel [in]", 25.4],
  ["travel (in", 25.4],
  ["travel ( thou )", 0.0254],
  ["travel in mm", 1],
  ["travel in in", 25.4],
  ["travel/mm", 1],
  ["travel_mm", 1],
  ["travel: mm", 1],
  ["travel - mm", 1],
  ["Reading, inches", 25.4],
])("under %j a 2 is that many mm twice", (heading, mm) => {
  const travel = read(`turns;${heading}\n1;2\n`)?.travel;
  expect(travel).toEqual([{ value: expect.closeTo(2 * mm, 9), unit: "mm" }]);
});

test.each(["travelmm", "travel (in) x", "untravel", "travel, wide", "travel 2"])(
  "%j is no column of travel",
  (heading) => expect(read(`turns;${heading}\n1;2\n`)).toBeUndefined(),
);

test("what stands beside is passed over where it is no half of a number: words, decimals, or apart from ours", () => {
  const readings = { turns: [0, 1], travel: plain([0, 2]) };
  expect(read("turns,travel,note\n0,0,\n1,2,worn\n")).toEqual(readings);
  expect(read("turns,travel,room\n0,0,1.5\n1,2,2.5\n")).toEqual(readings);
  expect(read("turns,travel,,room\n0,0,,1\n1,2,,2\n")).toEqual(readings);
  expect(read("room,turns,travel\n7,0,0\n8,1,2\n")).toEqual(readings);
  expect(read("turns;travel;room\n0;0;7\n1;2;8\n")).toEqual(readings);
  expect(read("turns,travel,room\n0,0,\n1,2,\n")).toEqual(readings);
  // Decimals before it: nothing was cut there.
  expect(read("turns,travel,room\n0,0.5,7\n1,2.5,8\n")?.turns).toEqual([0, 1]);
  expect(read("travel,turns,room\n0,0,7\n2,1,8\n")).toEqual(readings);
});

test("a cut number is told with a sign too, and behind the way back", () => {
  expect(told("turns,travel,return,note\n0,0,0,10\n1,-2,-2,5\n")).toHaveLength(1);
  expect(told("turns,travel,return,note\n0,0,0,10\n1,-2,-2,5\n")[0]).toMatch(/^1:21 whole numbers/);
  expect(told("turns,travel\n0,-07\n")[0]).toMatch(/^2:3 "-07" looks like/);
  expect(told("turns;travel\n0;07\n")).toEqual([]);
});

test("turns or lengths that no machine has are told at their cell", () => {
  expect(told("turns,travel\n0,0\n1,1e9\n")[0]).toMatch(/^3:3 "1e9": /);
  expect(told("turns,travel\n0,0\n1e9,1\n")[0]).toMatch(/^3:1 "1e9": /);
  expect(readCsv("turns,travel\n0,0\n1e9,1\n", "").problems[0]?.code).toBe("bad-value");
});
