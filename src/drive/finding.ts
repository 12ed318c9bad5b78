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
  /** The highest that may be true at the motor's fastest: what every limit is tested against. By ratio alone the motor's
   *  no-load speed, and never less than a doubtful reading. */
  readonly highestRpm: number;
  /** `measured` by tachometer; `slip`: by ratio less the slip found at other positions; `ratio`: by ratio alone; `unknown`:
   *  every reading contradicts the file, so that the ratio, which `rpm` then is, must not be taken for the speed. */
  readonly from: "measured" | "slip" | "ratio" | "unknown";
  /** By ratio alone, without slip, at the motor's fastest. */
  readonly byRatioRpm: number;
  /** 1 − measured / by ratio, where this position was measured. */
  readonly slip?: number;
  /** Readings taken here that serve nothing, rpm. */
  readonly doubtful?: readonly number[];
};

/** The readings of one position that cannot all be true, or cannot be true here. */
export type DoubtfulReading = {
  readonly name: string;
  readonly rpms: readonly number[];
  /** By the other readings where `why` is `wild`, else by ratio alone. */
  readonly expectedRpm: number;
  readonly why: "contradict one another" | "too fast" | "too slow" | "wild";
  /** Place in the file's list of the one that is furthest off. */
  readonly reading: number;
};

/** A step whose readings agree with one another and not with the file: as many times the speed by ratio. */
export type StrayStep = Astray & { readonly name: string };

/** Every reading is off in one direction, by more than a motor and its belts can be; times the speed by ratio. */
export type Astray = { readonly least: number; readonly most: number };

/** `reading`: place in the file's list of the reading that is meant; absent where it is the motor or a pulley. `factor`: how
 *  many times what was expected. */
export type DriveRemark = { readonly what: string; readonly reading?: number; readonly factor?: number };

export type DriveFinding = {
  /** Slowest first. */
  readonly speeds: readonly SpeedFinding[];
  /** Mean slip over the measured positions, doubtful readings left out; absent where none was measured. */
  readonly slip?: number;
  /** Slip of each belt, as far as the readings tell them apart; absent where none was measured. */
  readonly stageSlips?: readonly StageSlip[];
  /** What the readings cannot mean, in words. */
  readonly remarks?: readonly DriveRemark[];
  readonly doubtful?: readonly DoubtfulReading[];
  /** Steps that are not what the file says: no speed through them is known. */
  readonly strays?: readonly StrayStep[];
  readonly astray?: Astray;
};
