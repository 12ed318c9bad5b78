import { closest } from "../machine/closest.js";
import { cuttingSpeeds } from "./data.js";

/** Other names that the trade uses for a material of the data. */
const aliases: Readonly<Record<string, string>> = {
  "free cutting steel": "free-cutting steel",
  "free-machining steel": "free-cutting steel",
  "free-cutting brass": "brass",
  "free cutting brass": "brass",
  aluminum: "aluminium",
  "cast iron": "grey cast iron",
  "gray cast iron": "grey cast iron",
  "low-carbon steel": "mild steel",
};

export const knownMaterials = (): string[] => [...new Set(cuttingSpeeds.map(({ material }) => material))];

/** The material's name in the data, whatever the case or the usual other name; undefined when it is not known. */
export function findMaterial(name: string): string | undefined {
  const key = name.trim().toLowerCase();
  const standard = aliases[key] ?? key;
  return knownMaterials().find((material) => material === standard);
}

export const nearestMaterial = (name: string): string | undefined => closest(name.toLowerCase(), [...knownMaterials(), ...Object.keys(aliases)]);
