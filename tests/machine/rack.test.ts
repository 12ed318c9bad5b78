import { expect, test } from "vitest";
import { feedPerTurn } from "../../src/feed/feedPerTurn.js";
import { readMachine } from "../../src/machine/read.js";

const travel = (rack: string, units = "mm"): number => {
  const { machine, problems } = readMachine(
    `name: L\nunits: ${units}\nhandwheels: [{ name: Carriage, feed: { rack: { ${rack}, teeth: 14 } } }]\n`,
  );
  const feed = machine?.handwheels[0]?.feed;
  if (feed === undefined) throw new Error(JSON.stringify(problems));
  const found = feedPerTurn(feed);
  return "tooFew" in found ? Number.NaN : found.perTurn;
};

test("a module is millimetres in an inch file too, with the unit written or not", () => {
  expect(travel("module: 1")).toBeCloseTo(14 * Math.PI, 12);
  expect(travel("module: 1", "in")).toBe(travel("module: 1"));
  expect(travel("module: 1 mm", "in")).toBe(travel("module: 1"));
});

test("a circular pitch goes from tooth to tooth: 14 teeth of 1/4 in are 3.5 in (geometry)", () => {
  expect(travel("pitch: 1/4 in")).toBeCloseTo(3.5 * 25.4, 10);
  expect(travel("pitch: 1/4", "in")).toBeCloseTo(3.5 * 25.4, 10);
  expect(travel("pitch: 3.2")).toBeCloseTo(14 * 3.2, 10);
});

test.each(["16 DP", "16 dp", "16 D.P.", "16 diametral pitch"])(
  "%s: teeth to an inch of pitch diameter (geometry)",
  (pitch) => {
    expect(travel(`pitch: ${pitch}`, "in")).toBeCloseTo((14 / 16) * Math.PI * 25.4, 10);
  },
);

test("a diametral pitch or a tooth distance written as a module is questioned with that slip", () => {
  const said = (rack: string) =>
    readMachine(`name: L\nhandwheels: [{ name: C, feed: { rack: { ${rack}, teeth: 14 } } }]\n`).problems.map(
      ({ remedy }) => remedy,
    );
  expect(said("module: 16").join()).toContain("pitch: 16 DP");
  expect(said("pitch: 16").join()).toContain("pitch: 16 DP");
  expect(said("module: 1")).toEqual([]);
});
