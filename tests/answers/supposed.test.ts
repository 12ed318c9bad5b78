import { describe, expect, test } from "vitest";
import { supposed, supposedLaid, supposedLines } from "../../src/answers/supposed.js";
import { findingsOf } from "../support/sheets.js";

const inches = findingsOf(`name: L
units: in
drive:
  motor: { speed: 1725 rpm, mains: 60 Hz }
  stages:
    - name: countershaft to spindle belt
      steps:
        - { label: large headstock cone outermost, driver: 2, driven: 4 }
        - { label: small headstock cone by the bearing, driver: 4, driven: 2 }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[22, 60], [20, 62]] }] }
work: { materials: [mild steel], diameters: [1/2] }
`);
const refusal = (wish: string) => {
  try {
    return supposed(inches, [wish]).changes.join();
  } catch (fault) {
    return String(fault);
  }
};

describe("what cannot be supposed", () => {
  test("gears are said to be none of it, with what can be, in the file's own names and unit", () => {
    for (const wish of ["back gear geared 30 to 60", "back gear 30 to 60"]) {
      expect(refusal(wish)).toContain("teeth cannot be supposed");
      expect(refusal(wish)).toContain('"countershaft to spindle belt large headstock cone outermost 2 to 4"');
      expect(refusal(wish)).toContain('"50 Hz", "motor 1725 rpm"');
      expect(refusal(wish)).toContain('"belt flat, 1/8 in"');
    }
  });

  test("every example that is given can be asked", () => {
    const examples = [...refusal("nonsense").matchAll(/"([^"]*)"/g)].map(([, words = ""]) => words).slice(1);
    expect(examples).toHaveLength(4);
    for (const example of examples) expect(() => supposed(inches, [example])).not.toThrow();
  });
});

test("a step is called by the sign that check gives it, too; several changes in one have semicolons", () => {
  const named = supposed(inches, ["countershaft to spindle belt large headstock cone outermost 3 to 4"]);
  for (const wish of ["A 3 to 4", "countershaft to spindle belt a 3 to 4"])
    expect(supposed(inches, [wish])).toEqual(named);
  expect(supposed(inches, ["A 3 to 4; 50 Hz"])).toEqual(supposed(inches, ["A 3 to 4", "50 Hz"]));
});

test("positions are called as in the list of all, each in one line, and what the signs stand for once", () => {
  const lines = supposedLines(supposedLaid(inches, supposed(inches, ["A 3 to 4"])));
  expect(lines.join("\n").split("large headstock cone outermost")).toHaveLength(3);
  expect(lines.filter((line) => /^ {2}[AB] (open|geared) +\d/.test(line))).toHaveLength(4);
  expect(lines.join("\n")).toMatch(/mild steel, 0\.5 in: [AB] \w+ \d+/);
});
