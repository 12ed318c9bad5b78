import fc from "fast-check";
import { expect, test } from "vitest";
import { arrange } from "../../src/sheets/arrange.js";
import { outline, walk } from "../support/marks.js";
import { findingsOf, printOf, template } from "../support/sheets.js";

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((mm) => Number(mm.toFixed(2)));

/** Nothing off the page, and no graduation outside the cut line that stands before it in its sticker; false where the sheet says that
 *  no page holds it. */
function check(keys: object, sheet: string): boolean {
  const result = arrange(findingsOf(JSON.stringify({ name: "T", ...keys })), template(sheet));
  if ("missing" in result) {
    expect(result.missing).toMatch(/^larger than the paper: /);
    return false;
  }
  for (const { drawing } of result.print.pages)
    walk(drawing.marks, (mark, toPage, names) => {
      if (mark.kind === "text" && /undefined|NaN|Infinity/.test(mark.text)) throw new Error(mark.text);
      for (const { x, y } of outline(mark).map(toPage))
        if (!(x >= 0 && y >= 0 && x <= drawing.width && y <= drawing.height))
          throw new Error(`${names.join(" ")} at ${x.toFixed(1)}, ${y.toFixed(1)}`);
    });
  return true;
}

test("property: straight scales of any length, width and division stay on the paper", () => {
  const divisions = fc.constantFrom("0.5 mm", "1 mm", "2 mm", "5 mm", "1/16 in", "1/32 in", "0.05 in", "0.1 in");
  const scale = fc.record({
    length: length(10, 900),
    width: length(5, 20),
    divisions,
    grows: fc.constantFrom("left", "right"),
  });
  fc.assert(
    fc.property(scale, (made) => {
      expect(check({ scales: [{ name: "Bed", ...made }] }, "scales")).toBe(true);
    }),
    { numRuns: 40 },
  );
});

test("property: angle scales of any radius and range stay on the paper, or say that they do not fit", () => {
  const scale = fc.record({
    part: fc.constantFrom("headstock", "top slide", "vice"),
    shape: fc.constantFrom("face", "drum"),
    radius: length(32, 140),
    width: length(7, 14),
    range: fc.tuple(fc.integer({ min: -180, max: 0 }), fc.integer({ min: 5, max: 180 })),
    step: fc.constantFrom(1, 2, 5),
    vernier: fc.option(fc.constantFrom(2, 5, 6, 12, 30), { nil: undefined }),
    turns: fc.boolean(),
  });
  let drawn = 0;
  fc.assert(
    fc.property(scale, (made) => {
      const fits = check({ angleScales: [{ name: "Swivel", ...made }] }, "angle-scale");
      // Its whole circle would have room on upright A4.
      if (made.shape === "face" && made.radius < 60) expect(fits).toBe(true);
      if (fits) drawn++;
    }),
    { numRuns: 40 },
  );
  expect(drawn).toBeGreaterThan(10);
});

test("a scale in turns of a wheel without a feed says so", () => {
  const text = JSON.stringify({
    name: "T",
    handwheels: [{ name: "Quill" }],
    scales: [{ name: "Depth", length: 50, turnsOf: "Quill" }],
  });
  expect(JSON.stringify(printOf(findingsOf(text), "scales"))).toContain("its turns have no length");
});
