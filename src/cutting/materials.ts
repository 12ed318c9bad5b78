import { closest } from "../machine/closest.js";
import { cuttingSpeeds } from "./data.js";
import { type Coolant, coolants } from "./published/coolant.js";

/** Other names that the trade uses for a material of the data. */
const aliases: Readonly<Record<string, string>> = {
  "free cutting steel": "free-cutting steel",
  "free-machining steel": "free-cutting steel",
  "low-carbon steel": "mild steel",
  "medium carbon steel": "medium-carbon steel",
  "high carbon steel": "high-carbon steel",
  "silver steel": "tool steel",
  "drill rod": "tool steel",
  "gauge plate": "tool steel",
  stainless: "stainless steel",
  "free-cutting brass": "brass",
  "free cutting brass": "brass",
  "phosphor bronze": "bronze",
  "gun metal": "bronze",
  gunmetal: "bronze",
  aluminum: "aluminium",
  "aluminium alloy": "aluminium",
  "cast iron": "grey cast iron",
  "gray cast iron": "grey cast iron",
  zinc: "zinc alloy",
  plastic: "plastics",
  PVC: "rigid PVC",
  hardwood: "hard wood",
};
const byLowerCase = (names: readonly string[]): ReadonlyMap<string, string> =>
  new Map(names.map((name) => [name.toLowerCase(), name]));

const materials = [...new Set(cuttingSpeeds.map(({ material }) => material))];
const known = byLowerCase(materials);
const aliased = byLowerCase(Object.keys(aliases));

export const knownMaterials = (): string[] => [...materials];

/** The material's name in the data, whatever the case or the usual other name; undefined when it is not known. */
export function findMaterial(name: string): string | undefined {
  const key = name.trim().toLowerCase();
  const alias = aliased.get(key);
  return known.get((alias === undefined ? key : (aliases[alias] ?? key)).toLowerCase());
}

export const nearestMaterial = (name: string): string | undefined =>
  closest(name.toLowerCase(), [...materials, ...Object.keys(aliases)]);

/** What to wet the cut with; undefined for a material that is not known. */
export function coolant(material: string): Coolant | undefined {
  const standard = findMaterial(material);
  return standard === undefined ? undefined : coolants[standard];
}
