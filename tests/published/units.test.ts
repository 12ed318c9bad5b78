import Qty from "js-quantities";
import { expect, test } from "vitest";
import { toDegrees, toRadians } from "../../src/quantity/angle.js";
import { parseLength } from "../../src/quantity/length.js";
import { parseSpeed } from "../../src/quantity/speed.js";

/** js-quantities, a general units library, as second opinion. */
test.each([
  ["1.27 mm", "1.27 mm"],
  ["0.05 in", "0.05 in"],
  ["2.5 cm", "2.5 cm"],
  ["0.3 m", "0.3 m"],
  ["1.5 ft", "1.5 ft"],
  ["80 µm", "80 um"],
])("%s in mm (js-quantities)", (text, theirs) => {
  expect(parseLength(text, "mm")).toBeCloseTo(Qty(theirs).to("mm").scalar, 10);
});

test("feet a minute in metres a minute (js-quantities)", () => {
  const metres = (parseLength("100 ft", "mm") ?? 0) / 1000;
  expect(metres).toBeCloseTo(Qty("100 ft/min").to("m/min").scalar, 10);
});

test("rpm in radians a second (js-quantities)", () => {
  const rpm = parseSpeed("1425 rpm") ?? 0;
  expect((rpm * 2 * Math.PI) / 60).toBeCloseTo(Qty("1425 rpm").to("rad/s").scalar, 8);
});

test("degrees and radians (js-quantities)", () => {
  expect(toRadians(5.5)).toBeCloseTo(Qty("5.5 deg").to("rad").scalar, 12);
  expect(toDegrees(0.1)).toBeCloseTo(Qty("0.1 rad").to("deg").scalar, 10);
});
