import type { Limits } from "./machine.js";

/** The lower of the chuck's and the spindle's limit, rpm; infinite where the file gives neither. */
export const limitRpm = ({ chuckRpm, spindleRpm }: Limits): number =>
  Math.min(chuckRpm ?? Number.POSITIVE_INFINITY, spindleRpm ?? Number.POSITIVE_INFINITY);
