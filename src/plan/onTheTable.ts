import { isDrill, usesOf } from "../findings/uses.js";
import type { Job } from "../job/job.js";
import type { Machine } from "../machine/machine.js";

/** Whether the part is clamped beneath the drill: on a drill always, and on a lathe that is stood on end for a job that says no bar,
 *  which is of holes alone. Its tailstock is then above, and no chuck turns the work. */
export const isOnTheTable = ({ bar }: Pick<Job, "bar">, machine: Pick<Machine, "kind">): boolean =>
  isDrill(machine) || (bar === undefined && usesOf(machine).includes("drilling"));
