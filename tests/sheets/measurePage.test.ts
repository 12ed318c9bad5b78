import { describe, expect, test } from "vitest";
import { blocks } from "../../src/blocks/registry.js";
import type { Block } from "../../src/blocks/shared/block.js";
import type { Mark } from "../../src/drawing/drawing.js";
import { circle, group, line, polyline, rectangle, text } from "../../src/drawing/shapes.js";
import type { Findings } from "../../src/findings/findings.js";
import { type FaultKind, measurePage } from "../support/measurePage.js";
import { emptyPages, isCautionsAlone } from "../support/measureSheets.js";
import { demoFindings } from "../support/sheets.js";

const nine = 3.175;
const pen = { width: 0.18, ink: "black" } as const;
const at = (x: number, y: number) => ({ x, y });
const words = (shown: string, x: number, y: number, size = nine) => text(shown, at(x, y), { size });
/** Capitals and figures of 9 pt are 2.4 mm high, a digit 2.06 mm wide. */
const kindsOf = (...marks: Mark[]): FaultKind[] => [
  ...new Set(measurePage({ width: 100, height: 100, marks }).map(({ kind }) => kind)),
];
const turned = (turn: number, ...marks: Mark[]) => group(at(50, 50), marks, { turn });
const cut = (...marks: Mark[]) => group(at(0, 0), [group(at(0, 0), marks, { name: "cut" })]);
/** Four corner marks about a piece, 4 mm long, 1 mm off it. */
const cornerMarks = (x: number, y: number, width: number, height: number) =>
  cut(
    ...[x, x + width].flatMap((edge) => [
      line(at(edge, y - 5), at(edge, y - 1), pen),
      line(at(edge, y + height + 1), at(edge, y + height + 5), pen),
    ]),
    ...[y, y + height].flatMap((edge) => [
      line(at(x - 5, edge), at(x - 1, edge), pen),
      line(at(x + width + 1, edge), at(x + width + 5, edge), pen),
    ]),
  );

