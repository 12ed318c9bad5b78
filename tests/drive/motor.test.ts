import fc from "fast-check";
import { expect, test } from "vitest";
import { risingZero } from "../../src/drive/bisect.js";
import { geometricStep, spread } from "../../src/drive/geometricStep.js";
import { leastSquares } from "../../src/drive/leastSquares.js";
import { motorSlip, noLoadShare, onOtherMains, otherMains, plate, synchronousRpm } from "../../src/drive/motor.js";
import { nearestPreferred, preferredNumbers } from "../../src/drive/preferredNumbers.js";
import { ratio, stepRatio } from "../../src/drive/ratio.js";
import { average, rpmsByPlace } from "../../src/drive/readings.js";
import type { Motor, Step } from "../../src/machine/machine.js";

test("a plate is that of the nearest field above it, less than a fifth away, trying all pairs of poles", () => {
  for (const hertz of [50, 60])
    for (let rpm = 300; rpm <= 4000; rpm += 7) {
      const fields = [12, 10, 8, 6, 4, 2].filter((poles) => {
        const field = (120 * hertz) / poles;
        return rpm <= field && field - rpm < 0.2 * field;
      });
      // Only of ten and twelve poles do the fields lie nearer each other.
      expect(fields.length > 1).toBe(fields[0] === 12 && rpm > (0.8 * 120 * hertz) / 10);
      expect(plate(rpm, hertz)?.poles).toBe(fields[0]);
    }
  expect(plate(3000, 50)).toEqual({ poles: 2, slip: 0 });
  expect(plate(3001, 50)).toBeUndefined();
  expect(plate(400, 50)).toBeUndefined();
  expect(plate(401, 50)?.poles).toBe(12);
  expect(motorSlip(1425, synchronousRpm(50, 4))).toBeCloseTo(0.05, 12);
});

const motor = (more: object): Motor => ({ slowestRpm: 1425, fastestRpm: 1425, ...more }) as unknown as Motor;

test("without a load a motor nears its field, where its mains are known", () => {
  expect(noLoadShare(motor({ hertz: 50 }), 1425)).toBeCloseTo(1500 / 1425, 12);
  expect(noLoadShare(motor({ hertz: 60 }), 1725)).toBeCloseTo(1800 / 1725, 12);
  expect(noLoadShare(motor({ by: "treadle", hertz: 50 }), 1425)).toBe(1);
  expect(noLoadShare(motor({}), 1425)).toBe(1.06);
  expect(noLoadShare(motor({ hertz: 50, slowestRpm: 100 }), 1425)).toBe(1.06);
});

test("a plate that is none of its mains may be of the other ones; at least the usual rise is told", () => {
  // 3450 at 60 Hz has two poles; 50 Hz drive those more slowly than the plate.
  expect(noLoadShare(motor({ hertz: 50 }), 3450)).toBe(1.06);
  // 2850 at 50 Hz has two poles, which 60 Hz drive at up to 3600.
  expect(noLoadShare(motor({ hertz: 60 }), 2850)).toBeCloseTo(3600 / 2850, 12);
  expect(noLoadShare(motor({ hertz: 50 }), 5000)).toBe(1.06);
  expect([otherMains(50), otherMains(60)]).toEqual([60, 50]);
  expect(onOtherMains(1725, 60, 50)).toBeCloseTo(1725 * (5 / 6), 9);
});

test("ratios of a belt, of two pairs of gears, of none; each belt slips once, gears never", () => {
  const belt = { kind: "belt", label: "A", driver: 60, driven: 90 } as unknown as Step;
  const gears = {
    kind: "gears",
    label: "g",
    pairs: [
      { driver: 20, driven: 60 },
      { driver: 18, driven: 54 },
    ],
  } as unknown as Step;
  const direct = { kind: "direct", label: "open" } as unknown as Step;
  const second = { kind: "motor", label: "fast", factor: 2 } as unknown as Step;
  expect([belt, gears, direct, second].map(stepRatio)).toEqual([
    expect.closeTo(2 / 3, 12),
    expect.closeTo(1 / 9, 12),
    1,
    2,
  ]);
  expect(ratio([belt, gears])).toBeCloseTo(2 / 27, 12);
  expect(ratio([belt, belt, gears], 0.03)).toBeCloseTo(((2 / 3) ** 2 / 9) * 0.97 ** 2, 12);
  expect(ratio([])).toBe(1);
});

