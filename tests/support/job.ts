import type { Findings } from "../../src/findings/findings.js";
import type { Job } from "../../src/job/job.js";
import { readJob } from "../../src/job/read.js";
import { remedyInFile } from "../../src/plan/finding.js";
import { type Plan, planOf } from "../../src/plan/plan.js";
import { findingsOf } from "./sheets.js";

/** A small sound lathe, nothing of which stands in the way of a usual job: mm, slow enough, feeds and travels known. */
export const lathe = (extra = "", { cross = "", units = "mm" } = {}): Findings =>
  findingsOf(`name: L
units: ${units}
limits: { chuck: 2000 rpm }
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: S, driver: 20 mm, driven: 450 mm }, { label: A, driver: 20 mm, driven: 200 mm }, { label: B, driver: 40 mm, driven: 120 mm }, { label: C, driver: 80 mm, driven: 80 mm }] }]
handwheels:
  - { name: Cross slide, reads: diameter, travel: 60 mm, feed: { perTurn: 2 mm, uncertainty: 0.001 mm }, dial: { shape: drum, diameter: 40 mm, width: 9 mm, divisions: 0.02 mm, closure: even }${cross} }
  - { name: Carriage, travel: 120 mm, feed: 18 mm }
  - { name: Top slide, travel: 50 mm, feed: 1.5 mm }
  - { name: Tailstock barrel, travel: 45 mm, feed: 2.5 mm }
${extra}`);

/** A job of these steps, each written as in a file without its braces. `head`: other lines of the file; a bar of 16 mm where it
 *  gives none. */
export function jobOf(steps: readonly string[], head = "bar: { diameter: 16, out: 40 }", material = "brass"): Job {
  const text = `name: Try\nmaterial: ${material}\n${head}\nsteps:\n${steps.map((step) => `  - { ${step} }\n`).join("")}`;
  const { job, problems } = readJob(text);
  if (job === undefined) throw new Error(JSON.stringify(problems));
  return job;
}

/** "refused into-the-jaws 2": kind, code, and the step of the file, counted from 1. */
export const verdicts = ({ findings }: Pick<Plan, "findings">): string[] =>
  findings.map(({ kind, code, step }) => `${kind}: ${code}${step === undefined ? "" : ` at ${step + 1}`}`);

/** The plan of a job's steps on that lathe. */
export const planFor = (steps: readonly string[], head?: string, findings: Findings = lathe()): Plan =>
  planOf(jobOf(steps, head), findings);

/** What a plan says of one code, with what to do. */
export const saidOf = ({ findings }: Pick<Plan, "findings">, code: string): string =>
  findings
    .filter((one) => one.code === code)
    .map((one) => `${one.what}; ${remedyInFile(one)}`)
    .join("\n");

/** One row of a table of checks. */
export type Row = {
  readonly name: string;
  readonly steps: readonly string[];
  readonly head?: string;
  readonly on?: Findings;
  /** All verdicts that there must be; none for a sound job. */
  readonly found?: readonly string[];
  /** What the first of them must say. */
  readonly says?: RegExp;
};
