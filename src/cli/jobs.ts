import type { Findings } from "../findings/findings.js";
import type { Job, Place } from "../job/job.js";
import { type JobReading, readJob } from "../job/read.js";
import type { Problem } from "../machine/problem.js";
import { type Finding, remedyInFile } from "../plan/finding.js";
import { foreignFindings } from "../plan/foreign.js";
import { isRefused, type Plan, planOf } from "../plan/plan.js";
import { type Io, Refusal, readText } from "./io.js";
import { report } from "./report.js";

/** A job with the file that it stands in, for messages. */
export type FiledJob = { readonly job: Job; readonly file: string };

/** A job file, with its problems; the job is absent when one is an error. */
export const readJobFile = (path: string): JobReading =>
  readJob(readText(path, "name a job file; witnessmark new --job pin.yaml writes one to fill in"));

/** Every job of a command line; undefined where one is faulty, which is reported. */
export function loadJobs(files: readonly string[], io: Io): FiledJob[] | undefined {
  const jobs: FiledJob[] = [];
  for (const file of files) {
    const { job, problems } = readJobFile(file);
    report(problems, file, io);
    if (job) jobs.push({ file, job });
  }
  return jobs.length < files.length ? undefined : jobs;
}

/** Refuses a job that this machine cannot be asked for at all. `path`: of the machine's file. */
export function refuseForeignJob({ job, file }: FiledJob, { machine }: Findings, path: string): void {
  const faults = foreignFindings(job, machine);
  if (faults.length === 0) return;
  const at = (step: number | undefined) => (step === undefined ? file : placeOf({ job, file }, step));
  throw new Refusal(faults.map(({ step, what, remedy }) => `${at(step)}: ${what} (${path}); ${remedy}`).join("\n"));
}

export type JudgedJob = FiledJob & { readonly plan: Plan; readonly refused: boolean };

/** The plan of a job, with what stands against it told on standard error, refusals first. */
export function judged(filed: FiledJob, findings: Findings, io: Io): JudgedJob {
  const plan = planOf(filed.job, findings);
  for (const finding of plan.findings) {
    const line = findingLine(finding, filed);
    io.err(io.colour ? `\u001b[${finding.kind === "refused" ? 31 : 33}m${line}\u001b[0m` : line);
  }
  return { ...filed, plan, refused: isRefused(plan) };
}

/** Where a step stands in its file; what is about the whole job stands at its beginning. */
const spotOf = ({ stepsAt }: Job, step: number | undefined): Place =>
  (step === undefined ? undefined : stepsAt?.[step]) ?? { line: 1, column: 1 };

const placeOf = ({ job, file }: FiledJob, step: number | undefined): string => {
  const { line, column } = spotOf(job, step);
  return `${file}:${line}:${column}`;
};

function findingLine(finding: Finding, filed: FiledJob): string {
  const { kind, step, what } = finding;
  const verb = step === undefined ? undefined : filed.job.steps[step]?.do;
  return `${placeOf(filed, step)}: ${kind}: ${verb === undefined ? "" : `step ${(step ?? 0) + 1}, ${verb}: `}${what}; ${remedyInFile(finding)}`;
}

/** What `check` shows of a job that is in order, or not. */
export function jobLines({ job, plan, refused, file }: JudgedJob): string[] {
  const { minutes, steps } = plan;
  const count = plan.findings.length;
  const time = minutes[job.batch];
  return [
    "",
    `${job.name} (${file}): ${steps.length} steps, ${job.parts === 1 ? "1 part" : `${job.parts} parts`}, ${job.material}`,
    refused
      ? "  refused: no plan is printed until that is mended"
      : `  ${count === 0 ? "nothing stands against it, as far as the files tell" : `${count} to take care of`}`,
    `  ${time.beltChanges === 1 ? "1 belt change" : `${time.beltChanges} belt changes`} and about ${Math.round(time.batch)} minutes ${job.parts === 1 ? "in all" : "for all parts"}, by the plan's own reckoning`,
  ];
}

/** For `check --json`: of a faulty file its problems, of a sound one what stands against it. */
export const faultyJob = (file: string, problems: readonly Problem[]) => ({
  name: null,
  file,
  refused: true,
  beltChanges: null,
  minutes: null,
  findings: problems.map(({ severity, line, column, code, what, remedy }) => ({
    kind: severity === "error" ? "fault" : "take care",
    step: null,
    ...{ line, column, code, message: `${what}; ${remedy}` },
  })),
});

export const jobSummary = ({ job, plan, refused, file }: JudgedJob) => ({
  name: job.name,
  file,
  refused,
  beltChanges: plan.beltChanges,
  minutes: plan.minutes[job.batch].batch,
  findings: plan.findings.map((finding) => {
    const { kind, step, code, what } = finding;
    const number = step === undefined ? null : step + 1;
    return { kind, step: number, ...spotOf(job, step), code, message: `${what}; ${remedyInFile(finding)}` };
  }),
});
