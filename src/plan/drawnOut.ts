import type { Job } from "../job/job.js";

/** Parts cut one after the other from a bar that goes through the spindle: it gets shorter with each, so that no stop behind it tells
 *  where its end is. */
export const isDrawnOut = ({ bar, parts }: Pick<Job, "bar" | "parts">): boolean =>
  bar !== undefined && bar.length === undefined && parts > 1;
