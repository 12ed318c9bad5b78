import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { size } from "../../src/blocks/shared/style.js";
import { sharedNotes } from "../../src/blocks/work/sharedNotes.js";
import type { Mark, PathMark, TextMark } from "../../src/drawing/drawing.js";
import type { Findings } from "../../src/findings/findings.js";
import type { Job } from "../../src/job/job.js";
import { readJob } from "../../src/job/read.js";
import { planOf } from "../../src/plan/plan.js";
import { inLanguage } from "../../src/words/language.js";
import { jobOf, lathe } from "../support/job.js";
import { walk } from "../support/marks.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

const read = (path: string): string => readFileSync(path, "utf8");
const demo = findingsOf(read("templates/machines/boathouse.yaml"));
const pin = readJob(read("templates/jobs/deck-pin.yaml")).job as Job;

type Page = { texts: { mark: TextMark; x: number; y: number }[]; paths: PathMark[] };
function pagesOf(findings: Findings, job: Job): Page[] {
  return printOf({ ...findings, job }, "plan").pages.map(({ drawing }) => {
    const page: Page = { texts: [], paths: [] };
    walk(drawing.marks as Mark[], (mark, toPage) => {
      if (mark.kind === "text") page.texts.push({ mark, ...toPage(mark.at) });
      else page.paths.push(mark);
    });
    return page;
  });
}
const fixed = findingsOf(
  read("templates/machines/boathouse.yaml").replaceAll("dial: { shape", "dial: { fixed: true, shape"),
);

/** Middle of the rings with the numbers, mm from the left edge of the paper: binding margin, then the ring. */
const ringAt = 24.1;

describe("the steps of a plan on paper", () => {
  test("every reading of every pass stands there in 13 pt, bold, its row beside it on the same line in 9 pt", () => {
    const texts = pagesOf(demo, pin).flatMap((page) => page.texts);
    const large = texts.filter(({ mark }) => mark.size === size.card && mark.weight === "bold");
    const plan = planOf(pin, demo);
    const shown = plan.steps.flatMap(({ passes, places }) => [...passes, ...places]).filter(({ reading }) => reading);
    const figures = large.filter(({ mark }) => /^\d+\.\d+$/.test(mark.text));
    expect(shown.length).toBeGreaterThan(30);
    // A groove wider than its blade goes to its depth at each place.
    expect(figures.length).toBeGreaterThanOrEqual(shown.length);
    for (const row of texts.filter(({ mark }) => /^row \d$/.test(mark.text))) {
      expect(row.mark.size).toBe(size.text);
      expect(figures.some(({ x, y }) => Math.abs(y - row.y) < 0.01 && x < row.x && row.x - x < 35)).toBe(true);
    }
  });

  test("position and speed of every step under power stand in 13 pt, white where the belt is moved", () => {
    const texts = pagesOf(demo, pin).flatMap((page) => page.texts);
    const { steps } = planOf(pin, demo);
    const named = texts.filter(({ mark }) => /^[ABC] (open|geared)$/.test(mark.text));
    const wanted = steps.flatMap(({ byHand, speed }) => (byHand || !speed?.speed ? [] : [speed.speed.position.name]));
    expect(named.map(({ mark }) => mark.text)).toEqual(wanted);
    expect(named.every(({ mark }) => mark.size === size.card && mark.weight === "bold")).toBe(true);
    expect(named.map(({ mark }) => mark.ink === "white")).toEqual(
      wanted.map((name, index) => index > 0 && name !== wanted[index - 1]),
    );
  });

  test("lines to write on are drawn, not typed", () => {
    for (const findings of [demo, fixed])
      for (const { texts } of pagesOf(findings, pin))
        expect(texts.filter(({ mark }) => mark.text.includes("__"))).toEqual([]);
    const lines = pagesOf(fixed, pin).flatMap(({ paths }) =>
      paths.filter(({ pen, segments }) => pen?.width === 0.18 && segments.length === 2),
    );
    const zeros = planOf(pin, fixed).steps.flatMap((step) => [...step.zeros, ...step.zerosAfter]);
    expect(lines.length).toBeGreaterThan(zeros.length);
  });

  test("what three steps say alike stands on the paper once, with their numbers; what two say stands at each", () => {
    const words = pagesOf(demo, pin)
      .flatMap((page) => page.texts.map(({ mark }) => mark.text))
      .join(" ");
    const { steps } = planOf(pin, demo);
    const [shared, ...more] = sharedNotes({ ...planOf(pin, demo) });
    expect(more).toEqual([]);
    expect(steps.filter(({ notes }) => notes.includes(shared?.words ?? "")).map(({ number }) => number)).toEqual(
      shared?.steps,
    );
    expect(words.split("Come to every reading inward").length - 1).toBe(1);
    expect(words).toContain(`(steps ${shared?.steps.slice(0, -1).join(", ")} and ${shared?.steps.at(-1)})`);
    expect(words.split("Under “For several steps”: a.").length - 1).toBe(shared?.steps.length);
    expect(words.split("The tool's edge lies square to the axis").length - 1).toBe(2);
  });

  test("where fine chips burn every step says all of it itself", () => {
    const cuts = [12, 10, 8, 6].map((to, index) => `do: shoulder, to: ${to}, length: ${20 - 4 * index}`);
    const job = (material: string) => jobOf(cuts, "bar: { diameter: 16, out: 40 }", material);
    expect(sharedNotes(planOf(job("brass"), lathe())).length).toBeGreaterThan(0);
    expect(sharedNotes(planOf(job("magnesium"), lathe()))).toEqual([]);
  });

  test("a step stands whole on one page: as many tables begin there as steps with readings", () => {
    for (const { texts } of pagesOf(demo, pin)) {
      const begins = texts.filter(
        ({ mark }) => mark.text === "mm" && mark.size === size.text && mark.weight === "bold",
      ).length;
      const titles = texts.filter(
        ({ mark, x }) => mark.size === size.card && mark.anchor === "middle" && Math.abs(x - ringAt) < 0.01,
      ).length;
      const heldAnew = texts.filter(({ mark }) => mark.text.startsWith("Turn it round")).length;
      if (titles > 0) expect(begins).toBe(titles - heldAnew);
    }
  });

  test("the demo's plan is eight pages", () => {
    expect(pagesOf(demo, pin)).toHaveLength(8);
  });
});

