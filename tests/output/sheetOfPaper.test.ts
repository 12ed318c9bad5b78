import { deflateSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readFonts } from "../../scripts/font.js";
import type { Print } from "../../src/drawing/page.js";
import type { Printer } from "../../src/machine/machine.js";
import { render } from "../../src/output/render.js";
import { bind } from "../../src/sheets/binder.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { type PageRead, readPdf } from "../support/readPdf.js";
import { findingsOf, printOf } from "../support/sheets.js";
import { svgLines } from "../support/svgLines.js";

type Point = { readonly x: number; readonly y: number };
type Line = { readonly from: Point; readonly to: Point };
/** What a printer does to a sheet of paper held upright: x' = sx·x + k·y, y' = sy·y. */
type Truth = { readonly sx: number; readonly sy: number; readonly k: number };

const tools = { fonts: () => readFonts(), deflate: deflateSync };
const apart = (a: Point, b: Point) => Math.hypot(b.x - a.x, b.y - a.y);
const printed = (point: Point, { sx, sy, k }: Truth): Point => ({ x: sx * point.x + k * point.y, y: sy * point.y });

/** What a person finds on the printer check page: both bars along themselves, and the diagonals. */
function measured(truth: Truth): Printer {
  const [width, height] = [200, 250];
  const length = (a: Point, b: Point) => apart(printed(a, truth), printed(b, truth));
  const [left, right, low, far] = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: 0, y: height },
    { x: width, y: height },
  ] as [Point, Point, Point, Point];
  return {
    across: { measured: length(left, right), nominal: width },
    down: { measured: length(left, low), nominal: height },
    diagonals: [length(left, far), length(right, low)],
  };
}

const machine = (printer: Printer, size = "A4") => {
  const findings = findingsOf(
    `name: T\npaper: { size: ${size}, printer: laser }\nprinters: { laser: {} }\nhandwheels: [{ name: S, feed: 1.27 mm, dial: { shape: drum, diameter: 30, width: 9, divisions: 0.01 mm, closure: even } }]\n`,
  );
  return { ...findings, machine: { ...findings.machine, printers: { laser: printer } } };
};

/** Where a point of a page comes to lie on the sheet of paper, which is fed upright: a landscape page is turned. */
const ways: Record<string, (page: { width: number; height: number }) => (point: Point) => Point> = {
  anticlockwise: ({ width, height }) =>
    width > height ? ({ x, y }) => ({ x: y, y: width - x }) : ({ x, y }) => ({ x, y }),
  clockwise: ({ width, height }) =>
    width > height ? ({ x, y }) => ({ x: height - y, y: x }) : ({ x, y }) => ({ x, y }),
};

const bars = (lines: readonly Line[]) => {
  const level = lines.find(({ from, to }) => Math.abs(to.x - from.x) > 95);
  const upright = lines.find(({ from, to }) => Math.abs(to.y - from.y) > 95);
  return [level, upright].map((bar) => bar ?? { from: { x: 0, y: 0 }, to: { x: 0, y: 0 } });
};

const readers: Record<string, (print: Print, printer: Printer) => Promise<readonly (readonly Line[])[]>> = {
  PDF: async (print, printer) =>
    (await readPdf((await render(print, "pdf", printer, tools))[0]?.bytes as Uint8Array)).pages.map(({ lines }) =>
      lines.filter(({ pen, from, to }) => Math.abs(pen - 1.2) < 0.05 && apart(from, to) < 105),
    ),
  SVG: async (print, printer) =>
    (await render(print, "svg", printer, tools)).map(({ bytes }) =>
      ["check-bar-level", "check-bar-upright"].flatMap((name) => svgLines(bytes as string, name)),
    ),
};

describe.each(Object.entries(readers))("check bars read back from the %s", (_, read) => {
  test.each([
    ["portrait", "dial-choices", "A4"],
    ["landscape", "dial", "A4"],
    ["landscape", "dial", "Letter"],
  ])(
    "on a %s page (%s, %s): 100 mm and square on the paper, whatever the printer's stretch and skew",
    (_, sheet, size) =>
      fc.assert(
        fc.asyncProperty(
          fc.double({ min: 0.97, max: 1.03, noNaN: true }),
          fc.double({ min: 0.97, max: 1.03, noNaN: true }),
          fc.double({ min: -0.02, max: 0.02, noNaN: true }),
          async (sx, sy, k) => {
            const truth = { sx, sy, k };
            const printer = measured(truth);
            const print = printOf(machine(printer, size), sheet);
            const [lines = []] = await read(print, printer);
            const { drawing } = print.pages[0] as Print["pages"][number];
            for (const way of Object.values(ways)) {
              const onPaper = (point: Point) => printed(way(drawing)(point), truth);
              const [level, upright] = bars(lines).map(({ from, to }) => {
                const [a, b] = [onPaper(from), onPaper(to)];
                return { x: b.x - a.x, y: b.y - a.y };
              }) as [Point, Point];
              expect(Math.abs(Math.hypot(level.x, level.y) - 100)).toBeLessThan(0.001);
              expect(Math.abs(Math.hypot(upright.x, upright.y) - 100)).toBeLessThan(0.001);
              expect(Math.abs(level.x * upright.x + level.y * upright.y) / 100).toBeLessThan(0.001);
            }
          },
        ),
        { numRuns: 12 },
      ),
  );
});

