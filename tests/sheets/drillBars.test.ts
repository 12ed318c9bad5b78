import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Axis, axisOf } from "../../src/blocks/speeds/barAxis.js";
import { barDrawing, keysOf } from "../../src/blocks/speeds/barDrawing.js";
import { barOf } from "../../src/blocks/speeds/barPieces.js";
import type { GroupMark, Mark } from "../../src/drawing/drawing.js";
import { textWidth } from "../../src/drawing/text.js";
import type { Findings } from "../../src/findings/findings.js";
import { largestDiameter } from "../../src/findings/servedDiameters.js";
import { sizeName, sizeWords } from "../../src/findings/sizeName.js";
import { speedForHole } from "../../src/findings/speedChoice.js";
import { inLanguage } from "../../src/words/language.js";
import { anyMachine, sound } from "../support/anyMachine.js";
import { walk } from "../support/marks.js";
import { demoFindings, findingsOf, printOf, textsOf } from "../support/sheets.js";
import { sixteenOnEnd } from "../support/sixteen.js";

const onAxis = (findings: Findings, operation: string): Axis =>
  axisOf(
    [0.6, 3, 25].map((diameter) => ({ name: String(diameter), diameter })),
    largestDiameter(operation, findings),
    180,
  );

test("whatever the machine, the piece that holds a diameter names the position that is chosen for it", () => {
  let pieces = 0;
  fc.assert(
    fc.property(
      anyMachine,
      fc.constantFrom("drilling", "reaming", "tapping"),
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 60, maxLength: 60 }),
      (machine, operation, shares) => {
        const findings = sound(machine);
        if (findings?.drive === undefined) return;
        const axis = onAxis(findings, operation);
        const most = Math.min(axis.to, largestDiameter(operation, findings));
        for (const material of findings.machine.work.materials.slice(0, 3)) {
          const bar = barOf(material, operation, axis, findings);
          if (bar === undefined || bar.pieces[0]?.none === "by hand") continue;
          for (const share of shares) {
            const diameter = Math.min(most, axis.from * (most / axis.from) ** share);
            const piece = bar.pieces.find(({ from, to }) => from < diameter && diameter <= to);
            // The axis begins just behind its first diameter.
            if (piece === undefined) {
              expect(diameter).toBeCloseTo(axis.from, 9);
              continue;
            }
            pieces++;
            const chosen = speedForHole({ material, operation, diameter }, findings);
            const at = `${material} ${diameter}`;
            if (chosen?.speed === undefined) expect(piece.position, at).toBeUndefined();
            else expect(piece.position, at).toBe(chosen.speed.position.name || "only one");
          }
        }
      },
    ),
    { numRuns: 80, seed: 12 },
  );
  expect(pieces).toBeGreaterThan(900);
});

test("what is written at a cut sends no diameter to a position that is too fast for it", () => {
  fc.assert(
    fc.property(anyMachine, (machine) => {
      const findings = sound(machine);
      if (findings?.drive === undefined) return;
      const axis = onAxis(findings, "drilling");
      const unit = findings.machine.units === "mm" ? 1 : 25.4;
      for (const material of findings.machine.work.materials.slice(0, 3)) {
        const bar = barOf(material, "drilling", axis, findings);
        for (const { at, words } of bar?.cuts ?? []) {
          const rpmAt = (diameter: number) =>
            speedForHole({ material, operation: "drilling", diameter }, findings)?.speed?.rpm ?? 0;
          const told = Number(words) * unit;
          const [before, after] = [rpmAt(at * (1 - 1e-6)), rpmAt(at * (1 + 1e-6))];
          // Up to the figure the faster one may go, no further.
          if (before > after) expect(told).toBeLessThanOrEqual(at * (1 + 1e-6));
          else expect(told).toBeGreaterThanOrEqual(at * (1 - 1e-6));
        }
      }
    }),
    { numRuns: 60, seed: 12 },
  );
});

