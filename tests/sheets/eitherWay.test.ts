import { expect, test } from "vitest";
import { verified } from "../../src/answers/verified.js";
import { arrange } from "../../src/sheets/arrange.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

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
