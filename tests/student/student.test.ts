import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Mark } from "../../src/drawing/drawing.js";
import type { Findings } from "../../src/findings/findings.js";
import type { Machine } from "../../src/machine/machine.js";
import { dice } from "../../src/student/dice.js";
import { exercises } from "../../src/student/exercises.js";
import { askLines, beltSteps, lostMotionLines, never } from "../../src/student/words.js";
import { walk } from "../support/marks.js";
import { measureSheets } from "../support/measureSheets.js";
import { demoFindings, findingsOf, printOf, textsOf } from "../support/sheets.js";

const demo = demoFindings();
const revised = (revision: string): Findings => ({ ...demo, machine: { ...demo.machine, revision } });
const numberIn = (words: string) => Number(/\d+(?:\.\d+)?/.exec(words)?.[0]);

describe("dice", () => {
  test("throws stay within their bounds and reach both ends", () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.integer({ min: -5, max: 5 }),
        fc.integer({ min: 0, max: 6 }),
        (words, least, span) => {
          const throws = dice(words);
          const seen = Array.from({ length: 200 }, () => throws.whole(least, least + span));
          expect(Math.min(...seen)).toBe(least);
          expect(Math.max(...seen)).toBe(least + span);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("the minimal standard generator: 16807 times the state, modulo 2^31 − 1 (Park and Miller, CACM 1988; memory)", () => {
    let state = 1;
    for (let count = 0; count < 10_000; count++) state = (state * 16807) % 2147483647;
    expect(state).toBe(1043618065);
  });
});

describe("exercises", () => {
  test("a class shares them: the same file and revision give the same, another revision gives others", () => {
    expect(exercises(revised("3"), "turning")).toEqual(exercises(demoFindings(), "turning"));
    expect(exercises(revised("4"), "turning")).not.toEqual(exercises(revised("3"), "turning"));
  });

  test.each([
    ["in", "mm", "0.02 mm"],
    ["mm", "in", "0.001 in"],
  ] as const)(
    "on a lathe in %s with dials in %s all of a dial is asked and told in what it shows",
    (units, shown, one) => {
      const wheel = (name: string, more: string) =>
        `{ name: ${name}, travel: ${units === "in" ? 4 : 100}, feed: 2.54 mm, ${more}dial: { shape: drum, diameter: 50 mm, width: 10 mm, divisions: ${one} } }`;
      const findings = findingsOf(
        `name: L\nunits: ${units}\nhandwheels: [${wheel("Cross slide", "reads: diameter, ")}, ${wheel("Carriage", "")}]\n`,
      );
      // A thread has its own unit.
      const told = exercises(findings, "turning").filter(({ question }) => !/thread/.test(question));
      expect(told.length).toBeGreaterThan(4);
      const words = told.flatMap(({ question, answer }) => [question, answer]).join(" ");
      expect(words).toMatch(shown === "mm" ? /\d mm\b/ : /\d in\b/);
      expect(words).not.toMatch(shown === "mm" ? /\d in\b|in inches/ : /\d mm\b|in mm/);
      expect(textsOf(findings, "student")).toMatch(
        new RegExp(`One turn of the cross slide is [\\d.]+ ${shown} on the dial`),
      );
      for (const { wanted } of told)
        if (wanted?.by === "number" && wanted.of === "length") expect(wanted.units).toBe(shown);
    },
  );

  test("answers are right, whatever the revision: turns by the measured feed, lines by the dial's own worth", () => {
    const [cross] = demo.handwheels;
    const perTurn = 2 * (cross?.feed?.perTurn ?? Number.NaN);
    const line = cross?.dial?.chosen.divisionValue ?? Number.NaN;
    for (let revision = 1; revision <= 40; revision++)
      for (const { question, answer, lines } of exercises(revised(String(revision)), "turning")) {
        if (lines !== undefined) expect(answer).toBe(`${lines} lines: ${(lines * line).toFixed(2)} mm`);
        if (question.includes("whole turns")) expect(numberIn(answer)).toBeCloseTo(numberIn(question) * perTurn, 2);
        if (question.startsWith("You want")) {
          // The demo's dial has two rows: whole turns name the row, and its own numbers run on through both.
          const [, said, row, reading] =
            /^(?:(\d+) turns?, then|No whole turn:) row (\d) says ([\d.]+)$/.exec(answer) ?? [];
          const turns = Number(said ?? 0);
          const wanted = numberIn(question);
          expect(turns).toBe(Math.floor(wanted / perTurn));
          expect(Number(row)).toBe((turns % 2) + 1);
          expect(Number(reading)).toBeCloseTo(wanted - Math.floor(turns / 2) * 2 * perTurn, 1);
        }
        if (question.startsWith("The part measures")) {
          const [measured, wanted] = [...question.matchAll(/[\d.]+ mm/g)].map(([words]) => Number.parseFloat(words));
          expect(numberIn(answer) * line).toBeCloseTo((measured ?? 0) - (wanted ?? 0), 2);
        }
      }
  });

  test("on a dial of one row the answer is turns and what the dial then says, which come to the distance, in either unit", () => {
    for (const [units, feed, reads] of [
      ["mm", "2 mm", "diameter"],
      ["in", "10 tpi", "travel"],
    ] as const) {
      const one = findingsOf(
        `name: One\nunits: ${units}\nhandwheels: [{ name: Cross slide, reads: ${reads}, feed: ${feed}, dial: { shape: drum, diameter: 38 mm, width: 9 mm, closure: even } }]\n`,
      );
      const perTurn = units === "mm" ? 4 : 0.1;
      const divisions = one.handwheels[0]?.dial?.chosen.divisions ?? Number.NaN;
      const asked = exercises(one, "turning").find(({ question }) => question.startsWith("You want"));
      const [, turns = "0", says] =
        /^(?:(\d+) turns?, then|No whole turn:) the dial says ([\d.]+)$/.exec(asked?.answer ?? "") ?? [];
      const worth = (one.handwheels[0]?.dial?.labelWorth ?? Number.NaN) / (units === "mm" ? 1 : 25.4);
      const moved = Number(turns) * perTurn + Number(says) * worth;
      expect(Math.abs(moved - numberIn(asked?.question ?? ""))).toBeLessThanOrEqual(perTurn / divisions / 20 + 1e-9);
    }
  });

  test("only a wheel that goes across the work is said to make it thinner", () => {
    const saddle = findingsOf(
      "name: S\nhandwheels: [{ name: Saddle, feed: 20 mm, dial: { shape: drum, diameter: 60, width: 9 } }]\n",
    );
    const said: string[] = exercises(saddle, "turning").map(({ question }) => question);
    for (const { drawing } of printOf(saddle, "student").pages)
      walk(drawing.marks, (mark) => {
        if (mark.kind === "text") said.push(mark.text);
      });
    expect(said.join(" ")).toContain("how far the slide moves");
    expect(said.join(" ")).not.toMatch(/thinner/);
  });

  test("the drawn dial is this machine's: its numbers, growing the way they grow on it", () => {
    for (const [sense, sign] of [
      ["clockwise", -1],
      ["anticlockwise", 1],
    ] as const) {
      const findings = findingsOf(
        `name: D\nhandwheels: [{ name: Cross slide, reads: diameter, feed: 2 mm, dial: { shape: drum, diameter: 38, width: 9, divisions: 0.04 mm, closure: even, increases: ${sense} } }]\n`,
      );
      const { labelUnit, rows } = findings.handwheels[0]?.dial ?? {};
      const labels = (rows?.[0] ?? []).flatMap(({ label }) => (label === undefined ? [] : [label]));
      const found = new Map<string, number>();
      walk(printOf(findings, "student").pages[0]?.drawing.marks ?? [], (mark, toPage) => {
        if (mark.kind === "text" && labels.includes(mark.text) && mark.weight === "bold" && !found.has(mark.text))
          found.set(mark.text, toPage(mark.at).x);
      });
      const [zero, next] = [found.get(labels[0] ?? ""), found.get(labels[1] ?? "")];
      expect(labelUnit).toBeDefined();
      expect(Math.sign((next ?? Number.NaN) - (zero ?? Number.NaN))).toBe(sign);
    }
  });

  test("a slide without a dial is asked about in turns alone", () => {
    const plain = findingsOf("name: Plain\nhandwheels: [{ name: Cross slide, feed: 1.5 mm }]\n");
    expect(
      exercises(plain, "turning")
        .map(({ question }) => question)
        .join(" "),
    ).not.toMatch(/lines/);
    expect(printOf(plain, "student").pages).toHaveLength(2);
  });
});

/** Syllables as groups of vowels, a silent e left out: rough, but enough for a mean over many words. */
const syllables = (word: string) =>
  Math.max(
    1,
    (
      word
        .toLowerCase()
        .replace(/e$/, "")
        .match(/[aeiouy]+/g) ?? []
    ).length,
  );

/** The demo's machine, turned by something else. */
function drivenLike(by: "motor" | "treadle" | "hand"): Machine {
  const { machine } = demo;
  if (machine.drive === undefined) throw new Error("the demo has a drive");
  return { ...machine, drive: { ...machine.drive, motor: { ...machine.drive.motor, ...(by !== "motor" && { by }) } } };
}

describe("the sheet", () => {
  const written = [
    ...never("turning", demo.machine),
    ...never("drilling", demo.machine),
    ...(["motor", "treadle", "hand"] as const).flatMap((by) => {
      const machine = drivenLike(by);
      return [...never("turning", machine).slice(6, 7), ...beltSteps(machine)];
    }),
    ...(["turning", "drilling"] as const).flatMap((use) =>
      [true, false].flatMap((hasDial) =>
        (["half", "little"] as const).flatMap((back) => lostMotionLines(use, hasDial, back)),
      ),
    ),
    ...askLines(),
    ...exercises(demo, "turning").map(({ question }) => question),
    ...exercises(demo, "drilling").map(({ question }) => question),
  ];

  test("reads at an age of about twelve or less (Kincaid 1975, grade = 0.39 words/sentence + 11.8 syllables/word − 15.59; memory)", () => {
    const sentences = written.flatMap((words) => words.split(/[.?:] ?/)).filter((words) => /[a-z]/.test(words));
    const words = sentences.flatMap((sentence) => sentence.match(/[A-Za-z']+/g) ?? []);
    const grade =
      0.39 * (words.length / sentences.length) +
      11.8 * (words.reduce((sum, word) => sum + syllables(word), 0) / words.length) -
      15.59;
    expect(grade).toBeLessThan(6);
    for (const sentence of sentences) expect(sentence.split(" ").length).toBeLessThanOrEqual(16);
  });

  test("two sides, with the answers upside down on the second", () => {
    const { pages } = printOf(demo, "student");
    expect(pages).toHaveLength(2);
    const turned: number[] = [];
    const walk = (marks: readonly Mark[]): void => {
      for (const mark of marks)
        if (mark.kind === "group") {
          if (mark.name === "answers") turned.push(mark.turn ?? 0);
          walk(mark.marks);
        }
    };
    for (const { drawing } of pages) walk(drawing.marks);
    expect(turned).toEqual([Math.PI]);
  });

  test("every belt and the back gear are drawn, every shaft has its name, and free room on the page makes pictures larger", () => {
    const [page] = printOf(demo, "student").pages;
    const words: string[] = [];
    const named = new Set<string>();
    let wheel = 0;
    walk(page?.drawing.marks ?? [], (mark, _, names) => {
      for (const name of names) named.add(name);
      if (mark.kind === "text") words.push(mark.text);
      for (const part of mark.kind === "path" ? mark.segments : [])
        if (part.to === "arc") wheel = Math.max(wheel, part.radius);
    });
    expect([...named]).toEqual(expect.arrayContaining(["pulleys", "gears"]));
    expect(words).toEqual(
      expect.arrayContaining(["motor", "countershaft", "spindle", "back gear", "geared", "motor belt", "spindle belt"]),
    );
    expect(wheel).toBeGreaterThan(8);
  });

  test.each(["Letter", "A5", "A3", "Legal"] as const)("fits on %s, over more pages where it must", (size) => {
    const { pages } = printOf(
      { ...demo, machine: { ...demo.machine, paper: { ...demo.machine.paper, size } } },
      "student",
    );
    expect(pages.length).toBeGreaterThanOrEqual(2);
    expect(pages.length).toBeLessThanOrEqual(size === "A5" ? 6 : 3);
  });
});

test("a table too wide for half a small page has the whole of one", () => {
  const findings = findingsOf(`name: S
paper: { size: A5 }
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: "countershaftoutermost", driver: 80, driven: 50 }, { label: "countershaftinnermost", driver: 50, driven: 80 }] }]
work:
  materials: [bearingshellbronzecasting, brass]
  cuttingSpeeds: [{ material: bearingshellbronzecasting, speed: [30 m/min, 40 m/min], source: own trials }]
`);
  const words = textsOf(findings, "student");
  expect(words).toContain("bearingshellbronzecasting");
  expect(measureSheets(findings, ["student"]).faults).toEqual([]);
});

test("lost motion is told as the dial counts it, with its lines", () => {
  const words = (reads: string) =>
    textsOf(
      findingsOf(
        `name: L\nunits: in\nhandwheels:\n  - name: Cross slide\n    reads: ${reads}\n    travel: 1\n    feed: { readings: { gauge: 0.0005, turns: [0, 2, 4, 6, 8], travel: [0, 0.2, 0.4, 0.6, 0.8], return: [0.006, 0.206, 0.406, 0.606, 0.806] } }\n    dial: { shape: drum, diameter: 1.75, width: 0.375, divisions: 0.002 }\n`,
      ),
      "student",
    );
  // 0.006 in of the slide are twice that on diameter.
  expect(words("diameter")).toContain("Here the cross slide loses about 0.012 in on the dial: 6 lines.");
  expect(words("travel")).toContain("Here the cross slide loses about 0.006 in on the dial: 3 lines.");
});
