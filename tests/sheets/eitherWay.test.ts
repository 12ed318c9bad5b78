import { describe, expect, test } from "vitest";
import { verified } from "../../src/answers/verified.js";
import { arrange } from "../../src/sheets/arrange.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { findingsOf, printOf, template, textsOf } from "../support/sheets.js";

/** A ring that a small page holds upright, but not across. */
const ring = (outside: number) =>
  findingsOf(`name: R
paper: { size: A5 }
handwheels:
  - { name: Leadscrew, travel: 100, feed: 3 mm, dial: { shape: face, outside: ${outside}, inside: 70, increases: clockwise } }
`);
const strip = findingsOf(`name: S
paper: { size: A5 }
handwheels:
  - { name: Cross slide, travel: 100, feed: 3 mm, dial: { shape: drum, wrap: 150, width: 9, increases: clockwise } }
`);

test("a ring is whole where it is on an upright page", () => {
  const print = printOf(ring(100), "dial");
  for (const { drawing } of print.pages) expect(drawing.width).toBeLessThan(drawing.height);
  expect(textsOf(ring(100), "dial")).not.toMatch(/piece \d of/);
});

test("what lies across whole stays across", () => {
  for (const { drawing } of printOf(strip, "dial").pages) expect(drawing.width).toBeGreaterThan(drawing.height);
  expect(textsOf(strip, "dial")).not.toMatch(/piece \d of/);
});

test("a template that says landscape has it", () => {
  const { template } = readTemplate("title: Mine\norientation: landscape\nblocks: [pieces]\n", "mine");
  const made = template && arrange(ring(100), template);
  if (made === undefined || "missing" in made) throw new Error(made?.missing);
  for (const { drawing } of made.print.pages) expect(drawing.width).toBeGreaterThan(drawing.height);
});

test("verify knows the ring whole, and which bar of the printer mends it", () => {
  const { lines, mend } = verified(ring(100), { handwheel: "Leadscrew", measured: "99" });
  expect(lines.join(" ")).not.toContain("pieces");
  expect(mend?.level.side).toBe("across");
  expect(verified(strip, { handwheel: "Cross slide", measured: "149" }).mend?.level.side).toBe("down");
});

describe("a degree plate", () => {
  const plate = (radius: number, besides = "") =>
    findingsOf(`name: P
angleScales: [{ name: Nose plate, part: spindle, radius: ${radius} }]
${besides}`);
  const wheel =
    "handwheels: [{ name: Cross slide, travel: 100, feed: 3 mm, dial: { shape: drum, diameter: 40, width: 9, increases: clockwise } }]\n";

  test.each([62, 66, 70])("of radius %d is on the paper, upright where that is the only way", (radius) => {
    for (const [findings, sheet] of [
      [plate(radius), "dial"],
      [plate(radius), "angle-scale"],
      [plate(radius, wheel), "dial"],
    ] as const) {
      expect(textsOf(findings, sheet)).toContain("across the hole");
      expect(printOf(findings, sheet).leftOut).toBeUndefined();
    }
  });

  test("that no page holds is no sheet, or is told of beside the others, with what can be done", () => {
    expect(arrange(plate(120), template("dial"))).toEqual({
      missing: "larger than the paper: Nose plate; choose a smaller radius or larger paper",
    });
    expect(printOf(plate(120, wheel), "dial").leftOut).toEqual([
      "without Nose plate, which is larger than the paper; choose a smaller radius or larger paper",
    ]);
    expect(textsOf(plate(120, wheel), "dial")).toContain("choose a smaller radius or larger paper");
  });
});
