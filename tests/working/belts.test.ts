import { expect, test } from "vitest";
import { beltLength } from "../../src/drive/beltLength.js";
import { explainBeltLength } from "../../src/working/belts.js";
import { explainSpeed } from "../../src/working/drive.js";
import { demoFindings } from "../support/sheets.js";

test("a speed by slip is its motor speed × ratios × (1 − slip) as the working lists them", () => {
  const subjects = explainSpeed(demoFindings());
  const working = subjects.find(({ name }) => name === "C open")?.explain();
  if (working === undefined || "missing" in working) throw new Error("no working");
  const of = (start: string) =>
    working.inputs.filter(({ name }) => name.startsWith(start)).map(({ value }) => value as number);
  const [motor = 0] = of("motor speed");
  const ratio = of("ratio of").reduce((product, value) => product * value, 1);
  const left = of("slip of").reduce((product, value) => product * (1 - value / 100), 1);
  expect(of("slip of")).toHaveLength(1);
  expect(motor * ratio * left).toBeCloseTo(working.result.value as number, 9);
});

test("a belt's working comes from the length that the sheets print", () => {
  const working = explainBeltLength(demoFindings())
    .find(({ name }) => name === "spindle belt A")
    ?.explain();
  if (working === undefined || "missing" in working) throw new Error("no working");
  expect(working.result.value).toBe(beltLength(76, 50, 140, "open"));
});
