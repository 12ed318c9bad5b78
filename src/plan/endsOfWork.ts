import type { PlannedStep } from "./plannedStep.js";

/** The steps with one end of the work free, then those with the other: all parts come so far before the first goes on. */
export function endsOfWork<S extends Pick<PlannedStep, "stage">>(steps: readonly S[]): S[][] {
  const ends: S[][] = [];
  for (const step of steps)
    if (ends.length === 0 || step.stage.step.do === "turn round") ends.push([step]);
    else ends.at(-1)?.push(step);
  return ends;
}
