import fc from "fast-check";
import { expect, test } from "vitest";
import type { HandwheelFinding } from "../../src/findings/findings.js";
import { alike, atMost, MEASURED, measuredAtBest } from "../../src/plan/doubt.js";
import { firmnessOf } from "../../src/plan/firmness.js";
import { cutsNeeded, type Depths, MOST_PASSES, passes } from "../../src/plan/passes.js";

const cuts = (depths: Partial<Depths>) =>
  passes({ from: 0, to: 3, cut: 1, finish: 0.2, spring: false, ...depths }, undefined).map(
    ({ kind, depth, travel }) => [kind, Number(depth.toFixed(6)), Number(travel.toFixed(6))] as const,
  );

test("3 mm in cuts of 1 with 0.2 for the last: three of 0.9333 and that", () => {
  expect(cuts({})).toEqual([
    ["rough", 0.933333, 0.933333],
    ["rough", 0.933333, 1.866667],
    ["rough", 0.933333, 2.8],
    ["finish", 0.2, 3],
  ]);
});

test("without a depth for the last all are equal; outwards the slide goes to less", () => {
  expect(cuts({ finish: undefined })).toEqual([
    ["rough", 1, 1],
    ["rough", 1, 2],
    ["finish", 1, 3],
  ]);
  expect(cuts({ from: 5, to: 3.5, finish: undefined })).toEqual([
    ["rough", 0.75, 4.25],
    ["finish", 0.75, 3.5],
  ]);
  expect(cuts({ from: 5, to: 3.5, finish: 0.5 })).toEqual([
    ["rough", 1, 4],
    ["finish", 0.5, 3.5],
  ]);
});

test("a last cut is no deeper than any other, nor than all there is; a spring pass takes nothing more", () => {
  expect(cuts({ to: 2, finish: 5 })).toEqual([
    ["rough", 1, 1],
    ["finish", 1, 2],
  ]);
  expect(cuts({ to: 0.1 })).toEqual([["finish", 0.1, 0.1]]);
  expect(cuts({ to: 0.1, spring: true })).toEqual([
    ["finish", 0.1, 0.1],
    ["spring", 0, 0.1],
  ]);
  expect(cuts({ to: 2, finish: 0 })).toEqual([
    ["rough", 1, 1],
    ["rough", 1, 2],
  ]);
  expect(cuts({ to: 2, finish: 0, spring: true }).map(([kind]) => kind)).toEqual(["rough", "rough"]);
});

test("nothing to take is no pass; more than anyone takes are none", () => {
  expect(cuts({ to: 0 })).toEqual([]);
  expect(cuts({ to: 1e-10 })).toEqual([]);
  expect(cuts({ to: 199.2, spring: true })).toHaveLength(MOST_PASSES + 1);
  expect(cuts({ to: 199.3 })).toEqual([]);
  expect(cutsNeeded({ from: 0, to: 199.2, cut: 1, finish: 0.2, spring: false })).toBe(200);
  expect(cutsNeeded({ from: 3, to: 0, cut: 1, finish: 0.2, spring: true })).toBe(4);
  expect(cutsNeeded({ from: 0, to: 0.1, cut: 1, finish: 0.2, spring: false })).toBe(1);
});

test("property: cuts add up to the whole depth, none is too deep, none fewer would do", () => {
  const thousandths = (least: number, most: number) =>
    fc.integer({ min: least, max: most }).map((whole) => whole / 1000);
  const some = thousandths(50, 20_000);
  fc.assert(
    fc.property(
      some,
      some,
      fc.option(thousandths(10, 500), { nil: undefined }),
      fc.boolean(),
      (depth, cut, finish, outwards) => {
        const [from, to] = outwards ? [depth, 0] : [0, depth];
        const all = passes({ from, to, cut, finish, spring: false }, undefined);
        if (all.length === 0) {
          expect(depth / cut).toBeGreaterThan(MOST_PASSES - 3);
          return;
        }
        expect(all.reduce((sum, one) => sum + one.depth, 0)).toBeCloseTo(depth, 9);
        expect(all.at(-1)?.travel).toBeCloseTo(to, 9);
        for (const one of all) expect(one.depth).toBeLessThanOrEqual(cut * (1 + 1e-6));
        const last = finish === undefined ? 0 : Math.min(finish, cut, depth);
        const rough = all.length - (finish === undefined ? 0 : 1);
        expect(rough).toBe(Math.ceil(Math.round(1000 * (depth - last)) / Math.round(1000 * cut)));
      },
    ),
  );
});

