import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type Affine,
  liesAcross,
  mendedBar,
  pageCorrection,
  printerCorrection,
  printerDistortion,
} from "../../src/paper/printerCorrection.js";

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

const through = ([a, b, c, d, e, f]: Affine, { x, y }: Point): Point => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

test("property: a page comes out true, upright or across, though the printer stretches and leans its sheet", () => {
  const bar = fc.double({ min: 0.97, max: 1.03, noNaN: true });
  const side = fc.integer({ min: 100, max: 420 });
  fc.assert(
    fc.property(bar, bar, fc.double({ min: -1, max: 1, noNaN: true }), side, side, (sx, sy, lean, width, height) => {
      const printer = {
        across: { measured: 200 * sx, nominal: 200 },
        down: { measured: 250 * sy, nominal: 250 },
        diagonals: [320 + lean, 320 - lean] as const,
      };
      // Where a point of the page lies on the sheet held upright: a page across is a quarter turn anticlockwise, which leaves its
      // own left top at the sheet's left bottom.
      const onSheet = ({ x, y }: Point): Point => (width > height ? { x: y, y: width - x } : { x, y });
      const correction = pageCorrection(printer, { width, height });
      for (const point of [
        { x: 0, y: 0 },
        { x: width, y: height },
        { x: 17, y: height - 5 },
      ]) {
        const arrived = through(printerDistortion(printer), onSheet(through(correction, point)));
        expect(distance(arrived, onSheet(point))).toBeLessThan(1e-9);
      }
    }),
  );
});

test("a bar by itself corrects its own side; without both bars diagonals tell nothing", () => {
  const across = { measured: 198, nominal: 200 };
  const down = { measured: 252.5, nominal: 250 };
  expect(printerDistortion({ across })).toEqual([0.99, 0, 0, 1, 0, 0]);
  expect(printerDistortion({ down })).toEqual([1, 0, 0, 1.01, 0, 0]);
  expect(printerDistortion({ across, down })).toEqual([0.99, 0, 0, 1.01, 0, 0]);
  expect(printerDistortion({ across, diagonals: [321, 319] })).toEqual([0.99, 0, 0, 1, 0, 0]);
  expect(printerDistortion({ down, diagonals: [321, 319] })).toEqual([1, 0, 0, 1.01, 0, 0]);
  expect(printerCorrection({ across })[0]).toBeCloseTo(1 / 0.99, 12);
});

test("the longer diagonal from the top left leans the sheet's foot to the right by as much as was put in", () => {
  const bars = { across: { measured: 200, nominal: 200 }, down: { measured: 250, nominal: 250 } };
  const [p, q] = [Math.hypot(200.5, 250), Math.hypot(199.5, 250)];
  const [, , lean] = printerDistortion({ ...bars, diagonals: [p, q] });
  expect(lean * 250).toBeCloseTo(0.5, 3);
  expect(printerDistortion({ ...bars, diagonals: [q, p] })[2]).toBeCloseTo(-lean, 12);
});

test("a square page lies upright", () => {
  expect(liesAcross({ width: 200, height: 200 })).toBe(false);
  expect(liesAcross({ width: 200.1, height: 200 })).toBe(true);
});

test("without a measured bar the check page's own is mended: 200 by 250 mm, or 8 by 10 in", () => {
  expect(mendedBar(undefined, "across", 1.01, "in").nominal).toBeCloseTo(203.2, 12);
  expect(mendedBar({}, "down", 1.01, "in").measured).toBeCloseTo(254 * 1.01, 12);
  expect(mendedBar(undefined, "down", 1)).toEqual({ measured: 250, nominal: 250 });
  const across = { measured: 100, nominal: 101 };
  expect(mendedBar({ across }, "across", 0.5)).toEqual({ measured: 50, nominal: 101 });
});
