import { expect, test } from "vitest";
import { studentT95 } from "../../src/feed/studentT.js";

/** NIST/SEMATECH e-Handbook of Statistical Methods, "Upper critical values of Student's t distribution", column 0.025,
 *  1 to 30 degrees of freedom (section 1.3.6.7.2: number from memory). */
const eHandbook = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145, 2.131, 2.12, 2.11,
  2.101, 2.093, 2.086, 2.08, 2.074, 2.069, 2.064, 2.06, 2.056, 2.052, 2.048, 2.045, 2.042,
];

test.each(eHandbook.map((value, index) => ({ degreesOfFreedom: index + 1, value })))(
  "Student t, 95 %, $degreesOfFreedom degrees of freedom: $value (NIST/SEMATECH e-Handbook, three decimals)",
  ({ degreesOfFreedom, value }) => expect(Math.abs(studentT95(degreesOfFreedom) - value)).toBeLessThanOrEqual(0.0005),
);

/** B. N. Taylor and C. E. Kuyatt, NIST Technical Note 1297 (1994), table B.1, column p = 95 %. */
const tn1297: readonly [number, number][] = [
  [1, 12.71],
  [2, 4.3],
  [3, 3.18],
  [4, 2.78],
  [5, 2.57],
  [6, 2.45],
  [7, 2.36],
  [8, 2.31],
  [9, 2.26],
  [10, 2.23],
  [11, 2.2],
  [12, 2.18],
  [13, 2.16],
  [14, 2.14],
  [15, 2.13],
  [16, 2.12],
  [17, 2.11],
  [18, 2.1],
  [19, 2.09],
  [20, 2.09],
  [25, 2.06],
  [30, 2.04],
];

test.each(tn1297)(
  "Student t, 95 %%, %i degrees of freedom: %f (NIST TN 1297, table B.1, two decimals)",
  (degreesOfFreedom, value) => {
    expect(Math.abs(studentT95(degreesOfFreedom) - value)).toBeLessThanOrEqual(0.005);
  },
);

test("for very many it comes to the normal distribution's 1.960 (NIST TN 1297, table B.1, infinite)", () => {
  expect(studentT95(100_000)).toBeCloseTo(1.96, 3);
});
