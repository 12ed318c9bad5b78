import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { noLoadShare } from "../../src/drive/motor.js";
import { speeds } from "../../src/drive/speeds.js";
import { changed, speedsAfter } from "../../src/drive/suppose.js";
import type { Drive } from "../../src/machine/machine.js";
import { explainSlip } from "../../src/working/drive.js";
import { findingsOf } from "../support/sheets.js";

const cone = [
  { label: "A", kind: "belt", driver: 80, driven: 40 },
  { label: "B", kind: "belt", driver: 60, driven: 60 },
  { label: "C", kind: "belt", driver: 40, driven: 80 },
  { label: "D", kind: "belt", driver: 50, driven: 70 },
  { label: "E", kind: "belt", driver: 45, driven: 75 },
] as const;
type Label = (typeof cone)[number]["label"];
const drive = (...readings: [Label, number][]): Drive => ({
  motor: { slowestRpm: 1400, fastestRpm: 1400 },
  stages: [{ name: "belt", steps: cone }],
  tachometer: readings.map(([label, rpm]) => ({ labels: [label], rpm })),
});
const at = (found: ReturnType<typeof speeds>, name: string) =>
  found.speeds.find(({ position }) => position.name === name);

describe("a doubtful reading serves nothing but the limits", () => {
  test("a slip of the pen by ten: by the others' slip, and its message at its own reading", () => {
    const found = speeds(drive(["A", 2744], ["B", 13720], ["C", 686]));
    expect(at(found, "B")).toMatchObject({ from: "slip", doubtful: [13720], highestRpm: 13720 });
    expect(at(found, "B")?.rpm).toBeCloseTo(1400 * 0.98, 6);
    expect(at(found, "B")).not.toHaveProperty("slip");
    expect(found.slip).toBeCloseTo(0.02, 9);
    expect(found.remarks?.map(({ reading }) => reading)).toEqual([1]);
    expect(found.doubtful).toMatchObject([{ name: "B", why: "too fast" }]);
    expect(found.astray).toBeUndefined();
  });

  test("two of one position that contradict one another are not averaged", () => {
    const found = speeds(drive(["A", 2744], ["B", 1372], ["B", 1260]));
    expect(at(found, "B")).toMatchObject({ from: "slip", doubtful: [1372, 1260] });
    expect(at(found, "B")?.rpm).toBeCloseTo(1372, 6);
    expect(found.doubtful).toMatchObject([{ why: "contradict one another", reading: 2 }]);
    expect(at(speeds(drive(["B", 1372], ["B", 1360])), "B")).toMatchObject({ from: "measured", highestRpm: 1372 });
  });

  test("one that the others contradict", () => {
    const found = speeds(drive(["A", 2744], ["B", 1372], ["C", 686], ["D", 980], ["E", 737]));
    expect(found.doubtful).toMatchObject([{ name: "E", why: "wild", reading: 4 }]);
    expect(at(found, "E")).toMatchObject({ from: "slip", doubtful: [737] });
    // The higher of reading and ratio, the motor unloaded.
    expect(at(found, "E")?.highestRpm).toBeCloseTo(1400 * (45 / 75) * 1.06, 6);
  });

  test("a supposed drive takes no slip from it", () => {
    const doubted = drive(["B", 1372], ["C", 1400]);
    const result = changed(doubted, "belt C 50 to 70", "mm");
    if ("what" in result) throw new Error(result.what);
    const after = speedsAfter(doubted, result.drive);
    expect(at(after, "C")?.rpm).toBeCloseTo(1400 * (50 / 70) * 0.98, 6);
    expect(at(after, "C")?.from).toBe("slip");
    // The limit is held against what the doubted reading would become.
    expect(at(after, "C")?.highestRpm).toBeCloseTo(1400 * (50 / 70) * 2, 6);
  });
});

/** By ratio 1400 A, 700 B; half as fast where geared. */
const geared = (...readings: [string, number][]): Drive => ({
  motor: { slowestRpm: 1400, fastestRpm: 1400 },
  stages: [
    {
      name: "belt",
      steps: [
        { label: "A", kind: "belt", driver: 60, driven: 60 },
        { label: "B", kind: "belt", driver: 40, driven: 80 },
      ],
    },
    {
      name: "gear",
      steps: [
        { label: "open", kind: "direct" },
        { label: "geared", kind: "gears", pairs: [{ driver: 20, driven: 40 }] },
      ],
    },
  ],
  tachometer: readings.map(([name, rpm]) => ({ labels: name.split(" "), rpm })),
});

describe("a step that no sound reading vouches for", () => {
  test("is suspected wherever it runs: its positions are held against the limits so much higher", () => {
    const found = speeds(geared(["A open", 1372], ["B open", 1400]));
    expect(at(found, "B geared")).toMatchObject({ from: "slip", rpm: expect.closeTo(343, 6) });
    expect(at(found, "B geared")?.highestRpm).toBeCloseTo(700, 6);
    expect(at(found, "A geared")?.highestRpm).toBeCloseTo(686, 6);
  });

  test("is not suspected for a decimal point out of place, nor once a reading vouches for it", () => {
    expect(at(speeds(geared(["A open", 1372], ["B open", 7000])), "B geared")?.highestRpm).toBeCloseTo(343, 6);
    const vouched = speeds(geared(["A open", 1372], ["B open", 1400], ["B geared", 343]));
    expect(at(vouched, "B geared")).toMatchObject({ from: "measured", highestRpm: 343 });
  });
});

