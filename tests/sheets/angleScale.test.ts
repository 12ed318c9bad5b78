import { describe, expect, test } from "vitest";
import { clockwiseSide, sideWords } from "../../src/blocks/dial/angleScales.js";
import type { AngleScale } from "../../src/machine/machine.js";
import { walk } from "../support/marks.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

const scale = (part: AngleScale["part"], turns: boolean): AngleScale => ({
  name: "S",
  part,
  shape: "face",
  radius: 50,
  width: 9,
  from: -40,
  to: 40,
  step: 1,
  turns,
});

/** Seen from above, x to the right, y towards the operator: a point of the near edge after a clockwise swing. */
function swung(degreesRightOfFront: number, clockwise: number) {
  const turn = (degrees: number) => (degrees * Math.PI) / 180;
  // Clockwise from above takes what lies towards the operator to the left: y towards −x.
  const at = turn(degreesRightOfFront - clockwise);
  return { x: Math.sin(at), y: Math.cos(at) };
}

describe("which side of the scale is which swing", () => {
  test("a scale that turns clockwise past a fixed index in front shows there what was to its right", () => {
    const shown = [-10, 10].filter((mark) => Math.abs(swung(mark, 10).x) < 1e-12);
    expect(shown).toEqual([10]);
    expect(clockwiseSide({ turns: true })).toBe("right");
  });

  test("an index that turns clockwise over a fixed scale points to its left", () => {
    expect(swung(0, 10).x).toBeLessThan(0);
    expect(clockwiseSide({ turns: false })).toBe("left");
  });

  test("the sides say which end comes out small, and turn over with the scale's fixing", () => {
    expect(sideWords(scale("headstock", true), "right")).toBe("free end small");
    expect(sideWords(scale("headstock", true), "left")).toBe("chuck end small");
    expect(sideWords(scale("headstock", false), "right")).toBe("chuck end small");
    expect(sideWords(scale("top slide", true), "right")).toBe("chuck end small");
    expect(sideWords(scale("top slide", false), "right")).toBe("free end small");
    expect(sideWords(scale("vice", true), "right")).toBe("clockwise");
  });
});

/** Where a text stands on the first page, by its words. */
function placeOf(text: string, findings: ReturnType<typeof findingsOf>, sheet: string) {
  const found: { x: number; y: number }[] = [];
  walk(printOf(findings, sheet).pages[0]?.drawing.marks ?? [], (mark, toPage) => {
    if (mark.kind === "text" && mark.text === text) found.push(toPage(mark.at));
  });
  return found;
}

test("on paper the words stand on their sides, for a cylinder's strip", () => {
  const keys =
    "angleScales: [{ name: Slide, part: top slide, shape: drum, radius: 35, range: [-60, 60], turns: false }]";
  const findings = findingsOf(`name: T\n${keys}\n`);
  const [left] = placeOf("chuck end small", findings, "angle-scale");
  const [right] = placeOf("free end small", findings, "angle-scale");
  const [zero] = placeOf("0", findings, "angle-scale");
  expect(left?.x).toBeLessThan(zero?.x ?? 0);
  expect(right?.x).toBeGreaterThan(zero?.x ?? Number.POSITIVE_INFINITY);
});

test("a flat scale lies before the operator: its middle lowest, its numbers upright", () => {
  const findings = findingsOf(
    "name: T\nangleScales: [{ name: Head, part: headstock, radius: 60, range: [-40, 40] }]\n",
  );
  const [zero] = placeOf("0", findings, "angle-scale");
  for (const { y } of placeOf("40", findings, "angle-scale")) expect(y).toBeLessThan(zero?.y ?? 0);
});

