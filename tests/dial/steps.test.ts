import { describe, expect, test } from "vitest";
import { angleMarks } from "../../src/dial/angleScale.js";
import { closings, closingWords } from "../../src/dial/closing.js";
import { divisionValues, namedDivisionValue } from "../../src/dial/divisionValue.js";
import { isLong } from "../../src/dial/legibility.js";
import { linearDivision, linearMarks, turnsDivision } from "../../src/dial/linearScale.js";
import { startReadings, withinATurn } from "../../src/dial/reading.js";
import { dialGears } from "../../src/dial/reductionGears.js";
import { stepMarks } from "../../src/dial/stepMarks.js";

describe("marks at whole steps", () => {
  const marks = (more: Partial<Parameters<typeof stepMarks>[0]>) =>
    stepMarks({ from: -2, to: 12, step: 1, long: 10, middle: 5, numbered: 4, per: 1, ...more });

  test("long at tens and at numbers, middling at fives, short between; from end to end", () => {
    const all = marks({});
    expect(all.map(({ value }) => value)).toEqual(Array.from({ length: 15 }, (_, k) => k - 2));
    expect(all.map(({ rank }) => rank).join("")).toBe("331333123313131".slice(0, 15));
    expect(all.flatMap(({ label }) => label ?? [])).toEqual(["0", "4", "8", "12"]);
    expect(all.every((mark) => !("part" in mark))).toBe(true);
  });

  test("numbers count what they stand for, without a sign where both sides are alike", () => {
    expect(marks({ from: -4, to: 4, per: 8 }).flatMap(({ label }) => label ?? [])).toEqual(["−0.5", "0", "0.5"]);
    expect(marks({ from: -4, to: 4, unsigned: true }).flatMap(({ label }) => label ?? [])).toEqual(["4", "0", "4"]);
  });

  test("ends between two steps begin and end within; none where there is no room", () => {
    expect(marks({ from: 0.5, to: 2.9 }).map(({ value }) => value)).toEqual([1, 2]);
    expect(marks({ from: 1.2, to: 1.8 })).toEqual([]);
    // 0.3 / 0.1 is a hair less than 3.
    expect(marks({ from: 0, to: 0.3, step: 0.1 })).toHaveLength(4);
    expect(marks({ from: 0.1 + 0.2, to: 0.5, step: 0.1 })).toHaveLength(3);
  });
});

test("an angle scale: tens long, fives middling, numbers 4 mm apart at least on the paper", () => {
  const at = (step: number, perDegree: number) => angleMarks({ from: -60, to: 60, step }, (perDegree * 180) / Math.PI);
  const numbered = (marks: ReturnType<typeof at>) =>
    marks.filter(({ label, value }) => label !== undefined && value >= 0).map(({ value }) => value);
  expect(numbered(at(1, 1)).slice(0, 4)).toEqual([0, 5, 10, 15]);
  expect(numbered(at(1, 0.5)).slice(0, 4)).toEqual([0, 10, 20, 30]);
  expect(numbered(at(1, 0.25)).slice(0, 3)).toEqual([0, 20, 40]);
  expect(numbered(at(1, 0.1)).slice(0, 3)).toEqual([0, 30, 60]);
  // Half degrees: each whole one is middling, each fifth long. Twos: tens are fives of them. Fives: twos.
  expect(numbered(at(0.5, 5)).slice(0, 3)).toEqual([0, 1, 2]);
  expect(numbered(at(0.5, 1)).slice(0, 3)).toEqual([0, 5, 10]);
  expect(
    at(2, 1)
      .filter(({ value, rank }) => rank === 1 && value > 0)
      .map(({ value }) => value)[0],
  ).toBe(6);
  expect(numbered(at(5, 1)).slice(0, 3)).toEqual([0, 5, 10]);
  const thirty = at(1, 1).find(({ value }) => value === 30);
  expect(thirty?.angle).toBeCloseTo(Math.PI / 6, 12);
});

