import { describe, expect, test } from "vitest";
import { chanceOfRatio, chanceOfT } from "../../src/feed/chance.js";
import { positioning } from "../../src/feed/iso230.js";
import { regress } from "../../src/feed/regress.js";

const digits = (got: number, certified: number) =>
  got === certified ? 15 : -Math.log10(Math.abs((got - certified) / certified));

describe("a line forced through the origin", () => {
  const noInt1 = {
    x: Array.from({ length: 11 }, (_, i) => 60 + i),
    y: Array.from({ length: 11 }, (_, i) => 130 + i),
    slope: 2.07438016528926,
    slopeError: 0.0165289256198347,
    deviation: 3.56753034006338,
    squares: 127.272727272727,
  };
  const noInt2 = {
    x: [4, 5, 6],
    y: [3, 4, 4],
    slope: 0.727272727272727,
    slopeError: 0.0420827318078432,
    deviation: 0.369274472937998,
    squares: 0.272727272727273,
  };
  test.each([
    ["NoInt1", noInt1],
    ["NoInt2", noInt2],
  ])("%s: slope, its error and the residual deviation as certified (NIST StRD, linear regression)", (_, set) => {
    const line = regress([set.x], set.y);
    expect(digits(line?.coefficients[0] ?? Number.NaN, set.slope)).toBeGreaterThan(13);
    expect(digits(line?.residualSquares ?? Number.NaN, set.squares)).toBeGreaterThan(12);
    expect(digits(line?.deviation ?? Number.NaN, set.deviation)).toBeGreaterThan(12);
    const error = (line?.deviation ?? Number.NaN) * Math.sqrt(line?.spreadOf([1]) ?? Number.NaN);
    expect(digits(error, set.slopeError)).toBeGreaterThan(12);
  });
  test("F of NoInt1 and NoInt2 as certified (NIST StRD, linear regression)", () => {
    for (const [set, certified] of [
      [noInt1, 15750.25],
      [noInt2, 298.666666666667],
    ] as const) {
      const line = regress([set.x], set.y);
      const explained = set.y.reduce((sum, y) => sum + y * y, 0) - (line?.residualSquares ?? 0);
      expect(digits(explained / (line?.deviation ?? 0) ** 2, certified)).toBeGreaterThan(12);
    }
  });
});

describe("chance", () => {
  test.each([
    [1, 12.7062047362],
    [2, 4.30265272975],
    [3, 3.18244630528],
    [9, 2.2621571628],
    [10, 2.22813885199],
    [30, 2.0422724563],
  ])(
    "Student's t with %i degrees of freedom is passed in 5 %% (NIST/SEMATECH e-Handbook table, more digits computed)",
    (degrees, t) => {
      expect(chanceOfT(t, degrees)).toBeCloseTo(0.05, 10);
    },
  );
  test.each([
    [10, 2.28, 0.9545],
    [10, 3.17, 0.99],
    [10, 1.81, 0.9],
  ])("t of %i degrees of freedom at %d (NIST TN 1297, table B.1)", (degrees, t, level) => {
    expect(1 - chanceOfT(t, degrees)).toBeCloseTo(level, 2);
  });
  test("two degrees over: the ratio's chance has a closed form, (1 + 2 F / ν) to the power −ν / 2 (computed)", () => {
    for (const under of [3, 8, 25])
      for (const ratio of [0.1, 1, 4, 30])
        expect(chanceOfRatio(ratio, 2, under)).toBeCloseTo((1 + (2 * ratio) / under) ** (-under / 2), 12);
  });
});

describe("ISO 230-2, printed report of a motion stage (ecmc_target_muts_logger, target_x_report_8A.md, commit 61b551a)", () => {
  const targets = [-4, -2, 0, 2, 4];
  const up = [
    [-3.99861, -3.98366, -3.98366, -3.95012, -3.95335],
    [-2.00655, -1.98836, -1.98109, -1.9419, -1.93341],
    [-0.02782, -0.00802, -0.01005, 0.01986, 0.0344],
    [1.97474, 1.99616, 2.00181, 2.03495, 2.04909],
    [4.00316, 4.00397, 4.00963, 4.03024, 4.05165],
  ];
  const down = [
    [-4.10205, -4.01598, -3.99861, -3.99254, -3.96143],
    [-2.11969, -2.02392, -2.00251, -1.99968, -1.9617],
    [-0.13005, -0.02904, -0.01489, -0.01126, 0.01622],
    [1.94767, 1.97191, 1.98848, 2.00949, 2.02323],
    [3.94983, 3.98054, 3.98538, 4.01731, 4.03024],
  ];
  const lessTarget = (lists: number[][]) => lists.map((list, i) => list.map((value) => value - (targets[i] ?? 0)));
  const found = positioning({ up: lessTarget(up), down: lessTarget(down) });
  // The reports carry their rounding on: they agree to within 1 in the last printed digit, which for R of position 1 is the fourth.
  const oneInLastDigit = 1.01e-5;
  const oneInFourth = 1.01e-4;

  test.each([
    [0, 0.02612, -0.01412, 0.04025, 0.02115, 0.05296, 0.2118],
    [1, 0.02974, -0.0215, 0.05124, 0.03132, 0.05929, 0.23715],
    [2, 0.00167, -0.0338, 0.03548, 0.02502, 0.05625, 0.22498],
    [3, 0.01135, -0.01184, 0.02319, 0.03018, 0.02995, 0.14346],
    [4, 0.01973, -0.00734, 0.02707, 0.02094, 0.03184, 0.13263],
  ])(
    "position %i: means, reversal value, deviations, repeatability",
    (i, meanUp, meanDown, reversal, su, sd, repeat) => {
      const position = found?.positions[i];
      const got = [
        position?.meanUp,
        position?.meanDown,
        position?.reversal,
        position?.deviationUp,
        position?.deviationDown,
        position?.repeatability,
      ];
      for (const [k, printed] of [meanUp, meanDown, reversal, su, sd, repeat].entries())
        expect(Math.abs((got[k] ?? Number.NaN) - printed)).toBeLessThan(
          String(printed).length < 7 && k === 5 ? oneInFourth : oneInLastDigit,
        );
    },
  );

  test("axis: B, mean reversal, R, M, A of each way and of both", () => {
    const printed: [keyof NonNullable<typeof found>, number][] = [
      ["reversal", 0.05124],
      ["meanReversal", 0.03544],
      ["repeatabilityUp", 0.12529],
      ["repeatabilityDown", 0.23715],
      ["repeatability", 0.23715],
      ["systematicUp", 0.02806],
      ["systematicDown", 0.02646],
      ["meanRange", 0.02226],
      ["accuracyUp", 0.14139],
      ["accuracyDown", 0.24337],
      ["accuracy", 0.24337],
    ];
    for (const [key, value] of printed)
      expect(Math.abs(Number(found?.[key]) - value), key).toBeLessThan(oneInLastDigit);
  });

  test("E over both directions by its definition (computed: the report prints one direction's)", () => {
    expect(found?.systematic).toBeCloseTo(0.063542, 5);
  });
});
