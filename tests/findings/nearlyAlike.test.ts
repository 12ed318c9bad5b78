import { expect, test } from "vitest";
import { nearlyAlike } from "../../src/findings/nearlyAlike.js";
import { speedFor, speedToFeed } from "../../src/findings/speedChoice.js";
import { findingsOf } from "../support/sheets.js";

/** Pulleys of one stage, each with the speed that its ratio gives, and what was measured. */
const machineOf = (steps: readonly number[], measured: Readonly<Record<string, number>>) => {
  const readings = Object.entries(measured).map(([name, rpm]) => `    - { position: [${name}], speed: ${rpm} rpm }`);
  return findingsOf(`name: Two alike
limits: { chuck: 1000 rpm }
drive:
  motor: { speed: 1000 rpm }
  stages:
    - { name: pulleys, steps: [${steps.map((rpm) => `{ driver: ${rpm / 10}, driven: 100 }`).join(", ")}] }
${readings.length === 0 ? "" : ["  tachometer:", ...readings].join("\n")}
work: { materials: [mild steel], diameters: [10] }
`);
};

const alikeIn = ({ drive, machine }: ReturnType<typeof machineOf>) =>
  nearlyAlike(drive?.speeds ?? [], machine.limits).map(
    ({ speed, as }) => `${speed.position.name} as ${as.position.name}`,
  );

/** What is chosen where the band ends at so many turns. */
const chosenAt = (rpm: number, findings: ReturnType<typeof machineOf>) => {
  const cut = { operation: "turning", material: "mild steel" };
  const most = speedFor({ ...cut, diameter: 10 }, findings)?.band.most ?? 0;
  return speedFor({ ...cut, diameter: (1000 * most) / (Math.PI * rpm) }, findings)?.speed?.position.name;
};

test("a measured position is not left to one that is to be measured first", () => {
  // By the slip of B, A comes so near to the chuck's limit that a tachometer must tell.
  const lathe = machineOf([980, 942, 430, 180], { B: 940 });
  expect(alikeIn(lathe)).toEqual([]);
  expect(chosenAt(960, lathe)).toBe("B");
});

test("of nearly the same speed the slower is told, so that no work falls to one of half the speed", () => {
  const lathe = machineOf([820, 790, 390, 180], {});
  expect(alikeIn(lathe)).toEqual(["A as B"]);
  expect(chosenAt(800, lathe)).toBe("B");
});

test("a measured one is told rather than a slower one that is not, which keeps its own row where the measured is too fast", () => {
  const lathe = machineOf([840, 820, 790, 390, 180], { B: 820 });
  expect(alikeIn(lathe)).toEqual(["A as B"]);
  expect(chosenAt(830, lathe)).toBe("B");
  expect(chosenAt(800, lathe)).toBe("C");
});

test("which stands for which is judged once for a drive, however many holes are asked for, by whatever the hand keeps up with", () => {
  const { drive, ...all } = machineOf([820, 790, 390, 180], {});
  if (drive === undefined) throw new Error("no drive");
  let judged = 0;
  const speeds = drive.speeds.map((speed) => ({
    ...speed,
    get doubtful() {
      judged += 1;
      return speed.doubtful;
    },
  }));
  const findings = { ...all, drive: { ...drive, speeds } };
  const chosen = [2, 3, 4, 5, 6].map((diameter) => {
    const cut = { operation: "drilling", material: "mild steel", diameter };
    const position = speedToFeed(cut, { feed: 0.05, perTurn: 0.2 }, findings)?.speed?.position.name;
    return { position, judged };
  });
  // Two turns a second of 0.2 mm are 0.05 mm a turn at 480 rpm.
  expect(chosen.map(({ position }) => position)).toEqual(["C", "C", "C", "C", "C"]);
  expect(chosen[0]?.judged).toBeGreaterThan(0);
  expect(judged).toBe(chosen[0]?.judged);
});
