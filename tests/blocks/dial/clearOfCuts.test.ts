import { expect, test } from "vitest";
import { angleSet } from "../../../src/blocks/dial/angleScales.js";
import { dialPlan } from "../../../src/blocks/dial/dialCutOuts.js";
import { piecesOf } from "../../../src/blocks/dial/dialPiece.js";
import type { Drawing, Point } from "../../../src/drawing/drawing.js";
import type { Box } from "../../support/boxes.js";
import { inkOfText } from "../../support/inkOfText.js";
import { outline, walk } from "../../support/marks.js";
import { findingsOf } from "../../support/sheets.js";

/** What scissors that follow a hollow edge may stray, mm. */
const CLEAR = 0.8;
const name = "Längsvorschub gjpqy (große)";

/** How near the ink of letters comes to the hollow edge of a ring, mm. */
function nearest(drawing: Drawing): number {
  const circles: { centre: Point; radius: number }[] = [];
  const letters: Box[] = [];
  walk(drawing.marks, (mark, toPage, names) => {
    if (mark.kind === "text") letters.push(...(inkOfText(mark, toPage, 0)?.letters() ?? []));
    else if (names.includes("cut"))
      for (const segment of mark.segments)
        if (segment.to === "arc") circles.push({ centre: toPage(segment.centre), radius: segment.radius });
  });
  const { centre, radius } = circles.reduce((least, one) => (one.radius < least.radius ? one : least));
  expect(letters.length).toBeGreaterThan(3);
  return Math.min(
    ...letters.map(({ x, y, along, across, turn }) => {
      const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
      const [dx, dy] = [centre.x - x, centre.y - y];
      const beyond = (place: number, half: number) => Math.max(0, Math.abs(place) - half);
      return Math.hypot(beyond(dx * cos + dy * sin, along), beyond(dy * cos - dx * sin, across)) - radius;
    }),
  );
}

const shapes = [
  ...[40, 66, 90, 120].flatMap((outside) =>
    [6, 7, 8, 10, 14].map((band) => `shape: face, outside: ${outside}, inside: ${outside - 2 * band}`),
  ),
  ...[30, 48, 90].flatMap((diameter) =>
    [7, 9, 12].map((width) => `shape: bevel, diameter: ${diameter}, smallDiameter: ${diameter - 6}, width: ${width}`),
  ),
];

test.each(shapes)("{ %s }: words and numbers stand clear of the hollow edge", (shape) => {
  for (const feed of [1, 2.5, 18.935])
    for (const index of ["top", "left", "bottom"]) {
      const { handwheels, machine } = findingsOf(
        `name: T\nlanguage: de\nrevision: 12\nhandwheels: [{ name: ${name}, travel: 40, reads: diameter, feed: ${feed}, dial: { ${shape}, index: ${index}, increases: clockwise } }]\n`,
      );
      const plan = handwheels[0] && dialPlan(handwheels[0], machine);
      for (const { drawing } of (plan && piecesOf(plan, { width: 270, height: 180 })) ?? [])
        expect(nearest(drawing)).toBeGreaterThan(CLEAR - 1e-3);
    }
});

test.each([6, 7, 8, 10])("a flat scale of degrees %s mm wide: the same", (width) => {
  const { machine } = findingsOf(
    `name: T\nangleScales: [{ name: Top, part: top slide, radius: 60, width: ${width}, range: [-60, 60] }]\n`,
  );
  const [scale] = machine.angleScales ?? [];
  if (scale === undefined) throw new Error("no scale");
  const [piece] = angleSet(scale, machine, 1, { width: 180, height: 200 }).cut;
  expect(piece && nearest(piece.drawing)).toBeGreaterThan(CLEAR - 1e-3);
});

test("round a marked edge no stray stroke: corners of the square about a whole ring, and only what goes on from a part's ends", () => {
  const strokes = (shape: string): { box: { x: number; y: number }[]; ring: boolean }[] => {
    const { handwheels, machine } = findingsOf(
      `name: T\nhandwheels: [{ name: W, feed: 2, dial: { ${shape}, increases: clockwise } }]\n`,
    );
    const plan = handwheels[0] && dialPlan(handwheels[0], machine);
    const [piece] = (plan && piecesOf(plan, { width: 270, height: 180 })) ?? [];
    const found: { box: Point[]; ring: boolean }[] = [];
    walk(piece?.drawing.marks ?? [], (mark, toPage, names) => {
      if (names.includes("cut")) found.push({ box: outline(mark).map(toPage), ring: outline(mark).length > 300 });
    });
    return found;
  };
  const face = strokes("shape: face, outside: 90, inside: 66").filter(({ ring }) => !ring);
  expect(face).toHaveLength(8);
  // Each lies on a side of the square that touches the ring, well away from its marks.
  for (const { box } of face) {
    const level = box.every(({ y }) => Math.abs(y) < 1e-9 || Math.abs(y - 90) < 1e-9);
    expect(level || box.every(({ x }) => Math.abs(x) < 1e-9 || Math.abs(x - 90) < 1e-9)).toBe(true);
    for (const { x, y } of box) expect(Math.hypot(x - 45, y - 45)).toBeGreaterThan(45 + 2.5);
  }
  // At either end of a cone's ring: beyond both corners, and where the marked edge would go on; and its hollow edge.
  expect(strokes("shape: bevel, diameter: 48, smallDiameter: 40, width: 9")).toHaveLength(7);
});

test("words between numbers stand in brackets: no figure of them reads on into a number", () => {
  const { handwheels, machine } = findingsOf(
    "name: T\nrevision: 12\nhandwheels: [{ name: Cross slide, feed: 5, dial: { shape: drum, diameter: 50, width: 6, increases: clockwise, second: 0.002 in } }]\n",
  );
  const plan = handwheels[0] && dialPlan(handwheels[0], machine);
  const [piece] = (plan && piecesOf(plan, { width: 270, height: 180 })) ?? [];
  const words: Point[][] = [];
  const brackets: Point[][] = [];
  const numbers: Point[][] = [];
  walk(piece?.drawing.marks ?? [], (mark, toPage, names) => {
    const points = outline(mark).map(toPage);
    if (names.includes("numbers")) numbers.push(points);
    else if (!names.includes("legend")) return;
    else if (mark.kind === "path") brackets.push(points);
    else if (!/^(mm|in)$/.test(mark.text)) words.push(points);
  });
  const span = (points: readonly Point[]) =>
    [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))] as const;
  const level = (one: readonly Point[], other: readonly Point[]) => Math.abs((one[0]?.y ?? 0) - (other[0]?.y ?? 0)) < 2;
  expect(words.length).toBeGreaterThan(0);
  expect(brackets).toHaveLength(2 * words.length);
  for (const one of words) {
    const [left, right] = span(one);
    const own = brackets.filter((bracket) => level(one, bracket));
    expect(own.some((bracket) => span(bracket)[1] < left && span(bracket)[1] > left - 1)).toBe(true);
    expect(own.some((bracket) => span(bracket)[0] > right && span(bracket)[0] < right + 1)).toBe(true);
  }
  for (const bracket of brackets)
    for (const number of numbers.filter((one) => level(one, bracket))) {
      const [a, b] = [span(bracket), span(number)];
      expect(a[1] < b[0] - 0.4 || b[1] < a[0] - 0.4).toBe(true);
    }
});
