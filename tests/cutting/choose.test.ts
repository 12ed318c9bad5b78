import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chooseSpeed, inward } from "../../src/cutting/choose.js";
import { cuttingSpeed } from "../../src/cutting/cuttingSpeeds.js";
import type { CuttingSpeed } from "../../src/cutting/finding.js";
import { rpmFor } from "../../src/cutting/rates.js";
import type { SpeedFinding } from "../../src/drive/finding.js";

const at = (rpm: number, slowestRpm = rpm): SpeedFinding => ({
  position: { name: String(rpm), labels: [], steps: [], ratio: 1 },
  rpm,
  slowestRpm,
  highestRpm: rpm,
  byRatioRpm: rpm,
  from: "ratio",
});
const band = (slowest: number, fastest: number): CuttingSpeed => ({
  ...{ material: "m", tool: "t", operation: "turning", slowest, fastest, most: fastest },
  ...{ sources: [], confidence: "read", apart: [], rows: [], factors: [] },
});

const rpm = fc.double({ min: 20, max: 4000, noNaN: true });
const speeds = fc
  .array(rpm, { minLength: 1, maxLength: 12 })
  .map((list) => list.sort((a, b) => a - b).map((one) => at(one)));
const diameter = fc.double({ min: 0.5, max: 300, noNaN: true });
const edges = fc.tuple(fc.double({ min: 3, max: 300, noNaN: true }), fc.double({ min: 1, max: 5, noNaN: true }));
const numRuns = 200;

describe("choosing a speed", () => {
  test("never beyond a limit, never above the band", () => {
    fc.assert(
      fc.property(speeds, diameter, edges, rpm, rpm, (list, d, [slowest, times], chuckRpm, spindleRpm) => {
        const choice = chooseSpeed(d, band(slowest, slowest * times), list, { chuckRpm, spindleRpm });
        if (choice.rpm === undefined) return;
        expect(choice.rpm).toBeLessThanOrEqual(Math.min(chuckRpm, spindleRpm) * (1 + 1e-9));
        expect(choice.metresPerMinute).toBeLessThanOrEqual(slowest * times * (1 + 1e-9));
      }),
      { numRuns },
    );
  });

  test("a slower material never gets a faster position, a larger diameter neither", () => {
    fc.assert(
      fc.property(
        speeds,
        diameter,
        edges,
        rpm,
        fc.double({ min: 1, max: 4, noNaN: true }),
        (list, d, [v, times], chuckRpm, more) => {
          const limits = { chuckRpm };
          const slow = chooseSpeed(d, band(v, v * times), list, limits).rpm ?? 0;
          expect(slow).toBeLessThanOrEqual(
            (chooseSpeed(d, band(v * more, v * times * more), list, limits).rpm ?? 0) + 1e-9,
          );
          expect(chooseSpeed(d * more, band(v, v * times), list, limits).rpm ?? 0).toBeLessThanOrEqual(slow + 1e-9);
        },
      ),
      { numRuns },
    );
  });

  test("a light machine's factor never makes it faster", () => {
    const list = [60, 120, 240, 480, 960].map((one) => at(one));
    for (const material of ["mild steel", "brass", "stainless steel", "nylon"])
      for (const d of [3, 10, 40]) {
        const [full, light] = [1, 0.7].map((derating) => {
          const found = cuttingSpeed(material, "high-speed steel", "turning", { derating });
          return found && chooseSpeed(d, found, list, {});
        });
        expect(light?.rpm ?? 0).toBeLessThanOrEqual(full?.rpm ?? 0);
      }
  });

  test("each verdict, and which limit holds", () => {
    const list = [at(100), at(400), at(1600)];
    const wanted = band(20, 30);
    expect(chooseSpeed(20, wanted, list, {})).toMatchObject({ verdict: "in the band", rpm: 400 });
    expect(chooseSpeed(15, wanted, list, {})).toMatchObject({ verdict: "slower than the band", rpm: 400 });
    expect(chooseSpeed(200, wanted, list, {}).verdict).toBe("slowest is too fast");
    expect(chooseSpeed(5, wanted, list, { chuckRpm: 1000, spindleRpm: 1200 })).toMatchObject({
      verdict: "held by a limit",
      heldBy: "chuck",
      rpm: 400,
    });
    expect(chooseSpeed(5, wanted, list, { spindleRpm: 50 })).toMatchObject({
      verdict: "held by a limit",
      heldBy: "spindle",
    });
    expect(chooseSpeed(5, wanted, list, { spindleRpm: 50 }).rpm).toBeUndefined();
  });

  test("a variable motor is set to the speed that is wanted", () => {
    expect(chooseSpeed(20, band(20, 30), [at(1000, 100)], {}).rpm).toBeCloseTo(rpmFor(30, 20), 9);
  });

  test("from the outside in: each faster position from where the work has become small enough for it", () => {
    const list = [at(100), at(400), at(1600)];
    const { first, then } = inward(60, band(20, 30), list, { chuckRpm: 1000 });
    expect(first.rpm).toBe(100);
    expect(then.map(({ speed }) => speed.rpm)).toEqual([400]);
    expect(rpmFor(30, then[0]?.below ?? 0)).toBeCloseTo(400, 9);
  });
});
