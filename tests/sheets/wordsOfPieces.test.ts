import fc from "fast-check";
import { expect, test } from "vitest";
import type { Mark } from "../../src/drawing/drawing.js";
import { arrange } from "../../src/sheets/arrange.js";
import { anyMachine, sound } from "../support/anyMachine.js";
import { template } from "../support/sheets.js";

const hasPiece = (marks: readonly Mark[]): boolean =>
  marks.some(
    (mark) => mark.kind === "group" && ((mark.name === "caption" && mark.marks.length > 0) || hasPiece(mark.marks)),
  );

test("on A4 what is said of the pieces stands on no page without one", () => {
  let pages = 0;
  // Always the same: a file of many notes and few small pieces can leave no other way.
  for (const machine of fc.sample(anyMachine, { numRuns: 70, seed: 77 })) {
    const found = sound(machine);
    if (found === undefined) continue;
    const findings = {
      ...found,
      machine: { ...found.machine, paper: { ...found.machine.paper, size: "A4" as const } },
    };
    const made = arrange(findings, template("dial"));
    if ("missing" in made || made.print.pages.length < 2) continue;
    for (const { drawing } of made.print.pages) {
      pages++;
      expect(hasPiece(drawing.marks)).toBe(true);
    }
  }
  expect(pages).toBeGreaterThan(50);
});
