import fc from "fast-check";
import { expect, test } from "vitest";
import { readFonts } from "../../scripts/font.js";
import type { Anchor, GroupMark, Mark, Point } from "../../src/drawing/drawing.js";
import { isOurOutput } from "../../src/drawing/ours.js";
import type { Print } from "../../src/drawing/page.js";
import { group, line, text } from "../../src/drawing/shapes.js";
import { textWidth } from "../../src/drawing/text.js";
import { arcCurves } from "../../src/output/arcCurves.js";
import { renderSvg } from "../../src/output/svg.js";
import type { Affine } from "../../src/paper/printerCorrection.js";
import { walk } from "../support/marks.js";
import { pdfOf } from "../support/pdfOf.js";
import { readPdf } from "../support/readPdf.js";
import { svgLines } from "../support/svgLines.js";

const fonts = readFonts();
const [width, height] = [210, 297];
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc.record({ x: between(-40, 40), y: between(-40, 40) });
const turn = between(-7, 7);
const anchor = fc.constantFrom<Anchor>("start", "middle", "end");

const stroke = fc
  .tuple(point, point, between(0.05, 1))
  .map(([from, to, pen]): Mark => line(from, to, { width: pen, ink: "black" }));
const label = fc
  .tuple(point, turn, anchor, between(1.8, 9))
  .map(([at, turn, anchor, size]): Mark => text("12½ − Ø38", at, { size, anchor, turn, weight: "bold" }));
const nested = fc.letrec<{ mark: Mark; group: GroupMark }>((tie) => ({
  mark: fc.oneof({ depthSize: "small", withCrossShrink: true }, stroke, label, tie("group")),
  group: fc
    .tuple(point, turn, fc.array(tie("mark"), { minLength: 1, maxLength: 4 }))
    .map(([at, turn, marks]) => group(at, marks, { turn })),
}));
const print = fc.array(nested.mark, { minLength: 1, maxLength: 6 }).map(
  (marks): Print => ({
    sheet: "trial",
    title: "Trial",
    pages: [{ title: "Page", drawing: { width, height, marks: [group({ x: 100, y: 150 }, marks, { name: "all" })] } }],
  }),
);
const correction: fc.Arbitrary<Affine> = fc
  .tuple(between(0.97, 1.03), between(-0.02, 0.02), between(0.97, 1.03))
  .map(([across, skew, down]): Affine => [across, 0, skew, down, 0, 0]);

type Wanted = { lines: { from: Point; to: Point; pen: number }[]; texts: { at: Point; words: string }[] };

/** Where everything must lie: the scene's own definition, then the printer's correction. */
function wanted({ pages }: Print, [a, b, c, d, e, f]: Affine): Wanted {
  const result: Wanted = { lines: [], texts: [] };
  const corrected = ({ x, y }: Point): Point => ({ x: a * x + c * y + e, y: b * x + d * y + f });
  walk(pages[0]?.drawing.marks ?? [], (mark, toPage) => {
    const place = (spot: Point) => corrected(toPage(spot));
    if (mark.kind === "text") {
      const back = { start: 0, middle: 0.5, end: 1 }[mark.anchor] * textWidth(mark.text, mark.size, mark.weight);
      const [cos, sin] = [Math.cos(mark.turn ?? 0), Math.sin(mark.turn ?? 0)];
      result.texts.push({ at: place({ x: mark.at.x - back * cos, y: mark.at.y - back * sin }), words: mark.text });
      return;
    }
    const [from, to] = mark.segments as unknown as [Point, Point];
    result.lines.push({ from: place(from), to: place(to), pen: mark.pen?.width ?? Number.NaN });
  });
  return result;
}

const off = (one: Point, other: Point): number => Math.hypot(one.x - other.x, one.y - other.y);

test("PDF: every line end and every text lies within 0.001 mm of the scene, however nested and turned", () =>
  fc.assert(
    fc.asyncProperty(print, correction, async (print, correction) => {
      const { pages, printScaling } = await readPdf(await pdfOf(print, correction));
      const [page] = pages;
      const expected = wanted(print, correction);
      expect(printScaling).toBe("None");
      expect(Math.abs((page?.width ?? 0) - width)).toBeLessThan(1e-9);
      expect(Math.abs((page?.height ?? 0) - height)).toBeLessThan(1e-9);
      expect(page?.lines.length).toBe(expected.lines.length);
      for (const [index, { from, to }] of expected.lines.entries()) {
        const read = page?.lines[index];
        if (read === undefined) throw new Error("a line is missing");
        expect(off(read.from, from)).toBeLessThan(0.001);
        expect(off(read.to, to)).toBeLessThan(0.001);
      }
      expect(page?.texts.map(({ text }) => text)).toEqual(expected.texts.map(({ words }) => words));
      for (const [index, { at }] of expected.texts.entries())
        expect(off(page?.texts[index] ?? { x: Number.NaN, y: 0 }, at)).toBeLessThan(0.001);
    }),
    { numRuns: 25 },
  ));

test("PDF: texts that follow each other in one line are still two", async () => {
  const words = "12½ − Ø38";
  const next = 20 + textWidth(words, 3, "bold");
  const marks = [20, next].map((x) => text(words, { x, y: 50 }, { size: 3, weight: "bold" }));
  const print: Print = { sheet: "trial", title: "T", pages: [{ title: "P", drawing: { width, height, marks } }] };
  const { pages } = await readPdf(await pdfOf(print));
  expect(pages[0]?.texts.map(({ text }) => text)).toEqual([words, words]);
  expect(pages[0]?.texts[1]?.x).toBeCloseTo(next, 4);
});

