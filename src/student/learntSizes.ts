import { diametersFor } from "../findings/drills.js";
import type { Use } from "../findings/uses.js";
import type { Machine } from "../machine/machine.js";

/** Sizes for which a student's sheet tells the belt, mm: a small one, a middling one and the largest. What is asked is of these, so
 *  that no other sheet is needed. */
export function learntSizes(use: Use, machine: Machine): number[] {
  const all = diametersFor(use, machine).toSorted((one, other) => one - other);
  // Not the very smallest, where there are others: it is often finer than any belt runs for.
  const small = all[Math.max(0, Math.min(1, all.length - 2))];
  const some = [small, all[Math.floor(all.length / 2)], all.at(-1)].filter((mm) => mm !== undefined);
  return [...new Set(some)];
}