describe("each fault is found, and what only comes near it is not", () => {
  test.each<[string, FaultKind[], Mark[]]>([
    ["two words at one place", ["text over text"], [words("ABC", 20, 20), words("DEF", 24, 21)]],
    ["two words side by side", [], [words("ABC", 20, 20), words("DEF", 27, 20)]],
    [
      "lines so close that a g touches the capital below",
      ["text over text"],
      [words("gg", 20, 20), words("HH", 20, 23)],
    ],
    ["lines as close without descenders", [], [words("nn", 20, 20), words("HH", 20, 23)]],
    ["a full stop before a figure", [], [words("1.", 20, 20), words("5", 23.2, 20)]],
    ["a line through letters", ["mark through text"], [line(at(10, 19), at(60, 19), pen), words("ABC", 20, 20)]],
    ["the same drawn after them", ["mark through text"], [words("ABC", 20, 20), line(at(10, 19), at(60, 19), pen)]],
    ["a line under letters", [], [line(at(10, 20.3), at(60, 20.3), pen), words("ABC", 20, 20)]],
    [
      "a line that cuts a descender",
      ["mark through text"],
      [line(at(10, 20.3), at(60, 20.3), pen), words("g", 20, 20)],
    ],
    [
      "a line between two letters",
      ["mark through text"],
      [line(at(22.05, 10), at(22.05, 30), pen), words("ABC", 20, 20)],
    ],
    ["a line before the first letter", [], [line(at(19.8, 10), at(19.8, 30), pen), words("ABC", 20, 20)]],
    ["a circle round a figure", [], [circle(at(21, 18.8), 2.4, { pen }), words("5", 20, 20)]],
    ["a circle through a figure", ["mark through text"], [circle(at(21, 18.8), 1, { pen }), words("5", 20, 20)]],
    [
      "an arrow's head in a letter",
      ["mark through text"],
      [polyline([at(20.4, 18), at(20.7, 18), at(20.6, 18.4)], { fill: "black" }, true), words("H", 20, 20)],
    ],
    [
      "turned words and a line across",
      ["mark through text"],
      [turned(Math.PI / 2, words("ABCDEF", 0, 0)), line(at(45, 55), at(55, 55), pen)],
    ],
    [
      "turned words and a line where they would be unturned",
      [],
      [turned(Math.PI / 2, words("ABCDEF", 0, 0)), line(at(53, 45), at(53, 60), pen)],
    ],
    [
      "words askew and a line through the corner of their upright box",
      [],
      [turned(Math.PI / 4, words("ABCDEFGHIJ", 0, 0)), line(at(50, 60), at(55, 65), pen)],
    ],
    [
      "a line hidden by a white area",
      [],
      [line(at(10, 19), at(60, 19), pen), rectangle(at(19, 16), 12, 6, { fill: "white" }), words("ABC", 20, 20)],
    ],
    [
      "a line that the white area does not hide",
      ["mark through text"],
      [line(at(10, 19), at(60, 19), pen), rectangle(at(19, 16), 4, 6, { fill: "white" }), words("ABC", 20, 20)],
    ],
    [
      "words under a white area",
      ["text hidden"],
      [words("ABC", 20, 20), rectangle(at(22, 16), 12, 6, { fill: "white" })],
    ],
    ["words beside it", [], [words("ABC", 20, 20), rectangle(at(30, 16), 12, 6, { fill: "white" })]],
    [
      "white on black",
      [],
      [rectangle(at(10, 15), 40, 8, { fill: "black" }), text("ABC", at(20, 20), { size: nine, ink: "white" })],
    ],
    [
      "white that runs out of the black",
      ["too pale"],
      [rectangle(at(10, 15), 14, 8, { fill: "black" }), text("ABC", at(20, 20), { size: nine, ink: "white" })],
    ],
    ["black on black", ["too pale"], [rectangle(at(10, 15), 40, 8, { fill: "black" }), words("ABC", 20, 20)]],
    ["pale on white", ["too pale"], [text("ABC", at(20, 20), { size: nine, ink: "pale" })]],
    ["grey on white", [], [text("ABC", at(20, 20), { size: nine, ink: "grey" })]],
    [
      "grey on pale",
      ["too pale"],
      [rectangle(at(10, 15), 40, 8, { fill: "pale" }), text("ABC", at(20, 20), { size: nine, ink: "grey" })],
    ],
    [
      "white on a broad stroke",
      [],
      [line(at(10, 19), at(60, 19), { width: 6, ink: "black" }), text("ABC", at(20, 20), { size: nine, ink: "white" })],
    ],
    ["half off the page", ["off the page"], [words("ABC", 97, 50)]],
    ["where printers do not reach", ["outside the frame"], [words("A", 94, 50)]],
    ["just inside", [], [words("A", 92.5, 50)]],
    ["a line beyond the frame", ["outside the frame"], [line(at(50, 3), at(60, 3), pen)]],
    ["letters of 6.5 pt", ["too small"], [words("ABC", 20, 20, 2.29)]],
    ["letters of 7 pt", [], [words("ABC", 20, 20, 2.47)]],
    ["a stroke of 0.07 mm", ["stroke too thin"], [line(at(20, 20), at(60, 20), { width: 0.07, ink: "black" })]],
    ["a stroke of 0.1 mm", [], [line(at(20, 20), at(60, 20), { width: 0.1, ink: "black" })]],
    ["nonsense", ["nonsense"], [words("undefined mm", 20, 20)]],
    ["a unit twice", ["unit twice"], [words("over the 13 mm mm", 20, 20)]],
    ["one unit beside the other", [], [words("5 mm in 3 turns, 2 in into", 20, 20)]],
  ])("%s", (_, expected, marks) => expect(kindsOf(...marks)).toEqual(expected));
});

