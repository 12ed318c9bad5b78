import { expect, test } from "vitest";
import { exercises } from "../../src/student/exercises.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const bare = (revision: number, more = "") =>
  findingsOf(`name: N
revision: ${revision}
handwheels:
  - { name: Cross slide, reads: diameter, travel: 60, feed: 2.5${more} }
  - { name: Carriage, travel: 120, feed: 18 }
`);

test("where no dial is made nothing is asked or answered by one: a length is turns and eighths, and what they leave", () => {
  for (let revision = 1; revision <= 40; revision++) {
    const list = exercises(bare(revision), "turning");
    for (const { question, answer } of list) {
      expect(`${question} ${answer}`).not.toMatch(/dial|lines?\b/);
      expect(answer).not.toBe("");
    }
    const step = list.find(({ question }) => question.startsWith("A step"));
    const [, length = ""] =
      /^A step is (\d+) mm long\. How far do you turn the carriage, in eighths of a turn\?$/.exec(
        step?.question ?? "",
      ) ?? [];
    const [, turns = "0", eighths = "0", off = "0", sense] =
      /^(?:(\d+) turns?)?(?: and )?(?:(\d) eighths?)?(?:: ([\d.]+) mm too (far|little))?$/.exec(step?.answer ?? "") ??
      [];
    const gone = 18 * (Number(turns) + Number(eighths) / 8);
    expect(Math.abs(gone - Number(length))).toBeLessThanOrEqual(18 / 16 + 1e-9);
    // What is left is told to a tenth.
    expect(Math.abs(gone - Number(length) - Number(off) * (sense === "far" ? 1 : -1))).toBeLessThan(0.051);
  }
});

test.each([18, 32, 66, 130])(
  "eighths of a turn are asked for only where they come near: one turn goes %s mm",
  (perTurn) => {
    let asked = 0;
    for (let revision = 1; revision <= 40; revision++) {
      const lathe = findingsOf(
        `name: N\nrevision: ${revision}\nhandwheels:\n  - { name: Cross slide, travel: 60, feed: 2.5 }\n  - { name: Carriage, travel: 120, feed: ${perTurn} }\n`,
      );
      const step = exercises(lathe, "turning").find(({ question }) => question.startsWith("A step"));
      if (step === undefined) continue;
      asked++;
      const length = Number(/A step is (\d+) mm/.exec(step.question)?.[1]);
      expect(step.answer).not.toMatch(/^0 eighths/);
      expect(Number(/([\d.]+) mm too/.exec(step.answer)?.[1] ?? 0)).toBeLessThanOrEqual(0.1 * length + 0.05);
    }
    // A wheel of which an eighth is longer than any step that is asked sets none of them.
    expect(asked).toBe(perTurn === 130 ? 0 : 40);
  },
);

test("its first side counts turns, and says of a turn what it does to the part", () => {
  const words = textsOf(bare(1), "student").replace(/\s+/g, " ");
  expect(words).toMatch(/1 +Count the turns/);
  expect(words).toContain("One turn of the cross slide makes the part 5.00 mm thinner.");
  expect(words).not.toMatch(/on the dial|Read the dial|come to a line/);
  const old = textsOf(bare(1, ", oldDial: { perTurn: 5, reads: diameter }"), "student").replace(/\s+/g, " ");
  expect(old).toContain("Do not go by the old dial of the cross slide alone.");
  expect(old).toContain("read it only to a figure that a plan or a stops sheet gives for it.");
  expect(old).not.toContain("has no dial");
});
