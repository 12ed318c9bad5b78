import { describe, expect, test } from "vitest";
import { readFonts } from "../../scripts/font.js";
import type { Mark } from "../../src/drawing/drawing.js";
import type { Print } from "../../src/drawing/page.js";
import { renderDxf } from "../../src/output/dxf.js";
import { renderSvg } from "../../src/output/svg.js";
import { identity } from "../../src/paper/printerCorrection.js";
import { outline, walk } from "../support/marks.js";
import { pdfOf } from "../support/pdfOf.js";
import { readDxf } from "../support/readDxf.js";
import { readPdf } from "../support/readPdf.js";
import { findingsOf, printOf } from "../support/sheets.js";
import { svgLines } from "../support/svgLines.js";

const fonts = readFonts();
type Point = { readonly x: number; readonly y: number };
type Line = { readonly from: Point; readonly to: Point };

/** The graduations of a print's first page as each format's own reader sees them, y down. */
const readers: Record<string, (print: Print) => Promise<Line[]>> = {
  PDF: async (print) => {
    const { pages } = await readPdf(await pdfOf(print));
    // Of what is on a piece, pens of 0.25, 0.18 and 0.13 mm belong to graduations alone.
    return (pages[0]?.lines ?? []).filter(
      ({ pen, stroked }) => stroked && [0.25, 0.18, 0.13].some((own) => Math.abs(pen - own) < 1e-6),
    );
  },
  SVG: async (print) => svgLines(renderSvg(first(print), print, identity, fonts), "graduations"),
  DXF: async (print) =>
    readDxf(renderDxf(first(print), print, fonts)).entities.flatMap(({ layer, vertices }): Line[] => {
      const [from, to] = vertices ?? [];
      if (!layer.startsWith("GRADUATIONS") || !from || !to) return [];
      return [{ from: { x: from.x, y: -from.y }, to: { x: to.x, y: -to.y } }];
    }),
};

function first(print: Print): Print["pages"][number] {
  const [page] = print.pages;
  if (page === undefined) throw new Error("no page");
  return page;
}

/** Only the sticker of a name, `turn` in which it comes on the page; the rest of the page is left out. */
function only(print: Print, name: string, turn = 0): Print {
  const found: Mark[] = [];
  const look = (mark: Mark): void => {
    if (mark.kind !== "group") return;
    if (mark.name === name) found.push(mark);
    else mark.marks.forEach(look);
  };
  first(print).drawing.marks.forEach(look);
  const mark = found[turn];
  if (mark === undefined) throw new Error(`no ${name}`);
  const { width, height } = first(print).drawing;
  return { ...print, pages: [{ title: name, drawing: { width, height, marks: [mark] } }] };
}

/** The edge at which marks are read lies so far within their ends, mm. */
const OVER = 1;

/** Left and right end of a sticker, from its upright corner marks. */
function cutEnds(print: Print): { left: number; right: number } {
  const xs: number[] = [];
  walk(first(print).drawing.marks, (mark, toPage, names) => {
    if (names.at(-1) !== "cut") return;
    const [from, to] = outline(mark).map(toPage) as [Point, Point];
    if (Math.abs(from.x - to.x) < 1e-9) xs.push(from.x);
  });
  return { left: Math.min(...xs), right: Math.max(...xs) };
}

const machine = (keys: string) => findingsOf(`name: T\npaper: { thickness: 0, adhesive: 0 }\n${keys}\n`);
const sorted = (values: number[]) => [...values].sort((a, b) => a - b);

/** Worst distance from equal steps, mm. */
const offStep = (places: number[], step: number) =>
  Math.max(...sorted(places).map((place, i) => Math.abs(place - Math.min(...places) - i * step)));

/** Angles about the point in which all lines meet, clockwise from the top, and the spread of the ends' radii, mm. */
function about(lines: readonly Line[]) {
  // The lines of longest baseline meet most sharply: intersect the outermost two.
  const [a, b] = [lines[0], lines.at(-1)] as [Line, Line];
  const [u, v] = [a, b].map(({ from, to }) => ({ x: to.x - from.x, y: to.y - from.y })) as [Point, Point];
  const t = ((b.from.x - a.from.x) * v.y - (b.from.y - a.from.y) * v.x) / (u.x * v.y - u.y * v.x);
  const centre = { x: a.from.x + t * u.x, y: a.from.y + t * u.y };
  const polar = lines.map(({ from }) => ({
    angle: Math.atan2(from.x - centre.x, from.y - centre.y),
    radius: Math.hypot(from.x - centre.x, from.y - centre.y),
  }));
  return { angles: polar.map(({ angle }) => angle), radii: polar.map(({ radius }) => radius) };
}

