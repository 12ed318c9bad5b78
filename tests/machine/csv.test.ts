import { describe, expect, test } from "vitest";
import type { CsvFiles } from "../../src/machine/context.js";
import { readCsv } from "../../src/machine/csv.js";
import { csvNames, readMachine } from "../../src/machine/read.js";

const inFile = (values: readonly number[]) => values.map((value) => ({ value, unit: "file" as const }));
const wanted = { turns: [0, 1, 2.5], travel: inFile([0, 2.11, 5.28]), back: inFile([0.13, 2.24, 5.41]) };

describe("a CSV as spreadsheets save it", () => {
  test.each([
    ["comma, point", "turns,travel,return\n0,0,0.13\n1,2.11,2.24\n2.5,5.28,5.41\n"],
    ["semicolon, decimal comma", "turns;travel;return\n0;0;0,13\n1;2,11;2,24\n2,5;5,28;5,41\n"],
    ["tab, decimal comma, CRLF", "turns\ttravel\treturn\r\n0\t0\t0,13\r\n1\t2,11\t2,24\r\n2,5\t5,28\t5,41\r\n"],
    [
      "BOM, blank rows, spaces, capitals",
      "\uFEFF Turns , Travel, Return\n\n0,0,0.13\n,,\n1,2.11,2.24\n2.5, 5.28 ,5.41\n\n",
    ],
    [
      "columns in any order, one that is nobody's business",
      "return,note,travel,turns\n0.13,start,0,0\n2.24,,2.11,1\n5.41,,5.28,2.5\n",
    ],
    ["quoted decimal commas between commas", 'turns,travel,return\n0,0,"0,13"\n1,"2,11","2,24"\n"2,5","5,28","5,41"\n'],
  ])("%s", (_, text) => expect(readCsv(text, "r.csv")).toEqual({ readings: wanted, problems: [] }));

  test("repeated runs follow each other; without a return there is none", () => {
    expect(readCsv("turns,travel\n0,0\n1,2\n0,0.01\n1,2.01\n", "r.csv").readings).toEqual({
      turns: [0, 1, 0, 1],
      travel: inFile([0, 2, 0.01, 2.01]),
    });
  });

  const mm = (...values: number[]) => values.map((value) => ({ value: expect.closeTo(value, 12), unit: "mm" }));

  test.each([
    ["turns,travel (in)\n0,0\n1,0.0831\n", mm(0, 2.11074)],
    ["turns,travel [mm]\n0,0\n1,2.11\n", mm(0, 2.11)],
    ["turns;travel / thou\n0;0\n1;83,1\n", mm(0, 2.11074)],
    ["turns;travel in mm\n0;0\n1;2,11\n", mm(0, 2.11)],
    ['turns,travel\n0,0 in\n1,"0.0831"""\n', mm(0, 2.11074)],
    ['turns (revs),"out, thou"\n0,0\n1,2.11 mm\n', mm(0, 2.11)],
    ["turns,travel (in)\n0,0\n1,2.11 mm\n", mm(0, 2.11)],
  ])("a unit in a heading or a cell is converted, never stripped: %j", (text, travel) =>
    expect(readCsv(text, "r.csv")).toEqual({ readings: { turns: [0, 1], travel }, problems: [] }),
  );

  test.each([
    ["turns,travel,return\n0,0,0,10\n1,1,99,2,09\n", ["2:7 too-many-cells", "3:8 too-many-cells"]],
    ["turns,travel\n0,0\n1,1,99\n", ["3:5 too-many-cells"]],
    ["turns,travel,,\n0,0,,\n1,1,99,\n", ["3:5 too-many-cells"]],
    ["turns;travel\n0;0\n1;1,99;worn?\n", ["3:8 too-many-cells"]],
    ["turns,travel,note\n0,0,\n1,1,99\n", ["1:14 decimal-comma"]],
    ["turns,travel,return\n0,0,00\n1,1,99\n", ["2:5 decimal-comma"]],
    ["turns;travel\n0;0 \uFFFDm\n", ["2:5 not-text"]],
    ["t\0u\0r\0n\0s\0", ["1:2 not-text"]],
    ["turns,travel, in\n0,0,\n1,2,11\n", ["1:14 unit-alone"]],
    ["turns (deg),travel\n0,0\n360,2\n", ["1:1 unknown-unit"]],
    ["turns,travel (1/100 mm)\n0,0\n1,200\n", ["1:7 unknown-unit"]],
    ["turns,travel\n0,0\n1,200 mil\n", ["3:3 not-a-number"]],
    ["turns,travel\n0,0\n1 mm,2\n", ["3:1 not-a-number"]],
    ["turns,travel\n0,0\n1,0x10\n", ["3:3 not-a-number"]],
    ["turns,travle\n0,0\n", ["1:7 unknown-column", "1:1 missing-column"]],
    ["turns,travel\n0,0\n1,two\n2,\n", ["3:3 not-a-number", "4:3 empty-cell"]],
    ["turns,travel,turns\n0,0,0\n", ["1:14 same-column"]],
    ["\n\n", ["1:1 empty-csv"]],
  ])("faults with line and column: %j", (text, places) => {
    const { readings, problems } = readCsv(text, "r.csv");
    expect(readings).toBeUndefined();
    expect(problems.map(({ line, column, code }) => `${line}:${column} ${code}`)).toEqual(places);
    expect(problems.every(({ file }) => file === "r.csv")).toBe(true);
  });
});

describe("a machine file that names a CSV", () => {
  const text = (form: string) => `name: L\nunits: in\nhandwheels: [{ name: S, feed: { readings: ${form} } }]\n`;

  test("takes its readings, in the file's unit, from either form", () => {
    const csv: CsvFiles = new Map([["cross slide.csv", { turns: [0, 1, 2], travel: inFile([0, 0.1, 0.2]) }]]);
    for (const form of ["cross slide.csv", "{ file: cross slide.csv, gauge: 0.001 }"]) {
      expect(csvNames(text(form))).toEqual(["cross slide.csv"]);
      const feed = readMachine(text(form), csv).machine?.handwheels[0]?.feed;
      expect(feed).toMatchObject({ from: "readings", turns: [0, 1, 2] });
      expect(feed?.from === "readings" && feed.travel[2]).toBeCloseTo(5.08, 12);
    }
  });

  test.each([
    ["block style, file first", "\n      file: slide.csv\n      gauge: 0.01"],
    ["block style, file last", "\n      gauge: 0.01\n      file: slide.csv"],
    ["a comment between", " # as saved\n      file: slide.csv"],
    ["quoted", "\n      file: 'slide.csv'"],
  ])("takes its readings from %s", (_, form) => {
    const machine = `name: L\nhandwheels:\n- name: S\n  feed:\n    readings:${form}\n`;
    expect(csvNames(machine)).toEqual(["slide.csv"]);
    const csv: CsvFiles = new Map([["slide.csv", { turns: [0, 1, 2], travel: inFile([0, 2, 4]) }]]);
    expect(readMachine(machine, csv)).toMatchObject({ problems: [], machine: { name: "L" } });
  });

  test("says so when it is not there, or when lists are given too", () => {
    const codes = (form: string) => readMachine(text(form)).problems.map(({ code }) => code);
    expect(codes("nowhere.csv")).toEqual(["no-csv"]);
    expect(codes("{ file: nowhere.csv, turns: [0, 1, 2] }").sort()).toEqual(["no-csv", "two-forms"]);
    expect(codes("{ gauge: 0.001 }")).toEqual(["missing", "missing"]);
  });
});
