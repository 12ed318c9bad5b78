import { describe, expect, test } from "vitest";
import { metresPerMinuteAt } from "../../src/cutting/rates.js";
import { ratio } from "../../src/drive/ratio.js";
import type { Step } from "../../src/machine/machine.js";

const belts = (...pairs: [number, number][]): Step[] =>
  pairs.map(([driver, driven]) => ({ label: "", kind: "belt", driver, driven }));

describe("pulley ratios", () => {
  test.each([
    {
      name: "P1: 1500 rpm, 4 in to 20 in: 300 rpm (Milton and Wohlers, A Course in Wood Turning, 1919, ch. II)",
      rpm: 1500,
      steps: belts([4, 20]),
      answer: 300,
      places: 6,
    },
    {
      name: "P2: 300 rpm, 8 in to 4 in: 600 rpm (Milton and Wohlers, 1919, ch. II)",
      rpm: 300,
      steps: belts([8, 4]),
      answer: 600,
      places: 6,
    },
    {
      name: "P3: 600 rpm, 11 in to 3 in: 2200 rpm (Milton and Wohlers, 1919, ch. II)",
      rpm: 600,
      steps: belts([11, 3]),
      answer: 2200,
      places: 6,
    },
    {
      name: "P4: 300 rpm, 48 in to 12 in: 1200 rpm (Hawkins Electrical Guide, vol. 8)",
      rpm: 300,
      steps: belts([48, 12]),
      answer: 1200,
      places: 6,
    },
    {
      name: "P5: 1500 rpm, 11 in to 46 in: 359 rpm nearly (Hawkins Electrical Guide, vol. 8)",
      rpm: 1500,
      steps: belts([11, 46]),
      answer: 359,
      places: 0,
    },
    {
      name: "P7: 325 rpm, 42 in to 9-3/4 in: 1400 rpm (Hawkins Electrical Guide, vol. 8)",
      rpm: 325,
      steps: belts([42, 9.75]),
      answer: 1400,
      places: 6,
    },
    {
      name: "P8: 200 rpm, 80 to 40 and 100 to 20 cm: 2000 rpm (sarthaks.com question 509850)",
      rpm: 200,
      steps: belts([80, 40], [100, 20]),
      answer: 2000,
      places: 6,
    },
    {
      name: "P9: 150 rpm, 750 to 450 and 900 to 150 mm: 1500 rpm (R. S. Khurmi, ex. 11.1)",
      rpm: 150,
      steps: belts([750, 450], [900, 150]),
      answer: 1500,
      places: 6,
    },
  ])("$name, read", ({ rpm, steps, answer, places }) => {
    expect(rpm * ratio(steps)).toBeCloseTo(answer, places);
  });

  test("P6: 275 rpm drives 10 in at 1450 rpm with 53 in nearly (Hawkins Electrical Guide, vol. 8, read)", () => {
    // The wheel that just gives the speed rounds to the printed inch: half an inch less is too slow, half more too fast.
    expect(275 * ratio(belts([52.5, 10]))).toBeLessThan(1450);
    expect(275 * ratio(belts([53.5, 10]))).toBeGreaterThan(1450);
  });

  test("S1: P9 with 2 % slip at each belt: 1440 rpm (R. S. Khurmi, ex. 11.1, read; it rounds the ratio to 9.6)", () => {
    expect(150 * ratio(belts([750, 450], [900, 150]), 0.02)).toBeCloseTo(1440.6, 6);
    expect((Math.round(ratio(belts([750, 450], [900, 150]), 0.02) * 10) / 10) * 150).toBe(1440);
  });

  test("S2: P8 with 2.5 % slip at each belt: 1901.25 rpm (sarthaks.com question 509850, read)", () => {
    expect(200 * ratio(belts([80, 40], [100, 20]), 0.025)).toBeCloseTo(1901.25, 9);
  });

  test("P10: 1460 rpm, 80 to 160 mm, a disc of 350 mm: 730 rpm, 13.378 m/s (hackmath.net exercise 3260, read)", () => {
    const rpm = 1460 * ratio(belts([80, 160]));
    expect(rpm).toBe(730);
    expect(metresPerMinuteAt(rpm, 350) / 60).toBeCloseTo(13.378, 3);
  });
});
