import { expect, test } from "vitest";
import { angleSet } from "../../../src/blocks/dial/angleScales.js";
import type { Drawing } from "../../../src/drawing/drawing.js";
import { walk } from "../../support/marks.js";
import { findingsOf } from "../../support/sheets.js";

/** How many of its two sides a scale of that radius tells on itself, and how many stand beneath it as left out. */
function sides(radius: number) {
  const { machine } = findingsOf(
    `name: A\nunits: in\nangleScales: [{ name: Top slide, part: top slide, radius: ${radius}, range: [-45, 45] }]\n`,
  );
  const [scale] = machine.angleScales ?? [];
  if (scale === undefined) throw new Error("no scale");
  const [piece] = angleSet(scale, { ...machine, units: "in" }, 1, { width: 180, height: 240 }).cut;
  const textOf = (drawing: Drawing | undefined) => {
    let words = "";
    walk(drawing?.marks ?? [], (mark) => {
      if (mark.kind === "text") words += mark.text;
    });
    return words;
  };
  // Round a ring words stand letter by letter.
  const count = (words: string) => words.replaceAll(/\s/g, "").match(/(free|chuck)endsmall/g)?.length ?? 0;
  const under = piece?.caption;
  return { on: count(textOf(piece?.drawing)), under: count(typeof under === "string" ? under : textOf(under)) };
}

test.each([1.15, 1.2, 1.25, 1.3, 1.4, 2])(
  "a swivel scale of radius %f in tells both of its sides on it, or neither",
  (radius) => {
    const { on, under } = sides(radius);
    expect([on, under]).toEqual(on > 0 ? [2, 0] : [0, 2]);
  },
);

test("a large one tells both on it; where the longer words do not fit, neither stands there", () => {
  expect(sides(2).on).toBe(2);
  expect(sides(1.25).on).toBe(0);
});
