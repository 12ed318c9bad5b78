import * as z from "zod/mini";
import { count, length, words } from "../machine/fields.js";
import { needed, optional } from "../machine/keys.js";

export const verbs = ["face", "turn", "shoulder", "bore", "part", "drill", "ream", "tap", "die", "taper"] as const;

const step = z.strictObject({
  do: needed(z.enum(verbs), "What is done"),
  from: optional(length, "Diameter before"),
  to: optional(length, "Diameter after"),
  length: optional(length, "Along the work"),
  depth: optional(length, "Depth of a hole or thread, or how much to face off"),
  diameter: optional(length, "Of drill, reamer, or the work at the blade"),
  cut: optional(length, "Largest depth of cut, on the radius; 0.5 mm when left out"),
  finish: optional(length, "Left on the radius for the last cut; 0.1 mm when left out"),
  tolerance: optional(length, "How far the diameter may differ, from end to end"),
  blade: optional(length, "Width of the parting blade"),
  thread: optional(words, "M6, 2BA, 1/4-20 UNC…"),
  large: optional(length, "Larger diameter of a taper"),
  small: optional(length, "Smaller diameter of a taper"),
});

const bar = z.strictObject({
  diameter: needed(length, "Of the bar"),
  out: needed(length, "How far it stands out of the chuck"),
  supported: optional(z.boolean(), "true where a centre holds its free end"),
});

/** The job file as users write it; one definition serves the reader and the published JSON Schema. */
export const jobFile = z.strictObject({
  name: needed(words, "What is made"),
  units: optional(
    z.enum(["mm", "in"]),
    "Unit of bare numbers; mm when left out, but beside a machine in inches it must be said",
  ),
  material: needed(words, "As on the speed table"),
  tool: optional(words, "high-speed steel when left out"),
  bar: optional(bar, "What it is turned from; not needed where it is drilled, reamed and tapped alone"),
  parts: optional(count(1, 10_000), "How many alike"),
  steps: needed(z.array(step).check(z.minLength(1)), "In the order of work"),
});

export type JobFile = z.output<typeof jobFile>;
