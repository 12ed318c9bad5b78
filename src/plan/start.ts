import { coolant } from "../cutting/materials.js";
import type { Findings } from "../findings/findings.js";
import { drivenBy } from "../findings/powerOff.js";
import type { Job } from "../job/job.js";
import type { Machine } from "../machine/machine.js";
import { say } from "../words/say.js";
import { isOnTheTable } from "./onTheTable.js";
import type { PlannedStep } from "./plannedStep.js";
import { setsThePost } from "./toolPost.js";

/** What is seen to before the first chip, in this order; each is ticked. Common practice throughout. */
export function beforeTheFirstChip(job: Job, steps: readonly PlannedStep[], { machine }: Findings): string[] {
  const drill = isOnTheTable(job, machine);
  const wet = coolant(job.material)?.words;
  const post = steps.some(setsThePost);
  const stops = steps.some(({ places }) => places.some(({ what }) => what === "stop"));
  const slides = drill ? say("plan.start slides drill") : say("plan.start slides");
  const held = drill ? say("plan.start held drill") : say("plan.start held");
  return [
    say("plan.start isolated", { still: standingStill(machine) }),
    slides,
    held,
    ...(post ? [say("plan.start tool")] : []),
    ...(stops && !drill ? [say("plan.start stops")] : []),
    ...(wet === undefined ? [] : [say("plan.start wet", { what: wet })]),
    say("plan.start belts"),
    say("plan.start clear"),
  ];
}

/** What keeps the spindle still: a plug that is out, or nobody at treadle or crank. */
export const standingStill = (machine: Machine): string => say(`plan.still ${drivenBy(machine)}`);

/** Told, never computed. */
export const beltSlip = (): string => say("plan.belt slip");