describe.each(Object.entries(readers))("read back from the %s", (_, read) => {
  test("a scale of sixteenths: 65 marks on 4 in, each within 0.001 mm", async () => {
    const print = printOf(machine("scales: [{ name: Stop, length: 4 in, divisions: 1/16 in }]"), "scales");
    const places = (await read(only(print, "scale"))).map(({ from }) => from.x);
    expect(places).toHaveLength(65);
    expect(offStep(places, 25.4 / 16)).toBeLessThan(0.001);
  });

  test("a long scale in pieces: the marks of every piece stay in step, and the pieces' cuts add up", async () => {
    const print = printOf(machine("scales: [{ name: Bed, length: 600, divisions: 1 mm }]"), "scales");
    const pieces = [0, 1, 2].map((turn) => only(print, "scale", turn));
    const places = await Promise.all(pieces.map(async (piece) => (await read(piece)).map(({ from }) => from.x)));
    expect(places.flat()).toHaveLength(601);
    for (const piece of places) expect(offStep(piece, 1)).toBeLessThan(0.001);
    // Half a division on either side of each inner cut, so that the pieces butt in step.
    const [, second] = pieces.map((piece) => cutEnds(piece));
    const inside = places[1] ?? [];
    expect(Math.min(...inside) - (second?.left ?? 0)).toBeCloseTo(0.5, 6);
    expect((second?.right ?? 0) - Math.max(...inside)).toBeCloseTo(0.5, 6);
  });

  test("an angle scale: a mark a degree about the radius's centre, within 0.001 mm and 0.001°", async () => {
    const keys = "angleScales: [{ name: Head, part: headstock, radius: 60, range: [-40, 40], vernier: 6 }]";
    const print = printOf(machine(keys), "angle-scale");
    const { angles, radii } = about(await read(only(print, "angle scale")).then(byX));
    expect(angles).toHaveLength(81);
    expect(Math.max(...radii.map((radius) => Math.abs(radius - 60 - OVER)))).toBeLessThan(0.001);
    expect((offStep(angles, Math.PI / 180) * 180) / Math.PI).toBeLessThan(0.001);

    // Its vernier: 6 marks over 11 degrees either way, on the same radius.
    const vernier = about(await read(only(print, "companion")).then(byX));
    expect(vernier.angles).toHaveLength(13);
    expect(Math.max(...vernier.radii.map((radius) => Math.abs(radius - 60 + OVER)))).toBeLessThan(0.001);
    expect((offStep(vernier.angles, (11 / 6) * (Math.PI / 180)) * 180) / Math.PI).toBeLessThan(0.001);
  });

  test("an angle scale round a cylinder and its vernier: paper and glue carry the marks outwards", async () => {
    const print = printOf(
      findingsOf(
        "name: T\npaper: { thickness: 0.2, adhesive: 0.05 }\nangleScales: [{ name: Slide, part: top slide, shape: drum, radius: 35, range: [-60, 60], vernier: 6 }]\n",
      ),
      "angle-scale",
    );
    // A strip bends about its middle: 0.05 mm of glue and half of 0.2 mm of paper beyond the bare radius.
    const degree = ((35 + 0.05 + 0.1) * Math.PI) / 180;
    const places = (await read(only(print, "angle scale"))).map(({ from }) => from.x);
    expect(places).toHaveLength(121);
    expect(offStep(places, degree)).toBeLessThan(0.001);
    const vernier = (await read(only(print, "companion"))).map(({ from }) => from.x);
    expect(vernier).toHaveLength(13);
    const step = (Math.max(...vernier) - Math.min(...vernier)) / 12 / degree;
    // Six parts over five or eleven degrees.
    expect(Math.min(Math.abs(step - 5 / 6), Math.abs(step - 11 / 6))).toBeLessThan(1e-4);
  });

  test("a vernier beside a drum: 10 marks over 19 divisions, beside a face over 9 on its own circle", async () => {
    const wheel = (dial: string) => `handwheels: [{ name: W, feed: 2 mm, dial: ${dial} }]`;
    const drum = "{ shape: drum, diameter: 40, width: 9, divisions: 0.02 mm, closure: even, vernier: 10 }";
    const strip = only(printOf(machine(wheel(drum)), "vernier"), "companion");
    const places = (await read(strip)).map(({ from }) => from.x);
    expect(places).toHaveLength(11);
    expect(offStep(places, (1.9 * Math.PI * 40) / 100)).toBeLessThan(0.001);

    const face = "{ shape: face, outside: 70, inside: 50, divisions: 0.02 mm, closure: even, vernier: 10 }";
    const ring = only(printOf(machine(wheel(face)), "vernier"), "companion");
    const { angles, radii } = about(await read(ring).then(byX));
    expect(Math.max(...radii.map((radius) => Math.abs(radius - 35 + OVER)))).toBeLessThan(0.001);
    expect(
      offStep(
        angles.map((angle) => (angle + 2 * Math.PI) % (2 * Math.PI)),
        0.9 * ((2 * Math.PI) / 100),
      ) * 35,
    ).toBeLessThan(0.001);
  });
});

const byX = (lines: Line[]): Line[] => [...lines].sort((a, b) => a.from.x - b.from.x);
