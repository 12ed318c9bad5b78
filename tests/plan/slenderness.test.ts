import { describe, expect, test } from "vitest";
import { bar, turned, type Workpiece } from "../../src/part/workpiece.js";
import { slenderness } from "../../src/plan/slenderness.js";

/** Work made of cylinders, each of a length and a diameter, from the free end on. */
const stepped = (...pieces: readonly (readonly [length: number, diameter: number])[]): Workpiece => {
  let to = 0;
  return {
    ...bar(1, 0, 1),
    outside: pieces.map(([length, diameter]) => {
      const from = to;
      to += length;
      return { from, to, start: diameter, end: diameter };
    }),
  };
};

const ratioOf = (work: Workpiece, held: "chuck" | "chuck and centre" | "between centres", jaws: number): number =>
  slenderness(work, { held, jaws }).ratio;

/** Within a share of what is expected. */
const near = (found: number, expected: number, share: number): void =>
  expect(Math.abs(found / expected - 1)).toBeLessThan(share);

describe("an even bar", () => {
  test.each([
    [64, 16],
    [30, 3],
    [9, 12],
    [240, 20],
  ])("%f mm of %f mm: length over diameter, however it is held, and wherever its lengths count from", (length, d) => {
    for (const held of ["chuck", "chuck and centre", "between centres"] as const) {
      near(ratioOf(bar(d, 0, length + 40), held, length), length / d, 0.01);
      near(ratioOf(bar(d, -0.5, length + 40), held, length - 0.5), length / d, 0.01);
    }
  });

  test("a bore takes nothing off its stiffness", () =>
    expect(ratioOf(bar(16, 0, 100, 8), "chuck", 50)).toBe(ratioOf(bar(16, 0, 100), "chuck", 50)));

  test("what lies in the jaws does not count", () =>
    expect(ratioOf(stepped([50, 16], [40, 30]), "chuck", 50)).toBe(ratioOf(bar(16, 0, 90), "chuck", 50)));

  test("nothing stands out: it is not slender", () =>
    expect(slenderness(bar(16, 0, 40), { held: "chuck", jaws: 0 })).toEqual({
      ratio: 0,
      length: 0,
      thinnest: 0,
      thickest: 0,
    }));
});

describe("a stepped bar, against the closed formulas of beam theory", () => {
  // A force at the free end bends a piece from a to b behind it, of diameter d, by a share (b³ − a³) / 3 d⁴; an even bar by
  // L³ / 3 d⁴. Diameters of four figures from free end to jaws, the last one a bar with a neck in it.
  const shapes = [
    [
      [20, 6],
      [20, 16],
    ],
    [
      [10, 12],
      [5, 8],
      [25, 20],
    ],
    [
      [15, 16],
      [2, 5],
      [33, 16],
    ],
    [
      [30, 16],
      [30, 10],
    ],
  ] as const;

  test.each(shapes.map((shape) => [shape.map((piece) => piece.join(" of ")).join(", "), shape] as const))(
    "in the chuck alone: %s",
    (_, shape) => {
      let at = 0;
      let sum = 0;
      for (const [length, d] of shape) {
        sum += ((at + length) ** 3 - at ** 3) / (3 * d ** 4);
        at += length;
      }
      const even = (at ** 3 / 3 / sum) ** (1 / 4);
      near(ratioOf(stepped(...shape), "chuck", at), at / even, 0.01);
    },
  );

  test.each([
    [60, 20, 6, 16],
    [60, 40, 16, 6],
    [100, 50, 12, 10],
    [100, 85, 5, 20],
  ])("%f mm long between centres, its first %f at %f mm and the rest at %f mm", (length, a, thin, thick) => {
    // A force in the middle gives each bearing half: a piece from a to b, counted from the nearer bearing, bends by
    // (b³ − a³) / 3 · 1/4 d⁴, and an even bar by L³ / 48 d⁴.
    const half = length / 2;
    const piece = (from: number, to: number, d: number): number => (to ** 3 - from ** 3) / (12 * d ** 4);
    const sum =
      a <= half
        ? piece(0, a, thin) + piece(a, half, thick) + piece(0, half, thick)
        : piece(0, half, thin) + piece(length - a, half, thin) + piece(0, length - a, thick);
    const even = (length ** 3 / 48 / sum) ** (1 / 4);
    for (const held of ["between centres", "chuck and centre"] as const)
      near(ratioOf(stepped([a, thin], [length - a, thick]), held, length), length / even, 0.01);
  });

  test("a cone from 4 to 16 mm over 30: the integral of x² / d⁴ in closed form", () => {
    // d = 4 + 0.4 x; the integral of x² / d⁴ from 0 is x³ / (3 · 4 · d³).
    const [length, small, large] = [30, 4, 16];
    const sum = length ** 3 / (3 * small * large ** 3);
    const cone: Workpiece = { ...bar(1, 0, 1), outside: [{ from: 0, to: length, start: small, end: large }] };
    near(ratioOf(cone, "chuck", length), length / (length ** 3 / 3 / sum) ** (1 / 4), 0.01);
  });
});

describe("what hardly matters", () => {
  test.each(["chuck", "chuck and centre"] as const)("a chamfer of 0.03 mm, held by %s", (held) => {
    const plain = bar(16, 0, 100);
    const broken = turned(plain, { from: 0, to: 0.03, start: 15.94, end: 16 });
    near(ratioOf(broken, held, 64), ratioOf(plain, held, 64), 0.01);
    expect(ratioOf(broken, held, 64)).toBeGreaterThanOrEqual(ratioOf(plain, held, 64));
  });

  test("a short neck at the free end counts less than the same one at the jaws", () => {
    const atEnd = ratioOf(stepped([2, 5], [48, 16]), "chuck", 50);
    const atJaws = ratioOf(stepped([48, 16], [2, 5]), "chuck", 50);
    near(atEnd, 50 / 16, 0.01);
    expect(atJaws).toBeGreaterThan(1.5 * atEnd);
  });

  test("thinnest and thickest are told as they are", () =>
    expect(slenderness(stepped([10, 6], [20, 12]), { held: "chuck", jaws: 20 })).toMatchObject({
      length: 20,
      thinnest: 6,
      thickest: 12,
    }));
});
