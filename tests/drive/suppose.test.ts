import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { beltLength } from "../../src/drive/beltLength.js";
import { speeds } from "../../src/drive/speeds.js";
import { changed, speedsAfter } from "../../src/drive/suppose.js";
import type { Drive } from "../../src/machine/machine.js";
import { readMachine } from "../../src/machine/read.js";
import { witnessmark } from "../support/command.js";

function driveOf(text: string): Drive {
  const { machine, problems } = readMachine(text);
  if (machine?.drive === undefined) throw new Error(JSON.stringify(problems));
  return machine.drive;
}
const demo = driveOf(readFileSync("templates/machines/boathouse.yaml", "utf8"));

function withChange(drive: Drive, wish: string) {
  const result = changed(drive, wish, "mm");
  if ("what" in result) throw new Error(result.what);
  return { drive: result.drive, found: speedsAfter(drive, result.drive) };
}

describe("a supposed drive", () => {
  test("on 60 Hz every speed rises by a fifth", () => {
    const { found } = withChange(demo, "60 Hz");
    const slips = new Map(speeds(demo).speeds.map(({ position, byRatioRpm }) => [position.name, byRatioRpm]));
    for (const { position, byRatioRpm } of found.speeds)
      expect(byRatioRpm / (slips.get(position.name) ?? 1)).toBeCloseTo(1.2, 9);
  });

  test("the change and its opposite give the first table back, measured speeds too", () => {
    const there = changed(demo, "motor belt 75 to 150", "mm");
    if ("what" in there) throw new Error(there.what);
    const back = changed(there.drive, "motor belt 50 to 150", "mm");
    if ("what" in back) throw new Error(back.what);
    expect(speedsAfter(demo, back.drive).speeds).toEqual(speeds(demo).speeds);
  });

  test("a pulley of one step leaves the other steps as they were measured", () => {
    const { found } = withChange(demo, "spindle belt b 70 mm to 60 mm");
    const of = (name: string) => found.speeds.find(({ position }) => position.name === name);
    expect(of("A open")).toMatchObject({ from: "measured", rpm: 702 });
    expect(of("B open")?.from).toBe("slip");
    expect(of("B open")?.byRatioRpm).toBeCloseTo((1425 / 3) * (70 / 60), 9);
  });

  test("a position's own slip stays with it under another motor: 6 % at A, 2 % at B (own arithmetic)", () => {
    const step = (label: string, driver: number, driven: number) =>
      `{ label: ${label}, driver: ${driver}, driven: ${driven} }`;
    const drive = driveOf(
      `name: T\ndrive:\n  motor: { speed: 1000 rpm }\n  stages: [{ name: belt, steps: [${step("A", 50, 100)}, ${step("B", 100, 50)}] }]\n  tachometer: [{ position: [A], speed: 470 rpm }, { position: [B], speed: 1960 rpm }]\n`,
    );
    const { found } = withChange(drive, "motor 1200 rpm");
    const of = (name: string) => found.speeds.find(({ position }) => position.name === name);
    expect(of("A")?.rpm).toBeCloseTo(1200 * 0.5 * 0.94, 9);
    expect(of("B")?.rpm).toBeCloseTo(1200 * 2 * 0.98, 9);
    // With another belt nobody knows how it slips.
    const thick = withChange(drive, "belt flat, 5 mm").found.speeds.find(({ position }) => position.name === "A");
    expect(thick?.rpm).toBeCloseTo(1000 * 0.5, 9);
  });

  test("what a pulley that slips less than was measured would give stays the highest it may be", () => {
    const { found } = withChange(demo, "60 Hz");
    for (const { rpm, highestRpm } of found.speeds) expect(highestRpm).toBeGreaterThanOrEqual(rpm);
  });

  test("another belt: effective diameters follow where the outside was measured", () => {
    const drive = driveOf(
      "name: T\ndrive: { motor: { speed: 1450, mains: 50 Hz }, belt: 'flat, 2 mm', stages: [{ name: belt, centres: 200, steps: [{ driver: { outside: 50 }, driven: { outside: 100 } }] }] }\n",
    );
    const { drive: thick, found } = withChange(drive, "belt flat, 5 mm");
    expect(found.speeds[0]?.byRatioRpm).toBeCloseTo((1450 * 55) / 105, 9);
    const step = thick.stages[0]?.steps[0];
    expect(step?.kind === "belt" && beltLength(step.driver, step.driven, 200, "open")).toBeCloseTo(
      beltLength(55, 105, 200, "open") ?? 0,
      9,
    );
  });

  test.each(["nonsense", "motor blet 60 to 150", "spindle belt 60 to 150", "belt toothed", "back gear A 20 to 60"])(
    "%s is refused with a remedy, or changes nothing that is measured otherwise",
    (wish) => {
      const result = changed(demo, wish, "mm");
      if (wish === "belt toothed") expect("words" in result && result.words).toMatch(/effective diameters/);
      else expect("remedy" in result && result.remedy.length).toBeGreaterThan(8);
    },
  );
});

test("the command calls it --suppose, and knows no other name", async () => {
  const file = "templates/machines/boathouse.yaml";
  const { code, out } = await witnessmark("check", file, "--suppose", "60 Hz");
  expect(code).toBe(0);
  expect(out).toMatch(/^Supposed: mains of 60 Hz/m);
  expect((await witnessmark("check", file, "--what-if", "60 Hz")).err).toMatch(/^check has no option --what-if/);
  expect((await witnessmark("check", file, "--suppose", "wings")).err).toMatch(/^[^:]+: suppose: /);
});
