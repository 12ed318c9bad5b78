import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { partDrawing } from "../../src/blocks/work/partDrawing.js";
import { stepPicture } from "../../src/blocks/work/stepPicture.js";
import type { Drawing, PathMark, Point, TextMark } from "../../src/drawing/drawing.js";
import type { Bar, Job, JobStep } from "../../src/job/job.js";
import { readJob } from "../../src/job/read.js";
import { asGiven } from "../../src/machine/written.js";
import { type Stage, stagesOf } from "../../src/plan/stage.js";
import { outline, textCorners, walk } from "../support/marks.js";

type Units = "mm" | "in";
const shows = { mm: (mm: number) => asGiven(mm, { units: "mm" }), in: (mm: number) => asGiven(mm, { units: "in" }) };

const drawn = (stages: readonly Stage[], units: Units = "mm", room = { width: 180, height: 130 }): Drawing =>
  partDrawing({ stages, numbers: stages.map((_, index) => index + 1), show: shows[units], unit: units, ...room });

const bar = (given: Partial<Bar> = {}): Bar => ({ diameter: 20, out: 50, held: "chuck", ...given });
const to = (aim: number, words?: string) => ({ aim, ...(words && { words, least: aim - 0.01, most: aim + 0.01 }) });
const shoulder = (diameter: number, length: number, at = 0, words?: string): JobStep => ({
  ...{ do: "shoulder", to: to(diameter, words), at, length, cut: 0.5, finish: 0.1 },
});
const chamfer = (at: number, size: number): JobStep => ({ do: "chamfer", at, size, side: "outside" });

/** A path with all its points where they lie on the page. */
type Line = { readonly points: readonly Point[]; readonly mark: PathMark; readonly names: readonly string[] };

function marksOf({ marks }: Drawing): { texts: { mark: TextMark; box: Box }[]; lines: Line[] } {
  const texts: { mark: TextMark; box: Box }[] = [];
  const lines: Line[] = [];
  walk(marks, (mark, toPage, names) => {
    if (mark.kind === "text") texts.push({ mark, box: boxOf(textCorners(mark).map(toPage)) });
    else for (const points of pathsOf(mark)) lines.push({ points: points.map(toPage), mark, names });
  });
  return { texts, lines };
}

/** Its pieces, each from one "move" to the next. */
function pathsOf(mark: PathMark): Point[][] {
  const pieces: PathMark["segments"][number][][] = [];
  for (const segment of mark.segments)
    if (segment.to === "move" || pieces.length === 0) pieces.push([segment]);
    else pieces.at(-1)?.push(segment);
  return pieces.map((segments) => {
    const points = outline({ ...mark, segments });
    const [first] = points;
    return segments.at(-1)?.to === "close" && first ? [...points, first] : points;
  });
}

type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
const boxOf = (points: readonly Point[]): Box => ({
  left: Math.min(...points.map(({ x }) => x)),
  right: Math.max(...points.map(({ x }) => x)),
  top: Math.min(...points.map(({ y }) => y)),
  bottom: Math.max(...points.map(({ y }) => y)),
});

/** How much of a straight line lies in a box, by clipping it side by side. */
function lengthWithin(from: Point, to: Point, box: Box): number {
  let [enter, leave] = [0, 1];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  for (const [run, room] of [
    [-dx, from.x - box.left],
    [dx, box.right - from.x],
    [-dy, from.y - box.top],
    [dy, box.bottom - from.y],
  ] as const) {
    if (Math.abs(run) < 1e-12) {
      if (room < 0) return 0;
    } else if (run < 0) enter = Math.max(enter, room / run);
    else leave = Math.min(leave, room / run);
  }
  return Math.max(0, leave - enter) * Math.hypot(dx, dy);
}

