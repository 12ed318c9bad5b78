import { expect, test } from "vitest";
import { exercises } from "../../src/student/exercises.js";
import { findingsOf } from "../support/sheets.js";

/** Which distance is asked for the revision decides. */
const asked = (feed: string, dial: string) =>
  Array.from({ length: 30 }, (_, revision) =>
    exercises(
      findingsOf(
        `name: N\nunits: in\nrevision: ${revision}\nhandwheels: [{ name: Cross slide, reads: diameter, travel: 3, feed: ${feed}, dial: { shape: drum, diameter: 1.5, width: 0.375, ${dial} } }]\n`,
      ),
      "turning",
    ).find(({ question }) => question.includes("You want") && question.includes("on the dial")),
  ).flatMap((one) => one ?? []);

test("where equal divisions do not fit the screw, the answer names the line that a beginner can find", () => {
  // 100 divisions of 0.002 in a turn of 0.1996: 0.06 in lie at 30.06 of them, which is set as 30.1.
  const answers = asked("0.0998 in", "closure: even, divisions: 0.002 in");
  const between = answers.filter(({ answer }) => answer.includes("nearest line"));
  expect(between.length).toBeGreaterThan(3);
  for (const { answer } of between) {
    const [, says = "", line = ""] = /says ([\d.]+); the nearest line is ([\d.]+)$/.exec(answer) ?? [];
    // Numbers are thousandths, and every second one has a line.
    expect(Number(line) % 2).toBeCloseTo(0, 9);
    expect(Math.abs(Number(says) - Number(line))).toBeLessThanOrEqual(1 + 1e-9);
    expect(Math.abs(Number(says) - Number(line))).toBeGreaterThan(0.1);
  }
});

test("on a screw that they fit there is nothing to explain", () => {
  for (const { answer } of asked("0.1 in", "closure: even, divisions: 0.002 in"))
    expect(answer).not.toContain("nearest line");
});

test("a dial that cannot be set to 0 is not counted from 0 as if it had been", () => {
  for (const { question } of asked("0.1 in", "closure: even, divisions: 0.002 in, fixed: true"))
    expect(question).toMatch(/^You touch, and the dial stands at 0\. You want/);
});
