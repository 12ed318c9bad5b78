import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseAngle, toDegrees, toRadians } from "../../src/quantity/angle.js";
import { drillNamed, drillNameIn } from "../../src/quantity/drill.js";
import { convergents, fraction, greatestCommonDivisor, inSixtyFourths, quotient } from "../../src/quantity/fraction.js";
import { moduleOfCircular, moduleOfDiametral, parseDiametralPitch } from "../../src/quantity/gear.js";
import { grouped } from "../../src/quantity/grouped.js";
import { fromMm, inMm, parseLength, roundIn, withoutDiameterSign } from "../../src/quantity/length.js";
import { fractionsInFigures, LONGEST, parseNumber, parseTurns, splitUnit } from "../../src/quantity/number.js";
import { parsePair } from "../../src/quantity/pair.js";
import { rangeIn } from "../../src/quantity/range.js";
import { parseSpeed } from "../../src/quantity/speed.js";
import { parseThreadsPerInch } from "../../src/quantity/thread.js";

describe("fractions", () => {
  const whole = fc.integer({ min: -5000, max: 5000 });
  test("property: in lowest terms, of the same worth, the sign above", () => {
    fc.assert(
      fc.property(
        whole,
        whole.filter((n) => n !== 0),
        (above, below) => {
          const { numerator, denominator } = fraction(above, below);
          expect(denominator).toBeGreaterThan(0);
          expect(numerator * below === above * denominator).toBe(true);
          for (let n = 2; n <= Math.min(Math.abs(numerator), denominator); n++)
            expect(numerator % n === 0 && denominator % n === 0).toBe(false);
        },
      ),
    );
  });
  test("nothing is never less than nothing", () => expect(fraction(0, -5)).toEqual({ numerator: 0, denominator: 1 }));
  test.each([
    [12, 18, 6],
    [-12, 18, 6],
    [18, -12, 6],
    [7, 0, 7],
    [17, 13, 1],
  ])("what %d and %d have in common is %d", (a, b, common) => expect(greatestCommonDivisor(a, b)).toBe(common));

  test("of π: 3, 22/7, 333/106, 355/113 (Zu Chongzhi's, and every table since)", () => {
    const of = (most: number) =>
      convergents(Math.PI, most).map(({ numerator, denominator }) => `${numerator}/${denominator}`);
    expect(of(113)).toEqual(["3/1", "22/7", "333/106", "355/113"]);
    expect(of(112)).toEqual(["3/1", "22/7", "333/106"]);
  });
  test("they end where the number is met", () => {
    expect(convergents(0.5, 1000).at(-1)).toEqual({ numerator: 1, denominator: 2 });
    expect(convergents(4, 1000)).toEqual([{ numerator: 4, denominator: 1 }]);
    expect(convergents(25.4, 1000).at(-1)).toEqual({ numerator: 127, denominator: 5 });
  });
  test("property: none of a smaller denominator is nearer", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (value) => {
        for (const one of convergents(value, 60).slice(1))
          for (let below = 1; below < one.denominator; below++)
            expect(Math.abs(Math.round(value * below) / below - value)).toBeGreaterThanOrEqual(
              Math.abs(quotient(one) - value) - 1e-9,
            );
      }),
    );
  });
  test("property: a ratio of whole numbers is met in the end", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }), (above, below) => {
        expect(convergents(above / below, below).at(-1)).toEqual(fraction(above, below));
      }),
    );
  });
  test("property: sixty-fourths are written as they stand on a rule, in lowest terms, and read back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 640 }), (parts) => {
        const text = inSixtyFourths(parts / 64) ?? "";
        expect(parseNumber(text)).toBe(parts / 64);
        expect(text).not.toMatch(/(\d*[02468])\/(\d*[02468])$/);
        expect(text.startsWith("0 ")).toBe(false);
      }),
    );
  });
  test.each([
    [1.5, "1 1/2"],
    [0.5, "1/2"],
    [3, "3"],
    [0, "0"],
    [63 / 64, "63/64"],
    [1 / 128, undefined],
    [0.3, undefined],
  ])("%d is %s", (value, text) => expect(inSixtyFourths(value)).toBe(text));
});