describe("what a reading counts from", () => {
  const words = (findings: Findings, job: Job) =>
    pagesOf(findings, job)
      .flatMap(({ texts }) => texts.map(({ mark }) => mark.text))
      .join(" ");
  const bushing = jobOf(
    [
      "do: face, depth: 0.5",
      "do: centre drill, diameter: 2",
      "do: drill, diameter: 8, depth: 20",
      "do: bore, to: 9.05, depth: 15, cut: 0.3",
      "do: bore, to: 12, depth: 2, cut: 0.3",
      "do: tap, thread: M10x1, depth: 8",
    ],
    "bar: { diameter: 20, out: 40 }",
  );

  test("stands over the readings of every wheel, in the step where it was touched and in those that go by it since", () => {
    const said = words(lathe(), bushing);
    expect(said).toContain("Cross slide, mm, from the bore of 8.00 mm");
    expect(said).toContain("Cross slide, mm, from the bore of 8.00 mm (step 4)");
    expect(said).toContain("Tailstock barrel, from where the tip touches");
    expect(said).toContain("Tailstock barrel, from where the full diameter enters");
    expect(said).toContain("Tailstock barrel, from where the first thread bites");
    expect(said).toContain("Carriage, from the finished face (step 4)");
  });

  test("no wheel's readings stand without it", () => {
    for (const [findings, job] of [
      [demo, pin],
      [fixed, pin],
    ] as const) {
      const { steps } = planOf(job, findings);
      const blocks = steps.flatMap(({ passes, places, depthWheel }) => [
        ...new Set([...(passes.length > 0 ? [depthWheel] : []), ...places.map(({ wheel }) => wheel)]),
      ]);
      expect(words(findings, job).match(/, from (the|where) /g)?.length).toBeGreaterThanOrEqual(blocks.length);
    }
  });
});

