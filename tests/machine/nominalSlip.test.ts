import { describe, expect, test } from "vitest";
import { nominalSlip } from "../../src/machine/nominalSlip.js";
import { readMachine } from "../../src/machine/read.js";

describe("a feed far from nominal names the slip that makes it so", () => {
  test.each([
    [4.02, /twice as much/],
    [0.99, /half as much/],
    [20.1, /ten times as much.*decimal point/],
    [0.2, /a tenth.*decimal point/],
    [50.8, /inches/],
    [2 / 25.4, /inches/],
    [2.6, /count the turns again/],
  ])("%f mm where the maker meant 2", (perTurn, words) => expect(nominalSlip(perTurn, 2)?.remedy).toMatch(words));

  test("within a fifth nothing is said", () => {
    for (const perTurn of [1.61, 1.9, 2, 2.1, 2.39]) expect(nominalSlip(perTurn, 2)).toBeUndefined();
  });

  test("turns and travel changed about, in either unit; one wild reading is not taken for a slip", () => {
    const remedies = (units: string, nominal: string, turns: string, travel: string) =>
      readMachine(
        `name: L\nunits: ${units}\nhandwheels: [{ name: S, feed: { nominal: ${nominal}, readings: { turns: [${turns}], travel: [${travel}] } } }]\n`,
      ).problems.map(({ remedy }) => remedy);
    expect(remedies("mm", "2.5", "0, 2.5, 5, 7.5", "0, 1, 2, 3")).toEqual([expect.stringMatching(/changed about/)]);
    expect(remedies("in", "0.1", "0, 0.1, 0.2, 0.3", "0, 1, 2, 3")).toEqual([expect.stringMatching(/changed about/)]);
    expect(remedies("mm", "2", "0, 1, 2, 3, 4, 5, 6", "0, 2, 4, 6, 8, 10, 120")).toEqual([]);
  });
});
