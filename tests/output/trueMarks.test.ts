import { describe, expect, test } from "vitest";
import { readFonts } from "../../scripts/font.js";
import { development } from "../../src/dial/development.js";
import { readingOf } from "../../src/dial/reading.js";
import type { Findings } from "../../src/findings/findings.js";
import { layerName, renderDxf } from "../../src/output/dxf.js";
import { outlined } from "../../src/output/outlines.js";
import { renderSvg } from "../../src/output/svg.js";
import { identity } from "../../src/paper/printerCorrection.js";
import { pdfOf } from "../support/pdfOf.js";
import { readDxf } from "../support/readDxf.js";
import { readPdf } from "../support/readPdf.js";
import { findingsOf, printOf } from "../support/sheets.js";
import { svgLines } from "../support/svgLines.js";

const fonts = readFonts();
/** The three pens of graduations, mm. */
const isGraduation = ({ pen, stroked }: { readonly pen: number; readonly stroked: boolean }): boolean =>
  stroked && [0.25, 0.18, 0.13].some((own) => Math.abs(pen - own) < 1e-6);
type Line = { from: { x: number; y: number }; to: { x: number; y: number } };

const machine = (dial: string) =>
  findingsOf(
    `name: T\npaper: { thickness: 0, adhesive: 0 }\nhandwheels: [{ name: Slide, feed: 2.54 mm, dial: ${dial} }]\n`,
  );

const shapes = {
  drum: "{ shape: drum, diameter: 44, width: 9, divisions: 0.02 mm, closure: even }",
  "drum, true, other way":
    "{ shape: drum, diameter: 44, width: 9, divisions: 0.03 mm, closure: true, increases: anticlockwise }",
  face: "{ shape: face, outside: 70, inside: 48, divisions: 0.02 mm, closure: even }",
  "face, other way":
    "{ shape: face, outside: 70, inside: 48, divisions: 0.02 mm, closure: even, increases: anticlockwise }",
  bevel: "{ shape: bevel, diameter: 50, smallDiameter: 40, width: 9, divisions: 0.02 mm, closure: even }",
};

/** Where the reading ends of the marks must lie about the zero mark, computed anew: on a strip by lengths, on a ring by
 *  angles about the centre, found from the marks' own lines. */
function expected(findings: Findings) {
  const { handwheel, feed } = findings.handwheels[0] as Findings["handwheels"][number];
  if (feed === undefined || handwheel.dial === undefined) throw new Error("no feed");
  const flat = development(handwheel.dial, { paper: 0, adhesive: 0 });
  if (flat === undefined) throw new Error("no development");
  const value = handwheel.dial.divisions ?? 0;
  const turn = readingOf(feed, handwheel).perTurn;
  const count = handwheel.dial.closure === "true" ? Math.floor(turn / value) + 1 : Math.round(turn / value);
  const step = handwheel.dial.closure === "true" ? value / turn : 1 / count;
  return { flat, count, step, clockwise: handwheel.dial.increases === "clockwise" };
}

/** Worst distance, mm, of the reading ends of one sticker's marks from their places; y down. */
function worst(lines: readonly Line[], findings: Findings): number {
  const { flat, count, step, clockwise } = expected(findings);
  expect(lines.length).toBe(count);
  if (flat.kind === "strip") {
    const xs = lines.map(({ from }) => from.x).sort((a, b) => a - b);
    const order = clockwise ? xs.reverse() : xs;
    // The cut may fall anywhere, so find the zero by the cyclic shift that fits.
    const places = Array.from({ length: count }, (_, i) => i * step);
    const shifts = order.map((_, zero) => {
      const sorted = places.map((_, i) => order[(zero + i) % count] ?? 0);
      return Math.max(
        ...sorted.map((x, i) => {
          const moved = (((clockwise ? 1 : -1) * ((order[zero] ?? 0) - x)) / flat.length + 1) % 1;
          const off = Math.abs(moved - (places[i] ?? 0));
          return Math.min(off, 1 - off) * flat.length;
        }),
      );
    });
    return Math.min(...shifts);
  }
  // All lines run to the ring's centre: the mean of the points a radius inward from each reading end along its line.
  const centres = lines.map(({ from, to }) => {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    return { x: from.x + ((to.x - from.x) / length) * flat.outer, y: from.y + ((to.y - from.y) / length) * flat.outer };
  });
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const centre = { x: mean(centres.map(({ x }) => x)), y: mean(centres.map(({ y }) => y)) };
  const angles = lines.map(({ from }) => Math.atan2(from.x - centre.x, centre.y - from.y)).sort((a, b) => a - b);
  const off = lines.map(({ from }) => Math.abs(Math.hypot(from.x - centre.x, from.y - centre.y) - flat.outer));
  const gaps = angles.slice(1).map((angle, i) => angle - (angles[i] ?? 0));
  const pitch = flat.sweep * step;
  // Even divisions: neighbours a pitch apart, and none strays from the first by more than it may.
  const strays = angles.map((angle, i) => Math.abs(angle - (angles[0] ?? 0) - i * pitch) * flat.outer);
  expect(gaps.length).toBe(count - 1);
  return Math.max(...off, ...strays);
}

/** The lines of the first sticker: the leftmost whole set of `count`. */
function firstSticker(lines: readonly Line[], count: number): Line[] {
  return [...lines].sort((a, b) => a.from.x - b.from.x).slice(0, count);
}

