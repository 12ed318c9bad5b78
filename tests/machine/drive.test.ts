import { describe, expect, test } from "vitest";
import { positions } from "../../src/drive/positions.js";
import { speeds } from "../../src/drive/speeds.js";
import type { Drive } from "../../src/machine/machine.js";
import { readMachine } from "../../src/machine/read.js";

function driveOf(drive: string): Drive {
  const { machine, problems } = readMachine(`name: T\ndrive: ${drive}\n`);
  if (machine?.drive === undefined) throw new Error(JSON.stringify(problems));
  return machine.drive;
}
const firstStep = (drive: string) => driveOf(drive).stages[0]?.steps[0];
const oneBelt = (belt: string, driver: string) =>
  firstStep(
    `{ motor: { speed: 1000 }, belt: "${belt}", stages: [{ name: b, steps: [{ driver: ${driver}, driven: 100 }] }] }`,
  );

describe("what can be measured at a pulley", () => {
  test.each([
    ["flat, 2 mm", "{ outside: 50 }", 52],
    ["flat, 2 mm", "{ overBelt: 54 }", 52],
    ["round, 5 mm", "{ overBelt: 55 }", 50],
    ["round, 5 mm", `{ stringOver: ${55 * Math.PI} }`, 50],
    ["flat, 2 mm", `{ string: ${50 * Math.PI} }`, 52],
    ["toothed, 5 mm", "{ teeth: 20 }", 100 / Math.PI],
    ["vee, Z", "{ outside: 60 }", 56],
    ["vee, A", "52 mm", 52],
  ])("%s, %s runs at %d mm", (belt, driver, effective) => {
    const step = oneBelt(belt, driver);
    expect(step?.kind === "belt" ? step.driver : undefined).toBeCloseTo(effective, 9);
  });

  test("every way of measuring one pulley gives one effective diameter", () => {
    const belt = "flat, 2 mm";
    const found = ["52", "{ outside: 50 }", "{ overBelt: 54 }", `{ stringOver: ${54 * Math.PI} }`].map((way) => {
      const step = oneBelt(belt, way);
      return step?.kind === "belt" ? step.driver : 0;
    });
    for (const diameter of found) expect(diameter).toBeCloseTo(52, 9);
  });
});

describe("motors and stages", () => {
  test("a motor of two speeds doubles the positions, each by its own speed", () => {
    const drive = driveOf(
      "{ motor: { speeds: [710, 1425] }, stages: [{ name: b, steps: [{ driver: 1, driven: 2 }, { driver: 2, driven: 1 }] }] }",
    );
    const rpms = speeds(drive).speeds.map(({ position, rpm }) => [position.name, rpm]);
    expect(positions(drive)).toHaveLength(4);
    expect(rpms).toEqual([
      ["A 710", expect.closeTo(355, 9)],
      ["A 1425", expect.closeTo(712.5, 9)],
      ["B 710", expect.closeTo(1420, 9)],
      ["B 1425", expect.closeTo(2850, 9)],
    ]);
  });

  test("a treadle has a range as a variable motor has", () => {
    const drive = driveOf(
      "{ motor: { by: treadle, speed: [50, 80] }, stages: [{ name: b, steps: [{ driver: 500, driven: 100 }] }] }",
    );
    expect(drive.motor.by).toBe("treadle");
    expect(speeds(drive).speeds[0]).toMatchObject({ slowestRpm: 250, rpm: 400 });
  });

  test("an idler between two wheels changes no speed", () => {
    const of = (teeth: string) =>
      speeds(driveOf(`{ motor: { speed: 900 }, stages: [{ name: g, steps: [{ teeth: ${teeth} }] }] }`)).speeds[0]?.rpm;
    expect(of("[[20, 35, 60]]")).toBe(of("[[20, 60]]"));
  });

  test("five cone steps direct and five in back gear make ten speeds (F. D. Jones, Turning and Boring, 1914, ch. I; read)", () => {
    const cone = [1, 2, 3, 4, 5].map((size) => `{ driver: ${size}, driven: ${6 - size} }`).join(", ");
    const drive = driveOf(
      `{ motor: { speed: 300 }, stages: [{ name: cone, steps: [${cone}] }, { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [20, 60]] }] }] }`,
    );
    expect(positions(drive)).toHaveLength(10);
  });
});
