import type { SpeedFinding } from "../drive/finding.js";
import type { Findings } from "../findings/findings.js";
import { fastestAllowed, measureFirst } from "../findings/limits.js";
import { withoutAlike } from "../findings/nearlyAlike.js";
import type { Job } from "../job/job.js";
import type { Limits } from "../machine/machine.js";
import { endsOfWork } from "./endsOfWork.js";
import type { PlannedStep } from "./plannedStep.js";

/** A variable motor turns the spindle as fast as a step bears at more than one position: nobody goes under the cover where the motor
 *  alone does it. Every step keeps its speed; of the positions that give it, those are taken between which the belt is moved least. */
export function withSharedPositions(
  steps: readonly PlannedStep[],
  { parts, batch }: Pick<Job, "parts" | "batch">,
  { drive, machine }: Pick<Findings, "drive" | "machine">,
): PlannedStep[] {
  // Of those that every sheet tells.
  const { speeds } = withoutAlike(drive?.speeds ?? [], machine.limits);
  if (speeds.every((speed) => !isVariable(speed))) return [...steps];
  const again = parts > 1 && batch === "part";
  // All parts come up to where the work is turned round: the belt goes back at each end of it.
  return (again ? endsOfWork(steps) : [steps]).flatMap((end) => sharedIn(end, speeds, machine.limits, again));
}

const isVariable = ({ rpm, slowestRpm }: SpeedFinding): boolean => slowestRpm < rpm;

/** `again`: after the last step comes the first. */
function sharedIn(
  steps: readonly PlannedStep[],
  speeds: readonly SpeedFinding[],
  limits: Limits,
  again: boolean,
): PlannedStep[] {
  const able = steps.map((step) => ableFor(step, speeds, limits));
  const belted = able.filter((some) => some.length > 0);
  const firsts = again ? (belted[0] ?? []) : [undefined];
  const [best] = firsts
    .map((first) => leastMoved(belted, first))
    .sort((a, b) => a.changes - b.changes || a.share - b.share);
  const chosen = [...(best?.speeds ?? [])];
  return steps.map((step, place): PlannedStep => {
    const speed = (able[place] ?? []).length > 0 ? chosen.shift() : undefined;
    return speed && step.speed ? { ...step, speed: { ...step.speed, speed } } : step;
  });
}

/** The positions that turn the spindle as fast as the step wants it: its own first. Of another that is not known well enough nobody
 *  expects to be sent to it. */
function ableFor(step: PlannedStep, speeds: readonly SpeedFinding[], limits: Limits): SpeedFinding[] {
  const { speed: own, rpm } = step.speed ?? {};
  if (step.byHand || own === undefined || rpm === undefined) return [];
  const others = speeds.filter(
    (speed) =>
      speed !== own &&
      speed.from !== "unknown" &&
      speed.doubtful === undefined &&
      !measureFirst(speed, limits) &&
      speed.slowestRpm <= rpm * (1 + 1e-9) &&
      (fastestAllowed(speed, limits) ?? 0) >= rpm * (1 - 1e-9),
  );
  return [own, ...others];
}

type Way = {
  readonly changes: number;
  /** Sum of the positions' fastest: the lower, the faster the motor turns, and the stronger it pulls. */
  readonly share: number;
  readonly speeds: readonly SpeedFinding[];
};

/** From step to step with the fewest changes; where it must begin, and come back to, at `first`. */
function leastMoved(able: readonly (readonly SpeedFinding[])[], first: SpeedFinding | undefined): Way {
  let ways: readonly Way[] = [{ changes: 0, share: 0, speeds: [] }];
  for (const [place, some] of able.entries()) {
    const here = place === 0 && first !== undefined ? [first] : some;
    ways = here.map((speed) => best(ways.map((way) => gone(way, speed))));
  }
  return best(first === undefined ? ways : ways.map((way) => ({ ...gone(way, first), speeds: way.speeds })));
}

function gone({ changes, share, speeds }: Way, to: SpeedFinding): Way {
  const last = speeds.at(-1);
  return {
    changes: changes + (last === undefined || last === to ? 0 : 1),
    share: share + to.rpm,
    speeds: [...speeds, to],
  };
}

const best = (ways: readonly Way[]): Way =>
  ways.reduce((least, way) =>
    way.changes < least.changes || (way.changes === least.changes && way.share < least.share) ? way : least,
  );
