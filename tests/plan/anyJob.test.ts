import fc from "fast-check";
import { expect, test } from "vitest";
import type { Findings } from "../../src/findings/findings.js";
import { readJob } from "../../src/job/read.js";
import { planOf } from "../../src/plan/plan.js";
import { arrange } from "../../src/sheets/arrange.js";
import { walk } from "../support/marks.js";
import { demoFindings, findingsOf, template } from "../support/sheets.js";

/** Steps of every kind with sizes from nothing to nonsense, in any order: what a beginner may write, and a cat on the keyboard. */
const mm = fc.oneof(
  fc.integer({ min: 1, max: 60 }),
  fc.double({ min: 0.01, max: 70, noNaN: true }).map((value) => Number(value.toFixed(2))),
);
const size = fc.oneof(
  mm.map(String),
  mm.map((value) => `"${value} h9"`),
  mm.map((value) => `"${value + 1} ± 0.05"`),
);
const thread = fc.constantFrom("M3", "M6", "M10", "2BA", "1/4-20 UNC");
const step = fc.oneof(
  mm.map((depth) => `do: face, depth: ${depth / 10}`),
  mm.map((length) => `do: face, length: ${length}`),
  fc
    .tuple(fc.constantFrom("turn", "shoulder"), size, mm, mm)
    .map(([verb, to, length, at]) => `do: ${verb}, to: ${to}, length: ${length}, at: ${at > 30 ? at / 10 : 0}`),
  fc.tuple(mm, mm).map(([to, depth]) => `do: bore, to: ${to}, depth: ${depth}`),
  fc
    .tuple(mm, mm, mm)
    .map(([at, width, to]) => `do: groove, at: ${at}, width: ${width}, to: ${to}, blade: ${Math.min(width, 2)}`),
  fc
    .tuple(mm, mm, fc.constantFrom("outside", "bore"))
    .map(([at, leg, side]) => `do: chamfer, at: ${at > 30 ? at : 0}, size: ${leg / 20}, side: ${side}`),
  fc
    .tuple(mm, mm, fc.constantFrom("end", "chuck"), fc.constantFrom("top slide", "headstock", "tailstock"))
    .map(
      ([large, length, end, by]) =>
        `do: taper, large: ${large}, small: ${large * 0.9}, length: ${length}, smallAt: ${end}, by: ${by}`,
    ),
  fc.tuple(mm, mm).map(([at, length]) => `do: knurl, at: ${at}, length: ${length}, pitch: 0.8, pinched: true`),
  fc.constant("do: centre drill"),
  fc.tuple(mm, mm).map(([diameter, depth]) => `do: drill, diameter: ${diameter}, depth: ${depth}`),
  fc.tuple(mm, mm).map(([diameter, depth]) => `do: ream, diameter: ${diameter}, depth: ${depth}`),
  fc.tuple(thread, mm).map(([name, depth]) => `do: tap, thread: ${name}, depth: ${depth}`),
  fc.tuple(thread, mm).map(([name, length]) => `do: die, thread: ${name}, length: ${length}`),
  fc.tuple(mm, mm).map(([length, blade]) => `do: part, length: ${length}, blade: ${blade / 20}`),
  fc
    .tuple(fc.constantFrom("hold", "turn round"), mm, fc.constantFrom("chuck", "chuck and centre", "between centres"))
    .map(([verb, out, held]) => `do: ${verb}, out: ${out}, held: ${held}`),
);
const job = fc
  .record({
    steps: fc.array(step, { minLength: 1, maxLength: 9 }),
    bar: fc
      .tuple(mm, mm, fc.boolean())
      .map(
        ([diameter, out, blank]) =>
          `bar: { diameter: ${diameter + 1}, out: ${out}${blank ? `, length: ${out + 20}` : ""} }`,
      ),
    parts: fc.integer({ min: 1, max: 30 }),
    batch: fc.constantFrom("operation", "part"),
    stop: fc.boolean(),
  })
  .map(
    ({ steps, bar, parts, batch, stop }) =>
      `name: P\nunits: mm\nmaterial: mild steel\nparts: ${parts}\nbatch: ${batch}\nspindleStop: ${stop}\n${bar}\nsteps:\n${steps.map((one) => `  - { ${one} }`).join("\n")}\n`,
  );

const machines: readonly (() => Findings)[] = [
  demoFindings,
  () => findingsOf("name: L\n"),
  () =>
    findingsOf(
      "name: L\nunits: in\nhandwheels:\n  - { name: Cross slide, feed: 10 tpi, travel: 3, dial: { shape: drum, diameter: 1.5, width: 0.4, fixed: true } }\n  - { name: Top slide, feed: 0.0625, travel: 2 }\n",
    ),
];

test("whatever steps a job has, its plan is made and drawn without a fault, and no number on it is none", () => {
  const all = machines.map((machine) => machine());
  const sheet = template("plan");
  let made = 0;
  fc.assert(
    fc.property(job, fc.nat({ max: all.length - 1 }), (text, which) => {
      const { job: read } = readJob(text);
      fc.pre(read !== undefined);
      if (read === undefined) return;
      made++;
      const findings = { ...(all[which] as Findings), job: read };
      for (const { what, remedy } of planOf(read, findings).findings)
        expect(`${what} ${remedy}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
      const arranged = arrange(findings, sheet);
      if (!("print" in arranged)) throw new Error(arranged.missing);
      for (const { drawing } of arranged.print.pages)
        walk(drawing.marks, (mark) => {
          if (mark.kind === "text") expect(mark.text).not.toMatch(/NaN|undefined|Infinity|\[object/);
        });
    }),
    { numRuns: Number(process.env.RUNS ?? 120) },
  );
  expect(made).toBeGreaterThan(60);
});