test("every cut has its number under it, clear of those beside it, and a drill of just its size the position to its left", () => {
  const steps = [2.5, 2.8, 3.1, 3.5, 4].map((driver, at) => `{ label: "${at + 1}", driver: ${driver}, driven: 5 }`);
  const findings = findingsOf(
    `name: T\nunits: in\ndrive: { motor: { speed: 1725 rpm }, stages: [{ name: belt, centres: 14, steps: [${steps.join(", ")}] }] }\n`,
  );
  const axis = axisOf(
    [0.05, 0.25, 0.5].map((inch) => ({ name: String(inch), diameter: inch * 25.4 })),
    12.7,
    90,
  );
  const bar = barOf("mild steel", "drilling", axis, findings);
  if (bar === undefined) throw new Error("no bar");
  expect(bar.cuts.length).toBeGreaterThan(2);
  const numbers: { from: number; to: number; y: number; text: string }[] = [];
  walk(barDrawing(bar, "", axis, keysOf([bar], axis, [])).marks, (mark) => {
    if (mark.kind !== "text" || !/^0\.\d+$/.test(mark.text)) return;
    const half = textWidth(mark.text, mark.size, "regular") / 2;
    numbers.push({ from: mark.at.x - half, to: mark.at.x + half, y: mark.at.y, text: mark.text });
  });
  expect(numbers.map(({ text }) => text)).toEqual(bar.cuts.map(({ words }) => words));
  for (const [index, { from, to, y }] of numbers.entries()) {
    const beside = numbers.slice(0, index).findLast((one) => Math.abs(one.y - y) < 1);
    expect(from).toBeGreaterThan(beside?.to ?? -1e-9);
    expect(to).toBeLessThan(90 + 1e-9);
    expect(Math.abs((from + to) / 2 - axis.place(bar.cuts[index]?.at ?? 0))).toBeLessThanOrEqual(4);
  }
  for (const { to, position } of bar.pieces) {
    const chosen = speedForHole({ material: "mild steel", operation: "drilling", diameter: to }, findings);
    expect(chosen?.speed?.position.name).toBe(position);
  }
});

test("where cuts are too many for numbers under them some have none, which is told, and none has another's", () => {
  const steps = Array.from(
    { length: 20 },
    (_, at) => `{ label: "S${at + 1}", driver: ${(100 / 1.07 ** at).toFixed(2)}, driven: 60 }`,
  );
  const findings = findingsOf(
    `name: T\ndrive: { motor: { speed: 2000 rpm }, stages: [{ name: belt, steps: [${steps.join(", ")}] }] }
paper: { size: A5 }\nwork: { materials: [mild steel], drills: [0.3, 1, 2, 4, 6, 8, 10, 13] }\n`,
  );
  const axis = axisOf(
    [0.3, 13].map((diameter) => ({ name: String(diameter), diameter })),
    13,
    118,
  );
  const bar = barOf("mild steel", "drilling", axis, findings);
  if (bar === undefined) throw new Error("no bar");
  const told: string[] = [];
  walk(barDrawing(bar, "", axis, keysOf([bar], axis, ["S1"])).marks, (mark) => {
    if (mark.kind !== "text" || !/^\d+(\.\d)?$/.test(mark.text)) return;
    const off = bar.cuts
      .filter(({ words }) => words === mark.text)
      .map(({ at }) => Math.abs(mark.at.x - axis.place(at)));
    if (off.length === 0) return;
    told.push(mark.text);
    expect(Math.min(...off), mark.text).toBeLessThanOrEqual(4);
  });
  expect(told.length).toBeGreaterThan(3);
  expect(told.length).toBeLessThan(bar.cuts.length);
  expect(textsOf(findings, "drilling-card")).toContain("A cut without a figure");
});

/** Groups of that name with where they lie from the left of the page. */
function groupsOf(marks: readonly Mark[], name: string, x = 0): { x: number; group: GroupMark }[] {
  return marks.flatMap((mark) => {
    if (mark.kind !== "group") return [];
    const left = x + mark.at.x;
    return [...(mark.name === name ? [{ x: left, group: mark }] : []), ...groupsOf(mark.marks, name, left)];
  });
}
const textsIn = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : mark.kind === "group" ? textsIn(mark.marks) : []));
const rightOf = ({ x, group }: { x: number; group: GroupMark }): number => {
  const [outline] = group.marks;
  if (outline?.kind !== "path") throw new Error("a piece has an outline");
  return x + Math.max(...outline.segments.flatMap((segment) => (segment.to === "line" ? [segment.x] : [])));
};

