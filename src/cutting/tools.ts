import { closest } from "../machine/closest.js";
import { otherTongues, translated } from "../words/say.js";
import { tools } from "./published/source.js";

/** Other names that the trade uses for a tool of the data. */
const aliases: Readonly<Record<string, string>> = {
  hss: "high-speed steel",
  "high speed steel": "high-speed steel",
  "carbon tool steel": "carbon steel",
  "tool steel": "carbon steel",
  "cemented carbide": "carbide",
  "tungsten carbide": "carbide",
};

/** Only who writes in another language waits for its words. */
let byOtherTongue: ReadonlyMap<string, string> | undefined;
const inOtherTongues = (): ReadonlyMap<string, string> => {
  byOtherTongue ??= new Map(
    tools.flatMap((tool) => otherTongues(tool).map((word) => [word.toLowerCase(), tool] as const)),
  );
  return byOtherTongue;
};

export const knownTools = (): string[] => [...tools];

/** The tool's name in the data, whatever the case or the usual other name; undefined when it is not known. */
export function findTool(name: string): string | undefined {
  const key = name.trim().toLowerCase();
  const named = aliases[key] ?? key;
  return tools.find((tool) => tool === named) ?? inOtherTongues().get(key);
}

/** What it is called on paper: a tool of the data, however the file writes it, by its name in the paper's language; a user's own as it
 *  is. */
export function toolName(name: string): string {
  const known = findTool(name);
  return known === undefined ? name : translated(known);
}

export const nearestTool = (name: string): string | undefined =>
  closest(name.toLowerCase(), [...tools, ...Object.keys(aliases)]);
