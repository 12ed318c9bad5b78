import { expect, test } from "vitest";
import { nearlyAlike } from "../../src/findings/nearlyAlike.js";
import { speedFor } from "../../src/findings/speedChoice.js";
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
