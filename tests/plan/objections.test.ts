import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readJob } from "../../src/job/read.js";
import { planOf } from "../../src/plan/plan.js";
import { demoFindings, findingsOf } from "../support/sheets.js";

const findings = demoFindings();

/** Objections to a job of these steps in a bar of 16 mm, by step. */
function objections(...steps: string[]): string[] {
  const text = `name: Try\nmaterial: brass\nbar: { diameter: 16, out: 40 }\nsteps:\n${steps.map((step) => `  - { ${step} }\n`).join("")}`;
  const { job, problems } = readJob(text);
  if (job === undefined) throw new Error(JSON.stringify(problems));
  return [...planOf(job, findings).objections];
}

describe("said before the first chip", () => {
  test.each([
    [
      "a cut that begins below what stands there",
      ["do: turn, from: 12, to: 10, length: 5"],
      /Step 1 begins at 12 mm, but the work is still 16 mm/,
    ],
    ["a bore without a hole", ["do: bore, from: 8, to: 9, depth: 5"], /Step 1 begins in a hole of 8 mm; none was made/],
    [
      "a reamer in too large a hole",
      ["do: drill, diameter: 9, depth: 5", "do: ream, diameter: 8, depth: 5"],
      /Step 2 wants a hole a little under 8 mm; the last one is 9 mm/,
    ],
    [
      "a tap in a hole as large as itself",
      ["do: drill, diameter: 6, depth: 9", "do: tap, thread: M6, depth: 5"],
      /Step 2 wants a hole .*less than 6 mm; the last one is 6 mm/,
    ],
    [
      "a die on too thick a rod",
      ["do: die, thread: M6, length: 5"],
      /Step 1 wants a rod of about 5.9 mm; the work is 16 mm/,
    ],
    [
      "work after parting off",
      ["do: part, length: 10, blade: 2", "do: drill, diameter: 3, depth: 5"],
      /Step 2 comes after parting off/,
    ],
    [
      "a tolerance finer than the slide holds",
      ["do: turn, from: 16, to: 15, length: 5, tolerance: 0.002"],
      /finer than this slide holds/,
    ],
    ["parting beyond the bar", ["do: part, length: 39, blade: 2"], /reaches 41 mm/],
  ] as const)("%s", (_, steps, words) => {
    const found = objections(...steps);
    expect(found.join("\n")).toMatch(words);
    expect(found).toHaveLength(1);
  });

  test("nothing is said of a job in good order", () => {
    expect(
      objections(
        "do: drill, diameter: 5, depth: 9",
        "do: tap, thread: M6, depth: 5",
        "do: turn, from: 16, to: 14, length: 20",
        "do: turn, from: 14, to: 5.9, length: 10",
        "do: die, thread: M6, length: 8",
        "do: part, length: 25, blade: 2",
      ),
    ).toEqual([]);
  });

  test("a machine whose chuck has no limit in the file", () => {
    const { job } = readJob(
      "name: A\nmaterial: brass\nbar: { diameter: 10, out: 20 }\nsteps: [{ do: face, depth: 0.5 }]\n",
    );
    if (job === undefined) throw new Error("no job");
    const bare = findingsOf("name: L\nhandwheels: [{ name: Carriage, feed: 2 mm }]\n");
    expect(planOf(job, bare).objections.join("\n")).toMatch(/how fast the chuck may run[\s\S]*no drive/);
  });
});

test("a job in millimetres on a machine in inches keeps its sizes, each with the inches beside it", () => {
  const inch = findingsOf("name: L\nunits: in\nhandwheels: [{ name: Cross slide, reads: diameter, feed: 20 tpi }]\n");
  const { job } = readJob(readFileSync("templates/jobs/deck-pin.yaml", "utf8"));
  if (job === undefined) throw new Error("no job");
  const { steps, objections } = planOf(job, inch);
  const words = [...steps.flatMap(({ title, notes }) => [title, ...notes]), ...objections].join("\n");
  expect(words).not.toMatch(/\d mm(?! \([\d.]+ in\))/);
  expect(words).toContain("turn 16 mm (0.6299 in) to 14 mm (0.5512 in)");
});
