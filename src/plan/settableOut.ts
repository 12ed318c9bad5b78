import type { Units } from "../machine/machine.js";
import { roundIn } from "../quantity/length.js";

/** Nobody lets a bar stand out more finely by a rule, mm: half millimetres and hundredths of an inch are on it. */
const OUT_STEP = roundIn(0.5, 0.01);

/** So far out at least, as it can be set. */
export const settableOut = (mm: number, units: Units): number =>
  Math.ceil(mm / OUT_STEP[units] - 1e-6) * OUT_STEP[units];

/** So far out at most. */
export const settableWithin = (mm: number, units: Units): number =>
  Math.floor(mm / OUT_STEP[units] + 1e-6) * OUT_STEP[units];