describe("numbers as people write them", () => {
  test.each([
    ["  12.25 ", 12.25],
    ["120", 120],
    ["12.", 12],
    [".25", 0.25],
    ["12,25", 12.25],
    ["0,125", 0.125],
    ["- 5", -5],
    ["− 5", -5],
    ["13/64", 13 / 64],
    ["3 / 16", 3 / 16],
    ["11-13/64", 11 + 13 / 64],
    ["11   1/2", 11.5],
    ["2⅐", 2 + 1 / 7],
    ["12⅞", 12.875],
  ])("%j is %d", (text, value) => expect(parseNumber(text)).toBe(value));
  test.each([
    "x5",
    "5x",
    "1,",
    ",5",
    "x1,5",
    "1,5x",
    "x1/2",
    "1/2x",
    "00,125",
    "12,125",
    "1 2",
    "1-2",
    "1/2/3",
    "1x/2",
  ])("%j is none", (text) => expect(parseNumber(text)).toBeUndefined());
  test("nothing is not less than nothing, and a number may be as long as is read", () => {
    expect(parseNumber("-0")).toBe(0);
    expect(parseNumber(`${"0".repeat(LONGEST - 1)}7`)).toBe(7);
    expect(parseNumber(`${"0".repeat(LONGEST)}7`)).toBeUndefined();
  });
  test.each([
    ["1,125", 1.125],
    [" -12,125 ", -12.125],
    ["12.5", 12.5],
    ["3/8", 0.375],
    ["1,125,1", undefined],
    ["1,1 x", undefined],
    ["1,2 1,125", undefined],
  ])("of turns %j is %s: a comma is always decimal", (text, value) => expect(parseTurns(text)).toBe(value));
  test("marks that are a fraction are put in figures", () => {
    expect(fractionsInFigures("2½")).toBe("2 1/2");
    expect(fractionsInFigures("½ ¾")).toBe("1/2  3/4");
    expect(fractionsInFigures("Ø16")).toBe("Ø16");
  });
  test.each([
    ["50 thou", 50, "thou"],
    ["50thou", 50, "thou"],
    ["5. in", 5, "in"],
    ["1-1/2 in ", 1.5, "in"],
    ["-3,5mm", -3.5, "mm"],
    ["38 mm 2", 38, "mm 2"],
    ["12", 12, ""],
    ["7 two\nlines", 7, "two\nlines"],
  ])("%j is a number and its unit", (text, number, unit) => expect(splitUnit(text)).toEqual({ number, unit }));
  test.each(["in 5", "", "mm", "5 6 mm", "x5 mm", `5 ${"m".repeat(LONGEST)}`])("%j is no number with a unit", (text) =>
    expect(splitUnit(text)).toBeUndefined(),
  );
});

describe("names of sizes", () => {
  // ASME B94.11M, from memory: no. 1 is 0.2280 in, no. 7 0.2010, no. 21 0.1590, no. 60 0.0400, no. 80 0.0135; A 0.234, F 0.257, Z 0.413.
  test.each([
    ["#1", 0.228],
    ["#7", 0.201],
    ["no. 21", 0.159],
    ["No 60", 0.04],
    [" no.80 ", 0.0135],
    ["A", 0.234],
    ["letter F", 0.257],
    ["Letter  f", 0.257],
    [" z ", 0.413],
  ])("drill %j is %d in", (name, inches) => expect(drillNamed(name)).toBeCloseTo(inches * 25.4, 10));
  test.each(["#0", "#81", "#100", "7", "# 7 x", "x#7", "letter", "letter AB", "xA", "letterF", "Ä", "no"])(
    "%j names none",
    (name) => expect(drillNamed(name)).toBeUndefined(),
  );
  test("what is stamped on it", () => {
    expect(drillNameIn("no. 21")).toBe(21);
    expect(drillNameIn("letter q")).toBe("Q");
    expect(drillNameIn("21")).toBeUndefined();
    expect(drillNameIn("#99")).toBe(99);
  });

  test.each([
    ["16 DP", 16],
    ["16 D.P.", 16],
    ["2-1/2 diametral pitch", 2.5],
    ["0 DP", undefined],
    ["-4 DP", undefined],
    ["16", undefined],
    ["16 DPx", undefined],
    ["16 x DP", undefined],
    ["DP", undefined],
  ])("%j has %s teeth to the inch of its pitch diameter", (text, teeth) =>
    expect(parseDiametralPitch(text)).toBe(teeth),
  );
  test("16 DP is module 1.5875, a circular pitch of π module 1 (definitions)", () => {
    expect(moduleOfDiametral(16)).toBe(1.5875);
    expect(moduleOfCircular(Math.PI)).toBe(1);
  });
  test.each([
    ["12 TPI", 12],
    ["12 t.p.i.", 12],
    ["1 thread per inch", 1],
    ["-12 tpi", undefined],
    ["12 xtpi", undefined],
    ["12 tpix", undefined],
    ["tpi", undefined],
  ])("%j is a screw of %s threads per inch", (text, threads) => expect(parseThreadsPerInch(text)).toBe(threads));
});

