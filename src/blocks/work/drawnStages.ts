import type { JobStep } from "../../job/job.js";
import { isRefusedStep, type Plan } from "../../plan/plan.js";
import type { PlannedStep } from "../../plan/plannedStep.js";
import { type Stage, stagesOf } from "../../plan/stage.js";
import { partOf } from "./partFeatures.js";

/** A step as the drawing of the part shows it. */
export type DrawnStage = Pick<PlannedStep, "stage" | "number">;

/** What the part is drawn from. A refused cut may take away what sound steps make: then the part is drawn without such cuts.
 *  `left`: their numbers. */
export function drawnStages(plan: Plan): { readonly drawn: readonly DrawnStage[]; readonly left: readonly number[] } {
  const { job, steps } = plan;
  const refused = new Set(steps.filter((step) => isRefusedStep(plan, step)).map(({ stage }) => stage.index));
  const isLeft = ({ stage }: DrawnStage) => refused.has(stage.index) && cuts.includes(stage.step.do);
  const left = steps.filter(isLeft);
  if (left.length === 0) return { drawn: steps, left: [] };
  const kept = steps.filter((step) => !isLeft(step));
  const sound = stagesOf(
    job,
    kept.map(({ stage }) => stage.index),
  );
  const seen = (stages: readonly Stage[]) =>
    partOf(stages, String).features.filter(
      ({ stage }) => stage !== undefined && !refused.has(stages[stage]?.index ?? Number.NaN),
    ).length;
  return seen(sound) > seen(steps.map(({ stage }) => stage))
    ? {
        drawn: sound.map((stage, place) => ({ stage, number: kept[place]?.number ?? place + 1 })),
        left: left.map(({ number }) => number),
      }
    : { drawn: steps, left: [] };
}

/** Steps that take metal off; what faces, parts off and holds anew says where lengths count from. */
const cuts: readonly JobStep["do"][] = [
  "turn",
  "shoulder",
  "bore",
  "groove",
  "taper",
  "chamfer",
  "centre drill",
  "drill",
  "ream",
];
