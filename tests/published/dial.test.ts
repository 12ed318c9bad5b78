import { describe, expect, test } from "vitest";
import { choicesFor } from "../../src/dial/choices.js";
import { divideEvenly, divideInRows, divideTruly, evenError } from "../../src/dial/division.js";
import { spacing } from "../../src/dial/strip.js";
import type { Handwheel } from "../../src/machine/machine.js";

const MM = 25.4;

/** Worth of a division when a collar is cut evenly into so many. */
function divisionOf(perTurn: number, divisions: number, reads: Handwheel["reads"] = "travel"): number {
  const turn = reads === "diameter" ? 2 * perTurn : perTurn;
  const value = turn / divisions;
  const wish = {
    shape: "drum",
    diameter: 40,
    width: 9,
    increases: "clockwise",
    divisions: value,
    closure: "even",
  } as const;
  const options = { stripLength: 125, units: "mm" } as const;
  const [choice] = choicesFor({ perTurn, from: "screw" }, reads, wish, options);
  if (choice?.divisions !== divisions || choice.errorPerTurn !== 0) throw new Error("the collar does not close");
  return choice.divisionValue;
}

describe("value of one division = lead / divisions", () => {
  test.each([
    [
      "40 tpi, 25 divisions: 0.001 in (Workshop Hints for Munition Workers, Cassell, 1917, pp. 114-116)",
      MM / 40,
      25,
      0.001 * MM,
    ],
    ["pitch 1 mm, 100 divisions: 0.01 mm (University of Malta, micrometer page)", 1, 100, 0.01],
    ["pitch 0.5 mm, 50 divisions: 0.01 mm (notetube.ai, screw gauge)", 0.5, 50, 0.01],
    ["pitch 0.5 mm, 100 divisions: 0.005 mm (siliconvlsi.com, least count)", 0.5, 100, 0.005],
    [
      "40 tpi, 250 lines: 0.0001 in (Measuring Tools, Machinery's Reference Series 21, p. 16)",
      MM / 40,
      250,
      0.0001 * MM,
    ],
    ["10 tpi, 100 divisions: 0.001 in (computed)", MM / 10, 100, 0.001 * MM],
    ["8 tpi, 125 divisions: 0.001 in (computed)", MM / 8, 125, 0.001 * MM],
    ["20 tpi, 50 divisions: 0.001 in (computed)", MM / 20, 50, 0.001 * MM],
    ["5 tpi, 200 divisions: 0.001 in (computed)", MM / 5, 200, 0.001 * MM],
  ])("%s", (_, perTurn, divisions, value) => {
    expect(divideEvenly(perTurn, value)).toMatchObject({ divisions, errorPerTurn: 0 });
    expect(divisionOf(perTurn, divisions)).toBeCloseTo(value, 12);
  });
});

test("a depth of cut of 0.100 in takes 0.200 in from the diameter (US Army TC 9-524, collars)", () => {
  const onTravel = divisionOf(MM / 10, 100, "travel");
  const onDiameter = divisionOf(MM / 10, 100, "diameter");
  const divisions = (0.1 * MM) / onTravel;
  expect(divisions * onDiameter).toBeCloseTo(0.2 * MM, 9);
});

test("a cross-slide division of 0.02 mm removes twice that from the diameter (johnfsworkshop.org, fine cuts)", () => {
  expect(divisionOf(2, 100)).toBeCloseTo(0.02, 12);
  expect(divisionOf(2, 100, "diameter")).toBeCloseTo(0.04, 12);
});

test("80 divisions on a screw of 2 mm: 0.025 mm of travel, 0.05 mm on diameter (common practice)", () => {
  expect(divisionOf(2, 80)).toBeCloseTo(0.025, 12);
  expect(divisionOf(2, 80, "diameter")).toBeCloseTo(0.05, 12);
});

const inch = 0.001 * MM;
describe("exact closure of a dial: divisions per turn = feed / division (computed)", () => {
  const values = [inch, 0.01, 0.02, 0.025, 0.05];
  test.each([
    ["1/10 in", 2.54, [100, 254, 127, 101.6, 50.8]],
    ["1/8 in", 3.175, [125, 317.5, 158.75, 127, 63.5]],
    ["1/16 in", 1.5875, [62.5, 158.75, 79.375, 63.5, 31.75]],
    ["1/20 in", 1.27, [50, 127, 63.5, 50.8, 25.4]],
    ["1 mm", 1, [39.3701, 100, 50, 40, 20]],
    ["1.25 mm", 1.25, [49.2126, 125, 62.5, 50, 25]],
    ["1.5 mm", 1.5, [59.0551, 150, 75, 60, 30]],
    ["2 mm", 2, [78.7402, 200, 100, 80, 40]],
  ])("%s", (_, turn, quotients) => {
    quotients.forEach((quotient, i) => {
      const value = values[i] ?? Number.NaN;
      const whole = Number.isInteger(quotient);
      const even = divideEvenly(turn, value);
      const truly = divideTruly(turn, value);
      expect(even.exact).toBe(whole);
      expect(truly.exact).toBe(whole);
      if (whole) expect([even.divisions, truly.divisions]).toEqual([quotient, quotient]);
      else expect(truly.divisions).toBe(Math.ceil(quotient));
      expect(even.divisions - even.errorPerTurn / value).toBeCloseTo(quotient, 4);
      expect(truly.leftOver / value).toBeCloseTo(quotient - Math.floor(quotient), 4);
      // Halves close in two rows, fifths in five, quarters in four; thousandths of an inch on metric screws in none.
      const least = [1, 2, 3, 4, 5, 6].find((rows) => Number.isInteger(Number((rows * quotient).toFixed(9))));
      const rows = divideInRows(turn, value);
      expect(rows.exact).toBe(least !== undefined);
      if (least !== undefined) expect(rows).toMatchObject({ rows: least, divisions: Math.round(least * quotient) });
    });
  });
});

test("20 tpi closes on 127 of 0.01 mm, 8 tpi on 127 of 0.025 mm (common practice: 127 is 5 × 25.4)", () => {
  expect(divideEvenly(MM / 20, 0.01)).toMatchObject({ divisions: 127, exact: true });
  expect(divideEvenly(MM / 8, 0.025)).toMatchObject({ divisions: 127, exact: true });
});

test("16 tpi on 0.001 in: 62 divisions are 0.0005 in short, 63 too many by as much, 125 close in two turns (computed)", () => {
  expect(evenError(MM / 16, inch, 62) / MM).toBeCloseTo(-0.0005, 12);
  expect(evenError(MM / 16, inch, 63) / MM).toBeCloseTo(0.0005, 12);
  expect(divideInRows(MM / 16, inch)).toMatchObject({ rows: 2, divisions: 125, exact: true });
});

test.each([
  [30, 50, 1.885],
  [40, 100, 1.257],
  [40, 127, 0.989],
  [50, 100, 1.571],
  [25, 100, 0.785],
])("drum of %d mm, %d divisions: marks %d mm apart (computed, π D / n)", (diameter, divisions, apart) => {
  expect(spacing(Math.PI * diameter, 1, 1 / divisions)).toBeCloseTo(apart, 3);
});
