import { expect, test } from "vitest";
import { diametersFor } from "../../src/findings/drills.js";
import { settingToRead } from "../../src/findings/settings.js";
import { exercises } from "../../src/student/exercises.js";
import { learntSizes } from "../../src/student/learntSizes.js";
import { findingsOf, textsOf } from "../support/sheets.js";

/** A drill whose whole quill is less than a turn of its wheel. */
const drill = (dial: string, name = "D") =>
  findingsOf(`name: ${name}
kind: drill
limits: { chuck: 3000 rpm }
drive: { motor: { speed: 1400 rpm }, stages: [{ name: belt, steps: [{ label: A, driver: 100, driven: 80 }, { label: B, driver: 60, driven: 120 }] }] }
handwheels: [{ name: Quill wheel, travel: 80, feed: { perTurn: 100, uncertainty: 0.05 }${dial} }]
work: { materials: [mild steel, brass], drills: [2, 3, 4, 5, 6, 8, 10, 13] }
`);
const dial = ", dial: { shape: drum, diameter: 62, width: 12, divisions: 1 mm }";

test("half a turn is more than its quill: one goes back by the lost motion, in words of a drill", () => {
  const words = textsOf(drill(dial), "student");
  expect(words).toContain("Too far? Go back a little more than the lost motion.");
  expect(words).toContain("the drill waits");
  expect(words).toContain("back a little");
  // The question what half a turn moves may stand there; to go back by it may not.
  expect(words).not.toMatch(/[Bb]ack half a turn|slide waits|Screws and gears/);
  expect(exercises(drill(dial), "drilling").map(({ answer }) => answer)).toContain(
    "Back a little more than the lost motion, then come on again to the right line.",
  );
});

test("how deep is read off the dial where there is one, and counted in eighths only where there is none", () => {
  for (const name of ["D", "E", "F", "G"]) {
    const found = drill(dial, name);
    const asked = exercises(found, "drilling").find(({ question }) => question.startsWith("A hole is to be"));
    const depth = Number(/be (\d+) mm deep/.exec(asked?.question ?? "")?.[1]);
    expect(asked?.question).not.toContain("eighths");
    const [wheel] = found.handwheels;
    const setting = wheel && settingToRead(wheel, depth);
    expect(setting?.wholeTurns).toBe(0);
    expect(asked?.answer).toBe(`No whole turn: the dial says ${depth}.0`);
  }
  const counted = exercises(drill(""), "drilling").find(({ question }) => question.startsWith("A hole is to be"));
  expect(counted?.question).toContain("in eighths of a turn");
});

test("what is asked of belts stands on the student's own sheet: no other is needed", () => {
  for (const name of ["D", "E", "F", "G", "H", "I"]) {
    const found = drill(dial, name);
    const sizes = learntSizes("drilling", found.machine);
    expect(sizes.length).toBeLessThan(diametersFor("drilling", found.machine).length);
    const asked = exercises(found, "drilling").filter(({ question }) => question.includes("Where does the belt go"));
    expect(asked.length).toBeGreaterThan(0);
    for (const { question } of asked) {
      expect(question).not.toMatch(/card|sheet/);
      expect(sizes).toContain(Number(/drill is (\d+) mm/.exec(question)?.[1]));
    }
  }
});

test("on a lathe stood on end a quill is told of in words of a drill on both sides, and nobody goes back by half its travel", () => {
  const found = findingsOf(`name: E
kind: lathe stood on end
drive: { motor: { speed: 1400 rpm }, stages: [{ name: belt, steps: [{ driver: 100, driven: 80 }] }] }
handwheels: [{ name: Feed wheel, moves: quill, travel: 70, feed: { perTurn: 75.4, uncertainty: 0.05 }${dial} }]
`);
  expect(textsOf(found, "student")).not.toMatch(/[Bb]ack half a turn|slide/);
  for (const use of ["turning", "drilling"] as const)
    expect(exercises(found, use).map(({ answer }) => answer)).toContain(
      "Back a little more than the lost motion, then come on again to the right line.",
    );
});

test("half a turn back where that is little of the travel and takes up what is lost; else a little more than the lost motion", () => {
  const lathe = (feed: string, travel: number) =>
    exercises(
      findingsOf(`name: L\nhandwheels: [{ name: Cross slide, travel: ${travel}, feed: ${feed}${dial} }]`),
      "turning",
    ).map(({ answer }) => answer);
  const half = "Back half a turn, then come on again to the right line.";
  expect(lathe("{ perTurn: 20, uncertainty: 0.01 }", 100)).toContain(half);
  expect(lathe("{ perTurn: 20, uncertainty: 0.01 }", 70)).not.toContain(half);
  const loose = (back: number) =>
    `{ readings: { gauge: 0.01, turns: [0, 1, 2, 3, 4], travel: [0, 2, 4, 6, 8], return: [${[0, 1, 2, 3, 4].map((turn) => 2 * turn + back)}] } }`;
  expect(lathe(loose(0.2), 100)).toContain(half);
  expect(lathe(loose(0.9), 100)).not.toContain(half);
});
