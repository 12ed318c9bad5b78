import { expect, test } from "vitest";
import { settingsByPlace } from "../../src/findings/byPlace.js";
import type { HandwheelFinding } from "../../src/findings/findings.js";
import { doubtCorrected, doubtToRead } from "../../src/findings/settings.js";
import { normal, rounded, seeded } from "../feed/screws.js";
import { findingsOf } from "../support/sheets.js";

const LAST = 24;
const MOVES = [4, 10, 20, 32];

type Worn = { readonly wheel: HandwheelFinding; readonly at: (turn: number) => number };

/** Slides worn about a place by 0.02 to 0.1 mm, with and without edges, as they were read and as they truly are: what a place strays by is
 *  the screw's own. Only those that were found worn. */
const worn: readonly Worn[] = Array.from({ length: 40 }, (_, index): Worn[] => {
  const random = seeded(500 + index);
  const deep = index % 2 === 0 ? 0.02 + 0.02 * random() : 0.1 * (0.5 + 0.5 * random());
  const [centre, width] = [LAST * (0.3 + 0.4 * random()), LAST * (0.1 + 0.2 * random())];
  const form = (turn: number) =>
    index % 4 < 2 ? Math.exp(-(((turn - centre) / width) ** 2)) : Math.max(0, 1 - Math.abs(turn - centre) / width);
  const turns = Array.from({ length: LAST + 1 }, (_, turn) => turn);
  const own = turns.map(() => 0.003 * normal(random));
  const at = (turn: number) => {
    const low = Math.min(LAST - 1, Math.max(0, Math.floor(turn)));
    const [one = 0, other = 0] = own.slice(low, low + 2);
    return 2 * turn - deep * form(turn) + one + (turn - low) * (other - one);
  };
  const travel = turns.map((turn) => rounded(at(turn) + 0.003 * normal(random), 0.01).toFixed(2));
  const [wheel] = findingsOf(
    `name: L\nhandwheels: [{ name: S, travel: ${2 * LAST}, feed: { readings: { gauge: 0.01, zeroAt: a line, turns: [${turns}], travel: [${travel}] } }, dial: { shape: drum, diameter: 60, width: 9, divisions: 0.02, closure: even } }]\n`,
  ).handwheels;
  return wheel?.feed?.measured?.uneven?.ahead === undefined ? [] : [{ wheel, at }];
}).flat();

test("a movement is told by its place only where that is better known than by the plain figure, the curve's own doubt reckoned in", () => {
  let [offered, withheld] = [0, 0];
  for (const { wheel } of worn) {
    const { placed = [] } = settingsByPlace(wheel, MOVES, { units: "mm", most: 7 }) ?? {};
    offered += placed.length;
    withheld += MOVES.length - placed.length;
    for (const { travel, within } of placed) {
      expect(within).toBeLessThan(doubtToRead(wheel, travel) ?? 0);
      expect(within).toBeGreaterThan(wheel.feed?.measured?.uneven?.aheadDoubt ?? Number.POSITIVE_INFINITY);
    }
  }
  expect(offered).toBeGreaterThan(30);
  expect(withheld).toBeGreaterThan(30);
});

test("what is in doubt of a corrected movement holds what its curve is out by at both ends", () => {
  for (const { wheel } of worn)
    expect(doubtCorrected(wheel, 4)).toBeGreaterThan(
      wheel.feed?.measured?.uneven?.aheadDoubt ?? Number.POSITIVE_INFINITY,
    );
});

test("from anywhere on a stretch it comes out within its ±, and by half of what the plain figure is out by, on the whole", () => {
  const random = seeded(3);
  let [tried, held, corrected, plain] = [0, 0, 0, 0];
  for (const { wheel, at } of worn) {
    const perTurn = wheel.feed?.perTurn ?? 0;
    const { stretches = [], placed = [] } = settingsByPlace(wheel, MOVES, { units: "mm", most: 7 }) ?? {};
    for (const { travel, settings, within } of placed)
      for (const [index, { from, to }] of stretches.entries()) {
        const turned = settings[index]?.turns;
        const start = (from + (to - from) * random()) / 2;
        if (turned === undefined || start < 0 || start + turned > LAST) continue;
        const off = Math.abs(at(start + turned) - at(start) - travel);
        tried++;
        if (off <= within) held++;
        corrected += off ** 2;
        plain += (at(start + travel / perTurn) - at(start) - travel) ** 2;
      }
  }
  expect(tried).toBeGreaterThan(150);
  expect(held / tried).toBeGreaterThanOrEqual(0.95);
  expect(Math.sqrt(corrected / plain)).toBeLessThan(0.5);
});
