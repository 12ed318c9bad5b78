import { expect, test } from "vitest";
import { veeLines } from "../../src/drive/veeLine.js";
import type { Machine } from "../../src/machine/machine.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const lathe = (belt: string) =>
  findingsOf(
    `name: V\ndrive:\n  motor: { speed: 1425 rpm }\n  belt: ${belt}\n  stages:\n    - { name: belt, steps: [{ label: A, driver: { outside: 60 }, driven: { outside: 120 } }, { label: B, driver: { outside: 90 }, driven: { outside: 90 } }] }\n`,
  );
const linesOf = ({ machine: { drive } }: { machine: Machine }) => (drive === undefined ? [] : veeLines(drive));

test("section A: 0.125 in by the inch groove table, 2.75 mm by ISO 4183, and the speeds that differ with them", () => {
  const [line] = linesOf(lathe("vee, A"));
  expect(line).toMatchObject({ section: "A", used: { depth: expect.closeTo(3.175, 9) }, other: { depth: 2.75 } });
  // 60 and 120 outside: 53.65 to 113.65 by the one, 54.5 to 114.5 by the other.
  expect(line?.most).toBeCloseTo(54.5 / 114.5 / (53.65 / 113.65) - 1, 9);
});

test("both stand beside the belts, on the speed tree, and in the working of a speed", () => {
  const words = textsOf(lathe("vee, A"), "speed-tree");
  expect(words).toContain("a belt maker's inch groove table");
  expect(words).toContain("ISO 4183:1995 (from memory) says 2.75 mm");
  expect(words).toContain("differ by up to 0.8 %");
});

test.each([
  ["of section Z there is one figure", "vee, Z"],
  ["a flat belt has none", "flat, 2 mm"],
])("%s: nothing is said", (_, belt) => {
  expect(linesOf(lathe(belt))).toEqual([]);
});

test("effective diameters that the file gives itself stand as they are", () => {
  const findings = findingsOf(
    "name: V\ndrive: { motor: { speed: 1425 rpm }, belt: 'vee, A', stages: [{ name: belt, steps: [{ label: A, driver: 60, driven: 120 }] }] }\n",
  );
  expect(linesOf(findings)).toEqual([]);
});
