import type { Drive, Units } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import { stagePath } from "../machine/stagePath.js";
import { largestOf, smallestOf } from "../quantity/extremes.js";
import { trimmed } from "../quantity/format.js";
import { fromMm } from "../quantity/length.js";

/** Pulleys of a step pair add up to nearly as much on each step, since one belt runs on all. Part of the sum: what differs by more is
 *  no measuring slip, and no motor on slotted feet takes it up. Own choice. */
const UNLIKE = 0.1;

/** Stages of which one belt does not fit all steps, by the sums of their pulleys, mm: none where it may, or an idler takes it up. */
export function unfitBelts({ stages }: Pick<Drive, "stages">): { index: number; name: string; sums: number[] }[] {
  return stages.flatMap((stage, index) => {
    if ("idler" in stage && stage.idler) return [];
    const sums = stage.steps.flatMap((step) => (step.kind === "belt" ? [step.driver + step.driven] : []));
    if (sums.length < 2) return [];
    const [least, most] = [smallestOf(sums), largestOf(sums)];
    return most - least <= UNLIKE * most ? [] : [{ index, name: stage.name, sums }];
  });
}

/** The same said, each at its stage. */
export function beltSums(drive: Pick<Drive, "stages">, units: Units): Remark[] {
  return unfitBelts(drive).map(({ index, name, sums }): Remark => {
    const told = sums.map((sum) => trimmed(fromMm(sum, units), units === "mm" ? 1 : 3)).join(", ");
    return {
      severity: "warning",
      code: "belt-sums",
      path: stagePath(drive.stages, index),
      what: `one belt does not fit all steps of "${name}": driver and driven add up to ${told} ${units}`,
      remedy:
        "measure the pulley that makes the odd one again; where the shafts are moved or each step has its belt, mind the belt",
    };
  });
}
