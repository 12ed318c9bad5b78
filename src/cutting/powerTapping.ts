import type { CuttingSpeed } from "./finding.js";
import { isThreaded } from "./operations.js";

/** Turns of a thread one and a half diameters deep: 7 to 10 in the usual coarse ones, whatever their size. */
const TURNS = 9;
/** From the first thread until the spindle turns back: a hand on a switch, and a motor that must stop before it reverses. Common
 *  practice. Published speeds are for machines that reverse by themselves: at those a small thread is at its bottom in half a second. */
const SECONDS = 3;

/** So fast a hand reverses in time. */
export const handReversesRpm = (60 * TURNS) / SECONDS;

/** The fastest spindle, rpm, at which a tap or a die may be driven; infinite for other tools, and where the file's own figure rules. */
export const fastestThreadedRpm = ({ operation, nearest }: Pick<CuttingSpeed, "operation" | "nearest">): number =>
  isThreaded(operation) && nearest !== undefined ? handReversesRpm : Number.POSITIVE_INFINITY;
