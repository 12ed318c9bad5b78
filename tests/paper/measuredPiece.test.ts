import { expect, test } from "vitest";
import type { DialFinding } from "../../src/dial/finding.js";
import { type Measure, measuresOf, verdictOn } from "../../src/paper/measuredPiece.js";
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
