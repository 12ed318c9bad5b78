import { closest } from "../machine/closest.js";
import { otherTongues, translated } from "../words/say.js";
import { type Coolant, type Material, materials } from "./published/materials.js";

const withSpeeds = materials.filter(({ withoutSpeeds }) => !withoutSpeeds);
const names = materials.map(({ name }) => name);
const namesOf = (own: (material: Material) => readonly string[]): ReadonlyMap<string, Material> =>
  new Map(materials.flatMap((material) => own(material).map((name) => [name.toLowerCase(), material] as const)));
const byName = namesOf(({ name, otherNames = [] }) => [name, ...otherNames]);
/** Only who writes in another language waits for its words. */
let byOtherTongue: ReadonlyMap<string, Material> | undefined;
const inOtherTongues = (): ReadonlyMap<string, Material> => {
  byOtherTongue ??= namesOf(({ name }) => otherTongues(name));
  return byOtherTongue;
};
const find = (name: string): Material | undefined => {
  const written = name.trim().toLowerCase();
  return byName.get(written) ?? inOtherTongues().get(written);
};

/** Those with a published cutting speed. */
export const knownMaterials = (): string[] => withSpeeds.map(({ name }) => name);

/** Those too of which only coolant and dangers are known. */
export const namedMaterials = (): string[] => [...names];

/** Whether a source has a cutting speed for turning it; some are known by their names alone. */
export const hasSpeeds = (name: string): boolean => withSpeeds.some((material) => material === find(name));

/** The material's name in the data, whatever the case or the usual other name; undefined when it is not known. */
export const findMaterial = (name: string): string | undefined => find(name)?.name;

/** What one says for short and what it most likely means: common practice, in no source; too loose to go by unasked. */
const forShort: Readonly<Record<string, string>> = {
  steel: "mild steel",
  stahl: "Baustahl",
  iron: "grey cast iron",
  guss: "Grauguss",
  gusseisen: "Grauguss",
  edelstahl: "nichtrostender Stahl",
  inox: "stainless steel",
  alu: "Aluminium",
};

const short = (word: string): string | undefined => (Object.hasOwn(forShort, word) ? forShort[word] : undefined);

export const nearestMaterial = (name: string): string | undefined =>
  short(name.trim().toLowerCase()) ??
  closest(
    name.toLowerCase(),
    materials.flatMap((one) => [one.name, ...(one.otherNames ?? []), ...otherTongues(one.name)]),
  );

/** What to wet the cut with; undefined for a material that is not known. */
export function coolant(material: string): Coolant | undefined {
  const found = find(material)?.coolant;
  return (
    found && {
      words: translated(found.words),
      ...(found.caution !== undefined && { caution: translated(found.caution) }),
    }
  );
}

/** What it is called on paper: a material of the data by its name in the paper's language, in whichever the file has it; another name of
 *  the trade and a user's own as they are. The trade's other names are English: in another language they too are called by its name. */
export const materialName = (name: string): string => {
  const known = find(name);
  if (known === undefined) return name;
  const written = name.trim().toLowerCase();
  const there = translated(known.name);
  const isOtherName = known.otherNames?.some((other) => other.toLowerCase() === written);
  return isOtherName && there === known.name ? name : there;
};
