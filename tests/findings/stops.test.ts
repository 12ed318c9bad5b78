import { expect, test } from "vitest";
import { repeatOf } from "../../src/findings/stops.js";
import { findingsOf, printOf } from "../support/sheets.js";

const findings = findingsOf(`name: L
handwheels:
  - name: Carriage
    travel: 40
    feed:
      readings:
        gauge: 0.01
        turns: [0, 1, 2, 3, 4, 5]
        travel: [0.01, 1.99, 4.01, 5.99, 8.01, 9.99]
        return: [0.21, 2.19, 4.21, 6.19, 8.21, 10.19]
    dial: { shape: drum, diameter: 38, width: 9, divisions: 0.02 mm, closure: even }
`);
const [carriage] = findings.handwheels;

test("a tolerance that dial and stop both hold; lost motion is what coming from either side would add", () => {
  const repeat = carriage && repeatOf({ name: "s", handwheel: "Carriage", length: 18, tolerance: 0.1 }, carriage);
  expect(repeat).toMatchObject({ dialServes: true, stopServes: true, beyondTravel: false });
  expect(repeat?.lostMotion).toBeCloseTo(0.2, 9);
  expect(repeat?.setting.wholeTurns).toBe(9);
  expect(repeat?.byStop).toBeCloseTo(2 * (carriage?.feed?.fit?.residualDeviation ?? 0), 12);
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
  expect(repeat).toMatchObject({ dialServes: false, stopServes: true });
  expect(repeat?.byDial).toBeUndefined();
  expect(printOf(findings, "stops").pages).toHaveLength(1);
});
