import { expect, test } from "vitest";
import { turnsTold } from "../../src/blocks/work/turnsTold.js";
import { findingsOf } from "../support/sheets.js";

const told = (rest: string, usual = 12, first = 1) => {
  const [wheel] = findingsOf(`name: L\nhandwheels: [{ name: Slide, ${rest} }]\n`).handwheels;
  return wheel === undefined ? [] : turnsTold(wheel, usual, first);
};

test("whole turns go over the whole travel, not twelve of them", () => {
  expect(told("travel: 60, feed: 2 mm")).toEqual(Array.from({ length: 30 }, (_, turn) => turn + 1));
  expect(told("travel: 5.9, feed: 2 mm")).toEqual([1, 2]);
  // Just so many turns fill the travel, whatever rounding makes of the quotient.
  expect(told("travel: 0.3, feed: 0.1 mm")).toEqual([1, 2, 3]);
});

test("beyond sixty turns each of the first twenty, then every tenth, and the last", () => {
  const turns = told("travel: 62.5, feed: 0.5 mm");
  expect(turns.slice(0, 20)).toEqual(Array.from({ length: 20 }, (_, turn) => turn + 1));
  expect(turns.slice(20)).toEqual([30, 40, 50, 60, 70, 80, 90, 100, 110, 120, 125]);
});

test("without a travel the usual number; a table of depths begins with no whole turn", () => {
  expect(told("feed: 2 mm", 4)).toEqual([1, 2, 3, 4]);
  expect(told("travel: 50, feed: 40 mm", 8, 0)).toEqual([0, 1]);
});
