import { describe, expect, test } from "vitest";
import { readCsv } from "../../src/machine/csv.js";
import { csvNames, readMachine } from "../../src/machine/read.js";

const wanted = { turns: [0, 1, 2.5], travel: [0, 2.11, 5.28], back: [0.13, 2.24, 5.41] };

describe("a CSV as spreadsheets save it", () => {
  test.each([
    ["comma, point", "turns,travel,return\n0,0,0.13\n1,2.11,2.24\n2.5,5.28,5.41\n"],
    ["semicolon, decimal comma", "turns;travel;return\n0;0;0,13\n1;2,11;2,24\n2,5;5,28;5,41\n"],
    ["tab, decimal comma, CRLF", "turns\ttravel\treturn\r\n0\t0\t0,13\r\n1\t2,11\t2,24\r\n2,5\t5,28\t5,41\r\n"],
    [
      "BOM, blank rows, spaces, capitals, units in the header",
      "\uFEFF Turns , Travel (mm), Return [mm]\n\n0,0,0.13\n,,\n1,2.11,2.24\n2.5, 5.28 ,5.41\n\n",
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
      travel: [0, 2, 0.01, 2.01],
    });
  });

  test.each([
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
    const csv = new Map([["cross slide.csv", { turns: [0, 1, 2], travel: [0, 0.1, 0.2] }]]);
    for (const form of ["cross slide.csv", "{ file: cross slide.csv, gauge: 0.001 }"]) {
      expect(csvNames(text(form))).toEqual(["cross slide.csv"]);
      const feed = readMachine(text(form), csv).machine?.handwheels[0]?.feed;
      expect(feed).toMatchObject({ from: "readings", turns: [0, 1, 2] });
      expect(feed?.from === "readings" && feed.travel[2]).toBeCloseTo(5.08, 12);
    }
  });

  test("says so when it is not there, or when lists are given too", () => {
    const codes = (form: string) => readMachine(text(form)).problems.map(({ code }) => code);
    expect(codes("nowhere.csv")).toEqual(["no-csv"]);
    expect(codes("{ file: nowhere.csv, turns: [0, 1, 2] }").sort()).toEqual(["no-csv", "two-forms"]);
    expect(codes("{ gauge: 0.001 }")).toEqual(["missing", "missing"]);
  });
});