test.each([
  ["clockwise", -1],
  ["anticlockwise", 1],
] as const)("a vernier runs the way of its dial's numbers: %s", (increases, sign) => {
  const dial = `{ shape: drum, diameter: 40, width: 9, divisions: 0.02 mm, closure: even, vernier: 10, increases: ${increases} }`;
  const findings = findingsOf(`name: T\nhandwheels: [{ name: W, feed: 2 mm, dial: ${dial} }]\n`);
  const [zero, ten] = ["0", "10"].map((text) => placeOf(text, findings, "vernier")[0]);
  expect(Math.sign((ten?.x ?? 0) - (zero?.x ?? 0))).toBe(sign);
});

test("scales that are called as a handwheel is say on their pieces what they are, others are left alone", () => {
  const findings = findingsOf(
    [
      "name: T",
      "handwheels:",
      "  - { name: Compound, travel: 50, feed: 2 mm, dial: { shape: drum, diameter: 30, width: 9, increases: clockwise } }",
      "scales: [{ name: Compound, length: 60, divisions: 1 mm }, { name: Rule, length: 60, divisions: 1 mm }]",
      "angleScales: [{ name: Compound, part: top slide, radius: 40, range: [-40, 40] }]",
    ].join("\n"),
  );
  const named: string[] = [];
  for (const { drawing } of printOf(findings, "dial").pages)
    walk(drawing.marks, (mark) => {
      if (mark.kind === "text" && mark.weight === "bold") named.push(mark.text);
    });
  for (const one of ["Compound, copy 1", "Compound (straight scale)", "Compound (swivel scale)", "Rule"])
    expect(named.filter((words) => words === one)).toHaveLength(1);
  // Their index lines too, which wrap.
  expect(named.join(" ")).toContain("Compound: index line");
  expect(named.join(" ")).toContain("Compound (swivel scale): ");
});

describe("a strip of degrees that is longer than the paper", () => {
  const strip = (radius: number, range: number, paper = "A4") =>
    findingsOf(
      `name: A\npaper: { size: ${paper} }\nangleScales: [{ name: Swivel, part: top slide, shape: drum, radius: ${radius}, range: [-${range}, ${range}], turns: false }]\n`,
    );

  test.each([
    [125, 90, "A4", 2],
    [120, 150, "A4", 3],
    [60, 90, "A5", 2],
  ])("comes in pieces that add up: %d mm, ± %d°, %s", (radius, range, paper, count) => {
    const [lengths, labels]: [number[], string[]] = [[], []];
    let marks = 0;
    for (const { drawing } of printOf(strip(radius, range, paper), "angle-scale").pages)
      walk(drawing.marks, (mark, _, names) => {
        if (mark.kind === "text" && /^\d+\.\d\d mm$/.test(mark.text)) lengths.push(Number.parseFloat(mark.text));
        if (!names.includes("angle scale")) return;
        if (mark.kind === "text" && /^\d+$/.test(mark.text)) labels.push(mark.text);
        if (mark.kind !== "text" && names.includes("graduations")) marks++;
      });
    expect(lengths).toHaveLength(count);
    // Every degree of both sides and the zero once; numbers at every fifth at most, and none twice on a side.
    expect(marks).toBe(2 * range + 1);
    expect(labels.every((label) => labels.filter((other) => other === label).length <= 2)).toBe(true);
    // What the paper of the range takes, and as much at either end.
    const over = lengths.reduce((sum, one) => sum + one, 0) - (2 * range * Math.PI * (radius + 0.05)) / 180;
    expect(over).toBeGreaterThan(2 * 3);
    expect(over).toBeLessThan(0.2 * radius);
  });

  test("says on a piece what its side does, and which of the pieces it is", () => {
    const told = textsOf(strip(125, 90), "angle-scale");
    expect(told).toContain("Swivel, piece 1 of 2");
    expect(told).toContain("chuck end small");
    expect(told).toContain("In 2 numbered pieces, which butt and add up exactly.");
    expect(told).not.toContain("no room on it");
  });

  test("one that fits stays whole", () => expect(textsOf(strip(40, 90), "angle-scale")).not.toContain("piece 1 of"));
});
