import type { FeedRange } from "../cutting/feeds.js";
import { hazardOf } from "../cutting/hazards.js";
import { coolant, materialName } from "../cutting/materials.js";
import { sourceTitle } from "../cutting/sources.js";
import { burns, drillToTheEnd, feedWords, leastFeedWords } from "../findings/chipFire.js";
import type { Job, JobStep } from "../job/job.js";
import type { Units } from "../machine/machine.js";
import { say } from "../words/say.js";

/** What is left for the last cut, mm: what the job asks; undefined, for a last cut as deep as the others, where thin chips burn. */
export const lastCut = (wanted: number, { material }: Job): number | undefined =>
  burns(material) ? undefined : wanted;

/** A cut at the same setting again only scrapes. */
export const mayScrape = ({ material }: Job): boolean => !burns(material);

/** What brings work to size where no slide does: never what makes dust that burns or poisons. */
export const byHandWords = ({ material }: Job): string =>
  hazardOf(material)?.noDust
    ? say("plan findings.do not file", { material: materialName(material) })
    : say("plan findings.finish by hand");

/** What to wet the cut with, as a sentence behind others; nothing for a material that the data does not know. */
export function wetWords({ material }: Job): string {
  const found = coolant(material);
  return found === undefined ? "" : say("plan.to wet", { what: found.words });
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
        : say("plan.drill coarsely", {
            material: materialName(material),
            feed: feedWords(fed.from, units),
            sources: fed.sources.map(sourceTitle).join("; "),
          }),
      drillToTheEnd(),
    ];
  const told = fed === undefined ? rule : say("plan.this cut", { rule, feed: feedWords(fed.from, units) });
  if (step === "ream") return [say("plan.ream coarsely", { rule: told })];
  return [told, say(plunging.includes(step) ? "plan.plunge coarsely" : "plan.cut coarsely")];
}
