import { centreDrillUpTo } from "../part/centreHole.js";
import { LARGEST_FROM_THE_SOLID } from "../part/drillPoint.js";
import { threadNamed } from "../thread/thread.js";
import { isHolding, type Job, type JobStep } from "./job.js";

/** Centre drills that the file leaves open and that begin a hole: none makes a wider mouth than the first drill that follows, or that
 *  would wander in it; of one that is no wider than its thread a drill from the solid still finds the centre. One that only makes a seat for a centre is chosen by the work, when that is known. */
export const withPilots = (steps: readonly JobStep[], units: Job["units"]): JobStep[] =>
  steps.map((step, index) => {
    if (step.do !== "centre drill" || step.pilot !== undefined) return step;
    const later = steps.slice(index + 1);
    const { hole } = step;
    const mouth = mouthOf(hole === undefined ? later : later.filter((one) => "hole" in one && one.hole === hole));
    return mouth === 0 ? step : { ...step, pilot: centreDrillUpTo(mouth, units) };
  });

/** Of the hole that is made first after it, with its thread, before the work is held anew or the next hole begins: a wider mouth would
 *  let the first drill wander in it, and leave nothing to see its full diameter enter. */
function mouthOf(steps: readonly JobStep[]): number {
  let [mouth, staged] = [0, false];
  for (const step of steps) {
    if (isHolding(step) || step.do === "centre drill") break;
    if (step.do === "drill") {
      if (mouth > 0) break;
      // A large one goes in stages, of which the first is about a third.
      staged = step.diameter > LARGEST_FROM_THE_SOLID;
      mouth = staged ? step.diameter / 3 : step.diameter;
    }
    // The thin drill that goes first would find no centre in a mouth as wide as the thread.
    if (step.do === "tap" && !staged) mouth = Math.max(mouth, threadNamed(step.thread)?.major ?? 0);
    if (step.do === "ream" && mouth === 0) mouth = step.diameter;
  }
  return mouth;
}