test("tall steps break between their parts rather than leave more than a third of a page empty", () => {
  const inch = findingsOf(
    `name: L
units: in
paper: { size: Letter }
drive:
  motor: { speed: 1725 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 2, driven: 12 }, { label: B, driver: 2, driven: 6 }] }]
handwheels:
  - { name: Cross slide, reads: diameter, travel: 3.4, feed: { perTurn: 0.1, uncertainty: 0.0002 }, dial: { shape: drum, diameter: 1.75, width: 0.375, divisions: 0.002 } }
  - { name: Top slide, travel: 2.5, feed: 16 tpi, dial: { shape: drum, diameter: 1.5, width: 0.375 } }
  - { name: Leadscrew handwheel, travel: 18, feed: 8 tpi, dial: { shape: drum, diameter: 3, width: 0.375 } }
`,
  );
  const cuts = [0.93, 0.81, 0.69, 0.57, 0.45].map(
    (to, index) => `do: shoulder, to: ${to} ± 0.002, length: ${2.2 - 0.3 * index}, cut: 0.01, finish: 0.005`,
  );
  const job = jobOf(
    ["do: face, depth: 0.02", ...cuts],
    "units: in\nbar: { diameter: 1, out: 2.8 }\nparts: 4",
    "mild steel",
  );
  const pages = pagesOf(inch, job);
  const lowest = pages.map(({ texts }) =>
    Math.max(...texts.filter(({ mark, y }) => mark.size >= size.text && y < 245).map(({ y }) => y)),
  );
  const onward = pages.filter(({ texts }) => texts.some(({ mark }) => /^Step \d, continued$/.test(mark.text)));
  expect(onward.length).toBeGreaterThan(0);
  const said = pages.flatMap(({ texts }) => texts.filter(({ mark }) => mark.text.startsWith("The step goes on")));
  expect(said).toHaveLength(onward.length);
  // Between head and foot of a page; after the last steps the batch begins a page of its own.
  const [top, bottom] = [24, 250];
  for (const reach of lowest.slice(0, -2)) expect(reach).toBeGreaterThan(bottom - (bottom - top) / 3 - 1);
});

test("a long step whose readings stand below its words goes on overleaf rather than leave half a page empty before it", () => {
  // Pages before the last give of their steps to a last one that would look left over, as far as to two thirds.
  const job = jobOf(
    [
      "do: face, depth: 0.5",
      "do: turn, to: 28 h7, length: 30, cut: 0.4, finish: 0.1",
      "do: centre drill",
      "do: drill, diameter: 10, depth: 28",
      "do: bore, to: 16 H7, depth: 25, cut: 0.4, finish: 0.1",
      "do: bore, to: 20 H7, depth: 12, cut: 0.4, finish: 0.1",
      "do: bore, to: 24 H7, depth: 6, cut: 0.4, finish: 0.1",
      "do: part, length: 25, blade: 2",
    ],
    "parts: 6\nbar: { diameter: 30, out: 40 }",
  );
  const printed = inLanguage("de", () => pagesOf(fixed, job));
  // Of the words on a page, how far down they go without the foot, which begins 40 mm above the edge.
  const filled = printed.map(({ texts }) => Math.max(...texts.map(({ y }) => y).filter((y) => y < 257)) / 257);
  for (const [index, share] of filled.slice(0, -1).entries()) expect(share, `page ${index + 1}`).toBeGreaterThan(0.6);
});

describe("what “comes out” and “alike” hold", () => {
  const words = (findings: Findings, job: Job) => textsOf({ ...findings, job }, "plan");
  test("is said once, with what a touch and a micrometer add that nobody measured", () => {
    const told = words(demo, pin).match(/“Comes out” and “alike” add up[^”]*?micrometer\./g);
    expect(told).toHaveLength(1);
    expect(told?.[0]).toContain("0.03 mm for each light touch");
    expect(told?.[0]).toContain("by common practice");
  });
  test("is not said where no step promises a size", () => {
    const bare = findingsOf("name: L\nhandwheels: [{ name: Cross slide, feed: 2 }, { name: Carriage }]\n");
    expect(
      planOf(pin, bare)
        .steps.flatMap(({ sizes }) => sizes)
        .some(({ doubt }) => doubt !== undefined),
    ).toBe(false);
    expect(words(bare, pin)).not.toContain("“Comes out”");
  });
});