test("a straight scale is numbered 5 mm apart at least: by fives, tens, twenties, fifties, hundreds", () => {
  expect([1, 0.5, 0.25, 0.1, 0.05, 0.01].map((value) => linearDivision(value, "mm").numbered)).toEqual([
    5, 10, 20, 50, 100, 100,
  ]);
  expect(linearDivision(2.5, "mm")).toMatchObject({ long: 4, middle: 2, numbered: 2, per: 1, unit: "mm" });
  expect(linearDivision(1, "mm")).toMatchObject({ long: 10, middle: 5 });
  // 1/16 in under a file in millimetres is a length like any other.
  expect(linearDivision(25.4 / 16, "mm")).not.toHaveProperty("halved");
  expect(linearDivision(25.4 / 3, "in")).not.toHaveProperty("halved");
  expect(linearMarks(linearDivision(1, "mm"), 10).filter(({ label }) => label)).toHaveLength(3);
  expect(turnsDivision(2, 10)).toMatchObject({ value: 0.2, long: 10, middle: 5, numbered: 50, per: 2 });
  expect(turnsDivision(6, 5)).toMatchObject({ long: 5, middle: 5, numbered: 5 });
});

test("round values within the bounds, both ends taken in", () => {
  expect(divisionValues("mm", 0.01, 0.1).map(({ value }) => value)).toEqual([0.01, 0.02, 0.025, 0.04, 0.05, 0.1]);
  expect(divisionValues("mm", 0.0101, 0.0999).map(({ value }) => value)).toEqual([0.02, 0.025, 0.04, 0.05]);
  expect(divisionValues("in", 0.0254, 0.254).map(({ value }) => value / 25.4)).toEqual(
    [0.001, 0.002, 0.0025, 0.004, 0.005, 0.01].map((one) => expect.closeTo(one, 12)),
  );
  expect(divisionValues("mm", 5, 20).map(({ value }) => value)).toEqual([5, 10, 20]);
  expect([namedDivisionValue(0.0254, "mm"), namedDivisionValue(0.02, "in"), namedDivisionValue(25.4, "mm")]).toEqual([
    { value: 0.0254, unit: "in" },
    { value: 0.02, unit: "mm" },
    { value: 25.4, unit: "in" },
  ]);
});

test("turns after which divisions come round: none before one division is met, and those that close told as such", () => {
  expect(closings(0.3, 1)[0]?.divisions).toBeGreaterThan(0);
  expect(closings(0.3, 1).at(-1)).toEqual({ turns: 10, divisions: 3, error: 0 });
  expect(closingWords(closings(4.225, 0.05), "mm")).toContain("169");
});

test("a last division is long only beyond the others", () => {
  expect([0.9, 1, 1.1].map((last) => isLong({ last, divisionValue: 1 }))).toEqual([false, false, true]);
  expect(isLong({ divisionValue: 1 })).toBe(false);
});

test("start readings to the end of the travel, that of a hair under a whole turn too; a travel of a turn is not within it", () => {
  expect(startReadings(0.1, 0.3)).toHaveLength(4);
  expect(startReadings(2, 5.9)).toEqual([0, 2, 4]);
  expect(startReadings(2, 1000, 3)).toEqual([0, 2, 4, 6]);
  const within = (overTravel?: number) => withinATurn({ perTurn: 2, ...(overTravel !== undefined && { overTravel }) });
  expect([1.9, 2 - 1e-12, 2, undefined].map(within)).toEqual([true, false, false, false]);
  expect(withinATurn(undefined)).toBe(false);
});

test("gears make inches of inches and millimetres of millimetres, the nearest first, no ratio beyond 3", () => {
  // 20 threads to the inch, 0.05 in a turn: 2 to 1 makes a tenth; in mm 127 over 100 makes one of 1 mm.
  const inches = dialGears(1.27, [20, 40, 60], "in");
  expect(inches.map(({ perDialTurn }) => perDialTurn / 25.4)).toEqual(
    expect.arrayContaining([0.05, 0.1].map((one) => expect.closeTo(one, 12))),
  );
  expect(inches.every(({ driver, driven }) => driven / driver <= 3 && driver / driven <= 3)).toBe(true);
  expect(dialGears(1.27, [127, 100, 100], "mm")).toContainEqual(
    expect.objectContaining({ driver: 127, driven: 100, perDialTurn: 1 }),
  );
  // The order of the list is nobody's business; of pairs as good that of fewer teeth.
  const list = [30, 60, 20, 40];
  expect(dialGears(1.27, list, "in")).toEqual(dialGears(1.27, [...list].reverse(), "in"));
  expect(dialGears(1, list, "mm").find(({ perDialTurn }) => perDialTurn === 2)).toMatchObject({
    driver: 20,
    driven: 40,
  });
  expect(dialGears(1, [20, 40], "mm", 1)).toHaveLength(1);
});
