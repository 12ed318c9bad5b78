import type { Job } from "../job/job.js";
import type { Machine } from "../machine/machine.js";
import { asGiven } from "../machine/written.js";

/** Writes a length, mm, in the plan's words: as the job gives it, otherwise in the machine's unit. */
export type Show = (mm: number) => string;

export const showIn = ({ units }: Machine, { written }: Pick<Job, "written">): Show => {
  const sizes = { units, ...(written && { written }) };
  return (mm) => asGiven(mm, sizes);
};
