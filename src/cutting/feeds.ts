import { mmPer } from "../quantity/length.js";
import { publishedFeeds } from "./data.js";
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
