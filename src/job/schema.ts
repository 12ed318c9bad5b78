import * as z from "zod";
import { count, length, words } from "../machine/fields.js";

export const verbs = ["face", "turn", "shoulder", "bore", "part", "drill", "ream", "tap", "die", "taper"] as const;

const step = z.strictObject({
  do: z.enum(verbs).describe("What is done"),
  from: length().optional().describe("Diameter before"),
  to: length().optional().describe("Diameter after"),
  length: length().optional().describe("Along the work"),
  depth: length().optional().describe("Depth of a hole or thread, or how much to face off"),
  diameter: length().optional().describe("Of drill, reamer, or the work at the blade"),
  cut: length().optional().describe("Largest depth of cut, on the radius; 0.5 mm when left out"),
  finish: length().optional().describe("Left on the radius for the last cut; 0.1 mm when left out"),
  tolerance: length().optional().describe("How far the diameter may differ, from end to end"),
  blade: length().optional().describe("Width of the parting blade"),
  thread: words().optional().describe("M6, 2BA, 1/4-20…"),
  large: length().optional().describe("Larger diameter of a taper"),
  small: length().optional().describe("Smaller diameter of a taper"),
});

/** The job file as users write it; one definition serves the reader and the published JSON Schema. */
export const jobFile = z.strictObject({
  name: words().describe("What is made"),
  units: z.enum(["mm", "in"]).optional().describe("Unit of bare numbers; mm when left out"),
  material: words().describe("As on the speed table"),
  tool: words().optional().describe("high-speed steel when left out"),
  bar: z
    .strictObject({
      diameter: length().describe("Of the bar"),
      out: length().describe("How far it stands out of the chuck"),
      supported: z.boolean().optional().describe("true where a centre holds its free end"),
    })
    .describe("What it is made from"),
  parts: count(1, 10_000).optional().describe("How many alike"),
  steps: z.array(step).min(1).describe("In the order of work"),
});

export type JobFile = z.output<typeof jobFile>;
