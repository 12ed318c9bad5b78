import { mmPer } from "../quantity/length.js";
import { publishedFeeds } from "./data.js";
import { hazardOf } from "./hazards.js";
import { findMaterial } from "./materials.js";
import { plastics } from "./published/materials.js";
import type { PublishedFeed } from "./published/source.js";

export type FeedRange = {
  /** mm per revolution. */
  readonly from: number;
  readonly to: number;
  readonly sources: readonly string[];
  readonly confidence: "read" | "memory";
};

/** Feed per revolution that the sources span, mm; undefined where none has a figure. Plastics of any name are taken
 *  together. `diameter`, mm, is the drill's. Of a material whose fine chips burn: nothing finer than the published least, and
 *  where there is none only the coarsest of what is printed for drills of any material. */
export function feedPerRevolution(
  material: string,
  operation: PublishedFeed["operation"],
  diameter?: number,
): FeedRange | undefined {
  const range = published(material, operation, diameter);
  if (range === undefined || !hazardOf(material)?.burnsWhenFine || operation === "least") return range;
  if (operation === "drilling") return { ...range, from: range.to };
  const least = leastFeed(material);
  if (least === undefined) return undefined;
  const [from, to] = [Math.max(range.from, least.from), Math.max(range.to, least.from)];
  return range.to > least.from
    ? { ...range, from, to, sources: [...new Set([...least.sources, ...range.sources])] }
    : { ...least, from, to };
}

/** The finest feed per revolution, mm, that is published as safe for a material whose fine chips burn; undefined for every
 *  other, and where no source has one. */
export const leastFeed = (material: string): FeedRange | undefined => published(material, "least");

function published(material: string, operation: PublishedFeed["operation"], diameter?: number): FeedRange | undefined {
  const standard = findMaterial(material) ?? hazardOf(material)?.fedLike;
  const fits = publishedFeeds.filter(
    (row) =>
      row.operation === operation &&
      (row.material === undefined ||
        row.material === standard ||
        (row.material === "plastics" && plastics.includes(standard ?? ""))) &&
      (row.over === undefined || (diameter !== undefined && diameter > row.over)) &&
      (row.upTo === undefined || (diameter !== undefined && diameter <= row.upTo * (1 + 1e-9))),
  );
  if (fits.length === 0) return undefined;
  return {
    from: Math.min(...fits.map((row) => row.from * mmPer[row.unit])),
    to: Math.max(...fits.map((row) => row.to * mmPer[row.unit])),
    sources: [...new Set(fits.map(({ source }) => source))],
    confidence: fits.every(({ confidence }) => confidence === "read") ? "read" : "memory",
  };
}
