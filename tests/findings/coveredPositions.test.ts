import fc from "fast-check";
import { expect, test } from "vitest";
import type { SpeedFinding } from "../../src/drive/finding.js";
import { coveredPositions } from "../../src/findings/coveredPositions.js";
import { fastestAllowed } from "../../src/findings/limits.js";
import { withoutAlike } from "../../src/findings/nearlyAlike.js";
import { servedDiameters } from "../../src/findings/servedDiameters.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const speed = (name: string, rpm: number, share = 0.4, more: Partial<SpeedFinding> = {}): SpeedFinding => ({
  ...{ position: { name, labels: [name], steps: [], ratio: 1 }, rpm, slowestRpm: rpm * share, highestRpm: rpm },
  ...{ from: "measured", byRatioRpm: rpm },
  ...more,
});
const names = (speeds: readonly SpeedFinding[]) => speeds.map(({ position }) => position.name);

test("as few as can be stay, and none is left out of a motor with one speed", () => {
  const five = (share: number) => [400, 600, 900, 1000, 1500].map((rpm) => speed(String(rpm), rpm, share));
  // 600–1500, 240–600, and 160–400, with which one begins.
  expect(names(coveredPositions(five(0.4), {}))).toEqual(["900", "1000"]);
  expect(coveredPositions(five(1), {})).toEqual([]);
});

test("of positions that all may be turned up to the limit, the one that reaches lowest stays", () => {
  const held = [400, 1000, 2600, 3000].map((rpm) => speed(String(rpm), rpm));
  expect(names(coveredPositions(held, { chuckRpm: 2500 }))).toEqual(["3000"]);
});

test("of which there is something to mind, that is told and stands for none", () => {
  const rest = [speed("400", 400), speed("1000", 1000)];
  const doubtful = speed("600", 600, 0.4, { doubtful: [700] });
  expect(coveredPositions([rest[0] as SpeedFinding, doubtful, rest[1] as SpeedFinding], {})).toEqual([]);
});

test("what all positions give the ones that stay give too", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: 100, max: 3000 }), { minLength: 1, maxLength: 12 }),
      fc.double({ min: 0.2, max: 0.95, noNaN: true }),
      fc.option(fc.integer({ min: 300, max: 3000 }), { nil: undefined }),
      (rpms, share, chuckRpm) => {
        const limits = chuckRpm === undefined ? {} : { chuckRpm };
        const all = rpms.sort((a, b) => a - b).map((rpm) => speed(String(rpm), rpm, share));
        const covered = new Set(coveredPositions(all, limits));
        const gives = (some: readonly SpeedFinding[], rpm: number) =>
          some.some((one) => one.slowestRpm <= rpm + 1e-6 && (fastestAllowed(one, limits) ?? 0) >= rpm - 1e-6);
        const kept = all.filter((one) => !covered.has(one));
        for (const { slowestRpm, rpm } of all)
          for (const at of [slowestRpm, (slowestRpm + rpm) / 2, rpm]) expect(gives(kept, at)).toBe(gives(all, at));
      },
    ),
  );
});

test("so the belt card has wide spans, and names those that it leaves out", () => {
  const findings = findingsOf(`name: V
units: mm
drive:
  motor: { speed: 600 to 1425 rpm }
  stages:
    - { name: motor belt, steps: [{ label: A, driver: 100, driven: 60 }, { label: B, driver: 85, driven: 75 }, { label: C, driver: 70, driven: 90 }, { label: D, driver: 55, driven: 105 }] }
    - { name: spindle belt, steps: [{ label: "1", driver: 110, driven: 60 }, { label: "2", driver: 95, driven: 75 }, { label: "3", driver: 75, driven: 95 }, { label: "4", driver: 60, driven: 110 }] }
work: { materials: [mild steel] }
`);
  const { speeds, covered } = withoutAlike(findings.drive?.speeds ?? [], findings.machine.limits);
  expect(speeds.length + covered.length).toBe(16);
  expect(speeds.length).toBeLessThan(6);
  const pieces = (servedDiameters("mild steel", "turning", findings) ?? []).filter(({ to }) => to < 100);
  for (const { from, to } of pieces.slice(1)) expect(to / from).toBeGreaterThan(1.3);
  const said = textsOf(findings, "belt-card");
  expect(said).toMatch(/Left out, as the motor gives their speeds at others: .*C 2/);
  expect(said).not.toMatch(/\d\.\d\d/);
});
