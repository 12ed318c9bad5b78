import { expect, test } from "vitest";
import { problemsOf } from "../support/problems.js";

const told = (turns: string) =>
  problemsOf(`name: L\ngears: [20, 24]\nhandwheels: [{ name: S, feed: 2, distances: [${turns}] }]\n`).filter(
    ({ code }) => code === "decimal-comma",
  ).length;

test.each([
  ["0,99, 1,99, 2,98", 3],
  ["1, 1,5, 2, 2,5, 3", 2],
  ["3, 0,5, 3, 0,6", 2],
  ["0,99 mm, 1,99 mm", 2],
])("decimal commas in a list are told: [%s]", (list, many) => expect(told(list)).toBe(many));

test.each(["1,2,3,4", "1, 2, 3", "20, 24,25, 28", "1,1.25,1.5, 2,2.25", "1,2, 3,4", "8, 3,4,5, 6"])(
  "a list that is only carelessly spaced is let pass: [%s]",
  (list) => expect(told(list)).toBe(0),
);
