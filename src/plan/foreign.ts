import { usesOf } from "../findings/uses.js";
import { isHoleStep, type Job } from "../job/job.js";
import type { Machine } from "../machine/machine.js";
import type { Finding } from "./finding.js";

/** Why a machine cannot be asked for a job at all; empty where it can. */
export function foreignFindings(job: Job, machine: Pick<Machine, "units" | "kind">): Finding[] {
  if (job.unitsLeftOpen && machine.units !== "mm")
    return [
      {
        ...{ kind: "refused", code: "units-open" },
        what: "the job does not say its units, and the machine's file is in inches",
        remedy: "add  units: in  to the job, or  units: mm",
      },
    ];
  if (usesOf(machine).includes("turning")) return [];
  return job.steps.flatMap((one, step): Finding[] =>
    isHoleStep(one)
      ? []
      : [
          {
            ...{ kind: "refused", code: "not-on-a-drill", step },
            what: `a drill cannot "${one.do}"`,
            remedy: "it drills, reams, taps, and breaks the edge of a hole (chamfer, side: bore)",
          },
        ],
  );
}
