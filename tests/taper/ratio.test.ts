import { expect, test } from "vitest";
import { halfAngleOfRatio } from "../../src/taper/ratio.js";
import { standardTapers } from "../../src/taper/standard.js";
import { halfAngleOfTaper, taperOfRatio } from "../../src/taper/taper.js";

test("1 in 20 is 1 on diameter in 20 of length, half of it to a side", () => {
  expect(taperOfRatio(1, 20)).toBe(0.05);
  for (const written of ["1 in 20", "1:20", "1 : 20", "2 in 40", "0.5:10"])
    expect(Math.tan(halfAngleOfRatio(written) ?? 0) * 20, written).toBeCloseTo(0.5, 12);
  // 7 in 24 has a half angle of 8° 17′ 50″ (steep machine tapers, memory).
  expect(((halfAngleOfRatio("7:24") ?? 0) * 180) / Math.PI).toBeCloseTo(8 + 17 / 60 + 50 / 3600, 3);
});

test.each(["1 in", "in 20", "1:20:3", "1", "", "0 in 20", "1 in 0", "-1:20", "1:-20", "one in twenty", "1/20"])(
  '"%s" is no ratio',
  (text) => expect(halfAngleOfRatio(text)).toBeUndefined(),
);

test("tapers that the trade knows by name: inches in a foot, and the diameter at the gauge line in mm", () => {
  const known = new Map(standardTapers.map((one) => [one.name, one]));
  // Morse diameters at the gauge line in mm, ISO 296 (memory); Jarno: eighths of an inch, 0.6 in a foot, E. P. Lobben p. 477.
  for (const [number, large] of [9.045, 12.065, 17.78, 23.825, 31.267, 44.399].entries())
    expect(known.get(`Morse ${number}`)?.large, `Morse ${number}`).toBeCloseTo(large, 2);
  for (const number of [5, 7]) {
    const jarno = known.get(`Jarno ${number}`);
    expect([jarno?.large, (jarno?.taper ?? 0) * 20]).toEqual([
      expect.closeTo((number * 25.4) / 8, 9),
      expect.closeTo(1, 12),
    ]);
  }
  // A quarter of an inch in a foot.
  const pin = known.get("taper pin, 1 : 48");
  expect(Math.tan(halfAngleOfTaper(pin?.taper ?? 0)) * 2 * 12).toBeCloseTo(0.25, 12);
  // ISO 296 writes Morse tapers as 1 : 19.212, 20.047, 20.02, 19.922, 19.254, 19.002 (memory).
  for (const [number, ratio] of [19.212, 20.047, 20.02, 19.922, 19.254, 19.002].entries())
    expect(1 / (known.get(`Morse ${number}`)?.taper ?? 1), `Morse ${number}`).toBeCloseTo(ratio, 2);
});
