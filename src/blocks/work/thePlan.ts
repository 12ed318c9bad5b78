import type { Findings } from "../../findings/findings.js";
import { type Plan, planOf } from "../../plan/plan.js";

const made = new WeakMap<Findings, Plan>();

/** The plan of the job that a sheet is about, made once for all blocks of it; undefined without a job. */
export function thePlan(findings: Findings): Plan | undefined {
  const { job } = findings;
  if (job === undefined) return undefined;
  const plan = made.get(findings) ?? planOf(job, findings);
  made.set(findings, plan);
  return plan;
}