/** What is wrong with a drawing as such: empty where all is well. */
function faults(drawing: Drawing): string[] {
  const { texts, lines } = marksOf(drawing);
  const found: string[] = [];
  if (/null/.test(JSON.stringify(drawing))) found.push("something is no number");
  const page = { left: 0, right: drawing.width, top: 0, bottom: drawing.height };
  const slack = 0.05;
  for (const [which, { mark, box }] of texts.entries()) {
    if (box.left < -slack || box.right > page.right + slack || box.top < -slack || box.bottom > page.bottom + slack)
      found.push(`"${mark.text}" leaves the drawing`);
    for (const other of texts.slice(which + 1))
      if (
        Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left) > slack &&
        Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top) > slack
      )
        found.push(`"${mark.text}" lies on "${other.mark.text}"`);
    for (const { points } of lines)
      for (const [index, point] of points.entries()) {
        const next = points[index + 1];
        if (next !== undefined && lengthWithin(point, next, box) > slack) found.push(`a line crosses "${mark.text}"`);
      }
  }
  for (const { points, names } of lines)
    for (const { x, y } of points)
      if (x < -slack || x > page.right + slack || y < -slack || y > page.bottom + slack)
        found.push(`a line of ${names.join()} leaves the drawing at ${x.toFixed(1)}, ${y.toFixed(1)}`);
  return [...new Set(found)];
}

const scaleOf = (drawing: Drawing): number => {
  const note = wordsOf(drawing).find((words) => words.startsWith("scale ")) ?? "";
  const [, over = "0", under = "1"] = /scale (\d+):(\d+)/.exec(note) ?? [];
  return Number(over) / Number(under);
};
const wordsOf = (drawing: Drawing): string[] => marksOf(drawing).texts.map(({ mark }) => mark.text);

/** Points of the part's thick outline. */
const outlineOf = (drawing: Drawing): Point[] =>
  marksOf(drawing).lines.flatMap(({ points, mark, names }) =>
    names.includes("part") && (mark.pen?.width ?? 0) > 0.3 ? points : [],
  );

/** Random work, as a sensible job has it and as a poor one may. */
const size = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 20), max: Math.round(max * 20) }).map((n) => n / 20);
const wordsOfSize = fc.constantFrom(
  undefined,
  "12 h7",
  "12.000 +0.010 -0.025",
  "11.982 mm to 12.018 mm, as the drawing gives it",
);
const oneStep = (most: number, length: number): fc.Arbitrary<JobStep> =>
  fc.oneof(
    fc
      .record({
        to: size(1, most),
        length: size(0.5, length),
        at: fc.oneof(fc.constant(0), size(0, length / 2)),
        words: wordsOfSize,
      })
      .map(({ to, length, at, words }) => shoulder(to, length, at, words)),
    fc
      .record({ at: size(0, length), width: size(0.5, 3), to: size(1, most) })
      .map(({ at, width, to }): JobStep => ({ do: "groove", at, width, to: { aim: to }, blade: 0.5 })),
    fc.record({ at: size(0, length), size: size(0.1, 2) }).map(({ at, size }) => chamfer(at, size)),
    fc
      .record({ diameter: size(0.5, most * 0.8), depth: size(1, length * 1.2), ream: fc.boolean() })
      .map(({ diameter, depth, ream }): JobStep => ({ do: ream ? "ream" : "drill", diameter, depth })),
    fc.record({ to: size(1, most * 0.9), length: size(1, length), words: wordsOfSize }).map(
      ({ to: aim, length, words }): JobStep => ({
        ...{ do: "bore", at: 0, length, to: to(aim, words), cut: 0.5, finish: 0.1 },
      }),
    ),
    fc
      .record({
        small: size(1, most * 0.6),
        more: size(0.2, most * 0.4),
        length: size(1, length),
        at: size(0, length / 2),
        end: fc.boolean(),
      })
      .map(
        ({ small, more, length, at, end }): JobStep => ({
          ...{
            do: "taper",
            large: small + more,
            small,
            length,
            at,
            smallAt: end ? "end" : "chuck",
            by: "top slide",
            cut: 0.5,
            finish: 0.1,
          },
        }),
      ),
    fc
      .record({ tap: fc.boolean(), thread: fc.constantFrom("M3", "M6", "1/4-20 UNC", "2BA"), depth: size(1, length) })
      .map(({ tap, thread, depth }): JobStep => ({ do: tap ? "tap" : "die", thread, depth })),
    fc
      .record({ at: size(0, length / 2), length: size(1, length) })
      .map(({ at, length }): JobStep => ({ do: "knurl", at, length, pitch: 0.8, pinched: true })),
    fc.constant<JobStep>({ do: "centre drill" }),
    size(0.1, 1).map((depth): JobStep => ({ do: "face", depth, cut: 0.5 })),
  );

