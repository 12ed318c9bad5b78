import { expect, test } from "vitest";
import { choices, speedAnswer } from "../../src/page/work/asked.js";
import { findingsOf } from "../support/sheets.js";

const drill = findingsOf(
  "name: D\nkind: drill\nunits: in\ndrive: { motor: { speed: 1725 }, stages: [{ name: belt, steps: [{ label: A, driver: 2, driven: 4 }] }] }\n",
);

test("a drill is asked for drilling first, and an inch machine answers in feet a minute", () => {
  const { operations } = choices(drill);
  expect(operations[0]).toBe("drilling");
  expect(new Set(operations).size).toBe(operations.length);
  const { working, from } = speedAnswer(drill, { material: "mild steel", operation: "drilling", diameter: "3/8" });
  expect(working[0]).toMatch(/^\d+ to \d+ ft\/min for mild steel/);
  // π × 3/8 in × 863 rpm ÷ 12, the speed by ratio.
  expect(working[1]).toContain("863 rpm: 85 ft/min");
  expect(from).toEqual([{ quantity: "speed", of: "only" }]);
});
