import type { FeedRange } from "../cutting/feeds.js";
import { hazardOf } from "../cutting/hazards.js";
import { coolant } from "../cutting/materials.js";
import { sourceTitle } from "../cutting/sources.js";
import { burns, DRILL_TO_THE_END, feedWords, leastFeedWords } from "../findings/chipFire.js";
import type { Job, JobStep } from "../job/job.js";
import type { Units } from "../machine/machine.js";

/** What is left for the last cut, mm: what the job asks; undefined, for a last cut as deep as the others, where thin chips burn. */
export const lastCut = (wanted: number, { material }: Job): number | undefined =>
  burns(material) ? undefined : wanted;

/** A cut at the same setting again only scrapes. */
export const mayScrape = ({ material }: Job): boolean => !burns(material);

/** What brings work to size where no slide does: never what makes dust that burns or poisons. */
export const byHandWords = ({ material }: Job): string =>
  hazardOf(material)?.noDust
    ? `do not file or polish ${material}; ask for a wider tolerance, or another machine`
    : "finish by hand";

/** What to wet the cut with, as a sentence behind others; nothing for a material that the data does not know. */
export function wetWords({ material }: Job): string {
  const found = coolant(material);
  return found === undefined ? "" : ` To wet the cut: ${found.words}.`;
}

/** Steps of one cut, straight in. */
const plunging: readonly JobStep["do"][] = ["part", "groove", "chamfer", "knurl"];

/** What stands at every cut under power where fine chips burn: why, the feed given instead with its source, and how to begin and
 *  end. Nothing for other materials. */
export function chipNotes({ material }: Job, step: JobStep["do"], fed: FeedRange | undefined, units: Units): string[] {
  if (!burns(material)) return [];
  const rule = leastFeedWords(material, units);
  if (step === "drill" || step === "centre drill")
    return [
      fed === undefined
        ? rule
        : `Fine chips of ${material} burn: fed at ${feedWords(fed.from, units)} a revolution, the coarsest in print for this drill (${fed.sources.map(sourceTitle).join("; ")}).`,
      DRILL_TO_THE_END,
    ];
  const told = fed === undefined ? rule : `${rule} This cut: ${feedWords(fed.from, units)}.`;
  if (step === "ream")
    return [`${told} A reamer takes little: a sharp one, fed without a halt, and straight out of the hole.`];
  return [
    told,
    `Touch with the power off, the work turned by hand: a tool that rubs lights chips. ${plunging.includes(step) ? "Once in, feed on without a halt to the end." : "All cuts are of one depth, since a thin last one makes fine chips; none is taken twice. Feed on without a halt to the end, and have the tool clear before you stop."}`,
  ];
}
