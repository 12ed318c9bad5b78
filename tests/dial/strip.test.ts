import fc from "fast-check";
import { expect, test } from "vitest";
import { bandWidth, drumDiameter, readingCircle, spacing, stripLength, wrapLength } from "../../src/dial/strip.js";
import { diameters } from "./dials.js";

const paper = { paper: 0.11, adhesive: 0.03 };

test("the diameter is found again from the wrap", () => {
  fc.assert(
    fc.property(diameters, fc.double({ min: 0, max: 1, noNaN: true }), (diameter, layer) => {
      const layers = { paper: layer, adhesive: layer / 3 };
      expect(drumDiameter({ wrap: wrapLength({ diameter, ...layers }), ...layers })).toBeCloseTo(diameter, 9);
    }),
  );
});

test("a strip unrolled: its inner face goes round the glue, its outer face is longer by 2π thicknesses, its middle lies halfway", () => {
  const inner = Math.PI * (38 + 2 * 0.03);
  const outer = Math.PI * (38 + 2 * 0.03 + 2 * 0.11);
  expect(wrapLength({ diameter: 38, ...paper })).toBeCloseTo((inner + outer) / 2, 12);
  expect(wrapLength({ diameter: 38, ...paper })).toBeCloseTo(119.9146, 4);
});

test("a measured wrap beats the formula; only drums have a strip", () => {
  const drum = { shape: "drum" as const, width: 9 };
  expect(stripLength({ ...drum, diameter: 38, wrap: 121 }, paper)).toBe(121);
  expect(stripLength({ ...drum, wrap: 121 }, paper)).toBe(121);
  expect(stripLength(drum, paper)).toBeUndefined();
  expect(stripLength({ shape: "face", outside: 70, inside: 52 }, paper)).toBeUndefined();
});

test("circle, band and spacing of each shape", () => {
  const face = { shape: "face" as const, outside: 70, inside: 52 };
  const bevel = { shape: "bevel" as const, diameter: 36, smallDiameter: 44, width: 8 };
  expect(readingCircle(face, paper)).toBeCloseTo(Math.PI * 70, 12);
  expect(readingCircle(bevel, paper)).toBeCloseTo(Math.PI * 44, 12);
  expect([bandWidth(face), bandWidth(bevel)]).toEqual([9, 8]);
  expect(spacing(120, 2, 0.02)).toBeCloseTo(1.2, 12);
});