test("PDF: a pen is as wide as it was asked for", async () => {
  const marks = [line({ x: 10, y: 10 }, { x: 60, y: 10 }, { width: 0.13, ink: "black" })];
  const print: Print = { sheet: "trial", title: "T", pages: [{ title: "P", drawing: { width, height, marks } }] };
  const { pages } = await readPdf(await pdfOf(print));
  expect(pages[0]?.lines[0]?.pen).toBeCloseTo(0.13, 6);
});

test("SVG: every line end lies within 0.001 mm of the scene, however nested and turned", () =>
  fc.assert(
    fc.asyncProperty(print, correction, async (print, correction) => {
      const [page] = print.pages;
      if (page === undefined) throw new Error("no page");
      const read = svgLines(await renderSvg(page, print, correction, fonts), "all");
      const { lines } = wanted(print, correction);
      expect(read.length).toBe(lines.length);
      for (const [index, { from, to }] of lines.entries()) {
        expect(off(read[index]?.from ?? { x: Number.NaN, y: 0 }, from)).toBeLessThan(0.001);
        expect(off(read[index]?.to ?? { x: Number.NaN, y: 0 }, to)).toBeLessThan(0.001);
      }
    }),
    { numRuns: 50 },
  ));

test("the same print gives the same bytes, and they are known as ours", () =>
  fc.assert(
    fc.asyncProperty(print, correction, async (print, correction) => {
      const [page] = print.pages;
      if (page === undefined) throw new Error("no page");
      const pdf = await pdfOf(print, correction);
      const svg = await renderSvg(page, print, correction, fonts);
      expect(Buffer.compare(pdf, await pdfOf(print, correction))).toBe(0);
      expect(await renderSvg(page, print, correction, fonts)).toBe(svg);
      expect(isOurOutput(pdf)).toBe(true);
      expect(isOurOutput(new TextEncoder().encode(svg))).toBe(true);
    }),
    { numRuns: 5 },
  ));

const arc = fc.record({
  to: fc.constant("arc" as const),
  centre: fc.record({ x: between(0, 210), y: between(0, 297) }),
  radius: between(1, 200),
  start: between(-7, 7),
  sweep: between(-2 * Math.PI, 2 * Math.PI).filter((sweep) => Math.abs(sweep) > 1e-3),
});

test("an arc as curves leaves its circle by less than 1e-4 mm and never breaks", () =>
  fc.assert(
    fc.property(arc, ({ sweep, ...rest }) => {
      const { centre, radius, start } = rest;
      const end = start + sweep;
      const at = (angle: number) => ({
        x: centre.x + radius * Math.cos(angle),
        y: centre.y + radius * Math.sin(angle),
      });
      let from = at(start);
      for (const curve of arcCurves({ ...rest, end })) {
        for (let step = 1; step < 8; step++) {
          const [t, s] = [step / 8, 1 - step / 8];
          const on = (a: number, b: number, c: number, d: number) =>
            s ** 3 * a + 3 * s * s * t * b + 3 * s * t * t * c + t ** 3 * d;
          const spot = { x: on(from.x, curve.x1, curve.x2, curve.x), y: on(from.y, curve.y1, curve.y2, curve.y) };
          expect(Math.abs(off(spot, centre) - radius)).toBeLessThan(1e-4);
        }
        from = curve;
      }
      expect(off(from, at(end))).toBeLessThan(1e-9);
    }),
  ));

test("SVG: the arcs that a viewer rebuilds from their ends turn about the scene's own centre, to 0.001 mm", () =>
  fc.assert(
    fc.asyncProperty(arc, async ({ sweep, ...rest }) => {
      const pen = { width: 0.1, ink: "black" } as const;
      const marks: Mark[] = [{ kind: "path", segments: [{ ...rest, end: rest.start + sweep }], pen }];
      const page = { title: "Page", drawing: { width, height, marks } };
      const svg = await renderSvg(page, { sheet: "s", title: "t", pages: [page] }, [1, 0, 0, 1, 0, 0], fonts);
      const centres = arcCentres(/ d="([^"]*)"/.exec(svg)?.[1] ?? "");
      expect(centres.length).toBeGreaterThan(0);
      for (const centre of centres) expect(off(centre, rest.centre)).toBeLessThan(0.001);
    }),
    { numRuns: 300 },
  ));

/** Centres of a path's arcs by the rules for viewers: SVG 1.1 (2011), appendix F.6.5 and F.6.6, for round arcs. */
function arcCentres(data: string): Point[] {
  const numbers = (list: string) =>
    list
      .trim()
      .split(/[\s,]+/)
      .map(Number);
  const centres: Point[] = [];
  let from: Point = { x: Number.NaN, y: Number.NaN };
  for (const [, command, list = ""] of data.matchAll(/([MLA])([^MLAZ]*)/g)) {
    const values = numbers(list);
    const to = { x: values.at(-2) ?? Number.NaN, y: values.at(-1) ?? Number.NaN };
    if (command === "A") {
      const [given = 0, , , large, clockwise] = values;
      const half = { x: (from.x - to.x) / 2, y: (from.y - to.y) / 2 };
      const chord = Math.hypot(half.x, half.y);
      const radius = Math.max(given, chord);
      const rise = (Math.sqrt(Math.max(0, radius ** 2 - chord ** 2)) / chord) * (large === clockwise ? -1 : 1);
      centres.push({ x: (from.x + to.x) / 2 + rise * half.y, y: (from.y + to.y) / 2 - rise * half.x });
    }
    from = to;
  }
  return centres;
}
