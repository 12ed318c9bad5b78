import { describe, expect, test } from "vitest";
import { toDegrees, toRadians } from "../../src/quantity/angle.js";
import { standardTapers } from "../../src/taper/standard.js";
import {
  centresBear,
  halfAngle,
  halfAngleOfTaper,
  setOver,
  sineBarStack,
  taperOfHalfAngle,
  taperPerFoot,
} from "../../src/taper/taper.js";
import { findingsOf, textsOf } from "../support/sheets.js";

describe("set-over of the tailstock", () => {
  test.each([
    { source: "tpub 14345, p. 168", taper: (3 - 2) / 12, length: 12, answer: 0.5 },
    { source: "tpub 14345, p. 168", taper: 1 / 12, length: 6, answer: 0.25 },
    { source: "Jones, Turning and Boring (1914)", taper: 1 / 12, length: 9, answer: 0.375 },
    { source: "Jones, Turning and Boring (1914), plug", taper: 1.5 / 12, length: 8, answer: 0.5 },
    { source: "Rose, Modern Machine-Shop Practice, p. 614", taper: 1 / 12, length: 36, answer: 1.5 },
  ])(
    "$answer in over $length in by the tangent ($source), by the sine a thousandth less",
    ({ taper, length, answer }) => {
      const angle = halfAngleOfTaper(taper);
      expect(setOver(angle, length)).toBeCloseTo(answer * Math.cos(angle), 12);
      expect(setOver(angle, length) / answer).toBeGreaterThan(0.998);
    },
  );

  test("the work is the longest side: 200 mm at 3° stand 10.4672 mm over (sine of 3°, 0.052336)", () => {
    expect(setOver(toRadians(3), 200)).toBeCloseTo(10.4672, 4);
  });

  test("plain centres bear no more than about 8° included (common practice)", () => {
    expect(centresBear(toRadians(4))).toBe(true);
    expect(centresBear(toRadians(4.1))).toBe(false);
    const sheet = (taper: string) => textsOf(findingsOf(`name: L\ntapers: [{ name: T, ${taper} }]\n`), "tapers");
    // 100 mm of work at 3.5° by the sine; no figure where centres do not bear.
    expect(sheet("included: 7 deg")).toMatch(/tailstock over by.* 6\.105 /);
    expect(sheet("included: 7 deg")).not.toContain("Not by setting the tailstock over");
    expect(sheet("included: 9 deg")).toMatch(/tailstock over by.*T 7\.846 – –: Not by setting the tailstock over/);
  });
});

describe("angles", () => {
  test("D 0.750, d 0.500, 2 in: half angle 3.58° (penturners.org 98673)", () =>
    expect(toDegrees(halfAngle(0.75, 0.5, 2))).toBeCloseTo(3.58, 2));
  test("D 2, d 1, L 2 in: 6 in a foot (NAVEDTRA 14076, p. 179)", () =>
    expect(taperOfHalfAngle(halfAngle(2, 1, 2)) * 12).toBeCloseTo(6, 12));
  test("a lathe centre of 60° is turned at 30° (US Army OD1645, p. 67)", () =>
    expect(toDegrees(halfAngleOfTaper(2 * Math.tan(toRadians(30))))).toBeCloseTo(30, 12));
  test("Morse 0: included 2.981572305° (homeshopmachinist.net t-5394)", () =>
    expect(2 * toDegrees(halfAngle(0.3561, 0.252, 2))).toBeCloseTo(2.981572305, 8));
  // The old table is good to about 3 seconds of arc.
  test.each([
    [1 / 4, 1, 11, 36],
    [1 / 2, 2, 23, 10],
    [5 / 8, 2, 59, 2],
    [3 / 4, 3, 34, 44],
    [1, 4, 46, 18],
    [4, 18, 55, 28],
  ])(
    "%f in a foot: included %i° %i′ %i″ (Tapers per Foot and Corresponding Angles, table 13, anyflip zwpy/mekr p. 551)",
    (perFoot, degrees, minutes, seconds) => {
      const included = 2 * toDegrees(halfAngleOfTaper(taperPerFoot(perFoot)));
      expect(Math.abs(included - (degrees + minutes / 60 + seconds / 3600)) * 3600).toBeLessThan(4);
    },
  );
  test.each([
    [1, 0.01746],
    [5, 0.08732],
    [10, 0.17498],
    [30, 0.5359],
    [50, 0.93262],
  ])("included %i°: %f in an inch (Turning and Boring Tapers, Derry Collard, 1902)", (included, perInch) => {
    expect(Math.abs(taperOfHalfAngle(toRadians(included / 2)) - perInch)).toBeLessThan(2.1e-5);
  });
});

describe("sine bar of 5 in", () => {
  test.each([
    [27, 2.27, "higherprecision.com"],
    [18, 1.545, "shopdawg.com"],
    [34 + 25 / 60, 2.826, "Handbook of Machining and Metalworking Calculations"],
  ])("%f°: %f in (%s)", (degrees, stack) => expect(sineBarStack(toRadians(degrees), 5)).toBeCloseTo(stack, 3));
});

test.each([
  ["Morse 1", 1.4287],
  ["Morse 2", 1.4307],
  ["Morse 3", 1.4377],
  ["Morse 4", 1.4876],
  ["Jarno 7", 1.4321],
])("%s: half angle %f° (Dimensions of Standard Tapers, vintagemachinery.org)", (name, printed) => {
  const found = standardTapers.find((taper) => taper.name === name);
  expect(toDegrees(halfAngleOfTaper(found?.taper ?? 0))).toBeCloseTo(printed, 4);
});
