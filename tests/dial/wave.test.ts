import fc from "fast-check";
import { expect, test } from "vitest";
import { waveAngle } from "../../src/dial/wave.js";
import { findingsOf } from "../support/sheets.js";

const turn = 2 * Math.PI;

test("with the wave built in, the slide has truly gone what each mark says; the zero stays", () => {
  const wave = fc.record({
    share: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
    crest: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(wave, fc.double({ min: 0.1, max: 6.1, noNaN: true }), ({ share, crest }, even) => {
      const f = waveAngle(even, { share, crest }) / turn;
      const gone = f + share * (Math.cos(turn * (f - crest)) - Math.cos(turn * crest));
      // The mark may lie just across the zero, a whole turn off.
      const off = gone - even / turn;
      expect(Math.abs(off - Math.round(off))).toBeLessThan(1e-9);
    }),
  );
  expect(
    Math.min(waveAngle(0, { share: 0.05, crest: 0.3 }), turn - waveAngle(0, { share: 0.05, crest: 0.3 })),
  ).toBeLessThan(1e-9);
});

test("a measured wave is built in only when the file asks, and says that it is", () => {
  const turns = Array.from({ length: 17 }, (_, index) => index / 4);
  const travel = turns.map((t) =>
    Number((2 * t + 0.04 * Math.cos(turn * (t - 0.25)) + 0.002 * ((Math.round(t * 28) % 3) - 1)).toFixed(4)),
  );
  const file = (extra: string) =>
    `name: L\nhandwheels: [{ name: S, feed: { readings: { gauge: 0.002, turns: [${turns}], travel: [${travel}] } }, dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02 mm, closure: even${extra} } }]\n`;
  const angles = (extra: string) =>
    findingsOf(file(extra)).handwheels[0]?.dial?.rows[0]?.map(({ angle }) => angle) ?? [];
  const gaps = (list: number[]) =>
    list
      .slice(1)
      .map((angle, index) => angle - (list[index] ?? 0))
      .filter((gap) => gap > 0);
  const spread = (list: number[]) => Math.max(...gaps(list)) / Math.min(...gaps(list));
  expect(spread(angles(""))).toBeCloseTo(1, 9);
  // The feed swings by ± 2π · 0.04 / 2 about its mean.
  expect(spread(angles(", oncePerTurn: true"))).toBeCloseTo((1 + turn * 0.02) / (1 - turn * 0.02), 1);
  expect(findingsOf(file(", oncePerTurn: true")).handwheels[0]?.dial?.wave?.share).toBeCloseTo(0.02, 2);
});
