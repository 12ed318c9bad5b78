import { expect, test } from "vitest";
import { speeds } from "../../src/drive/speeds.js";
import type { Drive } from "../../src/machine/machine.js";

const steps = [
  { label: "A", kind: "belt", driver: 80, driven: 40 },
  { label: "B", kind: "belt", driver: 40, driven: 80 },
] as const;
const variable: Drive = {
  motor: { slowestRpm: 300, fastestRpm: 3000 },
  stages: [{ name: "belt", steps }],
  tachometer: [],
};

test("a variable motor: every position from its slowest to its fastest, read at the fastest", () => {
  const found = speeds({ ...variable, tachometer: [{ labels: ["B"], rpm: 1470 }] }).speeds;
  expect(found.map(({ position }) => position.name)).toEqual(["B", "A"]);
  expect(found[0]).toMatchObject({ rpm: 1470, from: "measured", byRatioRpm: 1500 });
  expect(found[0]?.slip).toBeCloseTo(0.02, 12);
  expect(found[0]?.slowestRpm).toBeCloseTo(147, 9);
  expect(found[1]?.from).toBe("slip");
  expect(found[1]?.rpm).toBeCloseTo(6000 * 0.98, 9);
  expect(found[1]?.slowestRpm).toBeCloseTo(600 * 0.98, 9);
});

test("a reading at a position that the drive has not is left out, and named", () => {
  const { speeds: found, remarks, slip } = speeds({ ...variable, tachometer: [{ labels: ["C"], rpm: 900 }] });
  expect(found.map(({ from }) => from)).toEqual(["ratio", "ratio"]);
  expect(slip).toBeUndefined();
  expect(remarks).toHaveLength(1);
  expect(remarks?.[0]?.what).toContain('"C"');
});

test("a drive without a choice is measured without a label", () => {
  const only: Drive = { ...variable, stages: [{ name: "belt", steps: [steps[1]] }] };
  expect(speeds({ ...only, tachometer: [{ labels: [], rpm: 1455 }] }).speeds).toMatchObject([
    { position: { name: "only" }, rpm: 1455, from: "measured" },
  ]);
});
