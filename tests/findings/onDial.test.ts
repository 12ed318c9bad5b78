import { expect, test } from "vitest";
import type { HandwheelFinding } from "../../src/findings/findings.js";
import { onDial } from "../../src/findings/onDial.js";
import { settingToMove } from "../../src/findings/settings.js";
import { shownAt } from "../../src/findings/settingWords.js";
import { jobOf } from "../support/job.js";
import { findingsOf, printOf } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

/** A machine in `units` whose cross slide has such a dial. */
const wheelOf = (units: "mm" | "in", reads: string, dial: string): HandwheelFinding =>
  findingsOf(`name: L
units: ${units}
handwheels:
  - { name: Cross slide, reads: ${reads}, travel: 60 mm, feed: { perTurn: 5.08 mm, uncertainty: 0.001 mm }${dial} }`)
    .handwheels[0] as HandwheelFinding;
const drum = (divisions: string) => `, dial: { shape: drum, diameter: 80 mm, width: 9 mm, divisions: ${divisions} }`;

/** What an operator works out, by the sign and the number that stand on the paper. */
function workedOut(size: number, times: string): number {
  const [sign, by = ""] = times.split(" ");
  return sign === "×" ? size * Number(by) : size / Number(by);
}

const mmOf = { mm: 1, in: 25.4 };

test.each([
  ["mm", "diameter", "0.02 mm"],
  ["mm", "travel", "0.02 mm"],
  ["mm", "diameter", "0.001 in"],
  ["mm", "travel", "0.001 in"],
  ["in", "diameter", "0.02 mm"],
  ["in", "travel", "0.02 mm"],
  ["in", "diameter", "0.001 in"],
  ["in", "travel", "0.001 in"],
] as const)("a machine in %s, a dial of %s in steps of %s: what the sum comes to is what the dial shows", (...row) => {
  const [units, reads, divisions] = row;
  const wheel = wheelOf(units, reads, drum(divisions));
  // 0.08 in over on the diameter: half of that is cut from each side.
  const over = 2.032;
  const shown = settingToMove(wheel, over / 2);
  const told = onDial(wheel, "diameter", units);
  const worth = workedOut(over / mmOf[units], told?.times ?? "× 1");
  expect(worth).toBeCloseTo(Number(shown && shownAt(wheel, shown)?.figure), 3);
});

test.each(["diameter", "travel"])("without a dial the sum ends in turns of a wheel that reads %s", (reads) => {
  const told = onDial(wheelOf("in", reads, ""), "diameter", "in");
  expect(told?.counted).toBe("turns");
  // 0.04 in on the diameter is 0.02 in of the slide: a tenth of its turn of 0.2 in.
  expect(workedOut(0.04, told?.times ?? "")).toBeCloseTo(0.1, 6);
});

const planWords = (dial: string, units = "in"): string => {
  const findings = findingsOf(`name: L
units: ${units}
limits: { chuck: 2000 rpm }
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 40 mm, driven: 120 mm }, { label: B, driver: 80 mm, driven: 80 mm }] }]
handwheels:
  - { name: Cross slide, reads: diameter, travel: 60 mm, feed: { perTurn: 2.54 mm, uncertainty: 0.001 mm }${dial} }
  - { name: Carriage, travel: 120 mm, feed: 18 mm }
`);
  const job = jobOf(
    ["do: turn, to: 0.875 ± 0.006, length: 1", "do: bore, to: 0.5 ± 0.006, depth: 0.5"],
    "units: in\nbar: { diameter: 1, bore: 0.4, out: 1.7 }",
  );
  return wordsOf(printOf({ ...findings, job }, "plan")).replace(/\s+/g, " ");
};

test("an inch plan on a dial of millimetres takes every sum on to what that dial shows", () => {
  const words = planWords(drum("0.02 mm"));
  expect(words).toContain("Not 1.0000? The difference × 25.4 =");
  expect(words.match(/Go on by that × 25\.4 =/g)).toHaveLength(2);
  // An oversize bar is told the way it works, not by a figure below nothing.
  expect(words).toContain(
    "on the dial (mm). Measured less: set it instead of 0. Measured more: set the dial that much short of 0.",
  );
  expect(words).not.toContain("Go on by that.");
});

test("on one that cannot be set to 0 too", () => {
  expect(planWords(drum("0.02 mm, fixed: true"))).toMatch(
    /Not 1\.0000\? The difference × 25\.4 =[^.]*\. Measured less: take it off what you write down\. Measured more: add it\./,
  );
});

test("without a dial nothing is to be set: sums end in turns", () => {
  const words = planWords("");
  expect(words).toMatch(
    /Not 1\.0000\? The difference ÷ 0\.2 =[^.]*\. Measured more: every count of turns from here is more/,
  );
  expect(words).toMatch(
    /Not 0\.4000\? The difference ÷ 0\.2 =[^.]*\. Measured less: every count of turns back from here is more/,
  );
  expect(words.match(/Go on by that ÷ 0\.2 =/g)).toHaveLength(2);
  expect(words).not.toMatch(/instead of 0|set the dial/);
});

test("a dial whose 25 stands for 0.025 in is told in its own numbers", () => {
  expect(planWords(drum("0.001 in"))).toMatch(/Go on by that × 1000 = on the dial \(× 0\.001 in\)/);
});

test("where dial and sheet count alike nothing is reckoned", () => {
  const words = planWords(drum("0.02 mm"), "mm");
  expect(words).toContain(
    "Not 25.40? Measured less: set the difference instead of 0. Measured more: set the dial that much short of 0.",
  );
  expect(words.match(/Go on by that\./g)).toHaveLength(2);
});