describe("as drawn", () => {
  const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");
  const fast = (text: string) =>
    findingsOf(
      text
        .replace(/ {2}tachometer:\n(?: {4}- .*\n)+/, "")
        .replace("driver: 50, driven: 150", "driver: 120, driven: 80")
        .replace(/chuck: \d+/, "chuck: 9000")
        .replace(/spindle: \d+/, "spindle: 9000"),
    );
  const many = fast(demo);
  test("each drill's tick lies in the piece of the position that is chosen for it", () => {
    const { drawing } = printOf(many, "drilling-card").pages[0] ?? { drawing: { marks: [] } };
    const materials = many.machine.work.materials;
    const pieces = groupsOf(drawing.marks, "piece");
    const [axis] = groupsOf(drawing.marks, "drills");
    if (axis === undefined) throw new Error("no axis");
    const ticks = axis.group.marks.flatMap((mark) =>
      mark.kind === "path" && mark.segments[0]?.to === "move" ? [axis.x + mark.segments[0].x] : [],
    );
    // Half millimetres from 1 to 13, by ratio.
    expect(ticks).toHaveLength(25);
    const drills = ticks.map((_, index) => 1 + index / 2);
    const scale = (x: number) => Math.log(x / 1) / Math.log(13);
    for (const [index, x] of ticks.entries())
      expect((x - (ticks[0] ?? 0)) / ((ticks[24] ?? 0) - (ticks[0] ?? 0))).toBeCloseTo(scale(drills[index] ?? 0), 9);
    let bar = -1;
    const bars: (typeof pieces)[] = [];
    for (const piece of pieces) {
      if (bar < 0 || piece.x < (bars[bar]?.at(-1)?.x ?? 0)) bars[++bar] = [];
      bars[bar]?.push(piece);
    }
    expect(bars).toHaveLength(materials.length);
    expect(pieces.length).toBeGreaterThan(2 * materials.length);
    for (const [at, material] of materials.entries())
      for (const [index, diameter] of drills.entries()) {
        const x = ticks[index] ?? 0;
        const piece = bars[at]?.find((one) => one.x < x + 1e-9 && x <= rightOf(one) + 1e-9);
        const position =
          speedForHole({ material, operation: "drilling", diameter }, many)?.speed?.position.name ?? "none";
        const words = piece === undefined ? "" : textsIn(piece.group.marks).join(" ");
        const keyed = /^(\d|[a-z]{1,2})\b/.test(words) || words === "";
        if (!keyed) expect(words, `${material} ${diameter}`).toContain(position);
      }
  });
  test("a name that has no room is listed by its sign", () => {
    const narrow = fast(demo.replace("label: open", 'label: "open, no gear"'));
    const words = textsIn(printOf(narrow, "drilling-card").pages[0]?.drawing.marks ?? []);
    // White on black.
    const signs: string[] = [];
    walk(printOf(narrow, "drilling-card").pages[0]?.drawing.marks ?? [], (mark) => {
      if (mark.kind === "text" && mark.ink === "white" && mark.text.length < 3) signs.push(mark.text);
    });
    expect(signs.length).toBeGreaterThan(1);
    for (const sign of new Set(signs)) {
      const first = words.indexOf(sign);
      expect(words[first + 1]).toMatch(/open, no gear/);
    }
  });
  test("a drive with long names is called by the belt card's signs", () => {
    const long = demo.replace("label: open", 'label: "open, without the back gear between"');
    const ofCards = ["belt-card", "drilling-card"].map((sheet) =>
      [...textsOf(fast(long), sheet).matchAll(/(\S+) = open, without the back gear between/g)].map(([, sign]) => sign),
    );
    expect(ofCards[1]?.[0]).toBeDefined();
    expect(ofCards[1]?.[0]).toBe(ofCards[0]?.[0]);
  });
  test("a speed that nobody measured bears its sign, explained once", () => {
    const words = textsIn(
      printOf(findingsOf(demo.replace(/ {2}tachometer:\n(?: {4}- .*\n)+/, "")), "drilling-card").pages[0]?.drawing
        .marks ?? [],
    );
    expect(words.filter((one) => one === "~").length).toBeGreaterThan(0);
    expect(words.join(" ").match(/~ by ratio, not measured/g)).toHaveLength(1);
    expect(textsIn(printOf(demoFindings(), "drilling-card").pages[0]?.drawing.marks ?? [])).not.toContain("~");
  });
});

