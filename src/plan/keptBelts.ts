import { metresPerMinuteAt } from "../cutting/rates.js";
import { burns } from "../findings/chipFire.js";
import type { Job } from "../job/job.js";
import { beltChanges } from "./beltChanges.js";
import { positionOf } from "./belts.js";
import type { PlannedStep } from "./plannedStep.js";

/** Nobody goes under the cover for an edge that is broken in a few seconds: it is done at the belt of the step before it or after it,
 *  where that is slower and saves a change. */
export function withKeptBelts(steps: readonly PlannedStep[], job: Pick<Job, "material">): PlannedStep[] {
  // Where fine chips burn, speed and feed belong together.
  if (burns(job.material)) return [...steps];
  const kept = [...steps];
  for (const [place, step] of steps.entries())
    if (step.stage.step.do === "chamfer") kept[place] = atBeltBeside(step, place, kept);
  return kept;
}

function atBeltBeside(step: PlannedStep, place: number, all: readonly PlannedStep[]): PlannedStep {
  const own = step.speed;
  const changes = (one: PlannedStep) => beltChanges(all.with(place, one).map(positionOf));
  const isPowered = (other: PlannedStep) => positionOf(other) !== undefined;
  const beside = [all.slice(0, place).findLast(isPowered), all.slice(place + 1).find(isPowered)];
  const [best] = beside
    .flatMap((like): PlannedStep[] => {
      const { speed, rpm } = like?.speed ?? {};
      if (like === undefined || speed === undefined || rpm === undefined || own?.rpm === undefined) return [];
      if (rpm > own.rpm) return [];
      const metresPerMinute = metresPerMinuteAt(rpm, own.diameter);
      return [{ ...step, speed: { ...own, speed, rpm, metresPerMinute }, beltOf: like.number }];
    })
    .filter((kept) => changes(kept) < changes(step))
    .sort((a, b) => changes(a) - changes(b) || (b.speed?.rpm ?? 0) - (a.speed?.rpm ?? 0));
  return best ?? step;
}
