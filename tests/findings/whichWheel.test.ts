import { expect, test } from "vitest";
import { whichWheel } from "../../src/findings/whichWheel.js";
import { findingsOf } from "../support/sheets.js";

const asked = (kind: string, ...lines: readonly string[]) =>
  whichWheel(
    findingsOf(`name: L\nkind: ${kind}\nhandwheels:\n${lines.map((line) => `  - { ${line} }\n`).join("")}`),
  ).map(({ what, remedy }) => `${what}; ${remedy}`);
const cross = ["name: Cross slide, feed: 2 mm", "name: Quersupport, feed: 1 mm"];

test("of two wheels that may be one slide the sheets' choice is told, and how to settle it", () =>
  expect(asked("lathe", ...cross)).toEqual([
    'both "Cross slide" and "Quersupport" may be the slide across the work, and the sheets take "Cross slide"; add moves: across to one of them',
  ]));

test("settled is what the file says of either, and what has no feed", () => {
  for (const settled of [0, 1])
    expect(asked("lathe", ...cross.map((line, at) => (at === settled ? `${line}, moves: across` : line)))).toEqual([]);
  expect(asked("lathe", cross[0] as string, "name: Quersupport")).toEqual([]);
});

test("one that reads diameter may go across as well, but not where its name tells another slide", () => {
  const facing = "name: Facing, reads: diameter, feed: 2 mm";
  expect(asked("lathe", facing, cross[0] as string)).toEqual([
    expect.stringMatching(/^both "Cross slide" and "Facing" .* the sheets take "Cross slide"/),
  ]);
  expect(asked("lathe", "name: Top slide, reads: diameter, feed: 1 mm", cross[0] as string)).toEqual([]);
});

test("every slide is asked for, and a barrel beside a quill is no question", () => {
  const named = ["Carriage", "Leadscrew", "Top slide", "Compound", "Tailstock", "Pinole", "Quill", "Downfeed"];
  expect(asked("lathe", ...named.map((name) => `name: ${name}, feed: 2 mm`)).map((words) => words.slice(-50))).toEqual([
    expect.stringMatching(/along to one of them$/),
    expect.stringMatching(/angled to one of them$/),
    expect.stringMatching(/barrel to one of them$/),
  ]);
  expect(asked("lathe", "name: Tailstock, feed: 2 mm", "name: Quill, feed: 40 mm")).toEqual([]);
  expect(asked("drill", "name: Quill, feed: 40 mm", "name: Fine downfeed, feed: 2 mm")).toEqual([
    expect.stringMatching(/quill to one of them$/),
  ]);
});

test("on a drill no sheet goes by what moves across", () => expect(asked("drill", ...cross)).toEqual([]));

test("what is said of one against its name, with another that is named for it, is told", () => {
  const named = "name: Cross slide, feed: 2 mm";
  expect(asked("lathe", named, "name: Leadscrew, moves: across, feed: 3 mm")).toEqual([
    '"Leadscrew" says moves: across, and by its name "Cross slide" is the slide across the work; the sheets take "Leadscrew"; say moves: across at the one that does',
  ]);
  // A name that tells nothing may be anything; nor is there a question where none is named for it.
  expect(asked("lathe", named, "name: Left wheel, moves: across, feed: 3 mm")).toEqual([]);
  expect(asked("lathe", "name: Leadscrew, moves: across, feed: 3 mm")).toEqual([]);
});

test("diameters are set by no wheel of another name without a word", () => {
  expect(asked("lathe", "name: Top slide, reads: diameter, feed: 1 mm")).toEqual([
    expect.stringMatching(
      /^"Top slide" is by its name the slide that swivels, and the sheets take it for the slide across/,
    ),
  ]);
  expect(asked("lathe", "name: Facing, reads: diameter, feed: 1 mm")).toEqual([]);
});
