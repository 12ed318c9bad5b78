import type { Findings } from "../../findings/findings.js";
import { type Plan, planOf } from "../../plan/plan.js";
import { LONG_POSITION, signedBeyond } from "../shared/stepSigns.js";

type Made = { readonly plan: Plan; readonly beltKey: string };
const made = new WeakMap<Findings, Made>();

/** The plan of the job that a sheet is about, made once for all blocks of it; undefined without a job. Belts with long names are called
 *  in it as on the belt card. */
export const thePlan = (findings: Findings): Plan | undefined => madeOf(findings)?.plan;

/** What the signs of its belts stand for; empty where they have their names. */
export const beltKeyOf = (findings: Findings): string => madeOf(findings)?.beltKey ?? "";

function madeOf(findings: Findings): Made | undefined {
  const { job } = findings;
  if (job === undefined) return undefined;
  const known = made.get(findings);
  if (known !== undefined) return known;
  const { findings: signed, key: beltKey } = signedBeyond(findings, LONG_POSITION);
  const one = { plan: planOf(job, signed), beltKey };
  made.set(findings, one);
  return one;
}
