import { expect, test } from "vitest";
import { explained } from "../../src/answers/explained.js";
import { ofText } from "../../src/findings/ofText.js";

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
