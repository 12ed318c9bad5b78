import { describe, expect, test } from "vitest";
import { metresPerMinuteAt, rpmFor } from "../../src/cutting/rates.js";

/** m/min and mm of what the sources print in feet and inches. */
const feet = (value: number) => value * 0.3048;
const inches = (value: number) => value * 25.4;

describe("rpm = 1000 v / (π d)", () => {
  test("R1: 60 ft/min on 5 in: 46 rpm (F. D. Jones, Turning and Boring, 1914, ch. II, Rules for Calculating Cutting Speeds; read)", () => {
    expect(Math.round(rpmFor(feet(60), inches(5)))).toBe(46);
  });

  test.each([
    { name: "R2: 66 rpm on 2-1/2 in: 43 ft/min", rpm: 66, inch: 2.5, feetPerMinute: 43 },
    { name: "R3: 78 rpm on 2 in: about 41 ft/min", rpm: 78, inch: 2, feetPerMinute: 41 },
  ])(
    "$name (F. D. Jones, Turning and Boring, 1914, ch. V, Determining Speed and Feed Changes; read)",
    ({ rpm, inch, feetPerMinute }) => {
      expect(Math.round(metresPerMinuteAt(rpm, inches(inch)) / 0.3048)).toBe(feetPerMinute);
    },
  );

  test.each([
    [200, 40],
    [25, 318],
  ])("R7: 25 m/min on %i mm: %i rpm (a textbook exercise on arithmetic progression; read)", (diameter, rpm) => {
    expect(Math.round(rpmFor(25, diameter))).toBe(rpm);
  });

  test.each([
    [1, 50.92],
    [2, 25.46],
    [3, 16.96],
    [7, 7.28],
    [9, 5.66],
    [12, 4.24],
    [15, 3.4],
  ])(
    "R11: cast iron at 160 in/min, %i in: %d rpm (a pocket-book of engineering formulae, p. 439; read, its third is 0.02 low)",
    (inch, rpm) => {
      expect(Math.abs(rpmFor((160 * 25.4) / 1000, inches(inch)) - rpm)).toBeLessThan(0.025);
    },
  );

  test.each([
    [100, 1],
    [60, 2.5],
  ])(
    "rpm = fpm ÷ (0.2618 × diameter): %i ft/min on %d in (US War Department TM 1-420, Lathes, 1940, Changes 1; formula read, inputs own)",
    (fpm, inch) => {
      expect(Math.abs(rpmFor(feet(fpm), inches(inch)) / (fpm / (0.2618 * inch)) - 1)).toBeLessThan(1e-4);
    },
  );
});
