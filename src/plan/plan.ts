import type { CuttingSpeed, SpeedChoice } from "../cutting/finding.js";
import type { Setting } from "../turns/turns.js";
import type { PassDepth } from "./passes.js";
import type { Wheel } from "./wheels.js";

/** What carries a job through: first what stands in its way, then step by step what to set. */
export type Plan = {
  /** The machine cannot do it so: do not begin. */
  readonly cannot: readonly string[];
  /** It can, with care. */
  readonly mind: readonly string[];
  readonly steps: readonly PlannedStep[];
};

export type PlannedStep = {
  readonly title: string;
  readonly tool: string;
  /** Absent where the spindle is turned by hand, or where nothing is known. */
  readonly speed?: SpeedChoice;
  readonly band?: CuttingSpeed;
  readonly byHand?: boolean;
  /** What to count while feeding, for a cut and for the last. */
  readonly feeds: readonly { readonly what: string; readonly perRevolution: number; readonly count: string }[];
  readonly passes: readonly PlannedPass[];
  readonly across?: Wheel;
  /** How far to the stop, and by which handwheel. */
  readonly stop?: { readonly wheel: Wheel; readonly distance: number; readonly setting: Setting };
  /** Wanted size after the last cut, diameter mm, and its tolerance (full width). */
  readonly wanted?: { readonly diameter: number; readonly tolerance?: number };
  readonly notes: readonly string[];
};

export type PlannedPass = PassDepth & {
  /** Diameter that it leaves; absent when facing. */
  readonly diameter?: number;
  readonly setting: Setting;
  /** What the dial's numbers say; absent without a dial. */
  readonly reads?: number;
};