test("property: least squares find what the rows were made of, and leave what is over at right angles to every column", () => {
  const entry = fc.integer({ min: -3, max: 3 });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(entry, entry, entry), { minLength: 3, maxLength: 8 }),
      fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 8, maxLength: 8 }),
      (rows, y) => {
        const found = leastSquares(rows, y.slice(0, rows.length));
        if (found === undefined) {
          // The columns are not independent: every 3 × 3 of rows has no volume.
          const volume = (a: readonly number[], b: readonly number[], c: readonly number[]) =>
            [0, 1, 2].reduce((sum, i) => {
              const [j, k] = [(i + 1) % 3, (i + 2) % 3];
              return sum + (a[i] ?? 0) * ((b[j] ?? 0) * (c[k] ?? 0) - (b[k] ?? 0) * (c[j] ?? 0));
            }, 0);
          for (const a of rows) for (const b of rows) for (const c of rows) expect(volume(a, b, c)).toBeCloseTo(0, 9);
          return;
        }
        const over = rows.map(
          (row, k) => (y[k] ?? 0) - row.reduce((sum, value, i) => sum + value * (found[i] ?? 0), 0),
        );
        for (let i = 0; i < 3; i++)
          expect(rows.reduce((sum, row, k) => sum + (row[i] ?? 0) * (over[k] ?? 0), 0)).toBeCloseTo(0, 6);
      },
    ),
  );
});

test("fewer rows than columns, or columns that are one, have no answer", () => {
  expect(leastSquares([], [])).toBeUndefined();
  expect(leastSquares([[1, 0]], [1])).toBeUndefined();
  expect(
    leastSquares(
      [
        [1, 1],
        [2, 2],
      ],
      [1, 2],
    ),
  ).toBeUndefined();
  // Its first pivot is nought: rows must change places.
  expect(
    leastSquares(
      [
        [0, 1],
        [1, 0],
      ],
      [3, 4],
    ),
  ).toEqual([4, 3]);
});

test("where a rising function passes zero; nowhere where its ends lie on one side", () => {
  expect(risingZero((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 14);
  expect(risingZero((x) => x, 0, 1)).toBeCloseTo(0, 14);
  expect(risingZero((x) => x - 1, 0, 1)).toBeCloseTo(1, 14);
  expect(risingZero((x) => x + 1, 0, 1)).toBeUndefined();
  expect(risingZero((x) => x - 2, 0, 1)).toBeUndefined();
});

test("speeds too far apart and too near each other, by half a step of the even spread", () => {
  expect(spread([100, 200, 400])).toMatchObject({ step: 2, ratios: [2, 2], gaps: [], overlaps: [] });
  // 100 to 800 in four speeds is a step of 2: of 3 (1.58 steps) there is too much, of 1.3 (0.38) too little.
  const { step, gaps, overlaps } = spread([100, 300, 390, 800]);
  expect(step).toBeCloseTo(2, 12);
  expect([gaps, overlaps]).toEqual([[0], [1]]);
  expect(spread([100])).toEqual({ step: 1, ratios: [], gaps: [], overlaps: [] });
  expect(spread([100, 100])).toMatchObject({ step: 1, gaps: [], overlaps: [] });
  expect([geometricStep(1, 8, 4), geometricStep(1, 8, 1)]).toEqual([expect.closeTo(2, 12), 1]);
});

test("preferred numbers of both ends are told, and the nearest is by ratio", () => {
  expect(preferredNumbers("R10", 315, 500)).toEqual([315, 400, 500]);
  expect(preferredNumbers("R5", 0.16, 1)).toEqual([0.16, 0.25, 0.4, 0.63, 1]);
  expect(preferredNumbers("R5", 1.7, 2.4)).toEqual([]);
  // Between 1 and 1.6 the middle by ratio is 1.265, by difference 1.3.
  expect([1.26, 1.27, 1.29].map((value) => nearestPreferred("R5", value))).toEqual([1, 1.6, 1.6]);
  expect(nearestPreferred("R20", 318)).toBe(315);
});

test("readings of one place are taken together, in their order", () => {
  const readings = [
    { labels: ["A", "open"], rpm: 300 },
    { labels: ["B", "open"], rpm: 500 },
    { labels: ["A", "open"], rpm: 310 },
    { labels: ["A open"], rpm: 1 },
  ] as unknown as Parameters<typeof rpmsByPlace>[0];
  expect([...rpmsByPlace(readings).values()]).toEqual([[300, 310], [500], [1]]);
  expect(average([300, 310, 350])).toBe(320);
});
