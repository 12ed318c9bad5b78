import { expect, test } from "vitest";
import { supposed, supposedLaid } from "../../src/answers/supposed.js";
import { problemsOf } from "../support/problems.js";
import { findingsOf } from "../support/sheets.js";

const drive = (first: number, more = "") =>
  `name: D\nunits: in\ndrive: { motor: { speed: 1725 }, stages: [{ name: belt, ${more}steps: [{ label: A, driver: 2, driven: 4.5 }, { label: B, driver: 3.5, driven: ${first} }, { label: C, driver: 4.5, driven: 2 }] }] }\n`;
const told = (text: string) => problemsOf(text).filter(({ code }) => code === "belt-sums");

test("a pulley typed 5 for 3 is told by the sums of its steps", () => {
  const [remark] = told(drive(5));
  expect(remark).toMatchObject({ severity: "warning" });
  expect(remark?.what).toBe('one belt does not fit all steps of "belt": driver and driven add up to 6.5, 8.5, 6.5 in');
  expect(told(drive(3))).toEqual([]);
  // What a rule and a worn pulley leave is none.
  expect(told(drive(3.2))).toEqual([]);
  expect(told(drive(5, "idler: true, "))).toEqual([]);
});

test("it stands at its own stage where the motor has several speeds", () => {
  const text = `name: D
drive:
  motor: { speeds: [1400, 700] }
  stages:
    - { name: first, steps: [{ label: A, driver: 60, driven: 120 }, { label: B, driver: 90, driven: 108 }, { label: C, driver: 100, driven: 60 }] }
    - { name: second, steps: [{ label: D, driver: 60, driven: 120 }] }
`;
  expect(told(text)).toMatchObject([{ line: 5, what: expect.stringContaining('"first"') }]);
});

test("what is supposed says it too, where it was not so before", () => {
  const findings = findingsOf(drive(3));
  const after = (wish: string) => supposedLaid(findings, supposed(findings, [wish]))[0]?.after ?? [];
  expect(after("belt B 3.5 to 5").join(" ")).toContain("add up to 6.5, 8.5, 6.5 in");
  expect(after("belt B 3.5 to 3.1")).toEqual([]);
});
