import { isDrill, usesOf } from "../findings/uses.js";
import { movesByName } from "../findings/wheelNames.js";
import { isHoleStep, type Job } from "../job/job.js";
import type { Machine } from "../machine/machine.js";

/** Whether the part is clamped beneath the drill: on a drill always, and on a lathe that is stood on end for a job that is of holes alone: one that
 *  says no bar, or any where a quill is all that moves. Its tailstock is then above, and no chuck turns the work. */
export const isOnTheTable = (
  { bar, steps }: Pick<Job, "bar" | "steps">,
  machine: Pick<Machine, "kind" | "handwheels">,
): boolean =>
  isDrill(machine) ||
  (usesOf(machine).includes("drilling") &&
    (bar === undefined ||
      (onlyQuills(machine) &&
        steps.every((step) => isHoleStep(step) || (step.do === "chamfer" && step.side === "bore")))));

const onlyQuills = ({ handwheels }: Pick<Machine, "handwheels">): boolean =>
  handwheels.length > 0 && handwheels.every(({ moves, name }) => (moves ?? movesByName(name)) === "quill");