describe("a step that is refused", () => {
  /** Squares to tick of one size, and lines to write on. */
  const blanksOf = (job: Job) => {
    const paths = pagesOf(lathe(), job).flatMap((page) => page.paths);
    const sides = paths.flatMap(({ segments }) => {
      const at = segments.flatMap((one) => ("x" in one ? [one] : []));
      const [xs, ys] = [at.map(({ x }) => x), at.map(({ y }) => y)];
      const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
      return segments.length > 4 && Math.abs(wide - high) < 1e-6 ? [wide] : [];
    });
    return {
      steps: sides.filter((side) => Math.abs(side - 4.6) < 1e-6).length,
      rows: sides.filter((side) => side > 2.5 && side < 4.5).length,
      lines: paths.filter(({ pen, segments }) => pen?.width === 0.18 && segments.length === 2).length,
    };
  };
  const pinOf = (length: number, head = "bar: { diameter: 16, out: 40 }", done = ["do: face, depth: 0.5"]) =>
    jobOf([...done, `do: turn, to: 14 ± 0.02, length: ${length}`], head);
  const wordsOf = (job: Job) => textsOf({ ...lathe(), job }, "plan");

  test("has no box to tick, at itself or at its readings, nor lines for what it measures", () => {
    const [sound, refused] = [pinOf(30), pinOf(39)];
    expect(planOf(refused, lathe()).findings).toContainEqual(expect.objectContaining({ kind: "refused", step: 1 }));
    const [, turned] = planOf(refused, lathe()).steps;
    const rows = (turned?.passes.length ?? 0) + (turned?.places.length ?? 0);
    expect(rows).toBeGreaterThan(2);
    const [whole, less] = [blanksOf(sound), blanksOf(refused)];
    expect(whole.steps).toBe(2);
    expect(less.steps).toBe(1);
    expect(whole.rows - less.rows).toBe(rows);
    expect(less.lines).toBeLessThan(whole.lines);
    expect(wordsOf(sound)).toContain("Before the last cut: measured");
    expect(wordsOf(sound)).toContain("“Comes out” and “alike” add up");
    for (const words of ["Before the last cut: measured", "Comes out"]) expect(wordsOf(refused)).not.toContain(words);
  });

  test("has none for each part of a batch, and no column where the parts are measured", () => {
    const head = "parts: 3\nbatch: operation\nbar: { diameter: 16, out: 40, length: 60 }";
    const [sound, refused] = [pinOf(30, head), pinOf(39, head)];
    expect(blanksOf(sound).steps - blanksOf(refused).steps).toBe(1 + 3);
    const measured = (job: Job) => wordsOf(job).slice(wordsOf(job).lastIndexOf("Measured"));
    expect(measured(sound)).toContain("13.98");
    expect(measured(refused)).not.toContain("13.98");
  });

  test("by its speed alone too; where nobody knows a speed the step is no such one", () => {
    const fast = findingsOf(
      "name: L\ndrive: { motor: { speed: 1400 }, stages: [{ name: belt, steps: [{ label: A, driver: 100, driven: 50 }] }] }\nhandwheels: [{ name: Cross slide, feed: 2 }, { name: Carriage, feed: 18 }]\n",
    );
    const wide = jobOf(["do: turn, to: 78, length: 10"], "bar: { diameter: 80, out: 40 }", "mild steel");
    expect(textsOf({ ...fast, job: wide }, "plan")).toContain("do not run");
    // Readings that all say twice what the belts can: none of the speeds is known.
    const unknown = findingsOf(
      read("templates/machines/boathouse.yaml")
        .replace("702 rpm", "1404 rpm")
        .replace("462 rpm", "924 rpm")
        .replace("speed: 78 rpm", "speed: 156 rpm"),
    );
    const said = textsOf({ ...unknown, job: pin }, "plan");
    expect(said).toContain("no speed known");
    expect(said).not.toContain("do not run");
  });
});
