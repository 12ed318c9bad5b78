import { describe, expect, test } from "vitest";
import { dialPlan, dialSet, type WholePlan } from "../../../src/blocks/dial/dialCutOuts.js";
import { type DialPiece, piecesOf } from "../../../src/blocks/dial/dialPiece.js";
import { arrange } from "../../../src/sheets/arrange.js";
import { walk } from "../../support/marks.js";
import { findingsOf, printOf, template, textsOf } from "../../support/sheets.js";

const TURN = 2 * Math.PI;
const wheel = (dial: string, feed = "0.0512 in", more = "") =>
  findingsOf(
    `name: T\nunits: in\nrevision: 2\n${more}handwheels: [{ name: Top slide, travel: 2, feed: ${feed}, dial: ${dial} }]\n`,
  );

function cut(dial: string, width: number, feed?: string): { plan: WholePlan; pieces: DialPiece[] } {
  const findings = wheel(dial, feed);
  const [finding] = findings.handwheels;
  const plan = finding && dialPlan(finding, findings.machine);
  if (plan === undefined) throw new Error("no dial");
  return { plan, pieces: piecesOf(plan, { width, height: 150 }) ?? [] };
}

const words = ({ drawing }: DialPiece): string[] => {
  const found: string[] = [];
  walk(drawing.marks, (mark) => void (mark.kind === "text" && found.push(mark.text)));
  return found;
};

describe("the joints of a dial in pieces", () => {
  const strip =
    "{ shape: drum, diameter: 90 mm, width: 14 mm, increases: anticlockwise, divisions: 0.001, closure: even }";

  test.each([
    [300, 1],
    [160, 2],
    [110, 3],
    [80, 4],
  ])("on paper %s mm wide: %s pieces, no joint near zero, each in the middle of a division", (width, count) => {
    const { plan, pieces } = cut(strip, width);
    expect(pieces).toHaveLength(count);
    for (const { joint } of pieces) {
      const place = ((joint % TURN) + TURN) % TURN;
      expect(Math.min(place, TURN - place)).toBeGreaterThan((0.7 * TURN) / 2 / count);
      const divisions = (place / TURN) * plan.dial.chosen.divisions;
      expect(divisions - Math.floor(divisions)).toBeCloseTo(0.5, 6);
    }
    expect(new Set(pieces.map(({ joint }) => joint.toFixed(6))).size).toBe(count);
  });

  test("a piece is called by words: 1/2 on an inch strip is half an inch", () => {
    const [first] = cut(strip, 160).pieces;
    expect(first && words(first).join(" ")).toContain("piece 1 of 2");
    expect(first && words(first).join(" ")).not.toContain("1/2");
  });
});

describe("words and numbers of a dial", () => {
  test("no number gives way to words: they stand at equal steps all round", () => {
    const { pieces } = cut("{ shape: drum, diameter: 1.6, width: 0.4, divisions: 0.001 in, second: 0.02 mm }", 200);
    const said = pieces.flatMap(words);
    expect(said).toContain("1 = 0.001 in");
    for (const number of ["0", "10", "20", "40"]) expect(said).toContain(number);
  });

  test("each row says which turn it is for", () => {
    const { pieces } = cut("{ shape: drum, diameter: 90 mm, width: 18 mm, divisions: 0.001, closure: rows }", 160);
    for (const piece of pieces)
      for (const turn of ["1st turn", "2nd turn", "3rd turn", "4th turn", "5th turn"])
        expect(words(piece)).toContain(turn);
  });

  test("a small drum says what its numbers count, and has more than two of them", () => {
    const { pieces } = cut(
      "{ shape: drum, diameter: 12 mm, width: 7 mm, divisions: 0.005, closure: true }",
      200,
      "0.1024 in",
    );
    const said = pieces.flatMap(words);
    expect(said.join(" ")).toContain("1 = 0.001 in");
    for (const number of ["0", "20", "40", "60", "80"]) expect(said).toContain(number);
  });
});

