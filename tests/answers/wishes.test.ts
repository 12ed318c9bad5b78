import fc from "fast-check";
import { expect, test } from "vitest";
import { supposed } from "../../src/answers/supposed.js";
import { wishesFor } from "../../src/answers/wishes.js";
import { anyMachine, sound } from "../support/anyMachine.js";
import { findingsOf } from "../support/sheets.js";

test("what may be supposed is offered in the file's unit, with the drive's own figures", () => {
  const text = `name: L\nunits: in\ndrive:
  motor: { speed: 1725 rpm, mains: 60 Hz }
  stages:
    - { name: spindle belt, steps: [{ label: A, driver: 3, driven: 1 1/2 }, { label: B, driver: 1.5, driven: 3 }] }
    - { name: gears, steps: [{ label: low, teeth: [[20, 40]] }] }\n`;
  expect(wishesFor(findingsOf(text)).slice(0, 4)).toEqual([
    "50 Hz",
    "motor 1725 rpm",
    "spindle belt A 3 to 1.5",
    "spindle belt B 1.5 to 3",
  ]);
  expect(wishesFor(findingsOf("name: L\n"))).toEqual([]);
});

test("nothing is offered that would be refused, and a pulley supposed as it is changes no speed", () => {
  fc.assert(
    fc.property(anyMachine, (machine) => {
      const findings = sound(machine);
      if (findings === undefined) throw new Error("a machine is not sound");
      for (const wish of wishesFor(findings)) {
        const { drive } = supposed(findings, [wish]);
        if (!/ to /.test(wish)) continue;
        for (const { position, byRatioRpm } of drive.speeds) {
          const was = findings.drive?.speeds.find((speed) => speed.position.name === position.name);
          // Its figures are rounded to a thousandth.
          expect(Math.abs(byRatioRpm / (was?.byRatioRpm ?? 0) - 1), wish).toBeLessThan(0.002);
        }
      }
    }),
    { numRuns: 60 },
  );
});
