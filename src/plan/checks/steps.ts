import type { Findings } from "../../findings/findings.js";
import type { Job } from "../../job/job.js";
import type { Check, Finding } from "../finding.js";
import type { Stage } from "../stage.js";
import { showIn } from "../words.js";
import { holdingCheck } from "./holding.js";
import { madeBeforeCheck } from "./madeBefore.js";
import { metalCheck } from "./metal.js";
import { threadingCheck } from "./threading.js";

const checks: readonly Check[] = [holdingCheck, metalCheck, madeBeforeCheck, threadingCheck];

/** What stands against the steps of a job as they follow each other, whatever wheels and speeds the machine has. */
export function stepFindings(stages: readonly Stage[], job: Job, findings: Findings): Finding[] {
  const show = showIn(findings.machine, job);
  return stages.flatMap((stage, place) => {
    const checked = { stage, earlier: stages.slice(0, place), later: stages.slice(place + 1), job, findings, show };
    return checks.flatMap((check) => check(checked).map((found) => ({ ...found, step: stage.index })));
  });
}
