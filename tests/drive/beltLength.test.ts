import * as fc from "fast-check";
import { expect, test } from "vitest";
import { beltFinding, cutLength } from "../../src/drive/beltFinding.js";
import { type BeltRun, beltLength, centresFor, matchingDiameter, wrapAngles } from "../../src/drive/beltLength.js";

const size = fc.double({ min: 10, max: 400, noNaN: true });
const run = fc.constantFrom<BeltRun>("open", "crossed");
const apart = fc.double({ min: 1.02, max: 10, noNaN: true });
const numRuns = 60;

test("a belt's length gives its centres and the other pulley back", () => {
  fc.assert(
    fc.property(size, size, apart, run, (a, b, share, way) => {
      const centres = (share * (a + b)) / 2;
      const length = beltLength(a, b, centres, way) ?? 0;
      expect(centresFor(length, a, b, way)).toBeCloseTo(centres, 6);
      expect(matchingDiameter(length, a, centres, way)).toBeCloseTo(b, 6);
    }),
    { numRuns },
  );
});

/** Walks the belt as a polygon: tangent points from the wrap angles, chords round the pulleys. Does not use the formula. */
test("the length is that of the path walked along it", () => {
  fc.assert(
    fc.property(size, size, apart, (a, b, share) => {
      const centres = (share * (a + b)) / 2;
      const wrap = wrapAngles(a, b, centres, "open") ?? { driver: 0, driven: 0 };
      // Tangent points lie at ± half of what the wrap leaves free, seen from the line of centres.
      const half = Math.PI - wrap.driver / 2;
      const at = (x: number, d: number, angle: number) => [x + (d / 2) * Math.cos(angle), (d / 2) * Math.sin(angle)];
      const [ax = 0, ay = 0] = at(0, a, half);
      const [bx = 0, by = 0] = at(centres, b, half);
      const walked = 2 * Math.hypot(bx - ax, by - ay) + (wrap.driver * a) / 2 + (wrap.driven * b) / 2;
      expect(beltLength(a, b, centres, "open")).toBeCloseTo(walked, 6);
      expect(wrap.driver + wrap.driven).toBeCloseTo(2 * Math.PI, 9);
    }),
    { numRuns },
  );
});

test("a crossed belt is longer than an open one, and pulleys that touch have none", () => {
  fc.assert(
    fc.property(size, size, apart, (a, b, share) => {
      const centres = (share * (a + b)) / 2;
      expect(beltLength(a, b, centres, "crossed") ?? 0).toBeGreaterThan(beltLength(a, b, centres, "open") ?? 0);
    }),
    { numRuns },
  );
  expect(beltLength(50, 150, 100, "open")).toBeUndefined();
});

test("whether one belt serves every step, and how far the shafts must move if not", () => {
  const even = beltFinding({
    name: "even",
    centres: 140,
    steps: [
      { label: "A", kind: "belt", driver: 76, driven: 50 },
      { label: "B", kind: "belt", driver: 63, driven: 63 },
      { label: "C", kind: "belt", driver: 50, driven: 76 },
    ],
  });
  expect(even?.oneServesAll).toBe(true);
  expect(even?.longest).toBeCloseTo(beltLength(76, 50, 140, "open") ?? 0, 9);

  const uneven = beltFinding({
    name: "uneven",
    centres: 140,
    steps: [
      { label: "A", kind: "belt", driver: 90, driven: 50 },
      { label: "B", kind: "belt", driver: 50, driven: 50 },
    ],
  });
  expect(uneven?.oneServesAll).toBe(false);
  for (const step of uneven?.steps ?? [])
    expect(beltLength(step.driver, step.driven, 140 + step.move, "open")).toBeCloseTo(uneven?.shortest ?? 0, 6);
  expect(uneven?.steps.map(({ move }) => Math.sign(Math.round(move * 1000)))).toEqual([-1, 0]);
});

test("a joined belt is cut short by its stretch: pulled by it, it has the length that is needed", () => {
  expect(cutLength(660, 0.06) * 1.06).toBeCloseTo(660, 9);
});
