import { powerOff } from "../findings/powerOff.js";
import type { Job } from "../job/job.js";
import type { Machine } from "../machine/machine.js";
import { say } from "../words/say.js";
import { positionOf } from "./belts.js";
import { endsOfWork } from "./endsOfWork.js";
import type { PlannedStep } from "./plannedStep.js";

/** Part by part the belt lies, when the second part is begun, where the last step of the first part left it: the first step that needs
 *  it says where it goes back to. So at each end of the work, since all parts come so far before any goes on. */
export function withBeltBack(
  steps: readonly PlannedStep[],
  { parts, batch }: Pick<Job, "parts" | "batch">,
  machine: Pick<Machine, "drive">,
): PlannedStep[] {
  if (parts < 2 || batch === "operation") return [...steps];
  return endsOfWork(steps).flatMap((end) => {
    const belted = end.filter((step) => positionOf(step) !== undefined);
    const [first, last] = [belted[0], belted.at(-1)].map((step) => step && positionOf(step));
    if (first === undefined || last === undefined || first === last) return end;
    const note = say("plan.belt back", { position: first, last, off: powerOff(machine) });
    return end.map((step) => (step === belted[0] ? { ...step, notes: [note, ...step.notes] } : step));
  });
}