test("the length of a piece stands beneath it with what it may be off, and its tab beside that", () => {
  const findings = wheel("{ shape: drum, diameter: 90 mm, width: 14 mm, divisions: 0.0002, closure: even, lap: 5 mm }");
  const [finding] = findings.handwheels;
  const set = finding && dialSet(finding, findings.machine, { width: 240, height: 140 });
  const [piece] = set?.pieces ?? [];
  const told = textsOf({ ...findings, machine: { ...findings.machine } }, "dial");
  const inches = (mm = 0) => (mm / 25.4).toFixed(3);
  expect(told).toContain(`${inches(piece?.length)} ± 0.004 in`);
  expect(told).toContain("cut end to the tab line");
  expect(told).toContain(`${inches((piece?.length ?? 0) + 5)} in`);
});

test("one handwheel's pieces only, and nothing false of another's feed", () => {
  const all = findingsOf(`name: T
handwheels:
  - { name: Cross slide, feed: 2 mm, dial: { shape: drum, diameter: 38, width: 9 } }
  - { name: Top slide, feed: 1.5 mm, dial: { shape: drum, diameter: 38, width: 9 } }
scales:
  - { name: Bed stop, length: 60, divisions: 1 }
  - { name: Quill, length: 40, turnsOf: Top slide, parts: 2 }
  - { name: Saddle, length: 40, turnsOf: Cross slide, parts: 2 }
angleScales: [{ name: Degree plate, part: spindle, radius: 40 }]
`);
  const only = { ...all, onlyWheels: true as const, handwheels: all.handwheels.slice(0, 1) };
  const told = textsOf(only, "dial");
  expect(told).toContain("Saddle");
  expect(told).not.toMatch(/Bed stop|Quill|Degree plate|Top slide|is not known/);
  expect(textsOf(all, "dial")).toMatch(/Bed stop/);
  expect(arrange(only, template("angle-scale"))).toHaveProperty("missing");
});

test("a vernier beside a dial with a short last division says where it must not be read", () => {
  const dial = (closure: string) =>
    wheel(`{ shape: drum, diameter: 1.6, width: 0.4, divisions: 0.001 in, closure: ${closure}, vernier: 5 }`);
  // 51 whole divisions and a fifth of one; five parts over four divisions reach the 51 from 47 on.
  for (const sheet of ["dial", "vernier"]) {
    expect(textsOf(dial("true"), sheet)).toMatch(/from 0\.047 in to 0 read no vernier/);
    expect(textsOf(dial("even"), sheet)).not.toMatch(/read no vernier/);
  }
});

test("the notes of a full set stand on a page with pieces, not on one of their own", () => {
  const { pages: printed } = printOf(
    findingsOf(`name: L
handwheels:
  - { name: Cross slide with a long name and a ring, reads: diameter, travel: 70, feed: 2 mm, dial: { shape: drum, diameter: 44, width: 10, divisions: 0.05 mm, closure: even } }
  - { name: Carriage, travel: 300, feed: 5.02 mm, dial: { shape: face, outside: 90, inside: 66, divisions: 0.1 mm, closure: even } }
  - { name: Top slide, travel: 55, feed: 1.5 mm, dial: { shape: bevel, diameter: 34, smallDiameter: 28, width: 8, second: 0.001 in } }
scales:
  - { name: Barrel, length: 80, divisions: 1 mm }
  - { name: Depth, length: 60, turnsOf: Top slide, parts: 4 }
angleScales: [{ name: Swivel of the top slide, part: top slide, radius: 45, range: [-45, 45] }]
`),
    "dial",
  );
  const pages = printed.map(({ drawing }) => {
    const told: string[] = [];
    walk(drawing.marks, (mark) => void (mark.kind === "text" && told.push(mark.text)));
    return told;
  });
  const [noted, ...others] = pages.filter((told) => told.some((line) => line.startsWith("Cut from mark to mark")));
  expect(others).toEqual([]);
  expect(noted?.filter((line) => /index line$|^Barrel$|^Depth$|, copy \d/.test(line))).not.toEqual([]);
  expect(pages).toHaveLength(3);
  for (const wheel of ["Cross slide with a long name and a ring", "Carriage", "Top slide"])
    expect(pages.filter((told) => told.some((line) => line.startsWith(`${wheel}, copy`)))).toHaveLength(1);
});

