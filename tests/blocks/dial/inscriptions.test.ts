import fc from "fast-check";
import { expect, test } from "vitest";
import { type Band, inscribe } from "../../../src/blocks/dial/inscriptions.js";
import { textWidth } from "../../../src/drawing/text.js";

const TURN = 2 * Math.PI;
const words = fc.constantFrom("on diameter", "rev 3", "Cross slide", "Tailstock barrel", "1 = 0.01 mm", "X".repeat(60));
const band = fc
  .record({ count: fc.integer({ min: 1, max: 30 }), shift: fc.double({ min: 0, max: 1, noNaN: true }) })
  .map(
    ({ count, shift }): Band => ({
      scale: 0,
      perRadian: 20,
      number: 1.8,
      marks: Array.from({ length: count }, (_, k) => ({
        angle: ((k + shift) / count) * TURN,
        rank: 1 as const,
        value: k,
        label: String(k),
      })),
    }),
  );

test("property: words stand clear of numbers, of each other and of the ends, once each, and no number gives way", () => {
  fc.assert(
    fc.property(
      fc.array(band, { minLength: 1, maxLength: 3 }),
      fc.array(words, { maxLength: 5 }),
      fc.boolean(),
      (bands, list, whole) => {
        const { placed, left } = inscribe(
          bands,
          list.map((words) => ({ words })),
          { from: 0, to: TURN, whole },
        );
        expect([...placed.map(({ words }) => words), ...left].sort()).toEqual([...list].sort());
        const length = TURN * 20;
        for (const [index, { marks }] of bands.entries()) {
          const spans = [
            ...marks.flatMap(({ angle, label }) =>
              label === undefined ? [] : [{ at: angle * 20, half: textWidth(label, 1.8, "bold") / 2, number: true }],
            ),
            ...placed
              .filter(({ band }) => band === index)
              .map(({ angle, words }) => ({
                at: angle * 20,
                half: textWidth(words, 1.8, "regular") / 2,
                number: false,
              })),
          ];
          for (const [i, one] of spans.entries())
            for (const other of spans.slice(i + 1)) {
              if (one.number && other.number) continue;
              const apart = Math.abs(one.at - other.at) % length;
              const gap = (whole ? Math.min(apart, length - apart) : apart) - one.half - other.half;
              expect(gap).toBeGreaterThan(1.4999);
            }
          if (!whole)
            for (const { at, half, number } of spans)
              if (!number) expect(Math.min(at - half, length - at - half)).toBeGreaterThan(1.9999);
        }
      },
    ),
    { numRuns: 300 },
  );
});

test("a number that counts hundredths says so in its own scale", () => {
  const marks = Array.from({ length: 5 }, (_, k) => ({
    angle: k * 1.2,
    rank: 1 as const,
    value: k,
    label: String(k),
  }));
  const bands = [0, 1].map((scale): Band => ({ scale: scale as 0 | 1, perRadian: 20, number: 1.8, marks }));
  const { placed } = inscribe(
    bands,
    [
      { words: "1 = 0.01 mm", scale: 0 },
      { words: "1 = 0.001 in", scale: 1 },
    ],
    { from: 0, to: TURN, whole: false },
  );
  expect(placed.map(({ band, words }) => [band, words])).toEqual([
    [0, "1 = 0.01 mm"],
    [1, "1 = 0.001 in"],
  ]);
});

test("what is dear takes any band rather than none, and its sign rather than nothing, before the name has a place", () => {
  const marks = (count: number) =>
    Array.from({ length: count }, (_, k) => ({
      angle: (k / count) * TURN,
      rank: 1 as const,
      value: k,
      label: String(k),
    }));
  const bands = (...counts: readonly number[]) =>
    counts.map((count): Band => ({ scale: 0, perRadian: 20, number: 1.8, marks: marks(count) }));
  const placed = (on: readonly Band[]) =>
    inscribe(on, [{ words: "on diameter", band: 0, dear: { short: "ø" } }, { words: "Slide" }], {
      ...{ from: 0, to: TURN, whole: true },
    }).placed.map(({ band, words }) => `${words} ${band}`);
  expect(placed(bands(4, 4))).toEqual(["on diameter 0", "Slide 1"]);
  expect(placed(bands(30, 4))).toEqual(["on diameter 1", "Slide 1"]);
  expect(placed(bands(12, 12))).toEqual(["ø 1", "Slide 1"]);
});
