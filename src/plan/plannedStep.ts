import type { FeedRange } from "../cutting/feeds.js";
import type { SpeedChoice } from "../cutting/finding.js";
import type { HandFeed } from "../cutting/handFeed.js";
import type { Setting } from "../dial/setting.js";
import type { HandwheelFinding } from "../findings/findings.js";
import type { JobStep } from "../job/job.js";
import type { Pass } from "./passes.js";

/** One step of a job on one machine. */
export type PlannedStep = {
  readonly step: JobStep;
  readonly title: string;
  readonly tool: string;
  /** The spindle is turned by hand. */
  readonly byHand: boolean;
  readonly speed?: SpeedChoice;
  /** Feed per revolution in print. */
  readonly published?: FeedRange;
  /** By the handwheel that feeds the cut. */
  readonly feed?: HandFeed;
  readonly feedWheel?: string;
  readonly passes: readonly Pass[];
  /** Sets the depth of each pass. */
  readonly depthWheel?: HandwheelFinding;
  /** Measures the length, to a stop. */
  readonly lengthWheel?: HandwheelFinding;
  readonly lengthSetting?: Setting;
  /** Diameter after the last cut; tolerance from end to end. */
  readonly wanted?: { readonly diameter: number; readonly tolerance?: number };
  readonly notes: readonly string[];
};
