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
