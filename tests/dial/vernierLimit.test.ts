import fc from "fast-check";
import { expect, test } from "vitest";
import { vernier, vernierWrongFrom } from "../../src/dial/vernier.js";

test("a dial of 52 thousandths whose last division is short: a vernier of 5 over 4 is no good from 0.047 in on", () => {
  const chosen = { beginsAgain: true, divisions: 52, divisionValue: 0.0254 };
  expect(vernierWrongFrom(vernier(0.0254, 2.5, 5), chosen)).toBeCloseTo(0.047 * 25.4, 9);
  expect(vernierWrongFrom(vernier(0.0254, 2.5, 5), { ...chosen, beginsAgain: false })).toBeUndefined();
});

test("property: below it every mark of the vernier lies beside whole divisions, and a division above the last does not", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 30, max: 200 }),
      fc.constantFrom(2, 4, 5, 10),
      fc.constantFrom(1, 2),
      (divisions, parts, spacing) => {
        const one = vernier(1, spacing, parts);
        const from = vernierWrongFrom(one, { beginsAgain: true, divisions, divisionValue: 1 }) ?? Number.NaN;
        const reach = (reading: number) => reading + parts * one.step;
        const lastWhole = divisions - 1;
        expect(reach(from)).toBeLessThanOrEqual(lastWhole + 1e-9);
        expect(reach(from + 0.5)).toBeGreaterThan(lastWhole);
      },
    ),
  );
});
