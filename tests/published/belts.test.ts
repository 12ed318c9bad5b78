import { describe, expect, test } from "vitest";
import { beltLength, matchingDiameter, wrapAngles } from "../../src/drive/beltLength.js";
import { effectiveDiameter } from "../../src/machine/effectiveDiameter.js";
import { toDegrees } from "../../src/quantity/angle.js";
import { MM_PER_INCH } from "../../src/quantity/length.js";

const inch = (value: number): number => value * MM_PER_INCH;

describe("belt lengths", () => {
  test("B1: open, 1600 and 500 mm at 12 m: 27.32 m (sarthaks.com question 509872; read)", () => {
    expect((beltLength(1600, 500, 12_000, "open") ?? 0) / 1000).toBeCloseTo(27.32, 2);
  });

  test("B2: crossed, 450 and 200 mm at 1.95 m: 4.975 m, 199.2° of wrap (inputs: mechdiploma.com, read; answer: R. S. Khurmi, Theory of Machines, memory)", () => {
    expect((beltLength(450, 200, 1950, "crossed") ?? 0) / 1000).toBeCloseTo(4.975, 3);
    expect(toDegrees(wrapAngles(450, 200, 1950, "crossed")?.driven ?? 0)).toBeCloseTo(199.2, 1);
  });

  test("B3: open, 105 and 393 mm at 697 mm: 2.2 m (hackmath.net exercise 258; read, its working is rounded)", () => {
    expect((beltLength(105, 393, 697, "open") ?? 0) / 1000).toBeCloseTo(2.2, 1);
  });

  test.each([
    { centres: 40, length: 140.17, a: [6, 12, 18, 24], b: [30, 25.56, 20.28, 13.9] },
    { centres: 60, length: 192.55, a: [12, 18, 24, 30], b: [33, 27.92, 22.16, 15.62] },
  ])(
    "B4: one belt of $length in serves each step (J. Rose, Modern Machine-Shop Practice, cone examples 2 and 3; read, by Klein's table, so to 0.03 in)",
    ({ centres, length, a, b }) => {
      for (const [index, first] of a.entries())
        expect(Math.abs((beltLength(first, b[index] ?? 0, centres, "open") ?? 0) - length)).toBeLessThan(0.035);
    },
  );
});

describe("cone pulleys", () => {
  test.each([
    { example: 2, centres: 40, a: [6, 12, 18, 24], b: [30, 25.56, 20.28, 13.9] },
    { example: 3, centres: 60, a: [12, 18, 24, 30], b: [33, 27.92, 22.16, 15.62] },
  ])(
    "C1, C2: the matching steps, J. Rose, Modern Machine-Shop Practice, example $example (read; table-interpolated, so to 0.03 in)",
    ({ centres, a, b }) => {
      const length = beltLength(a[0] ?? 0, b[0] ?? 0, centres, "open") ?? 0;
      for (const [index, first] of a.entries())
        expect(Math.abs((matchingDiameter(length, first, centres, "open") ?? 0) - (b[index] ?? 0))).toBeLessThan(0.03);
    },
  );

  test("a crossed belt keeps the sum of the diameters (Encyclopaedia Britannica, 11th ed., Mechanics § 60)", () => {
    const length = beltLength(80, 120, 400, "crossed") ?? 0;
    expect(matchingDiameter(length, 60, 400, "crossed")).toBeCloseTo(140, 9);
  });
});

describe("effective diameters", () => {
  test.each([
    { outside: 5.8, effective: 6, thickness: 0.2 },
    { outside: 13.7, effective: 13.9, thickness: 0.2 },
    { outside: 11.78, effective: 12, thickness: 0.22 },
    { outside: 15.4, effective: 15.62, thickness: 0.22 },
  ])(
    "flat: $outside in and a belt of $thickness in run at $effective in (J. Rose, examples 2 and 3; read)",
    ({ outside, effective, thickness }) => {
      const belt = { kind: "flat", size: inch(thickness) } as const;
      expect(effectiveDiameter({ by: "outside", size: inch(outside) }, belt)).toBeCloseTo(inch(effective), 9);
    },
  );

  test("classical vee, A section: outside less twice 0.125 in (a belt maker's groove table; read)", () => {
    expect(effectiveDiameter({ by: "outside", size: inch(2.5) }, { kind: "vee", section: "A" })).toBeCloseTo(
      inch(2.25),
      9,
    );
  });
});
