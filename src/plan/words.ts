import type { Units } from "../machine/machine.js";
import { trimmed } from "../quantity/format.js";
import { fromMm } from "../quantity/length.js";

/** Writes a length, mm, in the plan's words and the machine's unit. */
export type Show = (mm: number) => string;

export const showIn =
  (units: Units): Show =>
  (mm) =>
    `${trimmed(fromMm(mm, units), units === "mm" ? 3 : 4)} ${units}`;
