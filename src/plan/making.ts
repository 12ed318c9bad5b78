import type { Findings } from "../findings/findings.js";
import type { Job, JobStep } from "../job/job.js";
import { endsOf } from "../part/workpiece.js";
import type { Bench, Wheels } from "./bench.js";
import { chipNotes } from "./chips.js";
import { type Fed, type FedCut, speedAndFeed } from "./feed.js";
import type { Made } from "./plannedStep.js";
import type { Stage } from "./stage.js";
import type { Show } from "./words.js";
import { readingAt, type Zero } from "./zero.js";

/** What every step is made from. */
export type Making<S extends JobStep = JobStep> = {
  readonly stage: Stage;
  readonly step: S;
  readonly bench: Bench;
  readonly wheels: Wheels;
  readonly job: Job;
  readonly findings: Findings;
  readonly show: Show;
};

/** A step made, and what then stands on the machine. */
export type Step = { readonly made: Made; readonly bench: Bench };

export const begun = (title: string, tool: string): Made => ({
  ...{ title, tool, byHand: false },
  ...{ first: [], zeros: [], zerosAfter: [], passes: [], places: [], drills: [], sizes: [], notes: [], stroke: 0 },
});

/** Speed and feed of a step, and what the fineness of its chips asks. */
export function fedStep(
  making: Making,
  cut: FedCut,
  wheel: Parameters<typeof speedAndFeed>[1],
): { readonly fed: Fed; readonly chips: string[] } {
  const { job, findings, step } = making;
  const fed = speedAndFeed(cut, wheel, job, findings);
  return { fed, chips: chipNotes(job, step.do, fed.published, findings.machine.units) };
}

/** The bench as this tool finds it: another one takes every zero away. */
export const benchFor = ({ bench }: Making, tool: string): Bench => (bench.tool === tool ? bench : { tool });

/** The zero that still holds, or a new one. */
export const zeroOr = (held: Zero | undefined, fresh: Zero | undefined): { zero?: Zero; touched: Zero[] } =>
  held ? { zero: held, touched: [] } : { ...(fresh && { zero: fresh }), touched: fresh ? [fresh] : [] };

/** A place along the work by the wheel that measures lengths. */
export function placeAlong(zero: Zero | undefined, what: "begin" | "stop" | "plunge", at: number): Made["places"] {
  const reading = zero && readingAt(zero.wheel, at - zero.at);
  return zero === undefined || reading === undefined ? [] : [{ what, wheel: zero.wheel, at, reading }];
}

/** The zero of lengths at the free end as it now is, faced or not. */
export const endZero = ({ wheels: { along }, stage }: Making): Zero | undefined =>
  along && { wheel: along, of: "end", at: endsOf(stage.before).from };
