import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { slipPerStage } from "../../src/drive/slipPerStage.js";
import type { Drive, Stage } from "../../src/machine/machine.js";

const first: Stage = { name: "motor belt", steps: [{ label: "", kind: "belt", driver: 50, driven: 150 }] };
const cone: Stage = {
  name: "spindle belt",
  steps: [
    { label: "A", kind: "belt", driver: 76, driven: 50 },
    { label: "B", kind: "belt", driver: 63, driven: 63 },
    { label: "C", kind: "belt", driver: 50, driven: 76 },
  ],
};
/** A countershaft belt that can be thrown over to gears: then it does not slip. */
const counter: Stage = {
  name: "counter",
  steps: [
    { label: "belt", kind: "belt", driver: 60, driven: 90 },
    { label: "gears", kind: "gears", pairs: [{ driver: 20, driven: 60 }] },
  ],
};
const driveWith = (stages: Stage[], tachometer: Drive["tachometer"]): Drive => ({
  motor: { slowestRpm: 1425, fastestRpm: 1425 },
  stages,
  tachometer,
});
const coneRatio = { A: 76 / 50, B: 1, C: 50 / 76 };

describe("slip per stage", () => {
  test("two belts that always carry the power are told together", () => {
    const readings = (["A", "B", "C"] as const).map((label) => ({
      labels: [label],
      rpm: (1425 / 3) * coneRatio[label] * 0.98 * 0.97,
    }));
    const found = slipPerStage(driveWith([first, cone], readings));
    expect(found?.stages).toEqual([
      { stages: ["motor belt", "spindle belt"], slip: expect.closeTo(1 - 0.98 * 0.97, 12) },
    ]);
  });

  test("a belt that some positions do without is told apart, whatever the slips", () => {
    const slip = fc.double({ min: 0, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(slip, slip, (always, sometimes) => {
        const readings = (["A", "C"] as const).flatMap((label) =>
          (["belt", "gears"] as const).map((way) => ({
            labels: [label, way],
            rpm: 1425 * coneRatio[label] * (1 - always) * (way === "belt" ? (60 / 90) * (1 - sometimes) : 1 / 3),
          })),
        );
        const found = slipPerStage(driveWith([cone, counter], readings));
        expect(found?.stages.map((stage) => stage.slip)).toEqual([
          expect.closeTo(always, 9),
          expect.closeTo(sometimes, 9),
        ]);
        expect(found?.wild).toEqual([]);
        expect(found?.left([true, false])).toBeCloseTo(1 - always, 9);
      }),
      { numRuns: 40 },
    );
  });

  test.each([1.12, 1.032, 0.968])(
    "a reading %f times what it should be is named, and does not spoil the others",
    (off) => {
      const readings = [
        ...(["A", "B", "C"] as const).flatMap((label) => [
          { labels: [label, "belt"], rpm: 1425 * coneRatio[label] * (60 / 90) * 0.97 * 0.98 },
          { labels: [label, "gears"], rpm: (1425 * coneRatio[label] * 0.97) / 3 },
        ]),
      ].map((reading, index) => (index === 2 ? { ...reading, rpm: reading.rpm * off } : reading));
      const found = slipPerStage(driveWith([cone, counter], readings));
      expect(found?.wild.map(({ name }) => name)).toEqual(["B belt"]);
      expect(found?.wild[0]?.expectedRpm).toBeCloseTo(1425 * (60 / 90) * 0.97 * 0.98, 6);
      expect(found?.stages.map(({ slip }) => slip)).toEqual([expect.closeTo(0.03, 9), expect.closeTo(0.02, 9)]);
    },
  );

  test("no reading, no slip", () => {
    expect(slipPerStage(driveWith([first, cone], []))).toBeUndefined();
  });
});