describe("lengths", () => {
  test.each([
    ["Ø16", 16],
    [" ø 16 mm", 16],
    ["⌀1 in", 25.4],
    ["1 IN.", 25.4],
    ['1"', 25.4],
    ["1″", 25.4],
    ["2 inches", 50.8],
    ["1'", 304.8],
    ["1 ft.", 304.8],
    ["250 microns", 0.25],
    ["250 um", 0.25],
    ["3 Millimeters", 3],
  ])("%j is %d mm", (text, mm) => expect(parseLength(text, "mm")).toBeCloseTo(mm, 12));
  test.each(["16Ø", "ØØ16", "Ø", "x Ø16", "1 inn"])("%j is none", (text) =>
    expect(parseLength(text, "mm")).toBeUndefined(),
  );
  test("50 thou is 0.05 in to the last bit; a bare number is in the file's unit; there and back", () => {
    expect(parseLength("50 thou", "mm")).toBe(0.05 * 25.4);
    expect(parseLength("2", "in")).toBe(50.8);
    expect(parseLength("2", "mm")).toBe(2);
    expect([inMm(2, "in"), fromMm(50.8, "in"), inMm(2, "mm"), fromMm(2, "mm")]).toEqual([50.8, 2, 2, 2]);
    expect(roundIn(1, 0.04)).toEqual({ mm: 1, in: 0.04 * 25.4 });
    expect(withoutDiameterSign("16 Ø")).toBe("16 Ø");
  });
});

describe("pairs and ranges", () => {
  test.each([
    ["199.3  OF  200 mm", "in", 199.3, 200],
    ["199.3 mm of 8 in", "in", 199.3, 203.2],
    ["7. of 8 in", "mm", 177.8, 203.2],
    ["7-31/32 of 8 in", "mm", (7 + 31 / 32) * 25.4, 203.2],
    [" 1/2 in of -3 1/2 ", "in", 12.7, -88.9],
  ] as const)("%j in a file in %s", (text, units, measured, nominal) => {
    expect(parsePair(text, units)?.measured).toBeCloseTo(measured, 10);
    expect(parsePair(text, units)?.nominal).toBeCloseTo(nominal, 10);
  });
  test.each(["wide of 200", "1of2", "1 of2", "1 mm of 2 wide", `1 of ${" ".repeat(2 * LONGEST)}2`])(
    "%j is no pair",
    (text) => expect(parsePair(text, "mm")).toBeUndefined(),
  );

  test.each([
    ["300 to 3000", "300", "3000"],
    ["300  TO  3000", "300", "3000"],
    [" 11.98 – 12.00 ", "11.98", "12.00"],
    ["11.98–12.00", "11.98", "12.00"],
    ["1 — 2", "1", "2"],
    ["1…2", "1", "2"],
    ["1 .. 2", "1", "2"],
    ["1...2", "1", "2"],
    ["[11.98, 12.00]", "11.98", "12.00"],
    [" [ 1 ; 2 ] ", "1", "2"],
    ["[1,5, 2,5]", "1,5", "2,5"],
    ["[1;2]", "1", "2"],
    ["[1,2]", "1", "2"],
    ["1 mm to 2 mm", "1 mm", "2 mm"],
  ])("%j is from %j to %j", (text, from, to) => expect(rangeIn(text)).toEqual([from, to]));
  test.each([
    "300-3000",
    "300",
    "to 3000",
    "300 to",
    "300 to ",
    "300to3000",
    "– 2",
    "1 –",
    "[1,5,2,5]",
    "[1]",
    "x [1, 2]",
    "[1, 2] x",
    "[, 2]",
  ])("%j is no range", (text) => expect(rangeIn(text)).toBeUndefined());
});

