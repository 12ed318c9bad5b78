import { leastFeed } from "../cutting/feeds.js";
import { hazardOf } from "../cutting/hazards.js";
import { materialName } from "../cutting/materials.js";
import { sourceTitle } from "../cutting/sources.js";
import type { Units } from "../machine/machine.js";
import { trimmed, unitName } from "../quantity/format.js";
import { fromMm } from "../quantity/length.js";
import { say } from "../words/say.js";

/** Whether fine chips of it burn. */
export const burns = (material: string): boolean => hazardOf(material)?.burnsWhenFine === true;

/** Of these, those whose fine chips burn, each once. */
export const burning = (materials: readonly string[]): string[] => [...new Set(materials)].filter(burns);

/** How a drill is fed in it to the end of the hole. */
export const drillToTheEnd = (): string => say("cautions.drill to the end");

/** A feed per revolution, mm, in the machine's unit. A least one is rounded up: 0.25 mm is 0.0099 in. */
export function feedWords(feed: number, units: Units): string {
  const places = units === "mm" ? 3 : 4;
  const scale = 10 ** places;
  return `${trimmed(Math.ceil(fromMm(feed, units) * scale - 1e-6) / scale, places)} ${unitName(units)}`;
}

/** The rule for a material whose fine chips burn, as a sentence that stands on every sheet that tells how to feed it. */
export function leastFeedWords(material: string, units: Units): string {
  const least = leastFeed(material);
  return least === undefined
    ? say("cautions.never finely", { material: materialName(material) })
    : say("cautions.never finer than", {
        material: materialName(material),
        feed: feedWords(least.from, units),
        sources: least.sources.map(sourceTitle).join("; "),
      });
}
