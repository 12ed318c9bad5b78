import type { SpeedFinding } from "../drive/finding.js";
import type { SourceRange } from "./agreement.js";
import type { PublishedSpeed } from "./published/source.js";

/** A recommended range of cutting speed, of the sources that agree on it. */
export type CuttingSpeed = {
  readonly material: string;
  readonly tool: string;
  readonly operation: string;
  readonly slowest: number; // m/min
  readonly fastest: number; // m/min
  /** The most to choose, m/min: the middle of the range of the source that is gone by, or its upper end on a firm machine or
   *  of a row of one's own. */
  readonly most: number;
  /** The source that is gone by: the nearest to the cut, or the most cautious where the tool is at risk. Absent for a row of
   *  one's own. */
  readonly nearest?: string;
  /** Sources that contradict it by a factor of two or more: no part of the range. */
  readonly apart: readonly SourceRange[];
  readonly sources: readonly string[];
  readonly confidence: "read" | "memory";
  /** All rows that were found, before factors, those of sources apart too. Empty where a user's own row rules. */
  readonly rows: readonly PublishedSpeed[];
  /** What the rows were multiplied by, in words and numbers; empty where they stand as published. */
  readonly factors: readonly Factor[];
  /** Given where it goes by spindle speed whatever the diameter (knurling, wood); the m/min are then for one diameter. */
  readonly rpm?: { readonly slowest: number; readonly most: number };
};

export type Factor = {
  readonly what: string;
  readonly from: number;
  readonly to: number;
  readonly source: string;
  readonly confidence: "read" | "memory";
};

export type Verdict =
  | "in the band"
  /** No position lies in the band; the fastest one below it is taken. */
  | "slower than the band"
  /** Even the slowest position is faster than the band: none is recommended. */
  | "slowest is too fast"
  /** A faster position would be nearer the band, but lies beyond the chuck's or the spindle's limit. */
  | "held by a limit"
  /** Every reading contradicts the file: none is recommended. */
  | "no speed is known";

export type SpeedChoice = {
  readonly diameter: number;
  readonly band: CuttingSpeed;
  readonly verdict: Verdict;
  /** Which limit holds it, where one does. `hand`: faster, the hand would feed too finely for chips that burn, or
   *  reverse a tap too late. */
  readonly heldBy?: "chuck" | "spindle" | "hand";
  /** Absent when none can be recommended. */
  readonly speed?: SpeedFinding;
  /** Speed to run at: the position's, or for a variable motor what to set. Present whenever `speed` is. */
  readonly rpm?: number;
  /** What the chosen speed gives at that diameter. */
  readonly metresPerMinute?: number;
};
