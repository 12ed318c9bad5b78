import { closest } from "../machine/closest.js";
import { translated } from "../words/say.js";
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

export const knownTools = (): string[] => [...tools];

/** The tool's name in the data, whatever the case or the usual other name; undefined when it is not known. */
export function findTool(name: string): string | undefined {
  const key = name.trim().toLowerCase();
  return tools.find((tool) => tool === (aliases[key] ?? key));
}

/** What it is called on paper: a name of the data in the paper's language, a user's own as it is. */
export const toolName = (name: string): string => (findTool(name) === name ? translated(name) : name);

export const nearestTool = (name: string): string | undefined =>
  closest(name.toLowerCase(), [...tools, ...Object.keys(aliases)]);