test("a landscape page keeps the corner that is the sheet's top left: its own top right, turned anticlockwise", async () => {
  const printer = measured({ sx: 0.98, sy: 1.02, k: 0.01 });
  const { drawing } = printOf(machine(printer), "dial").pages[0] as Print["pages"][number];
  const corner = { x: drawing.width, y: 0 };
  expect(ways.anticlockwise?.(drawing)(corner)).toEqual({ x: 0, y: 0 });
  const marks = [
    {
      kind: "path",
      segments: [
        { to: "move", ...corner },
        { to: "line", x: 9, y: 9 },
      ],
      pen: { width: 0.25, ink: "black" },
    },
  ];
  const print = { sheet: "s", title: "t", pages: [{ title: "p", drawing: { ...drawing, marks } }] } as unknown as Print;
  const { pages } = await readPdf((await render(print, "pdf", printer, tools))[0]?.bytes as Uint8Array);
  expect(apart((pages[0] as PageRead).lines[0]?.from as Point, corner)).toBeLessThan(1e-4);
});

describe("a page says that it is corrected, and for what", () => {
  const printer = measured({ sx: 0.9965, sy: 1.0016, k: 0.0016 });
  const said = async (print: Print, from: Printer | undefined) => {
    const { pages } = await readPdf((await render(print, "pdf", from, tools))[0]?.bytes as Uint8Array);
    return pages.map(({ texts }) => texts.map(({ text }) => text).filter((text) => text.startsWith("Corrected")));
  };
  const note =
    "Corrected for the printer laser: across × 1.0035, down × 0.9984, skew −0.0016; down is the sheet's long side.";

  test("every page of a binder, of either orientation, once", async () => {
    const findings = machine(printer);
    const prints = ["dial", "dial-choices", "turns"].map((sheet) => printOf(findings, sheet));
    const pages = await said(bind(findings, prints, []), printer);
    expect(pages.length).toBeGreaterThan(3);
    for (const texts of pages) expect(texts).toEqual([note]);
  });

  test("neither the page on which the printer is measured, nor a laser's drawing, nor a page of a file without printer", async () => {
    const findings = machine(printer);
    for (const sheet of ["printer-check", "engraving"])
      expect((await said(printOf(findings, sheet), printer)).flat()).toEqual([]);
    const [dxf] = await render(printOf(findings, "dial"), "dxf", printer, tools);
    const [svg] = await render(printOf(findings, "dial"), "svg", printer, tools);
    expect(svg?.bytes).toContain("Corrected for the printer laser");
    // Letters are outlines there: as many as without a printer.
    expect(dxf?.bytes).toBe((await render(printOf(findings, "dial"), "dxf", undefined, tools))[0]?.bytes);
    expect((await said(printOf(findings, "dial"), undefined)).flat()).toEqual([]);
    const alone = printOf(
      findingsOf("name: T\nhandwheels: [{ name: S, feed: 2 mm, dial: { shape: drum, diameter: 30, width: 9 } }]\n"),
      "dial",
    );
    expect(JSON.stringify(alone)).toContain("Not corrected for any printer.");
    expect(JSON.stringify(printOf(findings, "dial"))).not.toContain("Not corrected");
  });
});

test("check bars name the side of the sheet along which they lie", async () => {
  for (const [sheet, level, upright] of [
    ["dial-choices", "across: the sheet's short side", "down: the sheet's long side"],
    ["dial", "down: the sheet's long side", "across: the sheet's short side"],
  ] as const) {
    const { pages } = await readPdf(
      (await render(printOf(machine({}), sheet), "pdf", undefined, tools))[0]?.bytes as Uint8Array,
    );
    const words = (pages[0] as PageRead).texts.filter(({ text }) => /^must be .* long/.test(text));
    const [low, high] = [...words].sort((a, b) => b.y - a.y);
    expect(low?.text).toContain(level);
    expect(high?.text).toContain(upright);
  }
});

test("a template of one's own measures no printer on a page that lies across", () => {
  const { problems } = readTemplate(
    "title: Mine\norientation: landscape\nuncorrected: true\nblocks: [printer check]\n",
    "mine",
  );
  expect(problems).toEqual([expect.stringMatching(/^3:14: .*orientation: portrait/)]);
});
