import { expect, test } from "vitest";
import { beside } from "../../../src/blocks/shared/beside.js";

const run = (width: number, height: number, gap = 0) => ({ drawing: { width, height, marks: [] }, gap });

test("rows share a line and stand on it; what one side has more of stands alone", () => {
  const rows = beside([run(40, 12), run(40, 5)], [run(30, 9), run(30, 5), run(30, 5, 1.6)], 50);
  expect(rows.map(({ drawing }) => [drawing.width, drawing.height])).toEqual([
    [80, 12],
    [80, 5],
    [80, 5],
  ]);
  // The lower heading stands as low as the higher one.
  expect(rows[0]?.drawing.marks).toMatchObject([{ at: { x: 0, y: 0 } }, { at: { x: 50, y: 3 } }]);
  expect(rows[2]?.gap).toBe(1.6);
});

test("a heading that a page repeats is both headings", () => {
  const headed = { ...run(40, 5), heading: { width: 40, height: 10, marks: [] } };
  expect(beside([headed], [headed], 50)[0]?.heading).toMatchObject({ width: 90, height: 10 });
});
