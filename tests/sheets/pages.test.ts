import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Drawing } from "../../src/drawing/drawing.js";
import { missingGlyphs } from "../../src/drawing/text.js";
import { arrange } from "../../src/sheets/arrange.js";
import { inLanguage } from "../../src/words/language.js";
import { doubled } from "../support/doubled.js";
import { outline, walk } from "../support/marks.js";
import { demoFindings, findingsOf, printOf, sheetNames, template } from "../support/sheets.js";

const FIVE_POINTS = (5 * 25.4) / 72;

/** Everything wrong with a page that can be told without eyes. */
function faults(drawing: Drawing): string[] {
  const found: string[] = [];
  walk(drawing.marks, (mark, toPage) => {
    for (const point of outline(mark)) {
      const { x, y } = toPage(point);
      const inside = x >= 0 && y >= 0 && x <= drawing.width && y <= drawing.height;
      if (!inside)
        found.push(
          `${mark.kind === "text" ? JSON.stringify(mark.text) : "a path"} at ${x.toFixed(1)}, ${y.toFixed(1)} is off the page`,
        );
    }
    if (mark.kind !== "text") return;
    if (mark.size < FIVE_POINTS) found.push(`${JSON.stringify(mark.text)} is smaller than 5 pt`);
    const missing = missingGlyphs(mark.text, mark.weight);
    if (missing.length > 0) found.push(`${JSON.stringify(mark.text)} holds ${missing.join(" ")}, which the font lacks`);
    if (/undefined|NaN|Infinity|\[object/.test(mark.text)) found.push(`${JSON.stringify(mark.text)} is nonsense`);
  });
  return [...new Set(found)];
}

describe("the demo's pages", () => {
  const findings = demoFindings();
  test.each(sheetNames())("%s: all on the page, at least 5 pt, no glyph missing", (sheet) => {
    const { pages } = printOf(findings, sheet);
    expect(pages.length).toBeGreaterThan(0);
    for (const { drawing } of pages) expect(faults(drawing)).toEqual([]);
  });
});

/** Grown by each sheet whose words have moved to templates/words. */
const speaking = ["plan", "student"];

describe.each([
  { name: "German", language: "de" as const },
  { name: "words twice as long", language: doubled },
])("the demo's pages, $name", ({ language }) => {
  test.each(speaking)("%s: all on the page, at least 5 pt, no glyph missing", (sheet) => {
    const { pages } = inLanguage(language, () => printOf(demoFindings(), sheet));
    expect(pages.length).toBeGreaterThan(0);
    for (const { drawing } of pages) expect(faults(drawing)).toEqual([]);
  });
});

describe("whatever the machine", () => {
  const length = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((mm) => Number(mm.toFixed(3)));
  const name = fc.stringMatching(/^[A-Za-z0-9 ]{1,40}$/).filter((text) => text.trim() !== "");
  const dial = fc.oneof(
    fc
      .record({ diameter: length(12, 250), width: length(3, 25) })
      .map(({ diameter, width }) => ({ shape: "drum", diameter, width })),
    fc
      .record({ outside: length(30, 150), ring: length(5, 12) })
      .map(({ outside, ring }) => ({ shape: "face", outside, inside: outside - 2 * ring })),
    fc
      .record({ diameter: length(25, 120), cone: length(1, 10), width: length(5, 12) })
      .map(({ diameter, cone, width }) => ({ shape: "bevel", diameter, smallDiameter: diameter - cone, width })),
  );
  const handwheel = fc.record({
    reads: fc.constantFrom("travel", "diameter"),
    feed: fc.oneof(
      length(0.3, 50).map(String),
      fc.integer({ min: 4, max: 60 }).map((n) => `${n} tpi`),
      length(0.3, 8).map((p) => `{ perTurn: ${p}, uncertainty: 0.01, nominal: 2 }`),
    ),
    dial,
    increases: fc.constantFrom("clockwise", "anticlockwise"),
    closure: fc.constantFrom(undefined, "even", "true", "rows"),
  });
  const steps = fc.array(fc.record({ driver: length(15, 200), driven: length(15, 200) }), {
    minLength: 1,
    maxLength: 5,
  });
  const machine = fc.record({
    name,
    units: fc.constantFrom("mm", "in"),
    paper: fc.constantFrom("A4", "A3", "Letter"),
    handwheels: fc.array(handwheel, { maxLength: 3 }),
    stages: fc.array(steps, { minLength: 1, maxLength: 3 }),
    chuck: fc.option(fc.integer({ min: 200, max: 4000 })),
  });

  test("no sheet throws, and nothing lies off the page", () => {
    fc.assert(
      fc.property(machine, (made) => {
        const text = JSON.stringify({
          name: made.name,
          units: made.units,
          paper: { size: made.paper },
          ...(made.chuck && { limits: { chuck: made.chuck } }),
          drive: {
            motor: { speed: 1400 },
            stages: made.stages.map((list, index) => ({
              name: `belt ${index}`,
              steps: list.map(({ driver, driven }) => ({ driver: `${driver} mm`, driven: `${driven} mm` })),
            })),
          },
          handwheels: made.handwheels.map(({ feed, dial, increases, closure, reads }, index) => ({
            name: `wheel ${index}`,
            reads,
            feed: /^[\d.]+$/.test(feed)
              ? `${feed} mm`
              : feed.startsWith("{")
                ? { perTurn: `${/perTurn: ([\d.]+)/.exec(feed)?.[1]} mm`, uncertainty: "0.01 mm", nominal: "2 mm" }
                : feed,
            dial: {
              ...Object.fromEntries(
                Object.entries(dial).map(([key, value]) => [key, typeof value === "number" ? `${value} mm` : value]),
              ),
              increases,
              ...(closure && { closure }),
            },
          })),
        });
        const findings = findingsOf(text);
        for (const sheet of ["belt-card", "turns", "dial"]) {
          const result = arrange(findings, template(sheet));
          if ("missing" in result) continue;
          for (const { drawing } of result.print.pages) expect(faults(drawing)).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });
});
