import { expect, test } from "vitest";
import { flatten } from "../support/flatMarks.js";
import { demoFindings, findingsOf, printOf, textsOf } from "../support/sheets.js";

test("counts of the hand feed stand in columns that are not read as one", () => {
  const [page] = printOf(demoFindings(), "hand-feed").pages;
  const counts = flatten(page?.drawing as never).texts.filter(({ mark }) => / s$/.test(mark.text));
  expect(counts.length).toBeGreaterThan(20);
  for (const one of counts)
    for (const other of counts) {
      const [left, right] = [one.extent, other.extent];
      if (Math.abs(left.top - right.top) > 1 || left.right > right.left) continue;
      expect(right.left - left.right, `${one.mark.text} ${other.mark.text}`).toBeGreaterThan(3.9);
    }
});

test("a lathe that is stood on end has one strip over its stops", () => {
  const kind = (kind: string) =>
    textsOf(findingsOf(`name: S\nkind: ${kind}\nhandwheels: [{ name: Carriage, feed: 2 mm }]\n`), "stops");
  expect(kind("lathe stood on end").match(/Key out of the chuck/g)).toHaveLength(1);
  expect(kind("lathe stood on end")).toMatch(/Clamp the work, let no bar whip/);
  expect(kind("lathe")).toMatch(/No bar may whip/);
  expect(kind("drill")).toMatch(/Clamp the work\. Key/);
});

test("a stage's name that has no room over the speed tree stands below it, whole", () => {
  const name = "belt from the motor under the bench up to the countershaft at the wall with its tightener";
  const words = textsOf(
    findingsOf(`name: T
drive:
  motor: { speed: 1400 rpm }
  stages:
    - { name: ${name}, steps: [{ label: A, driver: 50, driven: 100 }, { label: B, driver: 100, driven: 50 }] }
    - { name: spindle belt, steps: [{ label: "1", driver: 50, driven: 100 }] }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 52], [18, 54]] }] }
`),
    "speed-tree",
  );
  expect(words).toContain("(1) = ");
  expect(words).not.toContain("…");
  expect(words.replace(/\s+/g, " ")).toContain(name);
});
