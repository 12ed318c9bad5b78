import { diametersFor, type Use } from "../findings/uses.js";
import type { Machine } from "../machine/machine.js";

/** Sizes for which a student's sheet tells the belt, mm: a small one, a middling one and the largest. What is asked is of these, so
 *  that no other sheet is needed. */
export function learntSizes(use: Use, machine: Machine): number[] {
  const all = diametersFor(use, machine);
  const some = [all[1], all[Math.floor(all.length / 2)], all.at(-1)].filter((mm) => mm !== undefined);
  return [...new Set(some)];
}