const jobs: fc.Arbitrary<Pick<Job, "bar" | "steps">> = fc
  .record({
    diameter: size(2, 80),
    out: size(5, 160),
    known: fc.boolean(),
    held: fc.constantFrom("chuck", "chuck and centre", "between centres"),
    tube: fc.boolean(),
    second: fc.boolean(),
  })
  .chain(({ diameter, out, known, held, tube, second }) =>
    fc
      .record({
        first: fc.array(oneStep(diameter, out * 0.8), { minLength: 1, maxLength: 10 }),
        other: fc.array(oneStep(diameter, out * 0.4), { maxLength: 5 }),
        off: fc.boolean(),
      })
      .map(
        ({ first, other, off }): Pick<Job, "bar" | "steps"> => ({
          bar: bar({
            ...{ diameter, out, held },
            ...(known && { length: out * 1.3 }),
            ...(tube && { bore: diameter / 3 }),
          }),
          steps: [
            ...first,
            ...(off ? [{ do: "part", length: out * 0.8, blade: 1 } as const] : []),
            ...(second ? [{ do: "turn round", out: out * 0.4, held: "chuck" } as const, ...other] : []),
          ],
        }),
      ),
  );

describe("the drawing of a part", () => {
  test("shows the demo's pin to scale: every corner of its outline within a thousandth of a millimetre", () => {
    const { job } = readJob(readFileSync("templates/jobs/deck-pin.yaml", "utf8"));
    if (job === undefined) throw new Error("no job");
    const stages = stagesOf(job);
    const drawing = drawn(stages);
    const scale = scaleOf(drawing);
    expect(scale).toBeGreaterThanOrEqual(2);
    expect(misplaced(stages, drawing)).toEqual([]);
    expect(faults(drawing)).toEqual([]);
  });

  /** Corners of the profile that are not drawn where the scale says. */
  function misplaced(stages: readonly Stage[], drawing: Drawing): string[] {
    const scale = scaleOf(drawing);
    const points = outlineOf(drawing);
    const right = Math.max(...points.map(({ x }) => x));
    const middle = (Math.min(...points.map(({ y }) => y)) + Math.max(...points.map(({ y }) => y))) / 2;
    const { outside } = stages.at(-1)?.after ?? { outside: [] };
    const first = outside[0]?.from ?? 0;
    // Drawn as the first set-up shows it: work that ended turned round lies the other way.
    const round = stages.at(-1)?.holding.end === "other";
    const fromRight = (z: number) => (round ? (outside.at(-1)?.to ?? 0) - z : z - first);
    return outside
      .flatMap(({ from, to, start, end }) => [
        { z: from, d: start },
        { z: to, d: end },
      ])
      .flatMap(({ z, d }) =>
        [-1, 1].map((side) => ({ z, d, x: right - fromRight(z) * scale, y: middle + (side * d * scale) / 2 })),
      )
      .filter(({ x, y }) => !points.some((point) => Math.hypot(point.x - x, point.y - y) < 0.001))
      .map(({ z, d }) => `ø${d} at ${z}`);
  }

  test("keeps to its profile whatever is turned, and says no other scale than a usual one", () =>
    fc.assert(
      fc.property(
        fc.array(fc.record({ to: size(2, 30), length: size(2, 60) }), { minLength: 1, maxLength: 8 }),
        (given) => {
          const steps: JobStep[] = [
            ...given.map(({ to, length }) => shoulder(to, length)),
            { do: "part", length: 70, blade: 2 },
          ];
          const stages = stagesOf({ bar: bar({ diameter: 32, out: 90 }), steps });
          const drawing = drawn(stages);
          expect([10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05]).toContain(scaleOf(drawing));
          expect(misplaced(stages, drawing)).toEqual([]);
        },
      ),
      { numRuns: 60 },
    ));

  test("cuts the bore open: its wall stands in the upper half alone", () => {
    const stages = stagesOf({
      bar: bar(),
      steps: [
        { do: "drill", diameter: 8, depth: 20 },
        { do: "part", length: 30, blade: 2 },
      ],
    });
    const drawing = drawn(stages);
    const scale = scaleOf(drawing);
    const points = outlineOf(drawing);
    const [top, bottom] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
    const middle = (top + bottom) / 2;
    expect(bottom - top).toBeCloseTo(20 * scale, 6);
    const wall = (y: number) => points.filter((point) => Math.abs(point.y - y) < 0.001);
    expect(wall(middle - 4 * scale).length).toBeGreaterThanOrEqual(2);
    expect(wall(middle + 4 * scale)).toEqual([]);
  });

  test("gives every size of a part once, in the words of its drawing", () => {
    const steps: JobStep[] = [
      { do: "face", depth: 0.5, cut: 0.5 },
      shoulder(18, 40),
      shoulder(12, 22, 0, "12 h7"),
      shoulder(7.9, 13),
      { do: "groove", at: 11, width: 2, to: { aim: 6 }, blade: 2 },
      chamfer(0, 1),
      { do: "die", thread: "M8", depth: 11 },
      { do: "drill", diameter: 3.3, depth: 14 },
      { do: "tap", thread: "M4", depth: 10 },
      { do: "knurl", at: 25, length: 8, pitch: 0.8, pinched: false },
      { do: "part", length: 36.5, blade: 2 },
      { do: "turn round", out: 12, held: "chuck" },
      { do: "face", length: 35.5, cut: 0.5 },
      { do: "taper", large: 17, small: 15, length: 1.5, at: 0, smallAt: "end", by: "top slide", cut: 1, finish: 0.1 },
    ];
    const words = wordsOf(drawn(stagesOf({ bar: bar(), steps })));
    const once = (text: string) => expect([text, words.filter((word) => word === text).length]).toEqual([text, 1]);
    for (const text of ["ø18", "ø12 h7", "ø6, 2 wide", "1 × 45°", "M8", "ø3.3, 14 deep", "M4, 10 deep", "knurl 0.8"])
      once(text);
    for (const text of ["ø17 to ø15", "22", "25", "33", "35.5", "1.5", "scale 2:1, all sizes in mm"]) once(text);
    // Each step that leaves a surface, by its number; what is turned round cuts nothing, and the parted face was faced again.
    for (const number of [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 13, 14]) expect(words).toContain(String(number));
    expect(words.filter((word) => word === "12")).toEqual([]);
  });

  test("a thread behind a counterbore is drawn where it is cut, whichever came first, and its arrow points there", () => {
    const counterbore: JobStep = { do: "bore", to: to(12), at: 0, length: 8, cut: 0.5, finish: 0.1 };
    const tap: JobStep = { do: "tap", thread: "M6", depth: 20 };
    const head: JobStep[] = [shoulder(18, 30), { do: "drill", diameter: 5, depth: 30 }];
    const whole: JobStep = { do: "part", length: 25, blade: 2 };
    for (const steps of [
      [...head, counterbore, tap, whole],
      [...head, tap, counterbore, whole],
    ]) {
      const stages = stagesOf({ bar: bar(), steps });
      expect(stages.at(-1)?.after.surfaces).toEqual([{ kind: "thread", side: "inside", name: "M6", from: 8, to: 20 }]);
      // From the face, on the right, the counterbore's floor is 8 mm of 25; the thin line of the thread begins there, and its leader,
      // which ends at what it names, lies beyond.
      const { lines, texts } = marksOf(drawn(stages));
      const own = lines.filter(({ names }) => names.includes("part")).flatMap(({ points }) => points.map(({ x }) => x));
      const [left, right] = [Math.min(...own), Math.max(...own)];
      const floor = right - ((right - left) * 8) / 25;
      const box = texts.find(({ mark }) => mark.text.startsWith("M6"))?.box;
      const leaders = lines.filter(
        ({ names, points: [from] }) =>
          names.includes("callouts") &&
          from &&
          box &&
          from.x < box.left &&
          box.left - from.x < 6 &&
          from.y > box.top &&
          from.y < box.bottom + 3,
      );
      expect(leaders.length).toBeGreaterThan(0);
      for (const { points } of leaders) expect(points.at(-1)?.x).toBeLessThan(floor);
    }
  });

  test("a tap in a hole that is nowhere narrower than its thread cuts none", () => {
    const steps: JobStep[] = [
      { do: "drill", diameter: 7, depth: 20 },
      { do: "tap", thread: "M6", depth: 10 },
    ];
    expect(stagesOf({ bar: bar(), steps }).at(-1)?.after.surfaces).toEqual([]);
  });

  test("points at nothing that a later step cut away", () => {
    const steps: JobStep[] = [shoulder(18, 30), shoulder(10, 30), { do: "part", length: 25, blade: 2 }];
    const words = wordsOf(drawn(stagesOf({ bar: bar(), steps })));
    expect(words).toContain("ø10");
    expect(words).not.toContain("ø18");
    expect(words).not.toContain("1");
    expect(words).toContain("2");
  });

  test("every number of a step has words, a bore of the other end says so in the list, and the whole length its line", () => {
    const steps: JobStep[] = [
      { do: "face", depth: 0.5, cut: 0.5 },
      ...[36, 30, 24, 18, 12, 6].map((length, index) => shoulder(18 - 2 * index, length)),
      { do: "part", length: 36.5, blade: 2 },
      { do: "turn round", out: 12, held: "chuck" },
      { do: "face", length: 35.5, cut: 0.5 },
      { do: "drill", diameter: 7, depth: 9 },
      { do: "bore", to: to(8), at: 0, length: 8, cut: 0.5, finish: 0.1 },
    ];
    for (const height of [130, 108, 60]) {
      const drawing = drawn(stagesOf({ bar: bar(), steps }), "mm", { width: 128, height });
      const words = wordsOf(drawing);
      expect(words).toContain("parted off at 36.5");
      expect(words.filter((word) => /^faced/.test(word))).toEqual(
        expect.arrayContaining(["faced", "faced to 35.5 long"]),
      );
      expect(words).toContain(height > 100 ? "35.5" : "35.5 long in all");
      const listed = words.find((word) => word.startsWith("ø8, 8 deep"));
      expect(listed).toMatch(/^ø8, 8 deep(, at the other end)?$/);
      // What no step's number stands before begins a line of its own.
      const rows = marksOf(drawing).texts.filter(({ mark }) => / from the free end$/.test(mark.text));
      const parted = marksOf(drawing).texts.filter(({ mark }) => mark.text === "parted off at 36.5");
      for (const { box } of rows) expect(box.top).toBeGreaterThan(parted[0]?.box.bottom ?? 0);
    }
  });

  test("gives every shoulder of a stepped part once, on the drawing or in the list below it", () =>
    fc.assert(
      fc.property(
        fc.uniqueArray(size(3, 39), { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 4, max: 12 }),
        fc.constantFrom({ width: 180, height: 130 }, { width: 128, height: 70 }),
        (diameters, pitch, room) => {
          const falling = [...diameters].sort((a, b) => b - a);
          const lengths = falling.map((_, index) => (falling.length - index) * pitch + 0.05);
          const steps: JobStep[] = [
            ...falling.map((diameter, index) => shoulder(diameter, lengths[index] ?? 1)),
            { do: "part", length: 130.5, blade: 2 },
          ];
          const words = wordsOf(drawn(stagesOf({ bar: bar({ diameter: 40, out: 140 }), steps }), "mm", room));
          for (const diameter of falling)
            expect(words.filter((word) => word.split(",")[0] === `ø${diameter}`)).toHaveLength(1);
          for (const length of [...lengths, 130.5]) {
            const figure = shows.mm(length).replace(" mm", "");
            const told = [figure, `${figure} from the free end`, `${figure} long in all`];
            expect(words.filter((word) => told.includes(word))).toHaveLength(1);
          }
        },
      ),
      { numRuns: 60 },
    ));

  test.each<[string, readonly number[], JobStep[]]>([
    [
      "turned from both ends",
      [4, 3, 1.5, 13.5],
      [
        { do: "face", cut: 0.3, depth: 0.3 },
        { do: "turn", to: to(15), at: 0, length: 20, cut: 0.5, finish: 0.1 },
        shoulder(8, 4),
        { do: "part", length: 14, blade: 1.5 },
        { do: "turn round", out: 9, held: "chuck" },
        { do: "face", cut: 0.3, length: 13.5 },
        shoulder(9, 3),
        shoulder(7, 1.5),
      ],
    ],
    [
      "with sizes of many figures, which a larger scale would have in the list",
      [20.75, 16.5, 12.125, 8.375, 4.25, 23],
      [
        ...[20.75, 16.5, 12.125, 8.375, 4.25].map((length, index) => shoulder(14 - 2 * index, length)),
        { do: "part", length: 23, blade: 2 },
      ],
    ],
  ])("has every length at its place, and none in the list: a small part %s", (_, lengths, steps) => {
    const drawing = drawn(stagesOf({ bar: bar({ diameter: 16, out: 40 }), steps }), "mm", { width: 180, height: 110 });
    const figures: string[] = [];
    walk(drawing.marks, (mark, _, names) => {
      if (mark.kind === "text" && names.includes("lengths")) figures.push(mark.text);
    });
    expect(figures.map(Number).sort()).toEqual([...lengths].sort());
    expect(wordsOf(drawing).join()).not.toContain(" end");
    expect(faults(drawing)).toEqual([]);
  });

  test("lays no words on other words or on a line, and stays on its paper, whatever the part", () =>
    fc.assert(
      fc.property(
        jobs,
        fc.constantFrom<Units>("mm", "in"),
        fc.constantFrom({ width: 180, height: 130 }, { width: 128, height: 80 }),
        (job, units, room) => {
          const drawing = drawn(stagesOf(job), units, room);
          expect(drawing.width).toBe(room.width);
          expect(faults(drawing)).toEqual([]);
        },
      ),
      { numRuns: 200 },
    ));

  test("a drill's job, of which no outside is known, is drawn as a piece of a block", () => {
    const steps: JobStep[] = [
      { do: "drill", diameter: 5, depth: 20 },
      { do: "tap", thread: "M6", depth: 12 },
    ];
    const drawing = drawn(stagesOf({ steps }));
    expect(faults(drawing)).toEqual([]);
    expect(wordsOf(drawing)).toEqual(expect.arrayContaining(["ø5, 20 deep", "M6, 12 deep"]));
    expect(wordsOf(drawing).join()).not.toContain("1000");
  });
});

