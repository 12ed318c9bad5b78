import type { Drive, Stage, Step } from "../machine/machine.js";
import { say } from "../words/say.js";
import type { Position } from "./finding.js";
import { ratio } from "./ratio.js";

/** Every way through the drive: one step from each stage, as many as the product of their steps; the last stage changes
 *  first. A stage without a choice adds nothing to the name; where no stage offers one, the position is named "only". */
export function positions(drive: Drive): Position[] {
  return waysThrough(drive.stages).map((steps) => {
    const chosen = steps.filter((_, i) => offersChoice(drive.stages[i] as Stage));
    const labels = chosen.map((step) => step.label);
    return {
      name: labels.length === 0 ? say("speed tree.only position") : calledBy(chosen),
      labels,
      steps,
      ratio: ratio(steps),
    };
  });
}

/** Belts first, where the hand lays them; then what it shifts: on every sheet as in the cover. Short labels stand side by side; names of
 *  several words would run together, and have a sign between them that a keyboard has. */
export function calledBy(chosen: readonly Step[]): string {
  const labels = [true, false]
    .flatMap((belts) => chosen.filter(({ kind }) => (kind === "belt") === belts))
    .map(({ label }) => label);
  return labels.join(labels.some((label) => /\s/.test(label)) ? " + " : " ");
}

function offersChoice(stage: Stage): boolean {
  return stage.steps.length > 1;
}

function waysThrough(stages: readonly Stage[]): Step[][] {
  return stages.reduce<Step[][]>(
    (ways, stage) => ways.flatMap((way) => stage.steps.map((step) => [...way, step])),
    [[]],
  );
}
