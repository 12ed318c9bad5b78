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

test("its first side counts turns, and says of a turn what it does to the part", () => {
  const words = textsOf(bare(1), "student").replace(/\s+/g, " ");
  expect(words).toMatch(/1 +Count the turns/);
  expect(words).toContain("One turn of the cross slide makes the part 5.00 mm thinner.");
  expect(words).not.toMatch(/on the dial|Read the dial|come to a line/);
  const old = textsOf(bare(1, ", oldDial: { perTurn: 5, reads: diameter }"), "student").replace(/\s+/g, " ");
  expect(old).toContain("Do not go by the old dial of the cross slide.");
  expect(old).not.toContain("has no dial");
});
