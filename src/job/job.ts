import type { Units } from "../machine/machine.js";
import type { Written } from "../machine/written.js";

/** A job as read: what is to be made, step by step; mm. */
export type Job = {
  readonly name: string;
  /** True where the file gives bare numbers and no units: they were read as mm, which beside an inch machine is a guess. */
  readonly unitsLeftOpen?: boolean;
  /** Unit of its bare numbers. */
  readonly units: Units;
  /** How the file writes its sizes, where that is no plain number. */
  readonly written?: Written;
  readonly material: string;
  readonly tool: string;
  /** Absent where nothing is turned. */
  readonly bar?: { readonly diameter: number; readonly out: number; readonly supported: boolean };
  readonly parts: number;
  readonly steps: readonly JobStep[];
  /** Where each step stands in the job's file, for messages. */
  readonly stepsAt?: readonly { readonly line: number; readonly column: number }[];
};

/** Steps that a drill does as well as a lathe. */
const forHoles: readonly JobStep["do"][] = ["drill", "ream", "tap"];
export const isHoleStep = ({ do: done }: Pick<JobStep, "do">): boolean => forHoles.includes(done);

/** `cut` and `finish` are depths of cut, measured on the radius (or along, when facing). */
export type JobStep =
  | { readonly do: "face"; readonly depth: number; readonly cut: number; readonly diameter: number }
  | ({ readonly do: "turn" | "shoulder" | "bore" } & Reduce)
  | { readonly do: "part"; readonly diameter: number; readonly length: number; readonly blade: number }
  | { readonly do: "drill" | "ream"; readonly diameter: number; readonly depth: number }
  | { readonly do: "tap" | "die"; readonly thread: string; readonly depth: number }
  | {
      readonly do: "taper";
      readonly large: number;
      readonly small: number;
      readonly length: number;
      readonly cut: number;
      readonly finish: number;
    };

export type Reduce = {
  readonly from: number;
  readonly to: number;
  readonly length: number;
  readonly cut: number;
  readonly finish: number;
  /** Full width on diameter. */
  readonly tolerance?: number;
};
