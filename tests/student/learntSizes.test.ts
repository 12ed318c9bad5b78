import { expect, test } from "vitest";
import { learntSizes } from "../../src/student/learntSizes.js";
import { findingsOf } from "../support/sheets.js";

const learnt = (sizes: string, use: "turning" | "drilling" = "turning") =>
  learntSizes(use, findingsOf(`name: L\nwork: { ${use === "turning" ? "diameters" : "drills"}: ${sizes} }\n`).machine);

test("a small size, a middling one and the largest, in whatever order the file has them", () => {
  expect(learnt("[40, 25, 16, 10, 3]")).toEqual([10, 16, 40]);
  expect(learnt("[3, 10, 16, 25, 40]")).toEqual([10, 16, 40]);
  expect(learnt("[3, 10]", "drilling")).toEqual([3, 10]);
  expect(learnt("[8]")).toEqual([8]);
});
