import { expect, test } from "vitest";
import { turnsWritten } from "../../src/thread/thread.js";
import { inLanguage } from "../../src/words/language.js";
import { jobOf, lathe } from "../support/job.js";
import { textsOf } from "../support/sheets.js";

test("a quarter of a turn is not rounded away, and no more than that is told", () => {
  expect([6.25, 12.75, 8, 12.8571].map(turnsWritten)).toEqual(["6.25", "12.75", "8", "12.86"]);
  expect(inLanguage("de", () => turnsWritten(6.25))).toBe("6,25");
});

test("the plan and the threads count them alike", () => {
  const job = jobOf(["do: turn, to: 6, length: 20", "do: die, thread: M6, length: 6.25"]);
  expect(textsOf({ ...lathe(), job }, "plan").replace(/\s+/g, " ")).toMatch(/6\.25 turns for 6\.25 mm/);
  // 10 mm of M4, at 0.7 mm a turn.
  expect(textsOf(lathe(), "threads")).toContain("14.29");
});
