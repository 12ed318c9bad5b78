import { burns } from "../findings/chipFire.js";
import type { Job } from "../job/job.js";
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
export function compromises(steps: readonly PlannedStep[], job: Pick<Job, "material">): Compromise[] {
  // Where fine chips burn, speed and feed belong together.
  if (burns(job.material)) return [];
  const positions = steps.map(positionOf);
  const asPlanned = beltChanges(positions);
  const powered = steps.filter((step) => positionOf(step) !== undefined);
  const slowest = powered.reduce<PlannedStep | undefined>(
    (least, step) => (least === undefined || (step.speed?.rpm ?? 0) < (least.speed?.rpm ?? 0) ? step : least),
    undefined,
  );
  const all =
    slowest &&
    offer(
      powered.filter((step) => positionOf(step) !== positionOf(slowest)),
      slowest,
      asPlanned,
      positions,
      steps,
    );
  if (all) return [all];
  return powered.flatMap((step, place) => {
    const beside = [powered[place - 1], powered[place + 1]].filter(
      (one) => one !== undefined && positionOf(one) !== positionOf(step),
    );
    const [best] = beside
      .flatMap((one) => (one === undefined ? [] : (offer([step], one, asPlanned, positions, steps) ?? [])))
      .sort((a, b) => b.saved - a.saved || a.more - b.more);
    return best ? [best] : [];
  });
}

function offer(
  moved: readonly PlannedStep[],
  like: PlannedStep,
  asPlanned: number,
  positions: readonly (string | undefined)[],
  steps: readonly PlannedStep[],
): Compromise | undefined {
  const position = positionOf(like);
  const rpm = like.speed?.rpm;
  if (position === undefined || rpm === undefined || moved.length === 0) return undefined;
  if (moved.some(({ speed }) => (speed?.rpm ?? 0) < rpm)) return undefined;
  // Its thin tip breaks where it is run slowly.
  if (moved.some(({ stage }) => stage.step.do === "centre drill")) return undefined;
  const saved =
    asPlanned -
    beltChanges(positions.map((own, place) => (moved.includes(steps[place] as PlannedStep) ? position : own)));
  const more = moved.reduce(
    (sum, step) => sum + (cuttingMinutes(step, rpm) ?? Number.POSITIVE_INFINITY) - (cuttingMinutes(step) ?? 0),
    0,
  );
  return saved > 0 && more <= saved * HANDLING.belt ? { steps: moved, position, rpm, more, saved } : undefined;
}
