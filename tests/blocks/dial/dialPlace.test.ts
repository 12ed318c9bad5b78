import { expect, test } from "vitest";
import { dialPlan } from "../../../src/blocks/dial/dialCutOuts.js";
import { numberedBands } from "../../../src/blocks/dial/dialPiece.js";
import { dialInPlace } from "../../../src/blocks/dial/dialPlace.js";
import { dialStyle } from "../../../src/blocks/dial/dialStyle.js";
import { walk } from "../../support/marks.js";
import { findingsOf, textsOf } from "../../support/sheets.js";

const machine = (...dials: readonly string[]) =>
  findingsOf(
    `name: T\nunits: in\nhandwheels:\n${dials.map((dial, k) => `  - { name: Wheel ${k + 1}, feed: 0.0512 in, dial: ${dial} }\n`).join("")}`,
  );

/** Bold numbers and upright strokes of the picture of a first dial. */
function picture(dial: string) {
  const { handwheels, machine: own } = machine(dial);
  const [finding] = handwheels;
  const plan = finding && dialPlan(finding, own);
  if (plan === undefined) throw new Error("no dial");
  const style = dialStyle(plan);
  const bands = numberedBands(plan, style).map(({ marks }) => marks);
  const drawing = dialInPlace({ ...plan, shape: plan.dial.shape, sideways: style.sideways, bands });
  const numbers: { text: string; x: number; y: number }[] = [];
  const strokes: { x: number; y: number; slant: number; length: number }[] = [];
  walk(drawing.marks, (mark, toPage) => {
    if (mark.kind === "text" && mark.weight === "bold") numbers.push({ text: mark.text, ...toPage(mark.at) });
    if (mark.kind !== "path" || mark.segments.length !== 2) return;
    const [from, to] = mark.segments;
    if (from?.to !== "move" || to?.to !== "line") return;
    const [a, b] = [toPage(from), toPage(to)];
    strokes.push({ x: a.x, y: a.y, slant: b.x - a.x, length: Math.hypot(b.x - a.x, b.y - a.y) });
  });
  return { bands, numbers, strokes };
}

test("the next number stands on the line on which it stands on the dial", () => {
  for (const divisions of ["0.001", "0.0005", "0.002"]) {
    const { bands, numbers, strokes } = picture(
      `{ shape: drum, diameter: 3.5, width: 0.5, divisions: ${divisions}, closure: even, increases: anticlockwise }`,
    );
    const zero = numbers.find(({ text }) => text === "0");
    const band = bands[0] ?? [];
    const next = band.findIndex(({ label, value }) => label !== undefined && value > 0);
    const shown = numbers.find(({ text }) => text === band[next]?.label);
    // Lines of the drum's own edge, from just past zero up to the one over the number.
    const between = strokes.filter(
      ({ x, y, length }) =>
        Math.abs(y - 9) < 1e-6 && length < 3 && x > (zero?.x ?? 0) + 0.01 && x < (shown?.x ?? 0) + 0.01,
    );
    expect(next).toBeGreaterThan(0);
    expect(between).toHaveLength(next);
  }
});

test("a dial of rows has as many in its picture, a cone slanted marks", () => {
  const rows = picture("{ shape: drum, diameter: 90 mm, width: 18 mm, divisions: 0.001, closure: rows }");
  expect(rows.bands).toHaveLength(5);
  expect(new Set(rows.numbers.map(({ y }) => y.toFixed(3))).size).toBe(5);
  const cone = picture("{ shape: bevel, diameter: 1.75, smallDiameter: 1.4, width: 0.35, divisions: 0.001 }");
  expect(cone.strokes.filter(({ slant, length }) => Math.abs(slant) > 0.1 && length < 3).length).toBeGreaterThan(2);
  const drum = picture("{ shape: drum, diameter: 1.75, width: 0.35, divisions: 0.001 }");
  expect(drum.strokes.filter(({ slant, length }) => Math.abs(slant) > 0.1 && length < 3)).toHaveLength(0);
});

test("only dials that look alike share a picture", () => {
  const drum = (divisions: string) => `{ shape: drum, diameter: 1.75, width: 0.35, divisions: ${divisions} }`;
  expect(textsOf(machine(drum("0.001"), drum("0.001")), "dial")).toMatch(/Wheel 1, Wheel 2: how/);
  const two = textsOf(machine(drum("0.001"), drum("0.002")), "dial");
  expect(two).toMatch(/Wheel 1: how/);
  expect(two).toMatch(/Wheel 2: how/);
});

test("marks towards the limb of a drum do not run together", () => {
  const { strokes, numbers } = picture(
    "{ shape: drum, diameter: 44 mm, width: 10 mm, divisions: 0.0005, closure: even }",
  );
  const at = strokes
    .filter(({ y, length, slant }) => Math.abs(y - 9) < 1e-6 && length < 3 && slant === 0)
    .map(({ x }) => x);
  const places = [...new Set(at.map((x) => x.toFixed(4)))].map(Number).sort((a, b) => a - b);
  const gaps = places.slice(1).map((x, index) => x - (places[index] ?? 0));
  expect(numbers.length).toBeGreaterThan(1);
  // 15 mm of radius: what lies past 40 degrees.
  const middle = (places[0] ?? 0) / 2 + (places.at(-1) ?? 0) / 2;
  const past = gaps.filter(
    (_, index) => Math.abs((places[index] ?? 0) - middle) > 10.5 && Math.abs((places[index + 1] ?? 0) - middle) > 10.5,
  );
  expect(past.length).toBeGreaterThan(4);
  expect(Math.min(...past)).toBeGreaterThan(0.44);
});
