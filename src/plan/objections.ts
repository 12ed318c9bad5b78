import type { Findings } from "../findings/findings.js";
import type { Job } from "../job/job.js";
import type { PlannedStep } from "./plannedStep.js";
import { shown } from "./words.js";

/** Bar that stands out further than this many diameters bends and chatters. Common practice. */
const slender = 4;

export function barObjections({ bar, steps }: Job): string[] {
  const reach = Math.max(
    0,
    ...steps.map((step) => ("length" in step ? step.length + (step.do === "part" ? step.blade : 0) : 0)),
  );
  return [
    ...(!bar.supported && bar.out > slender * bar.diameter
      ? [
          `The bar stands out ${shown(bar.out)}, more than ${slender} times its diameter, with nothing at its free end: let it out less or hold it with a centre.`,
        ]
      : []),
    ...(reach > bar.out
      ? [`A step reaches ${shown(reach)} along the work, but the bar stands out only ${shown(bar.out)}.`]
      : []),
  ];
}

/** What of one step is beyond the machine, or beyond what its file tells. */
export function stepObjections(planned: PlannedStep, job: Job, { drive, machine }: Findings): string[] {
  const { step, depthWheel, lengthWheel, speed } = planned;
  const found: string[] = [];
  const deepest = planned.passes.at(-1)?.total ?? 0;
  if (depthWheel?.handwheel.travel !== undefined && deepest > depthWheel.handwheel.travel)
    found.push(beyond(deepest, depthWheel.handwheel.name, depthWheel.handwheel.travel));
  if (planned.passes.length > 0 && depthWheel === undefined)
    found.push("no handwheel with a feed sets this depth: dial readings cannot be told.");
  const long =
    "length" in step
      ? step.length + (step.do === "part" ? step.blade : 0)
      : step.do === "drill" || step.do === "ream"
        ? step.depth
        : 0;
  if (lengthWheel?.handwheel.travel !== undefined && long > lengthWheel.handwheel.travel)
    found.push(beyond(long, lengthWheel.handwheel.name, lengthWheel.handwheel.travel));
  if (planned.byHand) return found;
  if (drive === undefined) return [...found, "the file has no drive: the speed is yours to choose, slow first."];
  if (speed === undefined) return [...found, `no cutting speed is known for ${job.material} with ${job.tool}.`];
  if (speed.speed === undefined)
    found.push(
      `even the slowest position is too fast for this diameter${machine.limits.chuckRpm === undefined ? "" : " or beyond the chuck's limit"}: do not run it.`,
    );
  return found;
}

const beyond = (needed: number, wheel: string, travel: number): string =>
  `needs ${shown(needed)} of the ${wheel.toLowerCase()}, which travels ${shown(travel)}.`;
