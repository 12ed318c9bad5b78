import { expect, test } from "vitest";
import { type CutOut, cutOuts } from "../../../src/blocks/dial/cutOuts.js";

const piece = (name: string, width: number, height: number, besides?: string): CutOut => ({
  name,
  drawing: { width, height, marks: [] },
  caption: { width, height: 0, marks: [] },
  ...(besides && { besides }),
});
const namesOn = (pieces: readonly CutOut[], height: number): string[][] =>
  cutOuts(pieces, 100, { height, above: [] }).map(({ drawing }) =>
    drawing.marks.flatMap((mark) => (mark.kind === "group" && mark.name !== "caption" ? (mark.name ?? []) : [])),
  );

test("copies lie together where that takes no more pages", () => {
  // Packed by height alone the second long one would come after all that is higher.
  const pieces = [
    piece("long 1", 60, 20, "long"),
    piece("long 2", 60, 20, "long"),
    piece("wide", 90, 21),
    piece("high", 30, 40),
  ];
  const [first] = namesOn(pieces, 100).filter((names) => names.some((name) => name.startsWith("long")));
  expect(first).toEqual(expect.arrayContaining(["long 1", "long 2"]));
});

test("but not where they would need a page more", () => {
  const pieces = [piece("a 1", 60, 25, "a"), piece("a 2", 60, 25, "a"), piece("b", 90, 30), piece("c", 90, 30)];
  expect(namesOn(pieces, 62)).toHaveLength(4);
  expect(namesOn(pieces, 100)).toHaveLength(3);
});