test("a pulley measured a little small does not make a reading impossible", () => {
  expect(speeds(drive(["B", 1400 * 1.06 * 1.019])).doubtful).toBeUndefined();
  expect(speeds(drive(["B", 1400 * 1.06 * 1.021])).doubtful).toHaveLength(1);
});

test("a supposed drive moves every position as the motor moves, whatever was read", () => {
  const rpm = fc.double({ min: 5, max: 9000, noNaN: true });
  fc.assert(
    fc.property(rpm, rpm, rpm, (a, b, c) => {
      const before = geared(["A open", a], ["B open", b], ["B geared", c]);
      const then = changed(before, "motor 1414 rpm", "mm");
      if ("what" in then) throw new Error(then.what);
      const after = speedsAfter(before, then.drive);
      for (const { position, rpm } of speeds(before).speeds)
        expect((at(after, position.name)?.rpm ?? 0) / rpm).toBeCloseTo(1.01, 9);
    }),
  );
});

describe("every reading off in one direction", () => {
  test.each([
    ["twice", 2],
    ["half", 0.5],
  ])("%s: one remark about motor and pulleys, and no speed that is known", (_, times) => {
    const found = speeds(drive(["A", 2744 * times], ["C", 686 * times]));
    expect(found.remarks).toHaveLength(1);
    expect(found.remarks?.[0]?.reading).toBeUndefined();
    expect(found.remarks?.[0]?.what).toContain("the motor or a pulley is not what the file says");
    expect(new Set(found.speeds.map(({ from }) => from))).toEqual(new Set(["unknown"]));
    expect(found.slip).toBeUndefined();
    expect(at(found, "B")?.highestRpm).toBeCloseTo(times > 1 ? 1400 * 2 * 0.98 : 1400 * 1.06, 6);
  });

  test("with one sound reading the others are merely doubtful", () => {
    const found = speeds(drive(["A", 5488], ["B", 1372], ["C", 1372]));
    expect(found.astray).toBeUndefined();
    expect(found.speeds.map(({ from }) => from)).not.toContain("unknown");
    expect(found.doubtful?.map(({ name }) => name)).toEqual(["A", "C"]);
  });
});

test("common practice: without mains an unloaded motor runs up to 6 % above its plate, one turned by foot or hand does not", () => {
  const motor = { slowestRpm: 1425, fastestRpm: 1425 };
  expect(noLoadShare(motor, 1425)).toBe(1.06);
  expect(noLoadShare({ ...motor, by: "treadle" }, 1425)).toBe(1);
  // Nor is one of variable speed bound to its mains.
  expect(noLoadShare({ ...motor, slowestRpm: 300, hertz: 50 }, 1425)).toBe(1.06);
});

test("no more than the field's 120 f ÷ poles (DOE-HDBK-1011/4, AC Motors, eq. 12-2), each of a motor's speeds by its own poles", () => {
  const motor = { slowestRpm: 1425, fastestRpm: 1425, hertz: 50 };
  expect(1425 * noLoadShare(motor, 1425)).toBeCloseTo(1500, 9);
  expect(1725 * noLoadShare({ ...motor, hertz: 60 }, 1725)).toBeCloseTo(1800, 9);
  const { drive: found } = findingsOf(
    "name: T\ndrive: { motor: { speeds: [710, 1425], mains: 50 Hz }, stages: [{ name: belt, steps: [{ driver: 60, driven: 60 }] }] }\n",
  );
  expect(found?.speeds.map(({ highestRpm }) => Math.round(highestRpm))).toEqual([750, 1500]);
});

test("a motor that runs light may pass its plate, as far as its field", () => {
  expect(at(speeds(drive(["B", 1470])), "B")).toMatchObject({ from: "measured", rpm: 1470 });
  expect(
    speeds({ ...drive(["B", 1470]), motor: { slowestRpm: 1400, fastestRpm: 1400, by: "hand" } }).doubtful,
  ).toHaveLength(1);
});

test("explain slip: the mean is that of the slips it lists, doubtful ones in neither", () => {
  const text = readFileSync("templates/machines/boathouse.yaml", "utf8").replace(
    "{ position: [A, open], speed: 702 rpm }",
    "{ position: [A, open], speed: 402 rpm }",
  );
  const mean = explainSlip(findingsOf(text))
    .find(({ name }) => name === "mean")
    ?.explain();
  if (mean === undefined || !("inputs" in mean)) throw new Error("no mean");
  const listed = mean.inputs.map(({ value }) => Number(value));
  expect(listed).toHaveLength(2);
  expect(mean.result.value).toBeCloseTo(listed.reduce((sum, value) => sum + value, 0) / 2, 12);
});

test("explain slip: where every reading was left out, that is what it says", () => {
  const text = readFileSync("templates/machines/boathouse.yaml", "utf8").replace(
    /speed: (702|462|78) rpm/g,
    "speed: 1 rpm",
  );
  expect(explainSlip(findingsOf(text))[0]?.explain()).toEqual({ missing: expect.stringContaining("cannot be right") });
});
