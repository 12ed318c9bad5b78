import type { Step } from "../machine/machine.js";

/** One choice of step in every stage, and the spindle speed it gives. */
export type Position = {
  /** Labels of the chosen steps of every stage that offers a choice, motor end first, joined by a space: "A open". */
  readonly name: string;
  readonly labels: readonly string[];
  /** The chosen step of every stage, motor end first. */
  readonly steps: readonly Step[];
  /** Spindle speed ÷ motor speed, without slip. */
  readonly ratio: number;
};

/** Slip of one belt stage, or of several that no reading tells apart (both always carry the power). */
export type StageSlip = {
  readonly stages: readonly string[];
  /** All of them together, a fraction. */
  readonly slip: number;
};

export type SpeedFinding = {
  readonly position: Position;
  /** The speed to print. For a variable motor: at its fastest; `slowestRpm` at its slowest. */
  readonly rpm: number;
  readonly slowestRpm: number;
  /** `measured` by tachometer; `slip`: by ratio less the slip found at other positions; `ratio`: by ratio alone. */
  readonly from: "measured" | "slip" | "ratio";
  /** By ratio alone, without slip, at the motor's fastest. */
  readonly byRatioRpm: number;
  /** 1 − measured / by ratio, where this position was measured. */
  readonly slip?: number;
};

export type DriveFinding = {
  /** Slowest first. */
  readonly speeds: readonly SpeedFinding[];
  /** Mean slip over the measured positions, wild readings left out; absent where none was measured. */
  readonly slip?: number;
  /** Slip of each belt, as far as the readings tell them apart; absent where none was measured. */
  readonly stageSlips?: readonly StageSlip[];
  /** What the readings cannot mean, in words. */
  readonly remarks?: readonly string[];
};
