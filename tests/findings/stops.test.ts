import { expect, test } from "vitest";
import { repeatOf } from "../../src/findings/stops.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const findings = findingsOf(`name: L
handwheels:
  - name: Carriage
    travel: 40
    feed:
      readings:
        gauge: 0.01
        turns: [0, 1, 2, 3, 4, 5, 0, 1, 2, 3, 4, 5]
        travel: [0.01, 1.99, 4.01, 5.99, 8.01, 9.99, 0.00, 2.00, 4.00, 6.00, 8.00, 10.00]
        return: [0.21, 2.19, 4.21, 6.19, 8.21, 10.19, 0.20, 2.20, 4.20, 6.20, 8.20, 10.20]
    dial: { shape: drum, diameter: 38, width: 9, divisions: 0.02 mm, closure: even }
`);
const [carriage] = findings.handwheels;

test("a tolerance that dial and stop both hold; lost motion is what coming from either side would add", () => {
  const repeat = carriage && repeatOf({ name: "s", handwheel: "Carriage", length: 18, tolerance: 0.1 }, carriage);
  expect(repeat).toMatchObject({ dialServes: true, stopServes: true, beyondTravel: false });
  expect(repeat?.lostMotion).toBeCloseTo(0.2, 9);
  expect(repeat?.setting.wholeTurns).toBe(9);
  // Five degrees of freedom are left within the places of two runs, each with its own zero: 12 − 6 − 1; t is 2.571.
  const { deviation = 0, degreesOfFreedom } = carriage?.feed?.fit?.repeat ?? {};
  expect(degreesOfFreedom).toBe(5);
  expect(repeat?.byStop).toBeCloseTo(2.570582 * deviation, 7);
});

test("a tolerance finer than the machine's own scatter is refused; so is a length beyond the travel", () => {
  const fine = carriage && repeatOf({ name: "s", handwheel: "Carriage", length: 18, tolerance: 0.02 }, carriage);
  expect(fine).toMatchObject({ dialServes: false, stopServes: false });
  expect(carriage && repeatOf({ name: "s", handwheel: "Carriage", length: 41 }, carriage)?.beyondTravel).toBe(true);
});

test("a stop on a handwheel without a dial: turns alone, and no tolerance by a dial that is not there", () => {
  const findings = findingsOf(
    "name: L\nhandwheels: [{ name: Carriage, feed: 44 mm }]\nstops: [{ name: end, handwheel: Carriage, length: 30, tolerance: 0.1 }]\n",
  );
  const [stop] = findings.machine.stops ?? [];
  const repeat = stop && findings.handwheels[0] && repeatOf(stop, findings.handwheels[0]);
  expect(repeat).toMatchObject({ dialServes: false });
  // Nobody measured how alike the parts come: it is not guessed, and no tolerance is promised.
  expect(repeat?.byDial).toBeUndefined();
  expect(repeat?.byStop).toBeUndefined();
  expect(repeat?.stopServes).toBeUndefined();
  expect(textsOf(findings, "stops")).toContain("Whether the tolerance is held was not measured");
});

test.each([
  ["one run", "turns: [0, 1, 2, 3, 4], travel: [0, 2, 4, 6, 8]"],
  ["two runs to the same last figure, no gauge named", "turns: [0, 1, 2, 0, 1, 2], travel: [0, 2, 4, 0, 2, 4]"],
])("repeatability from %s was not measured; no ± stands for it", (_, readings) => {
  const found = findingsOf(
    `name: L\nhandwheels: [{ name: Carriage, feed: { readings: { ${readings} } } }]\nstops: [{ name: end, handwheel: Carriage, length: 3 }]\n`,
  );
  const words = textsOf(found, "stops");
  expect(words).toContain("How closely parts come alike was not measured: read the same places over two runs or more");
  expect(words).toContain("Lost motion is not known");
  // Neither by stop nor, having no dial, by dial; and no lost motion: no column of nothing but "?".
  expect(words).toMatch(/stop length wheel turns (first part ± mm )?end 3\.00 mm Carriage 1\.500 /);
  expect(words).not.toContain("?");
  expect(words).not.toMatch(/± 0|[^.\d]0\.0/);
});
