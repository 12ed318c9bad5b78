import { mmPer } from "../quantity/length.js";
import { findMaterial } from "./materials.js";
import { type PublishedFeed, publishedFeeds } from "./published/feeds.js";

export type FeedRange = {
  /** mm per revolution. */
  readonly from: number;
  readonly to: number;
  readonly sources: readonly string[];
  readonly confidence: "read" | "memory";
};

/** Feed per revolution that the sources span, mm; undefined where none has a figure. Plastics of any name are taken
 *  together. `diameter`, mm, is the drill's. */
export function feedPerRevolution(
  material: string,
  operation: PublishedFeed["operation"],
  diameter?: number,
): FeedRange | undefined {
  const standard = findMaterial(material);
  const fits = publishedFeeds.filter(
    (row) =>
      row.operation === operation &&
      (row.material === undefined ||
        row.material === standard ||
        (row.material === "plastics" && isPlastic(standard))) &&
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

const isPlastic = (material: string | undefined): boolean =>
  ["plastics", "nylon", "acetal", "acrylic", "rigid PVC", "polystyrene", "PTFE"].includes(material ?? "");
