import type { Findings } from "../findings/findings.js";
import type { Job } from "../job/job.js";
import type { Stage } from "./stage.js";
import type { Show } from "./words.js";

/** What stands against a job. `refused`: it breaks a tool, spoils the work or hurts; `take care`: it may be right, and must be
 *  minded. */
export type Finding = {
  readonly kind: "refused" | "take care";
  readonly code: string;
  /** Of the job's file; absent where it is about the whole. */
  readonly step?: number;
  readonly what: string;
  readonly remedy: string;
};

/** A finding of a step that is at hand. */
export type StepFinding = Omit<Finding, "step">;

export const refused = (code: string, what: string, remedy: string): StepFinding => ({
  ...{ kind: "refused", code, what, remedy },
});
export const takeCare = (code: string, what: string, remedy: string): StepFinding => ({
  ...{ kind: "take care", code, what, remedy },
});

/** What a check looks at. `earlier`: the stages before this one. */
export type Checked = {
  readonly stage: Stage;
  readonly earlier: readonly Stage[];
  readonly job: Job;
  readonly findings: Findings;
  readonly show: Show;
};

export type Check = (checked: Checked) => StepFinding[];