describe("speeds and angles", () => {
  test.each([
    ["2000 RPM", 2000],
    ["2000 r.p.m.", 2000],
    ["2000rpm", 2000],
    ["2000 min-1", 2000],
    [" 2000   1/min ", 2000],
    ["1-1/2 1/min", 1.5],
    ["2000 xrpm", undefined],
    ["2000 rpmx", undefined],
    ["1/min", undefined],
    ["", undefined],
    ["2000 1/minx", undefined],
    [`${" ".repeat(LONGEST)}2000`, undefined],
  ])("%j is %s turns a minute", (text, rpm) => expect(parseSpeed(text)).toBe(rpm));

  test.each([
    ["5 Degrees", 5],
    ["5 degs", 5],
    ["5degree", 5],
    [" 5° ", 5],
    ["-5°", -5],
    ["−5 deg 30 min", -5.5],
    ["- 5 deg 30 min", -5.5],
    ["+5 deg 30 minutes", 5.5],
    ["5 degrees 1 minute 36 seconds", 5 + 1 / 60 + 0.01],
    ["5°30′36″", 5.51],
    ["5 deg 59 min 59 sec", 5 + 59 / 60 + 59 / 3600],
    ["2,5 deg 1,5 min", 2.525],
    ["12 deg 34 min", 12 + 34 / 60],
    ["0 deg 0.25 min", 0.25 / 60],
  ])("%j is %d degrees", (text, degrees) => expect(toDegrees(parseAngle(text) ?? Number.NaN)).toBeCloseTo(degrees, 10));
  test.each([
    "5 deg 60 sec",
    "5 deg 60 min",
    "5 deg 1 min 60 sec",
    "5 degx",
    "x5 deg",
    "x5 deg 30 min",
    "5 deg 30 minx",
    "5 deg 1,2,3 min",
    "5 deg 1 sec 1 min",
    "1,2,3 deg 5 min",
    "5 deg 1 min 1,2,3 sec",
    "x rad",
    "rad",
    "5 radx",
    `${" ".repeat(LONGEST)}5`,
  ])("%j is no angle", (text) => expect(parseAngle(text)).toBeUndefined());
  test("radians are taken as they are, a turn is 360 of degrees", () => {
    expect(parseAngle("0.5 radians")).toBe(0.5);
    expect(parseAngle(" 0.5 RAD ")).toBe(0.5);
    expect(parseAngle("0.5 radian")).toBe(0.5);
    expect(toRadians(180)).toBe(Math.PI);
    expect(toDegrees(Math.PI / 2)).toBe(90);
  });
});

test("things by what they have in common, in the order in which they came", () => {
  expect([...grouped([3, 1, 4, 1, 5, 9, 2, 6], (n) => n % 2)]).toEqual([
    [1, [3, 1, 1, 5, 9]],
    [0, [4, 2, 6]],
  ]);
});

describe("lines and lengths of what is written", () => {
  test.each(["5\n6", "x\n5", "-\n"])("%j is no number: only what stands in one line is read", (text) =>
    expect(parseNumber(text)).toBeUndefined(),
  );
  test.each(["x\n0.5 rad", "x\n5 deg"])("%j is no angle", (text) => expect(parseAngle(text)).toBeUndefined());
  test.each(["x\n1 to 2", "1 to 2\n3"])("%j is no range", (text) => expect(rangeIn(text)).toBeUndefined());
  test.each(["x\n2000 1/min", `2000${" ".repeat(LONGEST)}1/min`])("%j is no speed", (text) =>
    expect(parseSpeed(text)).toBeUndefined(),
  );
  test("what is just as long as is read, is read", () => {
    const filled = (text: string, length: number) => `${" ".repeat(length - text.length)}${text}`;
    expect(parseAngle(filled("5 deg", LONGEST))).toBe(toRadians(5));
    expect(parseSpeed(filled("2000 rpm", LONGEST))).toBe(2000);
    expect(splitUnit(filled("5 mm", LONGEST))).toEqual({ number: 5, unit: "mm" });
    expect(splitUnit(filled("5 mm", LONGEST + 1))).toBeUndefined();
    const pair = (length: number) => parsePair(filled("1 of 2", length), "mm");
    // Each side may be as long as a length.
    expect(parsePair(`1${" ".repeat(LONGEST)}of${" ".repeat(2 * LONGEST - LONGEST - 4)}2`, "mm")).toEqual({
      measured: 1,
      nominal: 2,
    });
    expect(pair(2 * LONGEST + 1)).toBeUndefined();
  });
  test("a unit on the second of a pair holds for both, however it is written", () => {
    expect(parsePair("7 of 8 inches", "mm")).toEqual({ measured: 7 * 25.4, nominal: 8 * 25.4 });
    expect(parsePair("7 of 8in", "mm")).toEqual({ measured: 7 * 25.4, nominal: 8 * 25.4 });
    expect(rangeIn("[11;22]")).toEqual(["11", "22"]);
  });
});