describe.each(Object.entries(shapes))("every mark of a %s within 0.001 mm", (_, dial) => {
  const findings = machine(dial);
  const engraving = printOf(findings, "engraving");
  const [page] = engraving.pages;
  if (page === undefined) throw new Error("no page");
  const { count } = expected(findings);

  test("in the DXF, by an independent parser", () => {
    const { entities, header } = readDxf(renderDxf(page, engraving, fonts));
    expect(header.$INSUNITS).toBe(4);
    const lines = entities.flatMap((entity): Line[] => {
      const [from, to] = entity.vertices ?? [];
      if (!entity.layer.startsWith("GRADUATIONS_RANK_") || !from || !to) return [];
      return [{ from: { x: from.x, y: -from.y }, to: { x: to.x, y: -to.y } }];
    });
    expect(worst(lines, findings)).toBeLessThan(0.001);
  });

  test("in the SVG", () => {
    const svg = renderSvg(page, outlined(engraving, fonts), identity, fonts);
    expect(worst(svgLines(svg, "graduations"), findings)).toBeLessThan(0.001);
  });

  test("in the PDF, by an independent reader", async () => {
    const { pages } = await readPdf(await pdfOf(engraving));
    const read = pages[0]?.lines.filter(isGraduation) ?? [];
    expect(worst(firstSticker(read, count), findings)).toBeLessThan(0.001);
  });
});

test("clockwise numbers run counter-clockwise round a face, as seen by the operator, and leftward along a drum", () => {
  for (const [dial, sense] of [
    [shapes.face, -1],
    [shapes["face, other way"], 1],
  ] as const) {
    const marks = JSON.stringify(printOf(machine(dial), "dial"));
    const texts = [...marks.matchAll(/"at":\{"x":([-\d.e]+),"y":([-\d.e]+)\},"text":"([\d.]+)"[^}]*"weight":"bold"/g)];
    const at = (label: string) => texts.find((text) => text[3] === label) as RegExpMatchArray;
    const [zero, next] = [at("0"), at("0.2")];
    // The zero stands uppermost, so its neighbour's side tells the sense.
    expect(Math.sign(Number(next[1]) - Number(zero[1]))).toBe(sense);
    expect(Number(zero[2])).toBeLessThan(Number(next[2]));
  }
});

test("the picture of the seam lies on a layer of its own: of the graduations there are the dial's alone", () => {
  const findings = machine(shapes.drum);
  const print = printOf(findings, "dial");
  const entities = print.pages.flatMap((page) => readDxf(renderDxf(page, print, fonts)).entities);
  const on = (layer: string) => entities.filter((entity) => entity.layer.startsWith(layer));
  const { count } = expected(findings);
  // One to stick on, one to spare, and the index line.
  expect(on("GRADUATIONS_RANK_")).toHaveLength(2 * count + 1);
  expect(on("SEAM").length).toBeGreaterThan(10);
});

test("layers are named after what lies on them, and nothing is filled or set as text", () => {
  expect(layerName(["strip", "graduations", "rank 1"])).toBe("GRADUATIONS_RANK_1");
  expect(layerName([])).toBe("DRAWING");
  const named = (dial: string) => {
    const drawn = printOf(machine(dial), "engraving");
    return readDxf(renderDxf(drawn.pages[0] as (typeof drawn.pages)[number], drawn, fonts)).layers;
  };
  expect(named(shapes.drum)).toEqual(
    expect.arrayContaining(["GRADUATIONS_RANK_1", "GRADUATIONS_RANK_2", "GRADUATIONS_RANK_3", "NUMBERS", "CUT"]),
  );
  const print = printOf(machine(shapes.face), "engraving");
  const text = renderDxf(print.pages[0] as (typeof print.pages)[number], print, fonts);
  const { entities, layers } = readDxf(text);
  expect(layers).toEqual(
    expect.arrayContaining(["GRADUATIONS_RANK_1", "GRADUATIONS_RANK_3", "NUMBERS", "CUT", "LEGEND"]),
  );
  expect(new Set(entities.map(({ type }) => type))).toEqual(new Set(["LINE", "LWPOLYLINE", "CIRCLE"]));
  const rings = entities.filter(({ layer }) => layer === "CUT").map(({ radius }) => radius);
  expect(rings).toEqual([35, 24]);
  expect(renderDxf(print.pages[0] as (typeof print.pages)[number], print, fonts)).toBe(text);
  const outlines = outlined(print, fonts);
  const svg = renderSvg(outlines.pages[0] as (typeof print.pages)[number], outlines, identity, fonts);
  expect(svg).not.toContain("<text");
  expect([...svg.matchAll(/<path[^>]* fill="(?!none)/g)]).toHaveLength(0);
});

test("the cone's cut line is closed: its arcs sweep what they should and meet the straight ends", () => {
  const findings = machine(shapes.bevel);
  const print = printOf(findings, "engraving");
  const { entities } = readDxf(renderDxf(print.pages[0] as (typeof print.pages)[number], print, fonts));
  const { flat } = expected(findings);
  if (flat.kind !== "ring") throw new Error("no ring");
  const cut = entities.filter(({ layer }) => layer === "CUT");
  const arcs = cut.filter(({ type }) => type === "ARC");
  expect(arcs.map(({ radius }) => radius).sort()).toEqual([flat.inner, flat.outer].map((r) => expect.closeTo(r, 6)));
  const ends = arcs.flatMap(({ center, radius = 0, startAngle = 0, endAngle = 0 }) => {
    // Counter-clockwise from start to end, radians, as the format has it.
    expect((endAngle - startAngle + 4 * Math.PI) % (2 * Math.PI)).toBeCloseTo(flat.sweep, 6);
    return [startAngle, endAngle].map((angle) => ({
      x: (center?.x ?? 0) + radius * Math.cos(angle),
      y: (center?.y ?? 0) + radius * Math.sin(angle),
    }));
  });
  for (const { vertices = [] } of cut.filter(({ type }) => type === "LINE"))
    for (const { x, y } of vertices)
      expect(Math.min(...ends.map((end) => Math.hypot(end.x - x, end.y - y)))).toBeLessThan(0.001);
});
