import { expect, test } from "vitest";
import { table } from "../../../src/blocks/shared/table.js";
import { walk } from "../../support/marks.js";

test("a row that begins a page says again which title it stands under, and one with a title of its own says it once", () => {
  const titles = new Map([
    [0, "A"],
    [2, "B"],
  ]);
  const runs = table(
    [{ heading: ["mm"], align: "start" }],
    [[{ text: "1" }], [{ text: "2" }], [{ text: "3" }], [{ text: "4" }]],
    {
      width: 80,
      titles,
    },
  );
  const words = runs.map(({ heading }) => {
    const found: string[] = [];
    if (heading)
      walk(heading.marks, (mark) => {
        if (mark.kind === "text") found.push(mark.text);
      });
    return found;
  });
  expect(words).toEqual([[], ["mm", "A"], ["mm"], ["mm", "B"]]);
});
