import { describe, expect, test } from "vitest";
import { arrange } from "../../src/sheets/arrange.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { findingsOf, sheetNames, template } from "../support/sheets.js";

const problems = (blocks: string, head = "") =>
  readTemplate(`title: Mine\n${head}blocks:\n  - ${blocks}\n`, "mine").problems;

describe("a setting that a template gives wrongly is an error with its place and a remedy", () => {
  test.each([
    ["cautions: { of: nonsense }", /^3:21: of cannot be "nonsense"; it is one of tailstock, drill, belt, dial/],
    ["cautions: { of: dail }", /did you mean dial\?/],
    ["speed table: { operation: turnning }", /did you mean turning\?/],
    ["speed table: { sizes: imperial }", /it is one of work, drills, metric, fraction, number, letter/],
    ["speed table: { dense: often }", /it is true or false/],
    ["speed diagram: { operation: milling }", /operation cannot be "milling"/],
    ["thread table: { systems: [metric coarse, NPT] }", /of entry "NPT": it is one of/],
    ["thread table: { systems: [] }", /give one entry at least/],
    ["thread table: { engagement: -75 }", /it is a number above 0/],
    ["student exercises: { answers: nowhere }", /it is one of upside down, teacher/],
    ["taper table: { ratios: [8, ten] }", /of entry "ten": it is a number/],
    ["dial pieces: { copies: 100000 }", /up to 1000/],
    ["positions: { columns: 0 }", /above 0/],
  ])("%s", (blocks, words) => expect(problems(blocks)).toEqual([expect.stringMatching(words)]));

  test("of the sheet itself too, and no YAML parser's words", () => {
    expect(problems("words", "checkBars: yes please\n")).toEqual([expect.stringMatching(/^2:12: checkBars cannot be/)]);
    expect(readTemplate("title: Mine\nblocks:\n  - cautions:{ of: dial }\n  - x: [\n", "mine").problems).toEqual([
      expect.stringMatching(/is opened and not closed; close it with \]$/),
    ]);
  });

  test("those that come with the program pass", () => {
    for (const sheet of sheetNames()) expect(template(sheet).name).toBe(sheet);
  });
});

test("a sheet whose only content would be cautions is not made", () => {
  const round = findingsOf(
    "name: L\nhandwheels: [{ name: Cross slide, feed: 2, dial: { shape: drum, diameter: 38, width: 9 } }]\n",
  );
  expect(arrange(round, template("start-readings"))).toEqual({
    missing: "the file holds nothing that this sheet shows",
  });
  // A sheet of cautions alone, on purpose.
  const { template: poster } = readTemplate("title: Mine\nblocks:\n  - cautions: { of: belt }\n", "mine");
  expect(poster && "print" in arrange(round, poster)).toBe(true);
});

test("cautions without what they are of are refused, not taken for another's", () => {
  const { problems } = readTemplate("title: T\nblocks:\n  - cautions\n", "t");
  expect(problems).toEqual([expect.stringMatching(/^3:5: block cautions needs its of; it is one of .*belt/)]);
});
