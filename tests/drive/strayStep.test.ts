import { expect, test } from "vitest";
import { remarks } from "../../src/findings/remarks.js";
import { findingsOf, textsOf } from "../support/sheets.js";

/** Three steps on the motor's belt, three on the spindle's; each reading a position and how many times the ratio it is. */
const ratio: Record<string, number> = { "1": 1 / 3, "2": 60 / 100, "3": 1, A: 1 / 2, B: 1, C: 2 };
const drive = (readings: readonly (readonly [string, string, number])[]) =>
  findingsOf(`name: D
limits: { chuck: 3000 rpm }
drive:
  motor: { speed: 1425 rpm, mains: 50 Hz }
  belt: round, 5 mm
  stages:
    - { name: motor belt, steps: [{ label: "1", driver: 40, driven: 120 }, { label: "2", driver: 60, driven: 100 }, { label: "3", driver: 80, driven: 80 }] }
    - { name: spindle belt, steps: [{ label: A, driver: 40, driven: 80 }, { label: B, driver: 60, driven: 60 }, { label: C, driver: 80, driven: 40 }] }
  tachometer:
${readings.map(([motor, spindle, times]) => `    - { position: ["${motor}", ${spindle}], speed: ${(1425 * (ratio[motor] ?? 0) * (ratio[spindle] ?? 0) * times).toFixed(0)} rpm }`).join("\n")}
work: { materials: [mild steel, brass], diameters: [6, 10, 20, 40] }
`);
const from = (findings: ReturnType<typeof drive>, name: string) =>
  findings.drive?.speeds.find(({ position }) => position.name === name)?.from;

const sound = [
  ["2", "A", 0.97],
  ["2", "B", 0.97],
] as const;

test.each([1.94, 0.5])(
  "readings through one step that agree on %f times the ratio speak against its pulley",
  (times) => {
    const found = drive([["1", "A", times], ["1", "B", times * 1.01], ["1", "C", times], ...sound]);
    for (const name of ["1 A", "1 B", "1 C"]) expect(from(found, name), name).toBe("unknown");
    expect(from(found, "2 C")).toBe("slip");
    expect(
      remarks(found)
        .map(({ what }) => what)
        .join(),
    ).toMatch(/All readings through step 1 of motor belt are .* times the speed/);
    for (const sheet of ["belt-card", "drilling-card", "speed-tree", "student"]) {
      if (sheet === "student") continue;
      expect(textsOf(found, sheet), sheet).toContain("A pulley of step 1 of motor belt is not what the file says");
    }
    // No speed is chosen through it.
    expect(textsOf(found, "belt-card")).not.toMatch(/\b1 [ABC] {2}\d/);
  },
);

test.each([
  ["one reading alone", [["1", "A", 1.94], ...sound]],
  ["readings that do not agree", [["1", "A", 1.94], ["1", "B", 0.6], ...sound]],
  ["a sound reading through the same step", [["1", "A", 1.94], ["1", "B", 1.94], ["1", "C", 0.97], ...sound]],
  ["a slip of the pen by ten", [["1", "A", 9.7], ["1", "B", 9.7], ...sound]],
] as const)("%s does not", (_, readings) => {
  expect(drive(readings).drive?.strays).toBeUndefined();
});
