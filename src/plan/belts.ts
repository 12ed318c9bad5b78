import { burns } from "../findings/chipFire.js";
import { fastestAllowed } from "../findings/limits.js";
import type { Job } from "../job/job.js";
import type { Limits, Machine } from "../machine/machine.js";
import { beltChanges } from "./beltChanges.js";
import { cuttingMinutes, HANDLING } from "./minutes.js";
import type { PlannedStep } from "./plannedStep.js";

export const positionOf = ({ byHand, speed }: PlannedStep): string | undefined =>
  byHand ? undefined : speed?.speed?.position.name;

/** Steps at a slower position than theirs, to save going under the cover. */
export type Compromise = {
  readonly steps: readonly PlannedStep[];
  readonly position: string;
  readonly rpm: number;
  /** More under the tool for one part, minutes. */
  readonly more: number;
  /** Belt changes that fall away for one part. */
  readonly saved: number;
};

/** Slower is always safe, but takes longer: offered where one part loses less by it than its belt changes take. First all steps at
 *  one position, else single steps at that of a step beside them. */
export function compromises(
  steps: readonly PlannedStep[],
  job: Pick<Job, "material">,
  { limits }: Pick<Machine, "limits">,
): Compromise[] {
  // Where fine chips burn, speed and feed belong together.
  if (burns(job.material)) return [];
  const positions = steps.map(positionOf);
  const all: AsPlanned = { steps, positions, changes: beltChanges(positions), limits };
  const powered = steps.filter((step) => positionOf(step) !== undefined);
  const slowest = powered.reduce<PlannedStep | undefined>(
    (least, step) => (least === undefined || (step.speed?.rpm ?? 0) < (least.speed?.rpm ?? 0) ? step : least),
    undefined,
  );
  const together =
    slowest &&
    offer(
      powered.filter((step) => positionOf(step) !== positionOf(slowest)),
      slowest,
      all,
    );
  if (together) return [together];
  return powered.flatMap((step, place) => {
    const beside = [powered[place - 1], powered[place + 1]].filter(
      (one) => one !== undefined && positionOf(one) !== positionOf(step),
    );
    const [best] = beside
      .flatMap((one) => (one === undefined ? [] : (offer([step], one, all) ?? [])))
      .sort((a, b) => b.saved - a.saved || a.more - b.more);
    return best ? [best] : [];
  });
}

type AsPlanned = {
  readonly steps: readonly PlannedStep[];
  readonly positions: readonly (string | undefined)[];
  readonly changes: number;
  readonly limits: Limits;
};

function offer(
  moved: readonly PlannedStep[],
  like: PlannedStep,
  { steps, positions, changes, limits }: AsPlanned,
): Compromise | undefined {
  const position = positionOf(like);
  const speed = like.speed?.speed;
  if (position === undefined || speed === undefined || moved.length === 0) return undefined;
  // A variable motor is turned up as far as all of them bear; any other has the one speed.
  const rpm = Math.min(fastestAllowed(speed, limits) ?? 0, ...moved.map((step) => step.speed?.rpm ?? 0));
  if (rpm < speed.slowestRpm * (1 - 1e-12)) return undefined;
  // Its thin tip breaks where it is run slowly.
  if (moved.some(({ stage }) => stage.step.do === "centre drill")) return undefined;
  const saved =
    changes -
    beltChanges(positions.map((own, place) => (moved.includes(steps[place] as PlannedStep) ? position : own)));
  const more = moved.reduce(
    (sum, step) => sum + (cuttingMinutes(step, rpm) ?? Number.POSITIVE_INFINITY) - (cuttingMinutes(step) ?? 0),
    0,
  );
  return saved > 0 && more <= saved * HANDLING.belt ? { steps: moved, position, rpm, more, saved } : undefined;
}
