import fc from "fast-check";
import { expect, test } from "vitest";
import {
  diameterError,
  halfAngle,
  pinDifference,
  riseAlongAxis,
  riseAlongSlide,
  taperOfHalfAngle,
} from "../../src/taper/taper.js";

const angle = fc.double({ min: 0.001, max: 1.2, noNaN: true });
const length = fc.double({ min: 1, max: 300, noNaN: true });

test("two gauge pins touch both legs of the angle: each centre is as far from the leg as its own radius", () => {
  fc.assert(
    fc.property(angle, length, length, (half, between, small) => {
      // On the bisector, from the vertex: the smaller pin where it touches, the larger `between` further on.
      const near = small / 2 / Math.sin(half);
      const toLeg = (along: number) => along * Math.sin(half);
      const large = small + pinDifference(2 * half, between);
      expect(toLeg(near + between)).toBeCloseTo(large / 2, 6);
    }),
    { numRuns: 100 },
  );
});

test("an indicator along the axis and the slide along its own way tell the same side", () => {
  fc.assert(
    fc.property(angle, length, (half, travel) => {
      expect(riseAlongSlide(half, travel / Math.cos(half))).toBeCloseTo(riseAlongAxis(half, travel), 6);
      // Twice the rise over the length is the taper, and gives the angle back.
      const rise = riseAlongAxis(half, travel);
      expect((2 * rise) / travel).toBeCloseTo(taperOfHalfAngle(half), 9);
      expect(halfAngle(10 + 2 * rise, 10, travel)).toBeCloseTo(half, 9);
    }),
    { numRuns: 100 },
  );
});

test("the sensitivity is the slope of the diameter with the angle", () => {
  fc.assert(
    fc.property(angle, length, (half, along) => {
      const step = 1e-6;
      const change = 2 * (riseAlongAxis(half + step, along) - riseAlongAxis(half - step, along));
      expect(diameterError(half, 2 * step, along) / change).toBeCloseTo(1, 4);
    }),
    { numRuns: 100 },
  );
});
