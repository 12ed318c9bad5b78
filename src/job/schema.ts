import * as z from "zod/mini";
import { MOST } from "../machine/bounds.js";
import { angle, anyLength, count, length, listOf, name, words } from "../machine/fields.js";
import { needed, optional } from "../machine/keys.js";
import { holds, swivels } from "./job.js";
import { size } from "./sizeText.js";

export const verbs = [
  "face",
  "centre drill",
  "drill",
  "bore",
  "ream",
  "turn",
  "shoulder",
  "groove",
  "chamfer",
  "taper",
  "knurl",
  "die",
  "tap",
  "part",
  "hold",
  "turn round",
] as const;

const step = z.strictObject({
  do: needed(z.enum(verbs), "What is done"),
  at: optional(anyLength, "Where it begins, from the finished face of the free end; 0 when left out"),
  from: optional(length, "Diameter before; what stands there when left out"),
  to: optional(size, "Diameter after, as the drawing gives it: 12, 12 h7, 12 ± 0.02, 11.98 to 12.00"),
  length: optional(length, "Along the work; of face, how long the work is then"),
  depth: optional(length, "Depth of a hole or thread, or how much to face off"),
  diameter: optional(size, "Of drill, reamer (8 H7), pilot of a centre drill, or the work at the blade"),
  cut: optional(length, "Largest depth of cut, on the radius; 0.5 mm (0.02 in) when left out"),
  finish: optional(length, "Left on the radius for the last cut; 0.1 mm (0.004 in) when left out"),
  tolerance: optional(length, "How far the diameter may differ, from end to end; or write it into to:"),
  blade: optional(length, "Width of the parting or grooving blade"),
  width: optional(length, "Of a groove, or of a knurling wheel, along the work"),
  size: optional(length, "Of a chamfer at 45°, along the work"),
  side: optional(z.enum(["outside", "bore"]), "Which edge a chamfer breaks; outside when left out"),
  thread: optional(words, "M6, 2BA, 1/4-20 UNC…"),
  large: optional(length, "Larger diameter of a taper"),
  small: optional(length, "Smaller diameter of a taper"),
  ratio: optional(words, "Of a taper, 1 in 20: so much on diameter in that length"),
  included: optional(angle, "Of a taper, the angle between both sides"),
  half: optional(angle, "Of a taper, the angle between axis and side"),
  smallAt: optional(z.enum(["end", "chuck"]), "Which end of a taper comes out thin; end when left out"),
  by: optional(z.enum(swivels), "What is swung for a taper; top slide when left out"),
  pitch: optional(length, "Of a knurl"),
  pinched: optional(z.boolean(), "true for a knurling tool that pinches the work between two wheels"),
  hole: optional(
    words,
    "Name of the hole, where several lie beside each other: steps of one name go on in one hole; given at one step, it is given at all",
  ),
  holes: optional(
    count(1, MOST.holesAlike),
    "In how many holes alike, each where it is marked out and punched; when left out as many as the step before in that hole, or 1",
  ),
  out: optional(length, "How far the work then stands out of what holds it"),
  held: optional(z.enum(holds), "By what it is then held; the chuck when left out"),
});

const bar = z.strictObject({
  diameter: needed(length, "Of the bar"),
  out: needed(length, "How far it stands out of the chuck, or clear of the driver between centres"),
  supported: optional(z.boolean(), "true where a centre holds its free end; or write held:"),
  held: optional(z.enum(holds), "By what it is held; the chuck when left out"),
  length: optional(length, "Of the blank; left out for a bar that goes through the spindle"),
  bore: optional(length, "Of a tube"),
});

/** The job file as users write it; one definition serves the reader and the published JSON Schema. */
export const jobFile = z.strictObject({
  name: needed(name, "What is made"),
  units: optional(
    z.enum(["mm", "in"]),
    "Unit of bare numbers; mm when left out, but beside a machine in inches it must be said",
  ),
  material: needed(name, "As on the speed charts"),
  tool: optional(words, "high-speed steel when left out"),
  bar: optional(bar, "What it is turned from; not needed where it is drilled, reamed and tapped alone"),
  parts: optional(count(1, 10_000), "How many alike"),
  batch: optional(
    z.enum(["operation", "part"]),
    "operation: each step on all parts; part: each part from first to last; part when left out",
  ),
  clear: optional(length, "How far tools keep from jaws, driver and centre; 2 mm (0.08 in) when left out"),
  spindleStop: optional(
    z.boolean(),
    "true where a stop in the spindle brings every blank out alike; of a bar those that were parted off it, turned round",
  ),
  steps: needed(listOf(step, MOST.jobSteps, 1), "In the order of work"),
});

export type JobFile = z.output<typeof jobFile>;