/** A wheel of 2 mm a turn in 100 divisions, its feed known to 0.001 mm a turn. */
const wheel = (more: object = {}, measured?: object) =>
  ({
    feed: { perTurn: 2, uncertainty: 0.001, ...(measured && { measured }), ...more },
    reading: { perTurn: 2, factor: 1 },
    dial: { divisionWorth: 0.02 },
  }) as unknown as HandwheelFinding;

test("what a slide may be off is added up: the feed's doubt for the turns, a tenth of a division at both ends, and what they stray by", () => {
  expect(atMost(wheel(), 10)).toBeCloseTo(5 * 0.001 + 2 * 0.002, 12);
  expect(atMost(wheel(), -10)).toBeCloseTo(5 * 0.001 + 2 * 0.002, 12);
  expect(atMost(wheel(), 0)).toBeCloseTo(0.004, 12);
  const measured = { from: 0, to: 10, position: 0.003 };
  expect(atMost(wheel({}, measured), 10)).toBeCloseTo(5 * 0.001 + 2 * (0.002 + 0.003), 12);
  // A worn slide of up to 0.05 over its whole way, half of that here.
  const worn = { ...measured, uneven: { most: [0, 0.025, 0.05] } };
  expect(atMost(wheel({}, worn), 10)).toBeCloseTo(5 * 0.001 + 0.01 + 0.025, 12);
});

test("nothing is promised without a doubt of the feed, without a dial, or far beyond what was measured", () => {
  expect(atMost(wheel({ uncertainty: undefined }), 10)).toBeUndefined();
  expect(atMost({ ...wheel(), dial: undefined } as never, 10)).toBeUndefined();
  expect(atMost({ ...wheel(), feed: undefined } as never, 10)).toBeUndefined();
  const measured = { from: 0, to: 2, position: 0 };
  expect(atMost(wheel({}, measured), 4)).toBeDefined();
  expect(atMost(wheel({}, measured), 4000)).toBeUndefined();
  expect(atMost(wheel({}, measured), -4000)).toBeUndefined();
});

test("a diameter is in doubt by the gauge and twice both ends, parts alike by both ends", () => {
  expect(measuredAtBest(wheel(), "mm")).toBeCloseTo(0.01 + 2 * 0.004, 12);
  expect(measuredAtBest(wheel(), "in")).toBeCloseTo(MEASURED.in + 2 * 0.004, 12);
  expect(MEASURED.in).toBeCloseTo(0.0005 * 25.4, 12);
  expect(alike(wheel())).toBeCloseTo(0.004, 12);
  expect(alike({ ...wheel(), dial: undefined } as never)).toBeUndefined();
  expect(alike({ ...wheel(), feed: undefined } as never)).toBeUndefined();
});

test("a light machine bears a millimetre, a firm one two, unless the file says", () => {
  expect(firmnessOf({}, "mm").deepest).toBe(1);
  expect(firmnessOf({ firmness: "light" }, "in").deepest).toBeCloseTo(0.04 * 25.4, 12);
  expect(firmnessOf({ firmness: "firm" }, "mm").deepest).toBe(2);
  expect(firmnessOf({ deepest: 0.3, firmness: "firm" }, "mm")).toEqual({ deepest: 0.3, why: "work: deepest" });
  expect(firmnessOf({ firmness: "firm" }, "mm").why).not.toBe(firmnessOf({}, "mm").why);
});