test("a bevel's seam is moved within its division rather than cost a number", () => {
  const { pieces } = cut(
    "{ shape: bevel, diameter: 30 mm, smallDiameter: 24 mm, width: 8 mm, divisions: 0.05 mm, closure: even }",
    250,
    "1.1 mm",
  );
  const told = pieces.flatMap(words);
  expect(told).toEqual(
    expect.arrayContaining(["0", "0.1", "0.2", "0.3", "0.4", "0.5", "0.6", "0.7", "0.8", "0.9", "1"]),
  );
});

test("numbers come before “on diameter” in words where both cannot be on a small drum: then its sign is there", () => {
  const small = findingsOf(
    "name: T\nhandwheels: [{ name: Top slide, reads: diameter, feed: 1 mm, dial: { shape: drum, diameter: 12, width: 5, divisions: 0.05 mm, closure: even } }]\n",
  );
  const [finding] = small.handwheels;
  const plan = finding && dialPlan(finding, small.machine);
  const [piece] = (plan && piecesOf(plan, { width: 200, height: 150 })) ?? [];
  if (piece === undefined) throw new Error("no dial");
  expect(words(piece)).toEqual(expect.arrayContaining(["0", "0.5", "1", "1.5"]));
  expect(piece.left).not.toContain("on diameter");
  // Its sign has room, before the name.
  expect(words(piece)).toContain("ø");
  expect(piece.left).toContain("Top slide");
});

test("nothing on the pieces' sheet is red alone: a print of black dots would break its letters up", () => {
  const worn = findingsOf(`name: T
handwheels:
  - name: Carriage
    travel: 300
    feed:
      readings:
        gauge: 0.01
        turns: [0, 4, 8, 12, 16, 20, 24, 28, 32, 36, 40, 44, 48, 52, 56, 60]
        travel: [0, 20, 40.05, 60.1, 80.1, 100.1, 120.15, 140.2, 160.25, 180.3, 200.4, 220.5, 240.6, 260.7, 280.75, 300.8]
    dial: { shape: face, outside: 90, inside: 66, divisions: 0.1 mm, closure: even }
`);
  const red: string[] = [];
  const all: string[] = [];
  for (const { drawing } of printOf(worn, "dial").pages)
    walk(drawing.marks, (mark) => {
      if (mark.kind !== "text") return;
      all.push(mark.text);
      if (mark.ink === "accent") red.push(mark.text);
    });
  expect(all.join(" ")).toMatch(/Carriage is worn/);
  expect(red).toEqual([]);
});

test("the name of a turn costs no row the last number before its zero", () => {
  const { pieces } = cut(
    "{ shape: drum, diameter: 50 mm, width: 16 mm, divisions: 0.05 mm, closure: rows }",
    250,
    "4.2333 mm",
  );
  const told = pieces.flatMap(words);
  expect(told).toEqual(expect.arrayContaining(["1st turn", "0", "0.5", "3.5", "4"]));
});

test("a vernier of degrees that is longer than the paper gives way to an index line, which says so", () => {
  const told = textsOf(
    findingsOf(`name: T
paper: { size: A5 }
angleScales: [{ name: Top slide, part: top slide, radius: 90, width: 11, step: 5, shape: drum, range: [-14, 14], vernier: 12 }]
`),
    "angle-scale",
  );
  expect(told).toMatch(/Top slide: index line/);
  expect(told).toMatch(/vernier of 12/);
});

test("a straight scale of tenths of an inch says 0.1 in, of sixteenths 1/16 in; a long one names its pieces in words", () => {
  const told = (divisions: string) =>
    textsOf(findingsOf(`name: T\nunits: in\nscales: [{ name: Bed, length: 24, divisions: ${divisions} }]\n`), "scales");
  expect(told("0.1")).toMatch(/piece 1 of 3 · 1 div 0\.1 in/);
  expect(told("1/16")).toMatch(/piece 1 of 3 · 1 div 1\/16 in/);
});
