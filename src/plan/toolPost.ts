import { say } from "../words/say.js";
import type { PlannedStep } from "./plannedStep.js";

/** Whether a step sets a tool in the tool post by a zero of its own: drills, centre drills and countersinks are held by the
 *  tailstock or the quill, and leave the post alone. */
export const setsThePost = ({ zeros, tool, stage: { step } }: Pick<PlannedStep, "zeros" | "tool" | "stage">): boolean =>
  zeros.some(({ of }) => of !== "mouth" && of !== "tip") &&
  !(step.do === "chamfer" && tool === say("plan.countersink"));

/** Faces, turns and shoulders without being taken out. */
export const knife = (): string => say("plan.knife tool");
