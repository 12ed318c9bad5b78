import { trimmed } from "../quantity/format.js";
import type { Graduation } from "./finding.js";

/** Every numbered mark is of the first rank.
 *  Marks at whole multiples of `step` from `from` to `to` inclusive, long ones at every `long`, middling at every
 *  `middle`, numbers at every `numbered` steps, which count in `per` (what a number 1 stands for). `angle` is the place
 *  along the scale in the unit of step: millimetres or radians. `step` > 0. */
export function stepMarks(plan: {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly long: number;
  readonly middle: number;
  readonly numbered: number;
  readonly per: number;
  /** Numbers without their sign, as on both sides of a zero. */
  readonly unsigned?: boolean;
  /** Of the longest mark, at so many steps from zero. */
  readonly part?: (step: number) => number;
}): Graduation[] {
  const first = Math.ceil(plan.from / plan.step - 1e-9);
  const last = Math.floor(plan.to / plan.step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const step = first + index;
    const value = step * plan.step;
    const shown = plan.unsigned ? Math.abs(value) : value;
    return {
      angle: value,
      rank: step % plan.long === 0 || step % plan.numbered === 0 ? 1 : step % plan.middle === 0 ? 2 : 3,
      value,
      ...(plan.part && { part: plan.part(step) }),
      ...(step % plan.numbered === 0 && { label: trimmed(shown / plan.per, 4) }),
    };
  });
}
