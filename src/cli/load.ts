import { compute } from "../findings/compute.js";
import type { Findings } from "../findings/findings.js";
import { remarks } from "../findings/remarks.js";
import type { Job } from "../job/job.js";
import type { Places, Problem } from "../machine/problem.js";
import { readMachine } from "../machine/read.js";
import { type Io, readText } from "./io.js";
import { report } from "./report.js";

export type Loaded = { readonly findings?: Findings; readonly problems: readonly Problem[]; readonly places: Places };

/** From a path to findings: reads, checks, computes. Findings are absent when the file holds an error. */
export async function load(path: string): Promise<Loaded> {
  const { machine, problems, places } = readMachine(await readText(path));
  if (machine === undefined) return { problems, places };
  const findings = compute(machine);
  const computed = remarks(findings).map(({ path, ...rest }) => ({ ...rest, ...places(path) }));
  const all = [...problems, ...computed].sort((a, b) => a.line - b.line || a.column - b.column);
  return all.some(({ severity }) => severity === "error")
    ? { problems: all, places }
    : { findings, problems: all, places };
}

/** A job file; its problems are reported, and undefined comes back when one is an error. */
export async function loadJob(path: string, io: Io): Promise<Job | undefined> {
  const { readJob } = await import("../job/read.js");
  const { job, problems } = readJob(await readText(path));
  report(problems, path, io);
  return job;
}
