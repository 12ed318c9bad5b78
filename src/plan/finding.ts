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
  /** In shop words, as paper says it: no keys of a file. */
  readonly remedy: string;
  /** The keys that put it right, for who has the file before him: as the terminal and the page say it. */
  readonly inFile?: string;
};

/** The remedy for who has the file before him. */
export const remedyInFile = ({ remedy, inFile }: Pick<Finding, "remedy" | "inFile">): string =>
  inFile === undefined ? remedy : `${remedy} (${inFile})`;

/** A finding of a step that is at hand. */
export type StepFinding = Omit<Finding, "step">;

const finding =
  (kind: Finding["kind"]) =>
  (code: string, what: string, remedy: string, inFile?: string): StepFinding => ({
    ...{ kind, code, what, remedy },
    ...(inFile !== undefined && { inFile }),
  });

export const refused = finding("refused");
export const takeCare = finding("take care");

/** What a check looks at. `earlier`, `later`: the stages before this one, and after it. */
export type Checked = {
  readonly stage: Stage;
  readonly earlier: readonly Stage[];
  readonly later: readonly Stage[];
  readonly job: Job;
  readonly findings: Findings;
  readonly show: Show;
};

export type Check = (checked: Checked) => StepFinding[];
