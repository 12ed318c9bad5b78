import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readMachine } from "../../src/machine/read.js";

const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");
const machineOf = (text: string) => {
  const { machine, problems } = readMachine(text);
  if (machine === undefined) throw new Error(JSON.stringify(problems));
  return machine;
};

describe("units and defaults", () => {
  test("a bare number is in the file's unit, any length may carry its own", () => {
    const text = (units: string, size: string) =>
      `name: L\nunits: ${units}\nhandwheels: [{ name: S, feed: 2 mm, dial: { shape: drum, width: 9 mm, diameter: ${size} } }]\n`;
    const diameter = (units: string, size: string) => {
      const dial = machineOf(text(units, size)).handwheels[0]?.dial;
      return dial?.shape === "drum" ? dial.diameter : undefined;
    };
    expect(diameter("mm", "38")).toBe(38);
    expect(diameter("in", "1.5")).toBeCloseTo(38.1, 12);
    expect(diameter("mm", "1-1/2 in")).toBeCloseTo(38.1, 12);
    expect(diameter("in", "38 mm")).toBe(38);
    expect(diameter("mm", '"38,5"')).toBe(38.5);
    expect(diameter("mm", "1500 thou")).toBeCloseTo(38.1, 12);
  });

  test("the forms of a feed", () => {
    const feed = (text: string) => machineOf(`name: L\nhandwheels: [{ name: S, feed: ${text} }]\n`).handwheels[0]?.feed;
    expect(feed("16 tpi")).toEqual({ from: "screw", pitch: 25.4 / 16, starts: 1, tpi: 16 });
    expect(feed("1.5")).toEqual({ from: "stated", perTurn: 1.5 });
    expect(feed("{ screw: { pitch: 8 tpi, starts: 2 } }")).toEqual({ from: "screw", pitch: 3.175, starts: 2, tpi: 8 });
    expect(feed("{ rack: { module: 1, teeth: 14 } }")).toEqual({
      from: "rack",
      module: 1,
      teeth: 14,
      reduction: [1, 1],
    });
    expect(feed("{ perTurn: 2.54, uncertainty: 0.005, nominal: 10 tpi }")).toEqual({
      from: "stated",
      perTurn: 2.54,
      uncertainty: 0.005,
      nominal: 2.54,
    });
  });

  test("`closure: true` is the word, not yes", () => {
    const { handwheels } = machineOf(
      "name: L\nhandwheels: [{ name: S, feed: 2, dial: { shape: drum, width: 9, diameter: 38, closure: true } }]\n",
    );
    expect(handwheels[0]?.dial?.closure).toBe("true");
  });

  test("only a name is needed", () => {
    expect(machineOf("name: Lathe\n")).toMatchObject({
      name: "Lathe",
      units: "mm",
      handwheels: [],
      paper: { size: "A4" },
    });
  });

  test("words keep their figures as they were written", () => {
    const { revision, drive } = machineOf(
      "name: 007\nrevision: 1.10\ndrive: { motor: { speed: 1400 }, stages: [{ name: s, steps: [{ label: 1.0 }, { label: 1 }] }], tachometer: [{ position: 1.0, speed: 1390 }] }\n",
    );
    expect(revision).toBe("1.10");
    expect(drive?.stages[0]?.steps.map(({ label }) => label)).toEqual(["1.0", "1"]);
    expect(drive?.tachometer[0]?.labels).toEqual(["1.0"]);
  });

  test("steps without labels get letters; one step has none", () => {
    const { drive } = machineOf(
      "name: L\ndrive:\n  motor: { speed: 1400 }\n  stages:\n    - { name: m, steps: [{ driver: 5, driven: 10 }] }\n    - { name: s, steps: [{ driver: 5, driven: 10 }, { driver: 10, driven: 5 }] }\n",
    );
    expect(drive?.stages.map(({ steps }) => steps.map(({ label }) => label))).toEqual([[""], ["A", "B"]]);
  });
});

test("the demo reads without a remark", () => expect(readMachine(demo).problems).toEqual([]));

describe("whatever the text, an answer: a machine, or at least one error, and never an exception", () => {
  const holds = (text: string): void => {
    const { machine, problems } = readMachine(text);
    expect(machine !== undefined || problems.some(({ severity }) => severity === "error")).toBe(true);
    for (const { line, column } of problems) expect(Math.min(line, column)).toBeGreaterThanOrEqual(1);
  };

  test("random text", () =>
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 200 }), holds), { numRuns: 300 }));

  test("the demo with a piece cut out or put in", () =>
    fc.assert(
      fc.property(
        fc.nat(demo.length),
        fc.nat(30),
        fc.constantFrom("", "x", ":", "- ", "{", "]", '"', "\t", "\n", "-1", "null", "1e999", "&a", "*a", "!!js", "%"),
        (at, length, piece) => holds(demo.slice(0, at) + piece + demo.slice(at + length)),
      ),
      { numRuns: 300 },
    ));

  test.each([
    ["deep nesting", `name: ${"[".repeat(3000)}`],
    [
      "many readings",
      `name: L\nhandwheels: [{ name: S, feed: { readings: { turns: [${"1,".repeat(100_000)}1], travel: [1] } } }]\n`,
    ],
    ["NUL", "name: L\u0000"],
    ["many unknown keys", `name: L\n${Array.from({ length: 20_000 }, (_, index) => `k${index}: 1\n`).join("")}`],
    ["brackets without end", `name: ${"[".repeat(20_000)}`],
    ["two documents", "name: L\n---\nname: M\n"],
    ["keys that are no words", "name: L\n? [a, b]\n: 1\n"],
    ["a merge key", "name: L\n<<: { units: mm }\n"],
  ])("%s", (_, text) => holds(text));
});
