import fc from "fast-check";
import { expect, test } from "vitest";
import { explainables, explained } from "../../src/answers/explained.js";
import { ofText } from "../../src/findings/ofText.js";
import { anyMachine } from "../support/anyMachine.js";

const { findings, places } = ofText(
  "name: L\nhandwheels:\n  - { name: Slide, feed: 2 mm }\n  - { name: Slide fine, feed: 1 mm }\n",
  { files: new Map(), problems: [] },
);

test("a whole name is meant alone, a part of a name all that have it", () => {
  if (findings === undefined) throw new Error("the file is not sound");
  const titles = (of: string) =>
    explained(findings, places, "feed", of).filter((line) => /feed per turn = /.test(line));
  expect(titles("slide")).toHaveLength(1);
  expect(titles("slid")).toHaveLength(2);
});

test("a belt position is known by the signs that the cards call it by", () => {
  const steps = (...names: string[]) =>
    names.map((name, at) => `{ label: ${name}, driver: ${60 + 20 * at}, driven: 90 }`);
  const read = ofText(
    `name: L\ndrive: { motor: { speed: 1400 }, stages: [{ name: belt, steps: [${steps("the small step at the wall", "the large step by the hand")}] }] }\n`,
    { files: new Map(), problems: [] },
  );
  if (read.findings === undefined) throw new Error("the file is not sound");
  const [whole, signed] = ["the large step by the hand", "b"].map(
    (of) => read.findings && explained(read.findings, read.places, "speed", of),
  );
  expect(whole?.[1]).toContain("the large step by the hand");
  expect(signed).toEqual(whole);
});

test("what the file leaves out is told as usual, not as stated", () => {
  const text = [
    "name: L",
    "paper: { thickness: 0.12 }",
    "handwheels:",
    "  - { name: A, feed: { screw: { pitch: 2 } }, dial: { shape: drum, diameter: 38, width: 9 } }",
    "  - { name: B, feed: { screw: { pitch: 2, starts: 2 } } }",
    "  - { name: C, feed: 10 tpi }",
  ].join("\n");
  const read = ofText(text, { files: new Map(), problems: [] });
  if (read.findings === undefined) throw new Error("the file is not sound");
  const found = read.findings;
  const sourceOf = (quantity: string, of: string, input: string) =>
    explained(found, read.places, quantity, of)
      .filter((line) => line.trim().startsWith(input))
      .map((line) => /\(([^()]*)\)$/.exec(line)?.[1]);
  expect(sourceOf("strip length", "A", "paper")).toEqual(["stated, line 2"]);
  expect(sourceOf("strip length", "A", "adhesive")).toEqual(["usual, when left out"]);
  expect(sourceOf("feed", "A", "starts")).toEqual(["usual, when left out"]);
  expect(sourceOf("feed", "B", "starts")).toEqual(["stated, line 5"]);
  expect(sourceOf("feed", "C", "threads")).toEqual(["stated, line 6"]);
  expect(sourceOf("feed", "C", "starts")).toEqual(["usual, when left out"]);
});

test("on whatever machine nothing is told as usual but what has a usual value", () => {
  const mayBe = /^ *(starts|adhesive|paper|diameter d) +=/;
  fc.assert(
    fc.property(anyMachine, ({ text }) => {
      const read = ofText(text, { files: new Map(), problems: [] });
      const found = read.findings;
      if (found === undefined) throw new Error("the file is refused");
      for (const { name, subjects } of explainables(found))
        if (subjects.length > 0)
          for (const line of explained(found, read.places, name, undefined))
            if (line.includes("usual, when left out")) expect(line).toMatch(mayBe);
    }),
    { numRuns: 25 },
  );
});

test("of a motor with several speeds its line is named, and the belts' own", () => {
  const text = [
    "name: L",
    "drive:",
    "  motor: { speeds: [710, 1425] }",
    "  stages:",
    "    - { name: belt, centres: 200, steps: [{ label: A, driver: 50, driven: 80 }] }",
    "    - { name: second, centres: 300,",
    "        steps: [{ label: B, driver: 60, driven: 80 }] }",
  ].join("\n");
  const read = ofText(text, { files: new Map(), problems: [] });
  if (read.findings === undefined) throw new Error("the file is not sound");
  const told = (quantity: string) =>
    explained(read.findings as NonNullable<typeof read.findings>, read.places, quantity, undefined).join("\n");
  expect(told("speed")).toMatch(/motor speed +=.*line 3\)/);
  expect(told("speed")).toMatch(/ratio of second.*line 7\)/);
  expect(told("belt length")).toMatch(/C = 300 mm +\(stated, line 6\)/);
});