describe("a lathe stood on end with sixteen positions, some nearly alike", () => {
  const findings = sixteenOnEnd({
    rest: "handwheels: [{ name: Quill, moves: quill, feed: 3.175, travel: 60 }]\nwork: { materials: [mild steel, bronze], drills: [2, 3.3, 5, 8, 12] }\n",
  });
  const words = textsOf(findings, "drilling-card");

  test("no bar has a sliver: what is left out is told", () => {
    const [, same = ""] = /Nearly the same speed, so either: ([^.]+)\./.exec(words) ?? [];
    const left = same.split(", ").flatMap((row) => row.split(" / ").slice(1));
    expect(left.length).toBeGreaterThan(3);
    const kept = (findings.drive?.speeds ?? []).filter(({ position }) => !left.includes(position.name));
    for (const [index, { rpm }] of kept.slice(1).entries())
      if (rpm < 3000) expect(rpm / (kept[index]?.rpm ?? 0)).toBeGreaterThan(1.06);
  });

  test("a speed by ratio has its sign in the list of signs, too", () => {
    const keys = [...words.matchAll(/ [a-z] \d [A-D] +\d+(.{2})/g)];
    expect(keys.length).toBeGreaterThan(0);
    for (const [, sign] of keys) expect(sign).toContain("~");
  });

  test("no tailstock to lock, no word of the file's, no digit that no source has", () => {
    expect(words).toContain("Clamp the work.");
    expect(words).not.toContain("tailstock");
    expect(words).not.toMatch(/reverses:|clutch:|moves:/);
    expect(words).toContain("0.05–0.10");
    expect(words).not.toMatch(/0\.\d\d[1-9]–0\.[1-9]\d\d/);
  });
});

test("a sign is none of the drive's own labels, in either case", () => {
  const signsOf = (first: string, second: string) => {
    const cone = (labels: string) =>
      [...labels].map((label, at) => `{ label: "${label}", driver: ${50 + 20 * at}, driven: ${110 - 20 * at} }`);
    const findings = findingsOf(`name: D
kind: drill
paper: { size: A5 }
drive:
  motor: { speed: 1400 rpm }
  stages:
    - { name: motor belt, steps: [${cone(first)}] }
    - { name: spindle belt, steps: [${cone(second)}] }
work: { materials: [mild steel, aluminium, brass, grey cast iron, stainless steel], drills: [2, 3.3, 5, 6.8, 10, 12] }
`);
    const signs: string[] = [];
    for (const { drawing } of printOf(findings, "drilling-card").pages)
      walk(drawing.marks, (mark) => {
        if (mark.kind === "text" && mark.ink === "white" && mark.text.length < 3) signs.push(mark.text);
      });
    expect(signs.length).toBeGreaterThan(3);
    return new Set(signs);
  };
  for (const sign of signsOf("ABCD", "ABCD")) expect(sign).toMatch(/^\d+$/);
  // Of thirty steps without labels the first are called by every letter there is, the rest by numbers.
  const steps = Array.from({ length: 30 }, (_, at) => `{ driver: ${100 - at}, driven: ${55 + at} }`);
  const thirty = findingsOf(
    `name: D\nkind: drill\npaper: { size: A5 }\ndrive: { motor: { speed: [1400, 2800] }, stages: [{ name: belt, steps: [${steps}] }] }\n`,
  );
  for (const { drawing } of printOf(thirty, "drilling-card").pages)
    walk(drawing.marks, (mark) => {
      if (mark.kind === "text") expect(mark.text).toEqual(expect.any(String));
    });
  for (const sign of signsOf("ABPQ", "1234")) expect(sign).toMatch(/^[^abpq\d]$/);
});

