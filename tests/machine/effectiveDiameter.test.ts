import { expect, test } from "vitest";
import {
  effectiveDiameter,
  type PulleyMeasure,
  veeDepthsOf,
  veeSections,
} from "../../src/machine/effectiveDiameter.js";
import { rackTravel } from "../../src/machine/rackTravel.js";

const lacks = (words: RegExp) => ({ lacks: expect.stringMatching(words) });
const of = (by: PulleyMeasure["by"], size: number) => ({ by, size }) as PulleyMeasure;

test("an effective diameter needs no belt", () => expect(effectiveDiameter(of("effective", 52), undefined)).toBe(52));

test("a flat pulley of 11.78 in with a belt of 0.22 in is one of 12 in (J. Rose, Modern Machine-Shop Practice)", () => {
  expect(effectiveDiameter(of("outside", 299.212), { kind: "flat", size: 5.588 })).toBeCloseTo(304.8, 9);
});

test.each([
  ["outside", 100, { kind: "flat", size: 4 }, 104],
  ["string", 100 * Math.PI, { kind: "flat", size: 4 }, 104],
  ["overBelt", 108, { kind: "flat", size: 4 }, 104],
  ["stringOver", 108 * Math.PI, { kind: "flat", size: 4 }, 104],
  ["overBelt", 55, { kind: "round", size: 5 }, 50],
  ["stringOver", 55 * Math.PI, { kind: "round", size: 5 }, 50],
  ["outside", 60, { kind: "vee", section: "Z" }, 56],
  ["overBelt", 60, { kind: "vee", section: "Z" }, 56],
  ["string", 60 * Math.PI, { kind: "vee", section: "Z" }, 56],
  // An inch section: 0.125 in from the rim.
  ["outside", 101.6, { kind: "vee", section: "A" }, 101.6 - 6.35],
  ["teeth", 20, { kind: "toothed", size: 5 }, 100 / Math.PI],
] as const)("by %s, %d with %o runs at %d mm", (by, size, belt, effective) =>
  expect(effectiveDiameter(of(by, size), belt)).toBeCloseTo(effective, 9),
);

test.each([
  ["teeth", undefined, /pitch of a toothed belt/],
  ["teeth", { kind: "toothed" }, /pitch of a toothed belt/],
  ["teeth", { kind: "flat", size: 2 }, /pitch of a toothed belt/],
  ["outside", undefined, /kind of belt/],
  ["outside", { kind: "vee" }, /section of a vee belt/],
  ["outside", { kind: "toothed", size: 5 }, /by teeth and pitch/],
  ["overBelt", { kind: "toothed", size: 5 }, /by teeth and pitch/],
  ["outside", { kind: "flat" }, /thickness of the belt, as in belt: flat, 5 mm/],
  ["overBelt", { kind: "round" }, /thickness of the belt, as in belt: round, 5 mm/],
  ["outside", { kind: "round", size: 5 }, /over the belt as it lies in its groove/],
  ["string", { kind: "round", size: 5 }, /over the belt as it lies in its groove/],
] as const)("by %s with %o it lacks something", (by, belt, words) =>
  expect(effectiveDiameter(of(by, 50), belt)).toEqual(lacks(words)),
);

test("sections lie deeper the larger they are, in either edition", () => {
  const depths = veeSections.map((section) => veeDepthsOf(section).map(({ depth }) => depth));
  expect(veeSections).toEqual(["Z", "A", "B", "C"]);
  expect(depths.map(([gone]) => gone)).toEqual([2, 3.175, 4.445, 5.08].map((depth) => expect.closeTo(depth, 9)));
  expect(depths.map((all) => all.at(-1))).toEqual([2, 2.75, 3.5, 4.8]);
});

test("a pinion of 20 teeth, module 1, moves 62.8 mm a turn; geared 12 to 48 a quarter of that (circumference of the pitch circle)", () => {
  expect(rackTravel({ module: 1, teeth: 20, reduction: [1, 1] })).toBeCloseTo(62.8319, 4);
  expect(rackTravel({ module: 1, teeth: 20, reduction: [12, 48] })).toBeCloseTo(15.708, 3);
  expect(rackTravel({ module: 2, teeth: 20, reduction: [12, 48] })).toBeCloseTo(31.4159, 4);
});
