import fc from "fast-check";
import { expect, test } from "vitest";
import { positions } from "../../src/drive/positions.js";
import { speeds } from "../../src/drive/speeds.js";
import type { Drive, Stage } from "../../src/machine/machine.js";

const belt = (name: string, ...pairs: [string, number, number][]): Stage => ({
  name,
  steps: pairs.map(([label, driver, driven]) => ({ label, kind: "belt", driver, driven })),
});
const drive = (stages: Stage[], tachometer: Drive["tachometer"] = []): Drive => ({
  motor: { slowestRpm: 1425, fastestRpm: 1425 },
  stages,
  tachometer,
});
const gears: Stage = {
  name: "back gear",
  steps: [
    { label: "open", kind: "direct" },
    {
      label: "geared",
      kind: "gears",
      pairs: [
        { driver: 20, driven: 60 },
        { driver: 18, driven: 54 },
      ],
    },
  ],
};
const whole = drive([belt("motor belt", ["", 50, 150]), belt("spindle belt", ["A", 76, 50], ["B", 63, 63]), gears]);

test("one position for every choice of a step in each stage, named by the stages that offer a choice", () => {
  expect(positions(whole).map(({ name }) => name)).toEqual(["A open", "A geared", "B open", "B geared"]);
  expect(positions(drive([belt("belt", ["", 50, 100])])).map(({ name }) => name)).toEqual(["only"]);
});

test("speeds by ratio: belts by diameter, gears by teeth, slowest first", () => {
  const found = speeds(whole).speeds.map(({ position, rpm, from }) => [position.name, Number(rpm.toFixed(6)), from]);
  expect(found).toEqual([
    ["B geared", Number((475 / 9).toFixed(6)), "ratio"],
    ["A geared", Number(((475 * 76) / 50 / 9).toFixed(6)), "ratio"],
    ["B open", 475, "ratio"],
    ["A open", 722, "ratio"],
  ]);
});

test("a tachometer reading takes precedence at its position; the others lose the mean slip of those measured", () => {
  const measured = speeds({
    ...whole,
    tachometer: [
      { labels: ["A", "open"], rpm: 702 },
      { labels: ["B", "open"], rpm: 460 },
      { labels: ["B", "open"], rpm: 464 },
    ],
  });
  const slip = (1 - 702 / 722 + (1 - 462 / 475)) / 2;
  expect(measured.slip).toBeCloseTo(slip, 12);
  const of = (name: string) => measured.speeds.find(({ position }) => position.name === name);
  expect(of("A open")).toMatchObject({ rpm: 702, from: "measured" });
  expect(of("B open")).toMatchObject({ rpm: 462, from: "measured" });
  expect(of("B geared")?.from).toBe("slip");
  // Slip is fitted belt by belt, which for two readings comes to their mean but for products of small slips.
  expect(of("B geared")?.rpm).toBeCloseTo((475 / 9) * (1 - slip), 3);
});

test("a belt that gains speed, or slips by a fifth, is called out", () => {
  const remarks = (rpm: number) => speeds({ ...whole, tachometer: [{ labels: ["A", "open"], rpm }] }).remarks ?? [];
  expect(remarks(702)).toEqual([]);
  expect(remarks(790)).toHaveLength(1);
  expect(remarks(570)).toHaveLength(1);
});

test("as many positions as the product of the steps, every ratio the product of its own", () => {
  const diameter = fc.integer({ min: 10, max: 300 });
  const stage = fc.array(fc.tuple(diameter, diameter), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(fc.array(stage, { minLength: 1, maxLength: 3 }), (made) => {
      const stages = made.map((pairs, index) =>
        belt(`${index}`, ...pairs.map(([a, b], step): [string, number, number] => [`${step}`, a, b])),
      );
      const found = positions(drive(stages));
      expect(found).toHaveLength(made.reduce((product, pairs) => product * pairs.length, 1));
      for (const { steps, ratio } of found) {
        const product = steps.reduce((so, step) => (step.kind === "belt" ? (so * step.driver) / step.driven : so), 1);
        expect(Math.abs(ratio / product - 1)).toBeLessThan(1e-12);
      }
    }),
    { numRuns: 50 },
  );
});
