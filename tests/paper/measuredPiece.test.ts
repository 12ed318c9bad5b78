import { expect, test } from "vitest";
import type { DialFinding } from "../../src/dial/finding.js";
import { type Measure, measureOfPiece, measuresOf, verdictOn } from "../../src/paper/measuredPiece.js";
import { type Orientation, paperSize } from "../../src/paper/paperSize.js";
import { mendedBar, printerDistortion } from "../../src/paper/printerCorrection.js";

const TURN = 2 * Math.PI;

test("a ring stretched in one direction: two readings against each other, by moving every mark", () => {
  const [wanted, measured] = [70, 70.4];
  const { turns } = verdictOn({ by: "ring", what: "", wanted, slack: 0.1 }, measured);
  // Where each mark of a ring comes to lie, seen from the centre, against where it belongs.
  const off = Array.from({ length: 3600 }, (_, k) => {
    const angle = (k / 3600) * TURN;
    const seen = Math.atan2(Math.sin(angle), (measured / wanted) * Math.cos(angle));
    return Math.atan2(Math.sin(seen - angle), Math.cos(seen - angle)) / TURN;
  });
  expect(Math.max(...off) - Math.min(...off)).toBeCloseTo(turns, 5);
});

test("a strip a little long: the last reading is out by its overlap", () => {
  const strip: Measure = { by: "strip", what: "", wanted: 120, slack: 0.1 };
  expect(verdictOn(strip, 121.2)).toMatchObject({ good: false, turns: expect.closeTo(0.01, 9) });
});

test("all lengths of one dial may be off by the same part, the finer scale telling how much", () => {
  const dial = (perTurn: number, second?: number) =>
    ({
      flat: { kind: "ring", outer: 50, inner: 40, sweep: 2 },
      chosen: { divisionsPerTurn: perTurn },
      ...(second && { second: { chosen: { divisionsPerTurn: second } } }),
    }) as unknown as DialFinding;
  const [arc, chord] = measuresOf(dial(50), "mm") as [Measure, Measure];
  expect([arc.wanted, chord.wanted]).toEqual([expect.closeTo(100, 9), expect.closeTo(100 * Math.sin(1), 9)]);
  expect([arc.slack, chord.slack]).toEqual([0.4, 0.33]);
  expect(measuresOf(dial(50, 100), "mm")[0]?.slack).toBe(0.2);
  expect(measuresOf(dial(5000), "mm")[0]?.slack).toBe(0.05);
});

test("a mended bar makes the pages true that came out too long by that part", () => {
  const printer = {
    across: { measured: 199.3, nominal: 200 },
    down: { measured: 250.4, nominal: 250 },
    diagonals: [320.1, 319.6] as const,
  };
  const before = printerDistortion(printer);
  const after = printerDistortion({ ...printer, down: mendedBar(printer, "down", 1.004) });
  expect(after[3] / before[3]).toBeCloseTo(1.004, 6);
  expect(after[2]).toBe(before[2]);
  expect(mendedBar(undefined, "across", 0.99)).toEqual({ measured: 198, nominal: 200 });
});

/** A dial of so many divisions of that shape. */
const shaped = (flat: unknown, perTurn = 100, second?: number) =>
  ({
    flat,
    chosen: { divisionsPerTurn: perTurn },
    ...(second && { second: { chosen: { divisionsPerTurn: second } } }),
  }) as unknown as DialFinding;
const ring = (sweep: number, outer = 50) => ({ kind: "ring", outer, inner: 40, sweep });

test("each shape is measured where a caliper or a tape can be laid", () => {
  const of = (flat: unknown) => measuresOf(shaped(flat), "mm").map(({ by, wanted }) => [by, Number(wanted.toFixed(6))]);
  expect(of(undefined)).toEqual([]);
  expect(of({ kind: "strip", length: 120.17, height: 10 })).toEqual([["strip", 120.17]]);
  expect(of(ring(TURN))).toEqual([["ring", 100]]);
  // Of half a turn and more nothing is farther apart than the diameter.
  expect(of(ring(Math.PI))).toEqual([
    ["arc", Number((50 * Math.PI).toFixed(6))],
    ["chord", 100],
  ]);
  expect(of(ring(4))).toEqual([
    ["arc", 200],
    ["chord", 100],
  ]);
  // A sixth of a turn: the chord is the radius.
  expect(of(ring(TURN / 6))).toEqual([
    ["arc", Number(((50 * TURN) / 6).toFixed(6))],
    ["chord", 50],
  ]);
  const first = [{ kind: "strip", length: 9 }, ring(TURN), ring(1)].map(
    (flat) => measuresOf(shaped(flat), "mm")[0]?.what,
  );
  expect(first).toEqual(["the strip between its cut ends", "the outside diameter", "the outer edge, along its arc"]);
  const said = [ring(Math.PI), ring(4), ring(1)].map((flat) => measuresOf(shaped(flat), "mm")[1]?.what);
  expect(said).toEqual([
    "the outer edge, straight across its widest",
    "the outer edge, straight across its widest",
    "the outer edge, straight from corner to corner",
  ]);
});

