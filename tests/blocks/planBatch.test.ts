import { describe, expect, test } from "vitest";
import { planOf } from "../../src/plan/plan.js";
import { jobOf, lathe, verdicts } from "../support/job.js";
import { textsOf } from "../support/sheets.js";

const PARTED = ["do: face, depth: 0.5", "do: turn, to: 14, length: 30", "do: part, length: 28, blade: 2"];
const TURNED = [...PARTED, "do: turn round, out: 12", "do: face, length: 27.5"];
const TAPERED = [
  "do: turn, to: 14, length: 30",
  "do: taper, large: 14, small: 13, length: 8",
  "do: part, length: 28, blade: 2",
];

const stop = (bar: string, parts = 4) => `bar: { diameter: 16, ${bar} }\nparts: ${parts}\nspindleStop: true`;
const sheet = (steps: readonly string[], head: string) =>
  textsOf({ ...lathe(), job: jobOf(steps, head) }, "plan").replace(/\s+/g, " ");

describe("a stop in the spindle", () => {
  test("holds no bar that gets shorter with every part, only what is parted off it and turned round", () => {
    const words = sheet(TURNED, stop("out: 40"));
    expect(words).toContain("40 mm out, turned round: against a stop in the spindle;");
    expect(words).toContain("until its end meets a stop ahead of it");
    expect(words).not.toContain("or hold it against a stop");
    expect(words).toContain("Turned round, set the stop once more");
  });

  test("is told to serve nothing where nothing is turned round", () => {
    expect(verdicts(planOf(jobOf(PARTED, stop("out: 40")), lathe()))).toContain("take care: no-stop-behind");
    expect(sheet(PARTED, stop("out: 40"))).toContain("40 mm out; high-speed steel");
    for (const [steps, head] of [
      [PARTED, stop("out: 40", 1)],
      [PARTED, stop("out: 40, length: 60")],
      [TURNED, stop("out: 40")],
    ] as const)
      expect(verdicts(planOf(jobOf(steps, head), lathe()))).not.toContain("take care: no-stop-behind");
  });

  test("holds sawn blanks, and the one part of a bar", () => {
    expect(sheet(PARTED, stop("out: 40, length: 60"))).toContain("40 mm out, against a stop in the spindle;");
    expect(sheet(PARTED, stop("out: 40", 1))).toContain("40 mm out, against a stop in the spindle;");
  });
});

test("the table of the parts asks for the length that they have in the end, not for that at which they were parted off", () => {
  const words = sheet(TURNED, "bar: { diameter: 16, out: 40 }\nparts: 3");
  const table = words.slice(words.indexOf("Measured part"));
  expect(table).toContain("step 5 27.5 mm");
  expect(table).not.toContain("28 mm");
});

test("what is swung is done on all blanks in one go, on a bar for each part anew", () => {
  const blanks = sheet(TAPERED, "bar: { diameter: 16, out: 40, length: 60 }\nparts: 3");
  expect(blanks).toContain("for step 2 and set back takes every zero along: do it on all parts in one go");
  const bar = sheet(TAPERED, "bar: { diameter: 16, out: 40 }\nparts: 3");
  expect(bar).toContain("for step 2 and set back takes every zero along: touch off again for each part");
  expect(bar).not.toContain("in one go");
});
