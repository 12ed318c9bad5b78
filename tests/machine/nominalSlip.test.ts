import { describe, expect, test } from "vitest";
import { isFarFromNominal, nominalSlip } from "../../src/machine/nominalSlip.js";
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

describe("how a slip is told", () => {
  test("small ones in per cent, large ones in times", () => {
    expect(nominalSlip(0.99, 2)?.what).toBe("the feed is only 50 % what nominal says");
    expect(nominalSlip(4.02, 2)?.what).toBe("the feed is 2.01 times what nominal says");
    expect(nominalSlip(20, 2)?.what).toBe("the feed is 10 times what nominal says");
    expect(nominalSlip(19.9, 2)?.what).toBe("the feed is 9.95 times what nominal says");
    expect(nominalSlip(50.8, 2)).toMatchObject({ code: "unit-mix", what: "feed and nominal differ by about 25.4" });
    expect(nominalSlip(4.02, 2)?.code).toBe("far-from-nominal");
  });
  test("near is within a tenth of its factor, of an inch within a fifth", () => {
    const twice = (perTurn: number) => /twice/.test(nominalSlip(perTurn, 1)?.remedy ?? "");
    expect([1.79, 1.81, 2.19, 2.21].map(twice)).toEqual([false, true, true, false]);
    const inches = (perTurn: number) => nominalSlip(perTurn, 1)?.code === "unit-mix";
    expect([25.4 * 0.79, 25.4 * 0.81, 25.4 * 1.19, 25.4 * 1.21].map(inches)).toEqual([false, true, true, false]);
    expect([0.79 / 25.4, 0.81 / 25.4, 1.19 / 25.4, 1.21 / 25.4].map(inches)).toEqual([false, true, true, false]);
  });
  test("a fifth off is as far as screws are out, either way", () => {
    expect([0.799, 0.801, 1.199, 1.201].map((ratio) => isFarFromNominal(2 * ratio, 2))).toEqual([
      true,
      false,
      false,
      true,
    ]);
  });
  test("the other way round is named beside a factor, within a tenth", () => {
    expect(nominalSlip(4, 2, 2.1)?.remedy).toMatch(/twice.*; or turns and travel seem changed about/);
    expect(nominalSlip(5, 2, 2.21)?.remedy).toMatch(/^count the turns again/);
    expect(nominalSlip(5, 2, 1.81)?.remedy).toMatch(/^turns and travel/);
    expect(nominalSlip(5, 2, 1.79)?.remedy).toMatch(/^count the turns again/);
    expect(nominalSlip(2.1, 2, 2)).toBeUndefined();
  });
});
