import type { Stage } from "./machine.js";
import type { Path } from "./problem.js";

/** A motor, of one speed or of several. */
export const motorPath: Path = ["drive", "motor"];

const isMotor = (stage: Stage | undefined): boolean => stage?.steps[0]?.kind === "motor";

/** Where a stage stands in the file: the speeds of a motor that has several are a stage too, and none of the file's list. */
export const stagePath = (stages: readonly Stage[], index: number): Path => [
  "drive",
  "stages",
  index - (isMotor(stages[0]) ? 1 : 0),
];

/** Where one of its steps stands. */
export const stepPath = (stages: readonly Stage[], index: number, place: number): Path =>
  isMotor(stages[index]) ? motorPath : [...stagePath(stages, index), "steps", place];
