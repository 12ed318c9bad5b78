import fc from "fast-check";
import { expect, test } from "vitest";
import { printerCorrection } from "../../src/paper/printerCorrection.js";

type Point = { x: number; y: number };
const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

test("the inverse of any small stretch and skew is found from two bars and two diagonals, to 1e-9", () => {
  const stretch = fc.double({ min: 0.96, max: 1.04, noNaN: true });
  const skew = fc.double({ min: -0.02, max: 0.02, noNaN: true });
  fc.assert(
    fc.property(stretch, stretch, skew, (sx, sy, k) => {
      // What the printer does, and what a person then measures on the page, straight from the definition.
      const printed = ({ x, y }: Point): Point => ({ x: sx * x + k * y, y: sy * y });
      const [width, height] = [200, 250];
      const corner = {
        topLeft: { x: 0, y: 0 },
        topRight: { x: width, y: 0 },
        bottomLeft: { x: 0, y: height },
        bottomRight: { x: width, y: height },
      };
      const measure = (a: Point, b: Point) => distance(printed(a), printed(b));
      const [a, b, c, d, e, f] = printerCorrection({
        across: { measured: measure(corner.topLeft, corner.topRight), nominal: width },
        // A person lays the rule along the bar, which leans by the skew.
        down: { measured: measure(corner.bottomLeft, corner.topLeft), nominal: height },
        diagonals: [measure(corner.topLeft, corner.bottomRight), measure(corner.topRight, corner.bottomLeft)],
      });
      for (const point of [{ x: 13, y: 250 }, { x: 190, y: 7 }, corner.bottomRight]) {
        const sent = { x: a * point.x + c * point.y + e, y: b * point.x + d * point.y + f };
        const arrived = printed(sent);
        expect(Math.abs(arrived.x - point.x)).toBeLessThan(1e-9);
        expect(Math.abs(arrived.y - point.y)).toBeLessThan(1e-9);
      }
    }),
  );
});

test("no printer, no correction", () =>
  expect(printerCorrection(undefined).map((part) => part + 0)).toEqual([1, 0, 0, 1, 0, 0]));
