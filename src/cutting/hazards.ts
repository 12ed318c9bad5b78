import { closest } from "../machine/closest.js";
import { translated } from "../words/say.js";
import { findMaterial } from "./materials.js";
import { type Hazard, hazards } from "./published/hazards.js";

export type { Hazard } from "./published/hazards.js";

/** What burns or poisons in a material of that name, known to the data or not; undefined where nothing is known to. The table
 *  puts what burns first. */
export const hazardOf = (material: string): Hazard | undefined => hazardsOf([material])[0];

/** Of all these materials, each once. */
export const hazardsOf = (materials: readonly string[]): Hazard[] =>
  [...new Set(materials.flatMap(hazardsIn))].map((hazard) => ({
    ...hazard,
    material: translated(hazard.material),
    caution: translated(hazard.caution),
    where: translated(hazard.where),
  }));

/** Behind a remark that no speed is known for a material: it may burn or poison all the same. Empty where nothing is known to. */
export function mind(material: string): string {
  const hazard = hazardOf(material);
  return hazard === undefined ? "" : `; mind: ${hazard.caution}`;
}

/** Names as short as this are near to too many others. */
const FEW_LETTERS = 6;

/** Asked for in every cell of a table, and always of the same few names: the answers are kept. */
const answers = new Map<string, Hazard[]>();
const MOST_ANSWERS = 200;

function hazardsIn(material: string): Hazard[] {
  const known = answers.get(material);
  if (known !== undefined) return known;
  if (answers.size >= MOST_ANSWERS) answers.clear();
  const found = searched(material);
  answers.set(material, found);
  return found;
}

/** By a word that is a name or a grade. Where there is none, by one that resembles a name: the safe side, since a mistyped
 *  metal burns as well. */
function searched(material: string): Hazard[] {
  const words = [material, findMaterial(material) ?? ""].flatMap(wordsOf);
  const certain = hazards.filter(({ names, grades }) =>
    words.some((word) => names.includes(word) || grades?.test(word)),
  );
  if (certain.length > 0) return certain;
  const typed = words.filter((word) => word.length >= FEW_LETTERS);
  return hazards.filter(({ names }) => {
    const long = names.filter((name) => name.length >= FEW_LETTERS);
    return typed.some((word) => closest(word, long) !== undefined);
  });
}

/** In small letters without accents; with neighbours joined as well, for "AZ 31". Wood's metal is no wood. */
function wordsOf(material: string): string[] {
  const words = material
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .split(/[^a-z0-9'’]+/)
    .filter((word) => word !== "");
  return [...words, ...words.slice(1).map((word, index) => `${words[index]}${word}`)];
}
