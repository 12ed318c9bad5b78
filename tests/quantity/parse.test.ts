import { describe, expect, test } from "vitest";
import { parseAngle, toDegrees } from "../../src/quantity/angle.js";
import { MM_PER_FOOT, MM_PER_INCH, parseLength } from "../../src/quantity/length.js";
import { parseNumber } from "../../src/quantity/number.js";
import { parsePair } from "../../src/quantity/pair.js";
import { parseSpeed } from "../../src/quantity/speed.js";
import { parseThreadsPerInch, pitchOf } from "../../src/quantity/thread.js";

test("an inch is 25.4 mm exactly (international yard and pound agreement, 1959)", () => {
  expect(MM_PER_INCH).toBe(25.4);
  expect(MM_PER_FOOT).toBeCloseTo(304.8, 12);
});

describe("numbers", () => {
  test.each([
    ["1.5875", 1.5875],
    ["-0.01", -0.01],
    ["−0.01", -0.01],
    ["+2", 2],
    [".5", 0.5],
    ["5.", 5],
    ["1,27", 1.27],
    ["0,127", 0.127],
    ["1,2345", 1.2345],
    ["3/8", 0.375],
    ["1-1/2", 1.5],
    ["1 1/2", 1.5],
    ["-1-1/2", -1.5],
    ["2½", 2.5],
    ["1 ¾", 1.75],
    ["⅛", 0.125],
    ["-¼", -0.25],
  ])("%s is %d", (text, value) => {
    expect(parseNumber(text)).toBe(value);
  });
  test.each([
    "",
    "-",
    ".",
    "1,270",
    "1.270,5",
    "1,2,3",
    "1/0",
    "1e3",
    "NaN",
    "Infinity",
    "--1",
    "0x10",
    "9".repeat(400),
  ])("%s is none", (text) => {
    expect(parseNumber(text)).toBeUndefined();
  });
});

describe("lengths", () => {
  test.each([
    ["1.27 mm", "in", 1.27],
    ["1.27mm", "in", 1.27],
    ["0.050 in", "mm", 0.05 * 25.4],
    ["50 thou", "mm", 0.05 * 25.4],
    ["3/8 in", "mm", 9.525],
    ['3/8"', "mm", 9.525],
    ["1-1/2 in", "mm", 38.1],
    ["1 1/2 in", "mm", 38.1],
    ["1,27 mm", "mm", 1.27],
    ["2 ft", "mm", 609.6],
    ["18 cm", "mm", 180],
    ["0.2 m", "mm", 200],
    ["10 µm", "mm", 0.01],
    ["38", "mm", 38],
    ["1/8", "in", 3.175],
    ["-0.02 MM", "mm", -0.02],
  ] as const)("%s in a file in %s is %d mm", (text, units, mm) => {
    expect(parseLength(text, units)).toBeCloseTo(mm, 12);
  });
  test.each(["wide", "", "mm", "12 tpi", "3 mil", "1.27 mm mm", "38 mm 2", "1,270 mm", "1e3 mm", "constructor"])(
    "%s is none",
    (text) => {
      expect(parseLength(text, "mm")).toBeUndefined();
    },
  );
});

test.each([
  ["12 tpi", 12],
  ["4-1/2 tpi", 4.5],
  ["16 threads per inch", 16],
  ["0 tpi", undefined],
  ["12", undefined],
  ["12 mm", undefined],
])("%s is a screw of %s threads per inch", (text, threads) => {
  expect(parseThreadsPerInch(text)).toBe(threads);
});

test("a screw of 10 threads per inch has a pitch of 2.54 mm", () => {
  expect(pitchOf(10)).toBeCloseTo(2.54, 14);
});

test.each([
  ["2000 rpm", 2000],
  ["2000", 2000],
  ["1425.5 r/min", 1425.5],
  ["1425 1/min", 1425],
  ["1425 rev/min", 1425],
  ["fast", undefined],
  ["100 m/min", undefined],
])("%s is a speed of %s rpm", (text, rpm) => {
  expect(parseSpeed(text)).toBe(rpm);
});

test.each([
  ["5 deg", 5],
  ["5°", 5],
  ["5.5", 5.5],
  ["2,5 deg", 2.5],
  ["1-1/2 deg", 1.5],
  ["5 deg 30 min", 5.5],
  ["-5 deg 30 min", -5.5],
  ["5° 30' 36\"", 5.51],
  ["1 deg 36 sec", 1.01],
])("%s is %d degrees", (text, degrees) => {
  expect(toDegrees(parseAngle(text) ?? Number.NaN)).toBeCloseTo(degrees, 12);
});

test("an angle in radians is taken as it is", () => {
  expect(parseAngle("0.1 rad")).toBe(0.1);
});

test.each(["5 deg 60 min", "steep", "", "deg", "5 min", "5 mm", "5 deg 1 deg"])("%s is no angle", (text) => {
  expect(parseAngle(text)).toBeUndefined();
});

test.each([
  ["199.3 of 200", "mm", 199.3, 200],
  ["199.3 mm of 200 mm", "in", 199.3, 200],
  ["7.97 of 8 in", "mm", 7.97 * 25.4, 203.2],
  ["7.97 of 8", "in", 7.97 * 25.4, 203.2],
  ["250,4 OF 250", "mm", 250.4, 250],
] as const)("%s in a file in %s is measured beside nominal", (text, units, measured, nominal) => {
  const pair = parsePair(text, units);
  expect(pair?.measured).toBeCloseTo(measured, 10);
  expect(pair?.nominal).toBeCloseTo(nominal, 10);
});

test.each(["199.3", "199.3 of", "of 200", "199.3/200", "1 of 2 of 3", "199.3 of wide"])("%s is no pair", (text) => {
  expect(parsePair(text, "mm")).toBeUndefined();
});
