import { describe, expect, test } from "vitest";
import { threads } from "../../src/thread/data.js";
import { baByFormula, engagementOf, tappingHole, threadsOf } from "../../src/thread/thread.js";

describe("tapping drills", () => {
  test('1/4-20 with a 0.201 in hole leaves 75.44 % ("Technical formulas", catalogue page, scribd 327450604)', () => {
    expect(engagementOf({ system: "UNC", major: 6.35, pitch: 1.27 }, 0.201 * 25.4) * 100).toBeCloseTo(75.44, 2);
  });
  test('M8 × 1.25 with a 6.80 mm hole leaves 73.90 % ("Technical formulas", catalogue page, scribd 327450604)', () => {
    expect(engagementOf({ system: "metric coarse", major: 8, pitch: 1.25 }, 6.8) * 100).toBeCloseTo(73.9, 1);
  });
  test("1/4-20 at 75 %: 0.20129 in (rule read at scribd 327450604; computed)", () => {
    expect(tappingHole({ system: "UNC", major: 6.35, pitch: 1.27 }, 0.75) / 25.4).toBeCloseTo(0.20129, 4);
  });
  test.each([
    [1.3, 54],
    [1.25, 66],
    [1.2, 79],
  ])("0-80 with %f mm: %i %% of full thread (Machinery's Handbook, 31st ed., p. 2155, table 2)", (hole, percent) => {
    expect(
      Math.abs(engagementOf({ system: "UNF", major: 0.06 * 25.4, pitch: 25.4 / 80 }, hole) * 100 - percent),
    ).toBeLessThanOrEqual(0.55);
  });
  test("M10: 10 − 1.5 = 8.5 mm, the published drill (CITS Fitter Trade Theory, NIMI, p. 55)", () => {
    expect(threadsOf("metric coarse").find(({ name }) => name === "M10")?.publishedDrill).toBe(8.5);
  });
});

describe("BA", () => {
  const rows = threadsOf("BA");
  test("there are 17 sizes", () => expect(rows).toHaveLength(17));
  test.each(rows)(
    "$name: the table's pitch and diameter are the formula's, rounded (BS 93 as quoted; diameters: IBLS Threads page; formula for the diameter from memory)",
    ({ name, pitch, major }) => {
      const formula = baByFormula(Number.parseInt(name, 10));
      expect(Math.abs(formula.pitch - pitch)).toBeLessThanOrEqual(0.006);
      expect(Math.abs(formula.major - major)).toBeLessThanOrEqual(0.055);
    },
  );
});

test("UN machine screws: major = 0.060 + 0.013 N inch (H. J. Coventry, 1954, as quoted by IBLS)", () => {
  const numbered = threads.filter(({ system, name }) => (system === "UNC" || system === "UNF") && name.startsWith("#"));
  expect(numbered.length).toBeGreaterThan(12);
  for (const { name, major } of numbered)
    expect(major / 25.4).toBeCloseTo(0.06 + 0.013 * Number.parseInt(name.slice(1), 10), 3);
});

test("every published drill leaves between half and a full thread", () => {
  for (const { system } of threads)
    for (const { name, publishedEngagement } of threadsOf(system))
      if (publishedEngagement !== undefined)
        expect([name, publishedEngagement > 0.5 && publishedEngagement < 1]).toEqual([name, true]);
});