test("what stands under the cuts is explained, and nothing that does not", () => {
  const wordsOf = (drills: string, steps: string) =>
    textsOf(
      findingsOf(
        `name: D\nkind: drill\ndrive: { motor: { speed: 1400 rpm }, stages: [{ name: belt, steps: [${steps}] }] }\nwork: { materials: [mild steel], drills: [${drills}] }\n`,
      ),
      "drilling-card",
    ).split("Depth per turn")[0] ?? "";
  const few = [80, 60].map((driver) => `{ driver: ${driver}, driven: ${160 - driver} }`).join(", ");
  const roomy = wordsOf("2, 4, 6, 8, 10, 12", few);
  expect(roomy).toMatch(/\d \| [\d.]+ \| \d/);
  expect(roomy).toContain("the last size before it | the diameter at the cut");
  const many = Array.from({ length: 26 }, (_, at) => `{ driver: ${40 + 3 * at}, driven: ${140 - 3 * at} }`).join(", ");
  const tight = wordsOf("2, 13", many);
  expect(tight).not.toMatch(/ \| /);
  expect(tight).toContain("Under a cut: the diameter at it.");
  const none = wordsOf("2, 4", "{ driver: 60, driven: 100 }");
  expect(none).not.toContain("a cut");
});

test("drills stand by size, however the file lists them", () => {
  const findings = findingsOf(`name: D
kind: drill
drive: { motor: { speed: 1400 rpm }, stages: [{ name: belt, steps: [{ driver: 50, driven: 110 }, { driver: 90, driven: 70 }] }] }
handwheels: [{ name: Quill, travel: 80, feed: 60 }]
work: { materials: [mild steel], drills: [10, 2, 6.8, 3.3] }
`);
  const [, feeding = ""] = textsOf(findings, "drilling-card").split("Feeding the drill");
  const listed = [...feeding.matchAll(/ (10|2|6\.8|3\.3) +\d+ +0\./g)].map(([, drill]) => Number(drill));
  expect(listed).toEqual([2, 3.3, 6.8, 10]);
});

test("a number or letter drill keeps its name on paper, and a shaft of the same size does not get it", () => {
  const findings = findingsOf(`name: L
units: in
drive: { motor: { speed: 1725 }, stages: [{ name: belt, steps: [{ label: A, driver: 2, driven: 4 }, { label: B, driver: 1.5, driven: 4 }] }] }
work: { materials: [brass], diameters: [0.257, 1], drills: [1/8, "#21", letter F, 3/8] }
`);
  const { machine } = findings;
  const drills = machine.work.drills ?? [];
  expect(drills.map((mm) => sizeName("drilling", mm, machine))).toEqual(["1/8", "no. 21", "F", "3/8"]);
  expect(drills.map((mm) => sizeWords("reaming", mm, machine))).toEqual(["1/8 in", "no. 21", "letter F", "3/8 in"]);
  expect(sizeName("turning", 0.257 * 25.4, machine)).toBe("0.257");
  inLanguage("de", () => expect(sizeName("drilling", drills[1] ?? 0, machine)).toBe("Nr. 21"));
  expect(textsOf(findings, "drilling-card")).toMatch(/no\. 21\b.*\bF\b/s);
});

test("each drill that the file names is named on the axis, beside its neighbour where it has no room of its own", () => {
  const drills = ["1/16", "1/8", "no. 21", "no. 7", "letter F", "1/4", "3/8", "1/2"];
  const findings = findingsOf(
    `name: I\nunits: in\ndrive: { motor: { speed: 1725 rpm }, stages: [{ name: belt, steps: [{ label: A, driver: 2, driven: 3 }, { label: B, driver: 3, driven: 2 }] }] }\nwork: { materials: [mild steel], drills: [${drills}] }\n`,
  );
  const marks: { text: string; x: number }[] = [];
  walk(printOf(findings, "drilling-card").pages[0]?.drawing.marks ?? [], (mark, toPage) => {
    if (mark.kind === "text" && mark.turn === -Math.PI / 2) marks.push({ text: mark.text, x: toPage(mark.at).x });
  });
  const xOf = (text: string) => marks.find((mark) => mark.text === text)?.x;
  for (const drill of drills) expect(xOf(drill.replace("letter ", "")), drill).toBeDefined();
  expect(xOf("F")).toBe(xOf("1/4"));
  expect(xOf("0.2500")).toBe(xOf("1/4"));
});
