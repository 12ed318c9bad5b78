import { expect, test } from "vitest";
import { dialPlan } from "../../src/blocks/dial/dialPieces.js";
import { dialStyle } from "../../src/blocks/dial/dialStyle.js";
import { farthestReading, lineWidth } from "../../src/dial/legibility.js";
import { remarks } from "../../src/findings/remarks.js";
import { walk } from "../support/marks.js";
import { findingsOf, printOf } from "../support/sheets.js";

const wheel = (dial: string) => findingsOf(`name: T\nhandwheels: [{ name: W, feed: 2 mm, dial: ${dial} }]\n`);

test("figures of 2 mm are read from 500 mm: 0.004 of the distance (NUREG-0700, 11.4.1.5)", () => {
  expect(farthestReading(2)).toBeCloseTo(500, 9);
});

test("a line is never wider than half the distance of the marks (ASME B89.1.7-2009, 4.6)", () => {
  expect(lineWidth(0.22, 1)).toBe(0.22);
  expect(lineWidth(0.22, 0.3)).toBeCloseTo(0.15, 12);
  const crowded = wheel("{ shape: drum, diameter: 40, width: 9, divisions: 0.004 mm, closure: even }");
  const [finding] = crowded.handwheels;
  const spacing = finding?.dial?.chosen.spacing ?? 1;
  expect(spacing).toBeLessThan(0.3);
  for (const { drawing } of printOf(crowded, "dial").pages)
    walk(drawing.marks, (mark, _, names) => {
      if (mark.kind === "path" && names.includes("graduations") && names.includes("strip"))
        expect(mark.pen?.width).toBeLessThanOrEqual(spacing / 2 + 1e-12);
    });
});

test("marks come in three lengths, and figures are never smaller than 5 pt", () => {
  for (const width of [4, 6, 9, 14]) {
    const own = wheel(`{ shape: drum, diameter: 40, width: ${width}, divisions: 0.02 mm, closure: even }`);
    const [finding] = own.handwheels;
    const plan = finding && dialPlan(finding, own.machine);
    for (const { marks, number } of plan ? dialStyle(plan).bands : []) {
      expect(marks[0] > marks[1] && marks[1] > marks[2] && marks[2] > 0).toBe(true);
      expect(number).toBeGreaterThanOrEqual((5 * 25.4) / 72);
    }
  }
});

test("a division forced on too small a dial is warned of at its key, with a remedy; a fitting one is not", () => {
  const small = wheel("{ shape: drum, diameter: 20, width: 9, divisions: 0.01 mm, second: 0.05 mm }");
  const [warning, ...others] = remarks(small).filter(({ code }) => code === "too-close");
  expect(others).toEqual([]);
  expect(warning).toMatchObject({ severity: "warning", path: ["handwheels", 0, "dial", "divisions"] });
  expect(warning?.what).toMatch(/marks of 0\.01 mm stand only 0\.32 mm apart/);
  expect(warning?.remedy).toContain("vernier");
  expect(remarks(wheel("{ shape: drum, diameter: 60, width: 9, divisions: 0.02 mm }"))).toEqual([]);
});

test("a blank ring is printed where the sheet asks for one", async () => {
  const { arrange } = await import("../../src/sheets/arrange.js");
  const { template } = await import("../support/sheets.js");
  const sheet = template("dial");
  const blocks = sheet.blocks.map((one) => ({
    ...one,
    settings: { ...one.settings, ...(one.block === "pieces" && { blank: true }) },
  }));
  const result = arrange(wheel("{ shape: face, outside: 60, inside: 40 }"), { ...sheet, blocks });
  expect(JSON.stringify(result)).toContain("blank, to try the fit first");
});

test("a vernier, which reads one row, gets a dial of one row; on one of several rows that the file asks for none is made", () => {
  const inches = (dial: string) =>
    findingsOf(`name: L\nunits: in\nhandwheels: [{ name: Top, feed: 16 tpi, travel: 2.5, dial: ${dial} }]\n`);
  const size = "shape: bevel, diameter: 1.5, smallDiameter: 1.2, width: 0.4";
  expect(inches(`{ ${size} }`).handwheels[0]?.dial?.rows).toHaveLength(2);
  const single = inches(`{ ${size}, vernier: 5 }`);
  expect(single.handwheels[0]?.dial?.rows).toHaveLength(1);
  expect(single.handwheels[0]?.dial?.vernier).toBeDefined();
  // All ways are still offered, those of several rows last.
  const rows = single.handwheels[0]?.dial?.choices.map((choice) => choice.rows) ?? [];
  expect(rows.lastIndexOf(1)).toBeLessThan(rows.findIndex((count) => count > 1));
  expect(rows).toHaveLength(inches(`{ ${size} }`).handwheels[0]?.dial?.choices.length ?? 0);
  const asked = inches(`{ ${size}, vernier: 5, divisions: 0.001, closure: rows }`);
  expect(asked.handwheels[0]?.dial?.rows).toHaveLength(2);
  expect(asked.handwheels[0]?.dial?.vernier).toBeUndefined();
  expect(remarks(asked).map(({ code, what }) => [code, what])).toContainEqual([
    "no-vernier",
    expect.stringContaining("has 2, in turn"),
  ]);
});

test("a vernier longer than half the dial is not made, and the file is told why", () => {
  const coarse = wheel("{ shape: drum, diameter: 40, width: 9, divisions: 0.1 mm, closure: even, vernier: 25 }");
  expect(coarse.handwheels[0]?.dial?.vernier).toBeUndefined();
  expect(remarks(coarse)).toEqual([
    expect.objectContaining({ code: "no-vernier", path: ["handwheels", 0, "dial", "vernier"] }),
  ]);
  // 25 over 49 divisions would be too long; 25 over 24 is not.
  const fine = wheel("{ shape: drum, diameter: 40, width: 9, divisions: 0.02 mm, closure: even, vernier: 25 }");
  expect(fine.handwheels[0]?.dial?.vernier).toMatchObject({ parts: 25, spans: 49 });
  const between = wheel("{ shape: drum, diameter: 60, width: 9, divisions: 0.025 mm, closure: even, vernier: 20 }");
  expect(between.handwheels[0]?.dial?.vernier).toMatchObject({ extended: false, spans: 19 });
});
