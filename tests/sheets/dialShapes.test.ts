import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bleed } from "../../src/blocks/dial/cutMarks.js";
import { type DialPlan, piecesOf } from "../../src/blocks/dial/dialPiece.js";
import { dialPlan } from "../../src/blocks/dial/dialPieces.js";
import { type Development, paperPerRadian } from "../../src/dial/development.js";
import type { Drawing, Mark, Point } from "../../src/drawing/drawing.js";
import { outline, walk } from "../support/marks.js";
import { demoFindings, findingsOf, printOf } from "../support/sheets.js";

const TURN = 2 * Math.PI;
const length = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((mm) => Number(mm.toFixed(2)));
const increases = fc.constantFrom("clockwise", "anticlockwise");
const more = fc.record({
  increases,
  second: fc.option(fc.constantFrom("0.02 mm", "0.001 in"), { nil: undefined }),
  divisions: fc.option(fc.constantFrom("0.05 mm", "0.1 mm", "0.002 in"), { nil: undefined }),
});
const lap = fc.option(length(3, 8), { nil: undefined });
const dial = fc.oneof(
  fc
    .record({ diameter: length(18, 150), width: length(7, 16), lap, more })
    .map(({ more, ...rest }) => ({ shape: "drum", ...rest, ...more })),
  fc
    .record({ outside: length(40, 140), ring: length(7, 12), more })
    .map(({ outside, ring, more }) => ({ shape: "face", outside, inside: outside - 2 * ring, ...more })),
  fc
    .record({ diameter: length(25, 100), cone: length(0.5, 12), width: length(7, 12), lap, more })
    .map(({ diameter, cone, more, ...rest }) => ({
      shape: "bevel",
      diameter,
      smallDiameter: diameter - cone,
      ...rest,
      ...more,
    })),
);

const findingsFor = (feed: number, dial: object) =>
  findingsOf(`name: T\nhandwheels: [{ name: Wheel, travel: 50, feed: ${feed}, dial: ${JSON.stringify(dial)} }]\n`);

/** Marks of one sticker with their names, each as the points that bound it. */
function parts(drawing: Drawing) {
  const found: { names: readonly string[]; points: Point[]; pen: number; text: boolean; words?: string }[] = [];
  walk(drawing.marks, (mark, toPage, names) => {
    const pen = mark.kind === "path" ? (mark.pen?.width ?? 0) : 0;
    const words = mark.kind === "text" ? { words: mark.text } : {};
    found.push({ names, points: outline(mark).map(toPage), pen, text: mark.kind === "text", ...words });
  });
  return found;
}

/** How far a point lies outside the paper of a sticker, mm; ≤ 0 inside. A ring's centre is found from its cut arcs. */
function outside(flat: Development, drawing: Drawing, lap: number): (point: Point) => number {
  if (flat.kind === "strip") return ({ x, y }) => Math.max(-x, x - (drawing.width - lap), -y, y - drawing.height);
  let centre: Point | undefined;
  walk(drawing.marks, (mark, toPage, names) => {
    if (mark.kind !== "path" || !names.includes("cut")) return;
    for (const segment of mark.segments) if (segment.to === "arc") centre ??= toPage(segment.centre);
  });
  if (centre === undefined) throw new Error("a ring without an arc");
  const { x: cx, y: cy } = centre;
  return ({ x, y }) => {
    const radius = Math.hypot(x - cx, y - cy);
    return Math.max(radius - flat.outer, flat.inner - radius);
  };
}