test("slack is a fifth of a division in the last place that a caliper shows, rounded down, in inches too", () => {
  const slack = (length: number, perTurn: number, units: "mm" | "in") =>
    measuresOf(shaped({ kind: "strip", length }, perTurn), units)[0]?.slack ?? 0;
  expect(slack(100, 40, "mm")).toBeCloseTo(0.5, 12);
  expect(slack(100, 41, "mm")).toBeCloseTo(0.48, 12);
  expect(slack(100, 100, "mm")).toBeCloseTo(0.2, 12);
  expect(slack(100, 1000, "mm")).toBeCloseTo(0.05, 12);
  expect(slack(254, 40, "in") / 25.4).toBeCloseTo(0.05, 12);
  expect(slack(250, 40, "in") / 25.4).toBeCloseTo(0.049, 12);
  expect(slack(25.4, 1000, "in") / 25.4).toBeCloseTo(0.002, 12);
  const twoScales = (one: number, other: number) =>
    measuresOf(shaped({ kind: "strip", length: 100 }, one, other), "mm")[0]?.slack;
  expect([twoScales(40, 100), twoScales(100, 40)]).toEqual([0.2, 0.2]);
});

test("a piece has its share of what the whole may be off, and its error is one of the whole turn", () => {
  const strip = shaped({ kind: "strip", length: 300 }, 20);
  const part = { piece: 2, pieces: 3, length: 100 };
  const measure = measureOfPiece(strip, part, "mm");
  expect(measure).toMatchObject({ by: "strip", wanted: 100, whole: 300 });
  expect(measure.what).toBe("piece 2 of 3, from end to end, a tab not counted,");
  expect(measure.slack).toBeCloseTo(1, 12);
  expect(verdictOn(measure, 101.5)).toMatchObject({ good: false, off: 1.5, ratio: 1.015 });
  expect(verdictOn(measure, 101.5).turns).toBeCloseTo(1.5 / 300, 12);
  expect(verdictOn(measure, 98.5).turns).toBeCloseTo(1.5 / 300, 12);
  const arc = measureOfPiece(shaped(ring(4)), part, "mm");
  expect(arc).toMatchObject({ by: "arc", whole: 200 });
  expect(arc.what).toBe("piece 2 of 3, along its outer edge from end to end, a tab not counted,");
  expect(measureOfPiece(shaped(undefined), part, "mm")).toMatchObject({ by: "strip", whole: 100 });
});

test("what is off by just the slack is good, either way; by a thousandth more it is not", () => {
  const measure: Measure = { by: "strip", what: "", wanted: 100, slack: 0.2 };
  expect([100.2, 99.8, 100.201, 99.799].map((measured) => verdictOn(measure, measured).good)).toEqual([
    true,
    true,
    false,
    false,
  ]);
  expect(verdictOn(measure, 99.8).off).toBeCloseTo(-0.2, 12);
  expect(verdictOn(measure, 100.2).turns).toBeCloseTo(0.002, 12);
  // A ring that is too small turns its marks as far as one that is too large.
  const across: Measure = { ...measure, by: "ring" };
  expect(verdictOn(across, 99).turns).toBeCloseTo(0.01 / TURN, 12);
});

test("papers are as ISO 216 has them: each A size is the next larger one halved, cut to whole millimetres; Letter is 8.5 in wide", () => {
  const of = (size: "A3" | "A4" | "A5" | "Letter" | "Legal", way: Orientation = "portrait") => paperSize(size, way);
  for (const [large, small] of [
    ["A3", "A4"],
    ["A4", "A5"],
  ] as const) {
    expect(of(small).height).toBe(of(large).width);
    expect(of(small).width).toBe(Math.floor(of(large).height / 2));
  }
  expect(of("A3").width * of("A3").height).toBeCloseTo(1e6 / 8, -3);
  expect(of("Letter").width / 25.4).toBeCloseTo(8.5, 12);
  expect(of("Letter").height / 25.4).toBeCloseTo(11, 12);
  expect(of("Legal").height / 25.4).toBeCloseTo(14, 12);
  expect(of("A4", "landscape")).toEqual({ width: 297, height: 210 });
  expect(of("A4")).toEqual({ width: 210, height: 297 });
});
