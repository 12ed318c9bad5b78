import type { Units } from "../machine/machine.js";
import type { Written } from "../machine/written.js";
import type { DrillName } from "../quantity/drill.js";

/** A job as read: what is to be made, step by step; mm. Lengths along the work count from the finished face of the end that is free
 *  at that step. */
export type Job = {
  readonly name: string;
  /** True where the file gives bare numbers and no units: they were read as mm, which beside an inch machine is a guess. */
  readonly unitsLeftOpen?: boolean;
  /** Unit of its bare numbers. */
  readonly units: Units;
  /** How the file writes its sizes, where that is no plain number. */
  readonly written?: Written;
  /** Drills that it gives by the name stamped on them, by diameter. */
  readonly drillNames?: ReadonlyMap<number, DrillName>;
  readonly material: string;
  readonly tool: string;
  /** Absent where nothing is turned. */
  readonly bar?: Bar;
  readonly parts: number;
  /** Each step on all parts, or each part from its first step to its last. */
  readonly batch: Batch;
  /** How far every tool keeps from jaws, driver and centre. */
  readonly clear: number;
  /** A stop inside the spindle brings every blank out by the same length; what is parted off a bar once it is turned round. */
  readonly spindleStop: boolean;
  readonly steps: readonly JobStep[];
  /** Where each step stands in the job's file, for messages. */
  readonly stepsAt?: readonly Place[];
};

export type Place = { readonly line: number; readonly column: number };

export type Batch = "operation" | "part";

export const holds = ["chuck", "chuck and centre", "between centres"] as const;
export type Held = (typeof holds)[number];

/** `out`: free length from the end to the jaws, or to the driver between centres. */
export type Bar = {
  readonly diameter: number;
  readonly out: number;
  readonly held: Held;
  /** Of the blank; absent for a bar that goes through the spindle. */
  readonly length?: number;
  /** Of a tube. */
  readonly bore?: number;
};

/** Steps that a drill does as well as a lathe: an edge, where it is that of a hole. */
const forHoles: readonly JobStep["do"][] = ["centre drill", "drill", "ream", "tap"];
export const isHoleStep = ({ do: done, side }: { readonly do: string; readonly side?: unknown }): boolean =>
  forHoles.some((one) => one === done) || (done === "chamfer" && side === "bore");

/** Steps that hold the work anew and cut nothing. */
export const isHolding = (step: JobStep): step is Extract<JobStep, { do: "hold" | "turn round" }> =>
  step.do === "hold" || step.do === "turn round";

/** A diameter to come out at. `aim` lies in the middle between `least` and `most`, where a tolerance was given. `words`: as the
 *  drawing gives it, where that is more than a number. */
export type Wanted = {
  readonly aim: number;
  readonly least?: number;
  readonly most?: number;
  readonly words?: string;
};

/** Which hole a step is done in, where several lie beside each other in what is clamped. */
export type InHoles = {
  /** Steps of one name are of one hole. Absent at all steps or at none. */
  readonly hole?: string;
  /** How many alike; as many as before in that hole when absent. */
  readonly holes?: number;
};

/** `cut` and `finish` are depths of cut, measured on the radius (or along, when facing). `at`: where the step begins, from the
 *  free end. */
export type JobStep =
  | {
      readonly do: "face";
      /** How much comes off, or how long the work is then. */
      readonly depth?: number;
      readonly length?: number;
      readonly cut: number;
      /** Of the work there; what stands there when absent. */
      readonly diameter?: number;
    }
  | ({ readonly do: "centre drill"; readonly pilot?: number } & InHoles)
  | ({ readonly do: "turn" | "shoulder" | "bore"; readonly at: number; readonly length: number } & Reduce)
  | {
      readonly do: "groove";
      readonly at: number;
      readonly width: number;
      readonly to: Wanted;
      readonly blade: number;
    }
  | ({
      readonly do: "chamfer";
      readonly at: number;
      readonly size: number;
      readonly side: "outside" | "bore";
    } & InHoles)
  | TaperStep
  | {
      readonly do: "knurl";
      readonly at: number;
      readonly length: number;
      readonly pitch: number;
      /** How wide the knurling wheel is. */
      readonly wheel?: number;
      /** The work is pinched between two wheels: no side load. */
      readonly pinched: boolean;
    }
  | { readonly do: "part"; readonly diameter?: number; readonly length: number; readonly blade: number }
  | ({
      readonly do: "drill" | "ream";
      readonly diameter: number;
      readonly depth: number;
      readonly wanted?: Wanted;
    } & InHoles)
  | ({ readonly do: "tap" | "die"; readonly thread: string; readonly depth: number } & InHoles)
  | { readonly do: "hold" | "turn round"; readonly out: number; readonly held: Held };

export type Reduce = {
  /** Diameter that the file says stands there. */
  readonly from?: number;
  readonly to: Wanted;
  readonly cut: number;
  readonly finish: number;
};

export const swivels = ["top slide", "headstock", "tailstock"] as const;
export type Swivel = (typeof swivels)[number];

export type TaperStep = {
  readonly do: "taper";
  readonly large: number;
  readonly small: number;
  readonly length: number;
  readonly at: number;
  /** Which end of it comes out thin. */
  readonly smallAt: "end" | "chuck";
  readonly by: Swivel;
  readonly cut: number;
  readonly finish: number;
};