describe("the picture of a step", () => {
  const pale = (drawing: Drawing) => marksOf(drawing).lines.filter(({ mark }) => mark.fill === "pale");

  test("shows what comes off pale, where it comes off: both halves alike", () => {
    const [, stage] = stagesOf({ bar: bar({ out: 30 }), steps: [shoulder(18, 25), shoulder(10, 10)] });
    if (stage === undefined) throw new Error("no stage");
    const [lower, upper] = pale(stepPicture(stage, { width: 34, height: 16 })).map(({ points }) => boxOf(points));
    if (lower === undefined || upper === undefined) throw new Error("nothing comes off");
    // 10 along, 4 on the radius.
    expect((lower.right - lower.left) / (lower.bottom - lower.top)).toBeCloseTo(10 / 4, 6);
    expect(upper.bottom - upper.top).toBeCloseTo(lower.bottom - lower.top, 6);
    expect(upper.left).toBeCloseTo(lower.left, 6);
    expect(upper.bottom).toBeLessThan(lower.top);
  });

  test("of a blade shows the slot to the axis, and both pieces", () => {
    const [stage] = stagesOf({ bar: bar({ out: 30 }), steps: [{ do: "part", length: 15, blade: 3 }] });
    if (stage === undefined) throw new Error("no stage");
    const [slot] = pale(stepPicture(stage, { width: 34, height: 16 })).map(({ points }) => boxOf(points));
    if (slot === undefined) throw new Error("no slot");
    expect((slot.right - slot.left) / (slot.bottom - slot.top)).toBeCloseTo(3 / 10, 6);
  });

  test("of every step has an arrow, is sound and stays in its room", () =>
    fc.assert(
      fc.property(jobs, fc.constantFrom({ width: 34, height: 16 }, { width: 24, height: 14 }), (job, room) => {
        for (const stage of stagesOf(job)) {
          const drawing = stepPicture(stage, room);
          expect([drawing.width, drawing.height]).toEqual([room.width, room.height]);
          expect(faults(drawing)).toEqual([]);
          expect(marksOf(drawing).lines.some(({ mark }) => mark.fill === "black")).toBe(true);
        }
      }),
      { numRuns: 200 },
    ));
});
