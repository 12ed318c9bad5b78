import type { SpeedFinding } from "../drive/finding.js";

/** A recommended range of cutting speed with its source. */
export type CuttingSpeed = {
  readonly material: string;
  readonly tool: string;
  readonly operation: string;
  readonly slowest: number; // m/min
  readonly fastest: number; // m/min
  readonly sources: readonly string[];
  readonly confidence: "read" | "memory";
};

export type Verdict =
  | "in the band"
  /** No position lies in the band; the fastest one below it is taken. */
  | "slower than the band"
  /** Even the slowest position is faster than the band: none is recommended. */
  | "slowest is too fast"
  /** A faster position would be nearer the band, but lies beyond the chuck's or the spindle's limit. */
  | "held by a limit";

export type SpeedChoice = {
  readonly diameter: number;
  readonly band: CuttingSpeed;
  readonly verdict: Verdict;
  /** Absent when none can be recommended. */
  readonly speed?: SpeedFinding;
  /** Speed to run at: the position's, or for a variable motor what to set. Present whenever `speed` is. */
  readonly rpm?: number;
  /** What the chosen speed gives at that diameter. */
  readonly metresPerMinute?: number;
};
