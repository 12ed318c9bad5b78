import { describe, expect, test } from "vitest";
import { compoundForDivisions, compoundMoves, gatheredError } from "../../src/dividing/compound.js";
import { differentialRatio } from "../../src/dividing/differential.js";
import { twoSidedPlate, usualPlates } from "../../src/dividing/plates.js";
import { nearestMove, simpleMoves, turnsForSeconds, turnsPerDivision } from "../../src/dividing/simple.js";
import { fraction, quotient } from "../../src/quantity/fraction.js";

/** "1+36/54": turns, holes on circle. */
const written = (moves: readonly { turns: number; holes: number; circle: number }[]) =>
  moves.map(({ turns, holes, circle }) => `${turns}+${holes}/${circle}`);

const secondsOf = (degrees: number, minutes = 0) => degrees * 3600 + minutes * 60;

describe("simple indexing, 40 to 1, as printed", () => {
  test.each([
    ["6 divisions: 6 turns + 12 on 18 (US Army OD1644 p. 24)", 6, 18, "6+12/18"],
    ["6 divisions: 6 turns + 26 on 39 (US Army OD1644 p. 24)", 6, 39, "6+26/39"],
    ["42 divisions: 40 on 42 (US Army OD1644 p. 24)", 42, 42, "0+40/42"],
    ["42 divisions: 20 on 21 (US Army OD1644 p. 24)", 42, 21, "0+20/21"],
    ["7 divisions: 5 5/7 turns, 15 on 21 (Simple Indexing, colnet.ddns.net; holes computed)", 7, 21, "5+15/21"],
    ["15 divisions: 2 turns + 18 on 27 (practice sheet, scribd 628433770)", 15, 27, "2+18/27"],
    ["15 divisions: 2 turns + 24 on 36 (practice sheet, scribd 628433770)", 15, 36, "2+24/36"],
  ])("%s", (_, divisions, circle, move) => {
    expect(written(simpleMoves(turnsPerDivision(40, divisions), [circle]))).toEqual([move]);
  });

  test.each([
    ["15°: 1 turn + 36 on 54 (US Army OD1644 p. 26)", secondsOf(15), 54, "1+36/54"],
    ["15°: 1 turn + 18 on 27 (practice sheet, scribd 628433770)", secondsOf(15), 27, "1+18/27"],
    ["13 1/2°: 1 turn + 9 on 18 (US Army OD1644; holes computed)", secondsOf(13, 30), 18, "1+9/18"],
    ["45°: 5 turns (Fox Valley Technical College, angular indexing)", secondsOf(45), 18, "5+0/18"],
    ["19°: 2 turns + 6 on 54 (Fox Valley Technical College)", secondsOf(19), 54, "2+6/54"],
    ["8° 50′: 53 on 54 (Fox Valley Technical College)", secondsOf(8, 50), 54, "0+53/54"],
    ["54′: 2 on 20 (US Army OD1644 p. 27)", secondsOf(0, 54), 20, "0+2/20"],
    ["35°: 3 turns + 16 on 18 (Machinery's Handbook, 1916)", secondsOf(35), 18, "3+16/18"],
    ["11 1/2°: 1 turn + 5 on 18 (Machinery's Handbook, 1916)", secondsOf(11, 30), 18, "1+5/18"],
    ["20′: 1 on 27 (Machinery's Handbook, 1916; corrects OD1644)", secondsOf(0, 20), 27, "0+1/27"],
    ["1°: 3 on 27 (Machinery's Handbook, 1916)", secondsOf(1), 27, "0+3/27"],
    ["1°: 2 on 18 (Machinery's Handbook, 1916)", secondsOf(1), 18, "0+2/18"],
  ])("%s", (_, seconds, circle, move) => {
    expect(written(simpleMoves(turnsForSeconds(40, seconds), [circle]))).toEqual([move]);
  });

  test("24′ has no circle: 1 hole on 23 is nearest of the published plate, 0.522′ too little (US Army OD1644 p. 27; error computed)", () => {
    const turns = turnsForSeconds(40, secondsOf(0, 24));
    expect(simpleMoves(turns, [23])).toEqual([]);
    const move = nearestMove(quotient(turns), [23]);
    expect(move).toMatchObject({ turns: 0, holes: 1, circle: 23 });
    expect(move.error * 540).toBeCloseTo(-0.522, 3);
  });
});

/** Problems read; answers computed there and here by different ways. */
describe("practice list of ratios and plates (scribd 628433770; answers computed)", () => {
  test.each<[number, number, number[], string[]]>([
    [26, 40, [44, 45, 47, 49, 52], ["1+28/52"]],
    [60, 40, [15, 18, 20, 23, 24], ["0+10/15", "0+12/18", "0+16/24"]],
    [100, 40, [18, 20, 22, 25, 27], ["0+8/20", "0+10/25"]],
    [92, 60, [21, 22, 23, 24, 25], ["0+15/23"]],
    [14, 60, [21, 23, 25, 26, 28], ["4+6/21", "4+8/28"]],
    [37, 60, [33, 35, 37, 39, 42], ["1+23/37"]],
    [90, 60, [30, 32, 34, 35, 39], ["0+20/30", "0+26/39"]],
    [18, 60, [33, 35, 36, 38, 40], ["3+11/33", "3+12/36"]],
    [78, 72, [21, 23, 25, 26, 27], ["0+24/26"]],
    [25, 72, [33, 35, 36, 37, 39], []],
    [19, 72, [19, 20, 21, 22, 23, 25], ["3+15/19"]],
    [125, 72, [24, 25, 27, 28, 30], []],
    [69, 72, [21, 23, 25, 27, 29], ["1+1/23"]],
    [27, 90, [20, 21, 23, 25, 27], ["3+7/21", "3+9/27"]],
    [50, 90, [30, 33, 36, 38, 40], ["1+24/30", "1+32/40"]],
    [40, 90, [16, 18, 19, 21, 24], ["2+4/16", "2+6/24"]],
    [44, 90, [22, 24, 26, 28, 30], ["2+1/22"]],
  ])("%d divisions at %d to 1", (divisions, ratio, circles, moves) => {
    expect(written(simpleMoves(turnsPerDivision(ratio, divisions), circles))).toEqual(moves);
  });
});

