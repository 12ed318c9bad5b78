import type { Job } from "../job/job.js";
import type { Machine } from "../machine/machine.js";
import { asGiven } from "../machine/written.js";
import { trimmedSize } from "../quantity/format.js";

/** Writes a size of the part, mm, in the plan's words: as the job gives it, in the job's unit, since that is what is stamped on
 *  the drill and stands on the drawing. What was computed and is no size of the part has no need of more than 2 places of a
 *  millimetre. */
export type Show = (mm: number, places?: number) => string;

export const showIn = ({ units: machines }: Machine, { units, written }: Pick<Job, "units" | "written">): Show => {
  const sizes = { units, ...(written && { written }) };
  const other = units !== machines;
  return (mm, places = 5) => {
    const own = asGiven(mm, sizes, places);
    const machine = trimmedSize(mm, machines, 3);
    return other && own !== machine ? `${own} (${machine})` : own;
  };
};
