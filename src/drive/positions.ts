import type { Drive, Stage, Step } from "../machine/machine.js";
import { say } from "../words/say.js";
import type { Position } from "./finding.js";
import { ratio } from "./ratio.js";

/** Every way through the drive: one step from each stage, as many as the product of their steps; the last stage changes
 *  first. A stage without a choice adds nothing to the name; where no stage offers one, the position is named "only". */
export function positions(drive: Drive): Position[] {
  return waysThrough(drive.stages).map((steps) => {
    const labels = steps.filter((_, i) => offersChoice(drive.stages[i] as Stage)).map((step) => step.label);
    return {
      name: labels.length === 0 ? say("speed tree.only position") : labels.join(" "),
      labels,
      steps,
      ratio: ratio(steps),
    };
  });
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
