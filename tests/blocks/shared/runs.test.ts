import { expect, test } from "vitest";
import { kept, lowered, together, whole } from "../../../src/blocks/shared/runs.js";

const run = { drawing: { width: 10, height: 4, marks: [] }, gap: 1 };
const three = [run, run, run];
const keeps = (runs: readonly { keepWithNext?: boolean }[]) => runs.map(({ keepWithNext }) => keepWithNext === true);

test("runs stay with what follows, or with each other alone", () => {
  expect(keeps(kept(three))).toEqual([true, true, true]);
  expect(keeps(together(three))).toEqual([true, true, false]);
  expect(together([])).toEqual([]);
});

test("runs that a page cannot hold, their gaps included, break where they must", () => {
  expect(keeps(whole(three, 15))).toEqual([true, true, false]);
  expect(keeps(whole(three, 14.9))).toEqual([false, false, false]);
});

test("only the first is lowered", () => expect(lowered(three, 7).map(({ gap }) => gap)).toEqual([7, 1, 1]));