test("a rotary table of 90 to 1: 10 divisions are 9 turns, 21 are 4 2/7 (mrjones.id.au, using division plates)", () => {
  expect(quotient(turnsPerDivision(90, 10))).toBe(9);
  expect(turnsPerDivision(90, 21)).toEqual(fraction(30, 7));
});

describe("compound indexing", () => {
  test("69 divisions at 40 to 1: 21 on 23 less 11 on 33, exact (memory; identity computed)", () => {
    const moves = compoundMoves(turnsPerDivision(40, 69), usualPlates, 200).filter(({ error }) => error === 0);
    expect(moves).toContainEqual({
      first: { holes: 21, circle: 23 },
      second: { holes: -11, circle: 33 },
      divisionsAtOnce: 1,
      error: 0,
    });
    for (const { first, second } of moves)
      expect(69 * (first.holes * second.circle + second.holes * first.circle)).toBe(40 * first.circle * second.circle);
  });

  test("106 divisions, 5 at once: 1 turn + 7/39 + 29/41, 0.0000118 turn too much (Machinery's Handbook, as quoted on a forum; error computed)", () => {
    const moves = compoundMoves(fraction(5 * 40, 106), [[39, 41]], 200);
    // The whole turn may stand in either movement: 70 on 41 is 1 turn + 29 on 41.
    const printed = moves.find(({ first }) => first.circle === 41 && first.holes === 41 + 29);
    expect(printed).toMatchObject({ second: { holes: 7, circle: 39 } });
    expect(printed?.error).toBeCloseTo(1.18e-5, 7);
    const [best] = compoundForDivisions(40, 106, usualPlates);
    expect(Math.abs(best?.error ?? 1)).toBeLessThanOrEqual(1.18e-5 + 1e-8);
  });

  test("106 divisions are 106 movements, by 5 at once too: what gathers is 106 times the error of one", () => {
    const move = {
      first: { holes: 46, circle: 39 },
      second: { holes: 29, circle: 41 },
      divisionsAtOnce: 5,
      error: 1.18e-5,
    };
    const cut = new Set<number>();
    let mark = 0;
    let movements = 0;
    do {
      mark = (mark + move.divisionsAtOnce) % 106;
      movements += 1;
      cut.add(mark);
    } while (mark !== 0);
    expect([cut.size, movements]).toEqual([106, 106]);
    expect(gatheredError(move, 106)).toBeCloseTo(movements * 1.18e-5, 12);
  });

  test.each<[number, [number, number], [number, number], number]>([
    [0.191, [17, 39], [-12, 49], 0.190999],
    [0.192, [7, 41], [1, 47], 0.192008],
    [0.196, [21, 49], [-10, 43], 0.196013],
    [0.206, [15, 43], [-7, 49], 0.20598],
    [0.223, [15, 31], [-6, 23], 0.223001],
  ])("%d of a turn on two circles (Machinery's Handbook, 27th ed., p. 1995)", (wanted, [a, b], [c, d], value) => {
    expect(a / b + c / d).toBeCloseTo(value, 6);
    const plate = usualPlates.filter((circles) => circles.includes(b) && circles.includes(d));
    const [best] = compoundMoves({ numerator: wanted * 1000, denominator: 1000 }, plate, 1);
    expect(Math.abs(best?.error ?? 1)).toBeLessThanOrEqual(Math.abs(a / b + c / d - wanted) + 1e-12);
  });
});

describe("differential indexing (Brown & Sharpe, Practical Treatise on Milling, djvu p. 63)", () => {
  test.each([
    ["271 by 3 on 21: 9/7", 271, 21, 3, fraction(9, 7)],
    ["319 by 4 on 29: −4, gears 72 × 64 / (24 × 48)", 319, 29, 4, fraction(-72 * 64, 24 * 48)],
    ["1440 by 1 on 33: −40/11, gears 100 × 64 / (44 × 40)", 1440, 33, 1, fraction(-100 * 64, 44 * 40)],
    ["2160 by 1 on 49: −200/49, gears 100 × 64 / (28 × 56)", 2160, 49, 1, fraction(-100 * 64, 28 * 56)],
  ])("%s", (_, divisions, circle, holes, gears) => {
    expect(differentialRatio(40, divisions, circle, holes)).toEqual(gears);
  });
});

test("circles of the two-sided plate as listed: 11 on each side (US Army OD1644)", () => {
  expect(twoSidedPlate.map((side) => side.length)).toEqual([11, 11]);
  expect(simpleMoves(turnsPerDivision(40, 59), twoSidedPlate.flat())).toEqual([{ turns: 0, holes: 40, circle: 59 }]);
});

test.each([
  [5 / 4, "5/4"],
  [14 / 11, "14/11"],
  [33 / 26, "33/26"],
  [47 / 37, "47/37"],
  [127 / 100, "127/100"],
])("convergents of 127/100: %d (computed)", async (_, expected) => {
  const { convergents } = await import("../../src/quantity/fraction.js");
  const found = convergents(1.27, 100).map(({ numerator, denominator }) => `${numerator}/${denominator}`);
  expect(found).toContain(expected);
  expect(found.at(-1)).toBe("127/100");
});
