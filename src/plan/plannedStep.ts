import type { FeedRange } from "../cutting/feeds.js";
import type { SpeedChoice } from "../cutting/finding.js";
import type { HandFeed } from "../cutting/handFeed.js";
import type { HandwheelFinding } from "../findings/findings.js";
import type { Pass } from "./passes.js";
import type { Stage } from "./stage.js";
import type { Reading, Zero } from "./zero.js";

/** `size`: the diameter that the pass leaves, or for a face the place along the work; mm. */
export type SizedPass = Pass & { readonly size: number };

/** Where a slide begins, stops or plunges, along the work or into it. */
export type Place = {
  readonly what: "begin" | "stop" | "plunge" | "depth";
  readonly wheel: HandwheelFinding;
  /** Along the work, mm. */
  readonly at: number;
  readonly reading: Reading;
};

/** A size that the part is to have, and what the plan can promise of it; mm. */
export type PlannedSize = {
  readonly what: "diameter" | "length" | "depth" | "small end" | "large end";
  readonly aim: number;
  /** Where a tolerance was given. */
  readonly least?: number;
  readonly most?: number;
  /** The most by which it may be off, either way; absent where nothing says how good the feed is. */
  readonly doubt?: number;
  /** That holds where it is dialled by the place of a worn slide. */
  readonly byRule?: true;
  /** The most by which two parts differ that are cut one after the other to the same readings. */
  readonly alike?: number;
};

/** One drill of several that come after each other; mm. */
/** `name`: as it is found in its box. */
export type DrillStage = {
  readonly diameter: number;
  readonly depth: number;
  readonly name: string;
  /** Its own feed in print, and by the handwheel: a thin drill bears less than a thick one. */
  readonly published?: FeedRange;
  readonly feed?: HandFeed;
};

/** Which zeros are touched off anew on every part after the first. */
export type TouchedAnew = {
  /** For diameters: the tool was changed meanwhile, or a slide swung. */
  readonly across: boolean;
  /** For lengths: that too, or the blank stands elsewhere. */
  readonly along: boolean;
};

/** One step of a job on one machine. */
export type PlannedStep = {
  readonly stage: Stage;
  /** In the order of work, from 1. */
  readonly number: number;
  readonly title: string;
  readonly tool: string;
  /** The spindle is turned by hand. */
  readonly byHand: boolean;
  readonly speed?: SpeedChoice;
  /** The step beside it at whose belt it goes, more slowly than it would bear. */
  readonly beltOf?: number;
  /** See `Fed`. */
  readonly aboveAim?: true;
  /** Feed per revolution in print. */
  readonly published?: FeedRange;
  /** By the handwheel that feeds the cut. */
  readonly feed?: HandFeed;
  readonly feedWheel?: string;
  /** What is done before anything is touched. */
  readonly first: readonly string[];
  /** To be touched off before it. */
  readonly zeros: readonly Zero[];
  /** Set where a slide then stands, after it. */
  readonly zerosAfter: readonly Zero[];
  /** Sets the depth of each pass, counted from `depthZero`. */
  readonly depthWheel?: HandwheelFinding;
  readonly depthZero?: Zero;
  readonly passes: readonly SizedPass[];
  readonly places: readonly Place[];
  readonly drills: readonly DrillStage[];
  readonly sizes: readonly PlannedSize[];
  readonly notes: readonly string[];
  /** Which of its zeros every part after the first touches off anew. */
  readonly anew: TouchedAnew;
  /** How far the tool goes under power in one pass, mm, for the time. */
  readonly stroke: number;
};

/** What a step adds to the plan; the rest is the same for all. */
export type Made = Omit<PlannedStep, "stage" | "number" | "anew">;
