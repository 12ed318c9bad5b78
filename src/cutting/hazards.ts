import { findMaterial } from "./materials.js";
import { type Hazard, hazards } from "./published/hazards.js";

export type { Hazard } from "./published/hazards.js";

/** What burns or poisons in a material of that name, known to the data or not; undefined where nothing is known to. */
export function hazardOf(material: string): Hazard | undefined {
  const names = [material, findMaterial(material) ?? ""];
  return hazards.find(({ named }) => names.some((name) => named.test(name)));
}

/** Of all these materials, each once. */
export const hazardsOf = (materials: readonly string[]): Hazard[] => [
  ...new Set(materials.flatMap((material) => hazardOf(material) ?? [])),
];
