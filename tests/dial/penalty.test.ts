import { describe, expect, test } from "vitest";
import { type Merits, penalty } from "../../src/dial/penalty.js";

/** Nothing against it: 100 divisions of 0.02 mm, 1.5 mm apart, no error. */
const best: Merits = {
  errorOverTravel: 0,
  doubtOverTravel: 0,
  divisionValue: 0.01,
  leadingDigits: 1,
  otherUnit: false,
  spacing: 1.5,
  divisions: 100,
  rows: 1,
  rowsDoNotClose: false,
  rowHeight: 9,
  beginsAgain: false,
};
const against = (more: Partial<Merits>) => penalty({ ...best, ...more });
const rising = (...all: number[]) => all.every((one, i) => i === 0 || one > (all[i - 1] ?? 0));

test("a dial with nothing against it has none", () => expect(against({})).toBe(0));

describe("an error", () => {
  test("counts once more for each doubling, whichever way it goes, and less where the feed is no better known", () => {
    // 0.025 mm, a thousandth of an inch, is one step; three of them two.
    expect(against({ errorOverTravel: 0.025 })).toBeCloseTo(1, 12);
    expect(against({ errorOverTravel: -0.075 })).toBeCloseTo(2, 12);
    expect(against({ errorOverTravel: 0.075, doubtOverTravel: 1 })).toBeCloseTo(0.6, 12);
    // Half of it beyond the doubt.
    expect(against({ errorOverTravel: 0.05, doubtOverTravel: 0.025 })).toBeCloseTo(1.3, 12);
    expect(against({ doubtOverTravel: 1 })).toBe(0);
  });
  test("shows less on coarse divisions: a quarter of one is a step", () =>
    expect(against({ errorOverTravel: 0.25, divisionValue: 1 })).toBeCloseTo(1, 12));
});

test("marks from 1 to 2 mm apart are at ease; closer is crowded, wider gives reading away by each doubling", () => {
  for (const spacing of [1, 1.7, 2]) expect(against({ spacing })).toBe(0);
  expect(against({ spacing: 0.7 })).toBeCloseTo(1.2, 12);
  expect(against({ spacing: 0.85 })).toBeCloseTo(0.6, 12);
  expect([4, 8].map((spacing) => against({ spacing }))).toEqual([0.8, 1.6].map((one) => expect.closeTo(one, 12)));
});

test("1 before 2, 5, 2.5 and 4, all before odd values; the other unit before no other thing", () => {
  const values = [1, 2, 5, 2.5, 4, 3].map((leadingDigits) => against({ leadingDigits }));
  expect(rising(...values)).toBe(true);
  expect(against({ otherUnit: true })).toBeGreaterThan(Math.max(...values));
});

test("even dials of tens before fives before others; where turns are counted or rows run on it is all one", () => {
  expect(rising(against({ divisions: 120 }), against({ divisions: 125 }), against({ divisions: 127 }))).toBe(true);
  expect(against({ divisions: 120 })).toBe(0);
  for (const more of [{ beginsAgain: true }, { rows: 2 }])
    expect(against({ ...more, divisions: 127 })).toBe(against({ ...more, divisions: 120 }));
});

test("each row asks for attention, low ones and such as do not close for more", () => {
  expect(rising(against({}), against({ rows: 2 }), against({ rows: 3 }), against({ rows: 4 }))).toBe(true);
  expect(against({ rows: 4 }) - against({ rows: 3 })).toBeCloseTo(against({ rows: 3 }) - against({ rows: 2 }), 12);
  expect(against({ rows: 2, rowHeight: 3 })).toBe(against({ rows: 2 }));
  expect(against({ rows: 2, rowHeight: 2.9 })).toBeGreaterThan(against({ rows: 2 }));
  expect(against({ rows: 2, rowsDoNotClose: true })).toBeGreaterThan(against({ rows: 2 }));
  // Of one row neither is asked.
  expect(against({ rowHeight: 1, rowsDoNotClose: true })).toBe(0);
});

test("turns that must be counted, and a short last division that runs into the zero", () => {
  const counted = against({ beginsAgain: true });
  expect(counted).toBeGreaterThan(0);
  expect(against({ beginsAgain: true, shortGap: 0.4 })).toBe(counted);
  expect(against({ beginsAgain: true, shortGap: 0.39 })).toBeGreaterThan(counted);
});
