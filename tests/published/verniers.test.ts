import { describe, expect, test } from "vitest";
import { coneRing, development } from "../../src/dial/development.js";
import { readVernier, vernier } from "../../src/dial/vernier.js";

const inch = 25.4;

describe("least count = main division ÷ vernier divisions", () => {
  test.each([
    ["10 on 9 mm: 0.1 mm (tresnainstrument.com, vernier caliper)", 1, 10, 0.1],
    ["50 on 49 mm: 0.02 mm (tresnainstrument.com, adda247)", 1, 50, 0.02],
    ["rule in 1/40 in, 25 on 24: 0.001 in (US Army OD1642)", inch / 40, 25, inch / 1000],
    ["rule in 0.050 in, 50 on 49: 0.001 in (tresnainstrument.com, inch vernier)", 0.05 * inch, 50, inch / 1000],
    ["4 main divisions of 1.25 mm are 5 of the vernier: 0.25 mm (zigyan.com)", 1.25, 5, 0.25],
    ["0.05 cm, 50 on 49: 0.001 cm (vidyadip.com)", 0.5, 50, 0.01],
  ])("%s", (_, division, parts, least) => {
    const direct = vernier(division, 2, parts);
    expect(direct).toMatchObject({ extended: false, spans: parts - 1 });
    expect(direct.leastCount).toBeCloseTo(least, 12);
    expect(division - direct.step * division).toBeCloseTo(least, 12);
    const extended = vernier(division, 0.8, parts);
    expect(extended).toMatchObject({ extended: true, spans: 2 * parts - 1 });
    expect(2 * division - extended.step * division).toBeCloseTo(least, 12);
  });

  test("reading 1.000 + 0.400 + 3 × 0.025 + 11/25 of 0.025 = 1.486 in (US Army OD1642)", () => {
    const rule = vernier(0.025, 2, 25);
    const { main, mark, read } = readVernier(rule, 0.025, 1.486);
    expect(main).toBeCloseTo(1.475, 12);
    expect(mark).toBe(11);
    expect(read).toBeCloseTo(1.486, 12);
  });

  test("5.2: zero past 5, the second line meets, least count 0.1 (tresnainstrument.com)", () => {
    expect(readVernier(vernier(1, 2, 10), 1, 5.2)).toMatchObject({ main: 5, mark: 2 });
  });

  test("7 + 23 × 0.001 = 7.023 cm (vidyadip.com)", () => {
    const rule = vernier(0.05, 2, 50);
    expect(readVernier(rule, 0.05, 7.023)).toMatchObject({ mark: 23 });
    expect(readVernier(rule, 0.05, 7.023).main).toBeCloseTo(7, 12);
  });
});

describe("the cone's ring", () => {
  const bare = { paper: 0, adhesive: 0 };
  const degrees = (radians: number) => (radians / Math.PI) * 180;

  test("a point of 90°: .7071 × 360 = 254.6° (anvilfire.com, cone layout)", () => {
    const ring = coneRing({ diameter: 20, smallDiameter: 10, width: 5 * Math.SQRT2, ...bare });
    expect(degrees(ring?.sweep ?? 0)).toBeCloseTo(254.6, 1);
  });

  test("slope six times the base's radius: 60° (Builder-Mechanic, Fig. 24, chestofbooks)", () => {
    const ring = coneRing({ diameter: 2, smallDiameter: 1e-9, width: 6, ...bare });
    expect(degrees(ring?.sweep ?? 0)).toBeCloseTo(60, 6);
  });

  test("base 4 in, altitude 7 in: slope 7.28011 in, 98.8996° (Longfield, Sheet Metal Drafting, problem 19; computed)", () => {
    const ring = coneRing({ diameter: 4, smallDiameter: 1e-12, width: Math.hypot(7, 2), ...bare });
    expect(ring?.outer).toBeCloseTo(7.28011, 5);
    expect(degrees(ring?.sweep ?? 0)).toBeCloseTo(98.8996, 4);
  });

  test.each([
    [60, 40, 30, 94.86833, 63.245553, 113.841996],
    [50, 49, 12, 600.520607, 588.510195, 14.986996],
  ])("ends of %d and %d mm, %d mm high (computed)", (large, small, height, outer, inner, angle) => {
    const slope = Math.hypot(height, (large - small) / 2);
    const ring = coneRing({ diameter: large, smallDiameter: small, width: slope, ...bare });
    expect(ring?.outer).toBeCloseTo(outer, 5);
    expect(ring?.inner).toBeCloseTo(inner, 5);
    expect(degrees(ring?.sweep ?? 0)).toBeCloseTo(angle, 5);
    expect((ring?.outer ?? 0) * (ring?.sweep ?? 0)).toBeCloseTo(Math.PI * large, 9);
  });

  test("paper 0.2 mm thick on a slope of 30° stands 0.1 · cos 30° further out at its middle, and its girth follows", () => {
    const cone = { diameter: 60, smallDiameter: 40, width: 20 };
    const ring = coneRing({ ...cone, paper: 0.2, adhesive: 0 });
    const girth = (ring?.outer ?? 0) * (ring?.sweep ?? 0);
    expect(girth).toBeCloseTo(Math.PI * (60 + 0.2 * Math.cos(Math.PI / 6)), 9);
    expect((ring?.outer ?? 0) - (ring?.inner ?? 0)).toBeCloseTo(20, 12);
  });

  test("a slope shorter than half the difference of the ends is no cone", () => {
    expect(
      development({ shape: "bevel", diameter: 60, smallDiameter: 40, width: 9 }, { paper: 0.1, adhesive: 0 }),
    ).toBeUndefined();
  });
});
