import { describe, expect, test } from "vitest";
import type { Mark } from "../../src/drawing/drawing.js";
import type { Findings } from "../../src/findings/findings.js";
import { fastestAllowed } from "../../src/findings/limits.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

/** Slow 200–500, middle 400–1000, fast 1020–2550 rpm. */
const machine = ({ limit = 4000, motor = "400 to 1000 rpm", more = "" } = {}) =>
  findingsOf(`name: V
units: mm
limits: { chuck: ${limit} }
drive:
  motor: { speed: ${motor} }
  stages: [{ name: belt, steps: [{ label: slow, driver: 40, driven: 80 }, { label: middle, driver: 60, driven: 60 }, { label: fast, driver: 102, driven: 40 }] }]
${more}work: { materials: [mild steel, brass], diameters: [5, 10, 20, 40] }
`);

describe("a position that the limit allows only turned down", () => {
  const held = machine({ limit: 2000 });
  const fast = held.drive?.speeds.at(-1);
  const most = (fast && fastestAllowed(fast, held.machine.limits))?.toFixed(0) ?? "";

  test.each(["speed-tree", "speed-diagram", "belt-card"])("is told so far on %s, and not forbidden", (sheet) => {
    expect(most).toBe("1887");
    const said = textsOf(held, sheet);
    expect(said).toContain(most);
    expect(said).toMatch(/max: .*for the limit/);
    expect(said).not.toContain("do not use");
    expect(said.split(/[ –]/)).not.toContain("2550");
  });

  test("one that is beyond it at the motor's slowest is forbidden", () => {
    for (const sheet of ["speed-tree", "speed-diagram"])
      expect(textsOf(machine({ limit: 800 }), sheet)).toContain("× beyond the limit, do not use");
  });
});

describe("the speed tree of a variable motor", () => {
  test("has no gap between positions that reach each other", () => {
    const said = textsOf(machine(), "speed-tree");
    expect(said).toContain("Every speed from 200 to 2550 rpm can be set.");
    expect(said).not.toMatch(/gap|overlap|nearly the same|×/i);
    expect(textsOf(machine({ motor: "1000 rpm" }), "speed-tree")).toContain("× 2.55");
  });

  test("has one where no position gives the speeds between", () => {
    const said = textsOf(machine({ motor: "700 to 1000 rpm" }), "speed-tree");
    // 500 to 700, and 1000 to 1785 rpm.
    expect(said).toContain("× 1.40 gap");
    expect(said).toContain("× 1.79 gap");
    expect(said).toContain("Gap between slow and middle; middle and fast");
    expect(said).not.toContain("Every speed");
  });
});

describe("the speed diagram of a variable motor", () => {
  const count = (marks: readonly Mark[], name: string): number =>
    marks.reduce(
      (sum, mark) => (mark.kind === "group" ? sum + Number(mark.name === name) + count(mark.marks, name) : sum),
      0,
    );
  const grouped = (findings: Findings, name: string): number =>
    printOf(findings, "speed-diagram").pages.reduce((sum, { drawing }) => sum + count(drawing.marks, name), 0);

  test("joins the slowest and the fastest line of each position, and says what lies between", () => {
    const findings = machine();
    const said = textsOf(findings, "speed-diagram");
    for (const range of ["200–500", "400–1000", "1020–2550"]) expect(said.split(" ")).toContain(range);
    expect(said).toContain("Any speed between the two lines of a belt position is set at the motor");
    expect(said).not.toContain("between two lines take the slower");
    expect([grouped(findings, "between"), grouped(findings, "position")]).toEqual([3, 6]);
    // Every line says its speed at the frame, beside the list, which has it in a range.
    for (const rpm of ["200", "400", "500", "1000", "1020", "2550"]) expect(said.split(" ")).toContain(rpm);
  });

  test("one speed has no bar", () => {
    const findings = machine({ motor: "1000 rpm" });
    expect([grouped(findings, "between"), grouped(findings, "position")]).toEqual([0, 3]);
    expect(textsOf(findings, "speed-diagram")).toContain("between two lines take the slower");
  });

  test("its example may be set between two lines", () => {
    expect(textsOf(machine(), "speed-diagram")).toMatch(/The dots show one way: .* rpm, belt (slow|middle|fast)/);
  });
});
