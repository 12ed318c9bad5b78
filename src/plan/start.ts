import { coolant } from "../cutting/materials.js";
import type { Findings } from "../findings/findings.js";
import type { Job } from "../job/job.js";
import { isDrill } from "./holes.js";
import type { PlannedStep } from "./plannedStep.js";
import { setsThePost } from "./toolPost.js";

/** What is seen to before the first chip, in this order; each is ticked. Common practice throughout. */
export function beforeTheFirstChip(job: Job, steps: readonly PlannedStep[], { machine }: Findings): string[] {
  const drill = isDrill(machine);
  const wet = coolant(job.material)?.words;
  const post = steps.some(setsThePost);
  const stops = steps.some(({ places }) => places.some(({ what }) => what === "stop"));
  const slides = drill
    ? "Table and column clamped; quill free, without shake."
    : "Slides firm but free over their whole travel: adjusting strips or tension screws just taken up. Slides not in use locked.";
  const held = drill
    ? "Part clamped to the table or in a clamped vice, on packing; drill runs true."
    : "Work tight; turned by hand through a whole turn, with the slides at both ends of every cut: nothing touches jaws, centre or post.";
  return [
    "Machine stopped and isolated, plug out.",
    slides,
    held,
    ...(post ? ["Tool sharp, at centre height, short out of its post, and tight."] : []),
    ...(stops && !drill ? ["Stops set where the plan says stop, tried with the tool clear of the work."] : []),
    ...(wet === undefined ? [] : [`To wet the cut: ${wet}; brush at hand, no rags.`]),
    "Belts where the first step says, tight enough to drive; belt guard closed.",
    "Chuck key out, spanners off, eyes covered; no gloves, rings, loose sleeves or hair.",
  ];
}

/** Told, never computed. */
export const BELT_SLIP =
  "Some leave the belt just so loose that it slips before a tool breaks. That is common practice, not computed here: a slack belt also jumps, burns and stops without warning, so it replaces neither light cuts nor a hand at the switch.";