describe("whatever the feed and the shape", () => {
  test("property: no ink crosses a cut line, pieces add up exactly, and each fits the paper", () => {
    fc.assert(
      fc.property(length(0.4, 25), dial, (feed, wish) => {
        const findings = findingsFor(feed, wish);
        const [finding] = findings.handwheels;
        const plan = finding && dialPlan(finding, findings.machine);
        if (plan === undefined) return;
        const room = { width: 269, height: 150 };
        const pieces = piecesOf(plan, room) ?? [];
        expect(pieces.length).toBeGreaterThan(0);
        const sum = pieces.reduce((total, piece) => total + piece.length, 0);
        expect(sum).toBeCloseTo(TURN * paperPerRadian(plan.flat), 6);
        for (const { drawing } of pieces) {
          expect(drawing.width <= room.width + 1e-6 && drawing.height <= room.height + 1e-6).toBe(true);
          const off = outside(plan.flat, drawing, plan.lap ?? 0);
          let over = 0;
          for (const { names, points, text } of parts(drawing)) {
            if (names.some((name) => /^(cut|centre|joint|arrow)$/.test(name))) continue;
            const worst = Math.max(...points.map(off));
            if (names.includes("graduations")) over = Math.max(over, worst);
            // A text's box is larger than its ink: ascender and descender count, figures have neither. A graduation runs over the edge at
            // the index, a rule between rows over the ends.
            const most = text ? 0.35 : names.includes("graduations") || names.includes("rules") ? bleed + 0.02 : 1e-6;
            if (worst > most) throw new Error(`${names.join(" ")} stands ${worst.toFixed(3)} mm over the cut`);
          }
          // Were marks not drawn over the edge, a cut a little wide would show paper without them.
          expect(over).toBeCloseTo(bleed, 2);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("property: each band bears its marks, all of them, once, over all pieces", () => {
    fc.assert(
      fc.property(length(0.4, 10), dial, (feed, wish) => {
        const findings = findingsFor(feed, wish);
        const [finding] = findings.handwheels;
        const plan = finding && dialPlan(finding, findings.machine);
        if (plan === undefined) return;
        const marks = [...plan.dial.rows, ...(plan.dial.second?.rows ?? [])].flat().length;
        const drawn = (piecesOf(plan, { width: 100, height: 150 }) ?? []).flatMap(({ drawing }) =>
          parts(drawing).filter(({ names }) => names.at(-2) === "graduations"),
        );
        if (drawn.length > 0) expect(drawn.length).toBe(marks);
      }),
      { numRuns: 40 },
    );
  });
});

describe("whatever the dial, the sheet", () => {
  const extra = fc.record({
    vernier: fc.constantFrom(2, 5, 10, 25),
    index: fc.constantFrom("top", "left", "bottom", "right"),
  });
  test.each(["dial", "dial-choices", "vernier", "ring-cutting", "engraving"])(
    "%s stays on its paper and says nothing foolish",
    (sheet) => {
      fc.assert(
        fc.property(length(0.4, 25), dial, extra, (feed, wish, { vernier, index }) => {
          const whole = { ...wish, vernier, ...(wish.shape !== "drum" && { index }) };
          const findings = findingsFor(feed, whole);
          if (sheet === "vernier" && findings.handwheels[0]?.dial?.vernier === undefined) return;
          for (const { drawing } of printOf(findings, sheet).pages)
            walk(drawing.marks, (mark, toPage) => {
              if (mark.kind === "text" && /undefined|NaN|Infinity/.test(mark.text)) throw new Error(mark.text);
              for (const { x, y } of outline(mark).map(toPage))
                if (!(x >= 0 && y >= 0 && x <= drawing.width && y <= drawing.height))
                  throw new Error(`${mark.kind === "text" ? mark.text : "a path"} at ${x.toFixed(1)}, ${y.toFixed(1)}`);
            });
        }),
        { numRuns: 15 },
      );
    },
  );
});

describe("the demo's stickers", () => {
  const findings = demoFindings();

  test.each(["dial", "scales", "angle-scale", "vernier", "engraving"])(
    "%s: no piece with its cut marks reaches into another, or into words",
    (sheet) => {
      let found = 0;
      for (const { drawing } of printOf(findings, sheet).pages) {
        const boxes = new Map<string, { left: number; right: number; top: number; bottom: number }>();
        const whole = (marks: readonly Mark[]) =>
          walk(marks, (mark, toPage, names) => {
            // Numbered below: each sticker and each caption is one thing.
            const at = names.findIndex((name) =>
              /^(strip|ring|companion|scale|angle scale|engraving|caption|place)\d+$/.test(name),
            );
            if (at < 0) return;
            const points = outline(mark).map(toPage);
            const own = boxes.get(names[at] as string);
            boxes.set(names[at] as string, {
              left: Math.min(own?.left ?? Number.POSITIVE_INFINITY, ...points.map(({ x }) => x)),
              right: Math.max(own?.right ?? Number.NEGATIVE_INFINITY, ...points.map(({ x }) => x)),
              top: Math.min(own?.top ?? Number.POSITIVE_INFINITY, ...points.map(({ y }) => y)),
              bottom: Math.max(own?.bottom ?? Number.NEGATIVE_INFINITY, ...points.map(({ y }) => y)),
            });
          });
        let count = 0;
        const numbered = (mark: Mark): Mark =>
          mark.kind === "group"
            ? { ...mark, ...(mark.name && { name: `${mark.name}${count++}` }), marks: mark.marks.map(numbered) }
            : mark;
        whole(drawing.marks.map(numbered));
        found += boxes.size;
        const all = [...boxes];
        for (const [index, [name, a]] of all.entries())
          for (const [other, b] of all.slice(index + 1)) {
            const clash = a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
            expect(clash, `${name} and ${other}`).toBe(false);
          }
      }
      expect(found).toBeGreaterThan(1);
    },
  );

  test("two scales: each band closes on its own; its numbers go before its unit, which else is told beneath the dial", () => {
    const top = findings.handwheels.find(({ handwheel }) => handwheel.name === "Top slide");
    expect(top?.dial?.chosen).toMatchObject({ divisionLabel: "0.001 in", closure: "even", divisions: 63 });
    expect(top?.dial?.second?.chosen).toMatchObject({ divisionLabel: "0.02 mm", closure: "true", divisions: 80 });
    const [piece] = top
      ? (piecesOf(dialPlan(top, findings.machine) as DialPlan, { width: 200, height: 50 }) ?? [])
      : [];
    const said = parts(piece?.drawing as Drawing).flatMap(({ words }) => words ?? []);
    for (let number = 5; number <= 55; number += 5) expect(said).toContain(String(number));
    expect(piece?.left).toContain("1 = 0.001 in");
    expect(said).toContain("mm");
  });

  test("every dial says its unit on the dial itself, however narrow", () => {
    for (const width of [3, 4, 5, 7, 10]) {
      const own = findingsFor(2, { shape: "drum", diameter: 40, width, divisions: "0.02 mm" });
      const [finding] = own.handwheels;
      const plan = finding && dialPlan(finding, own.machine);
      const [piece] = (plan && piecesOf(plan, { width: 200, height: 50 })) ?? [];
      expect(JSON.stringify(piece?.drawing)).toMatch(/"text":"[^"]*\bmm\b/);
    }
  });
});

test("numbers of a strip with two scales go before its words, which stand beneath it where they have no room", () => {
  const findings = findingsOf(`name: T
units: in
handwheels:
  - { name: Cross slide, reads: diameter, travel: 4, feed: 10 tpi, dial: { shape: drum, diameter: 1.5, width: 0.4, increases: clockwise, divisions: 0.002 in, second: 0.05 mm } }
`);
  const { pages } = printOf(findings, "dial");
  const texts = pages.flatMap(({ drawing }) => {
    const found: string[] = [];
    walk(drawing.marks, (mark) => {
      if (mark.kind === "text") found.push(mark.text);
    });
    return found;
  });
  // A hundred divisions, a number at each tenth: 20 of them for each of the two copies.
  for (let number = 10; number < 200; number += 10)
    expect(texts.filter((text) => text === String(number)).length).toBeGreaterThanOrEqual(2);
  expect(texts.some((text) => text.startsWith("no room on it for: 1 = 0.001 in"))).toBe(true);
});