describe("pieces to cut", () => {
  const strip = (height: number) => cut(rectangle(at(20, 20), 50, height, { pen }));
  test.each<[string, FaultKind[], Mark[]]>([
    ["a word over a drawn cut", ["mark through text", "text over a cut"], [strip(7), words("ABC", 66, 25)]],
    ["a word inside it", [], [strip(7), words("ABC", 40, 25)]],
    [
      "a word over the edge that corner marks mean",
      ["text over a cut"],
      [cornerMarks(20, 20, 50, 9), words("ABC", 40, 21)],
    ],
    ["a word inside corner marks", [], [cornerMarks(20, 20, 50, 9), words("ABC", 40, 26)]],
    ["a word beside the piece, between two corner marks", [], [cornerMarks(20, 20, 50, 9), words("ABC", 40, 34)]],
    ["5.5 pt on a piece of 7 mm", [], [strip(7), words("ABC", 40, 25, 1.94)]],
    ["5.5 pt on a piece of 7 mm by corner marks", [], [cornerMarks(20, 20, 50, 7), words("ABC", 40, 25, 1.94)]],
    ["5.5 pt beside it", ["too small"], [strip(7), words("ABC", 40, 35, 1.94)]],
    ["5.5 pt on a piece of 8 mm", ["too small"], [strip(8), words("ABC", 40, 25, 1.94)]],
    ["4.5 pt on a piece of 7 mm", ["too small"], [strip(7), words("ABC", 40, 25, 1.59)]],
    [
      "5.5 pt on a ring of 7 mm",
      [],
      [cut(circle(at(50, 50), 25, { pen }), circle(at(50, 50), 18, { pen })), words("A", 50, 29.5, 1.94)],
    ],
    [
      "5.5 pt in the hole of that ring",
      ["too small"],
      [cut(circle(at(50, 50), 25, { pen }), circle(at(50, 50), 18, { pen })), words("A", 50, 50, 1.94)],
    ],
    [
      "marks that end on a drawn cut",
      ["cut line along marks"],
      [strip(9), group(at(0, 0), [group(at(0, 0), [line(at(30, 20), at(30, 24), pen)], { name: "graduations" })])],
    ],
    [
      "marks that run over corner marks' edge",
      [],
      [
        cornerMarks(20, 20, 50, 9),
        group(at(0, 0), [group(at(0, 0), [line(at(30, 19), at(30, 24), pen)], { name: "graduations" })]),
      ],
    ],
  ])("%s", (_, expected, marks) => expect(kindsOf(...marks)).toEqual(expected));

  test("on a card, what belongs to it stays inside, and the page's own head does not count", () => {
    const card = group(at(0, 0), [rectangle(at(20, 30), 60, 40, { pen })], { name: "cut" });
    const head = words("head", 20, 20);
    const body = (y: number) => group(at(25, 0), [words("ABC", 0, y)]);
    expect(kindsOf(head, card, body(50))).toEqual([]);
    expect(kindsOf(head, card, body(80))).toEqual(["text outside the card"]);
    const hole = group(at(0, 0), [circle(at(60, 50), 6, { pen, fill: "white" })], { name: "cut" });
    expect(kindsOf(card, hole, body(50))).toEqual([]);
    expect(kindsOf(card, hole, group(at(0, 0), [words("AB", 58, 51)]))).toEqual(["text outside the card"]);
    const second = group(at(0, 0), [rectangle(at(20, 75), 60, 15, { pen })], { name: "cut" });
    expect(kindsOf(card, second, body(50), body(85))).toEqual([]);
    expect(kindsOf(card, second, body(73.5))).toEqual(["text outside the card"]);
  });
});

describe("pages", () => {
  const page = (height: number, ...more: Mark[]) => ({
    title: "",
    drawing: {
      width: 210,
      height: 297,
      marks: [group(at(10, 20), [rectangle(at(0, 0), 20, height, { pen }), ...more])],
    },
  });
  const empty = (...pages: ReturnType<typeof page>[]) => emptyPages({ pages }).map((one) => one.page);

  test("of several, one that uses less than a quarter is told", () => {
    expect(empty(page(200), page(60))).toEqual([2]);
    expect(empty(page(200), page(70))).toEqual([]);
    expect(empty(page(30))).toEqual([]);
  });

  test("a piece to cut may stand alone only where it found no room elsewhere", () => {
    const piece = group(at(0, 0), [rectangle(at(0, 0), 20, 30, { pen })], { name: "cut" });
    expect(empty(page(250), page(30, piece))).toEqual([]);
    expect(empty(page(150), page(30, piece))).toEqual([2]);
  });

  test("cautions make no page alone", () => {
    const block = blocks.cautions as unknown as Block;
    const findings: Findings = demoFindings();
    const runs = block.draw({
      findings,
      handwheels: [],
      settings: { of: "dial" },
      use: "turning",
      width: 120,
      height: 200,
    });
    const marks = runs.map(({ drawing }, index) => group(at(10, 20 + 10 * index), drawing.marks));
    expect(isCautionsAlone(marks, findings)).toBe(true);
    expect(isCautionsAlone([...marks, group(at(10, 80), [words("7.5 turns", 0, 0)])], findings)).toBe(false);
    expect(isCautionsAlone([words("head", 10, 10)], findings)).toBe(false);
  });
});
