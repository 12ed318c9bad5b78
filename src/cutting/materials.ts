import { closest } from "../machine/closest.js";
import { type Coolant, type Material, materials } from "./published/materials.js";

const names = materials.map(({ name }) => name);
const otherNames = materials.flatMap(({ otherNames = [] }) => otherNames);
const byAnyName: ReadonlyMap<string, Material> = new Map(
  materials.flatMap((material) =>
    [material.name, ...(material.otherNames ?? [])].map((name) => [name.toLowerCase(), material] as const),
  ),
);
const find = (name: string): Material | undefined => byAnyName.get(name.trim().toLowerCase());

export const knownMaterials = (): string[] => [...names];

/** The material's name in the data, whatever the case or the usual other name; undefined when it is not known. */
export const findMaterial = (name: string): string | undefined => find(name)?.name;

export const nearestMaterial = (name: string): string | undefined =>
  closest(name.toLowerCase(), [...names, ...otherNames]);

/** What to wet the cut with; undefined for a material that is not known. */
export const coolant = (material: string): Coolant | undefined => find(material)?.coolant;
