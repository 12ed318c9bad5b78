import { describe, expect, test } from "vitest";
import type { Job } from "../../src/job/job.js";
import { centreDrillUpTo, centreHole } from "../../src/part/centreHole.js";
import { inMm } from "../../src/quantity/length.js";
import { jobOf } from "../support/job.js";

const pilotsOf = ({ steps }: Job): (number | undefined)[] =>
  steps.flatMap((step) => (step.do === "centre drill" ? [step.pilot] : []));

const metric = (...steps: readonly string[]) => pilotsOf(jobOf(["do: centre drill", ...steps]));
const inches = (...steps: readonly string[]) =>
  pilotsOf(jobOf(["do: centre drill", ...steps], "units: in\nbar: { diameter: 5/8, out: 1-1/2 }"));

describe("a centre drill that begins a hole, left open in the file", () => {
  test("for M5 its mouth is 4.25 mm: the next larger one, 5.3 mm, would be wider than the thread", () => {
    const [pilot] = metric("do: drill, diameter: 4.2, depth: 15", "do: tap, thread: M5, depth: 8");
    expect(pilot).toBe(2);
    expect(centreHole(pilot ?? Number.NaN).mouth).toBeLessThanOrEqual(5);
    expect(centreHole(2.5).mouth).toBeGreaterThan(5);
  });

  // Mouths of form A, from memory: 2.12, 2.65, 3.35, 4.25, 5.3, 6.7, 8.5, 10.6, 13.2 mm.
  test.each([
    ["a drill", ["do: drill, diameter: 5.3, depth: 15"], 2.5],
    ["a drill a tenth smaller", ["do: drill, diameter: 5.2, depth: 15"], 2],
    ["a hole that is reamed", ["do: drill, diameter: 7.8, depth: 15", "do: ream, diameter: 8.5, depth: 10"], 3.15],
    ["a hole that is bored", ["do: drill, diameter: 8, depth: 15", "do: bore, to: 10.6, depth: 10"], 3.15],
    // 9 mm goes in stages, the first of 3 mm: 1.25 · 2.12 is 2.65 mm wide.
    ["a large drill in stages", ["do: drill, diameter: 9, depth: 5", "do: drill, diameter: 3, depth: 15"], 1.25],
    [
      "a small hole that is opened up later",
      ["do: drill, diameter: 3.3, depth: 15", "do: tap, thread: M4, depth: 9", "do: drill, diameter: 8, depth: 4"],
      1.6,
    ],
    [
      "a large drill in stages, tapped: M10 begins with a drill of 3 mm too",
      ["do: drill, diameter: 8.5, depth: 15", "do: tap, thread: M10, depth: 9"],
      1.25,
    ],
    ["M14: its first drill is 4 mm", ["do: drill, diameter: 12, depth: 20", "do: tap, thread: M14, depth: 12"], 1.6],
    ["a hole smaller than any mouth: the smallest there is", ["do: drill, diameter: 1.5, depth: 5"], 1],
    ["steps between that make no hole", ["do: turn, to: 14, length: 10", "do: drill, diameter: 4.25, depth: 5"], 2],
  ] as const)("%s", (_, steps, pilot) => expect(metric(...steps)).toEqual([pilot]));

  test("each by the holes up to the next one", () =>
    expect(
      metric(
        "do: drill, diameter: 3.4, depth: 9",
        "do: turn round, out: 9",
        "do: centre drill",
        "do: drill, diameter: 9, depth: 9",
      ),
    ).toEqual([1.6, 1.25]));

  test("a recess further in widens no mouth", () =>
    expect(metric("do: drill, diameter: 6, depth: 20", "do: bore, to: 10, at: 8, depth: 5")).toEqual([2.5]));

  test("what the file says stays", () =>
    expect(pilotsOf(jobOf(["do: centre drill, diameter: 3.15", "do: drill, diameter: 3, depth: 9"]))).toEqual([3.15]));

  test("before a hold with a centre it is left open: the work decides", () => {
    expect(metric("do: hold, held: chuck and centre, out: 60", "do: turn, to: 14, length: 20")).toEqual([undefined]);
    // Holes that come after that are not made at its mouth's cost either.
    expect(
      metric("do: hold, held: chuck and centre, out: 60", "do: hold, out: 30", "do: drill, diameter: 3, depth: 5"),
    ).toEqual([undefined]);
  });
});

describe("in inches", () => {
  test("an inch job gets an inch size", () => {
    // 1/4-20: 0.25 in; 7/64 · 2.12 is 0.232 in, and 1/8 · 2.12 would be 0.265 in.
    const [pilot] = inches("do: drill, diameter: 0.201, depth: 1/2", "do: tap, thread: 1/4-20 UNC, depth: 1/4");
    expect(pilot).toBeCloseTo(inMm(7 / 64, "in"), 9);
  });
  test("none is a metric one, whatever the hole", () => {
    const sizes = [0.025, 3 / 64, 5 / 64, 7 / 64, 1 / 8, 3 / 16].map((size) => inMm(size, "in"));
    for (let hole = 0.06; hole < 0.6; hole += 0.01) {
      const pilot = centreDrillUpTo(inMm(hole, "in"), "in");
      expect(sizes.some((size) => Math.abs(size - pilot) < 1e-9)).toBe(true);
      expect(centreHole(pilot).mouth).toBeLessThanOrEqual(inMm(hole, "in") + 1e-9);
    }
  });
});
