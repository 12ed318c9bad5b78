import { endsOf, outsideOver, type Workpiece } from "../part/workpiece.js";

/** Nothing is known of what a job of holes is done on: a block as large as need be, mm each way. */
export const BLOCK = 1000;

export const isBlock = (work: Workpiece): boolean => {
  const { from, to } = endsOf(work);
  return outsideOver(work, from, to) >= BLOCK;
};
