import { translated } from "../words/say.js";

/** What is done to the work, and which diameter its speed goes by. */
export type Operation = {
  readonly name: string;
  /** Words for the diameter that counts. */
  readonly diameter: string;
  /** Where a broken tool or a torn thread costs more than time: the most cautious source rules. */
  readonly cautious: boolean;
  readonly like: "turning" | "drilling";
  readonly aliases: readonly string[];
};

const operation = (
  name: string,
  like: Operation["like"],
  diameter: string,
  cautious: boolean,
  aliases: readonly string[],
): Operation => ({ name, like, diameter, cautious, aliases });

export const operations: readonly Operation[] = [
  operation("turning", "turning", "diameter of the work", false, ["turn"]),
  operation("finish turning", "turning", "diameter of the work", false, ["finish", "finishing"]),
  operation("facing", "turning", "outside diameter, from the outside in", false, ["face"]),
  operation("boring", "turning", "diameter of the bore", false, ["bore"]),
  operation("parting", "turning", "outside diameter, from the outside in", true, ["part", "parting off"]),
  operation("forming", "turning", "largest diameter under the tool", true, ["form"]),
  operation("knurling", "turning", "diameter of the work", true, ["knurl"]),
  operation("threading", "turning", "outside diameter of the thread", true, ["thread", "threading by tool"]),
  operation("drilling", "drilling", "diameter of the drill", false, ["drill"]),
  operation("reaming", "drilling", "diameter of the reamer", true, ["ream"]),
  operation("countersinking", "drilling", "largest diameter of the countersink", true, ["countersink"]),
  operation("tapping", "drilling", "outside diameter of the thread", true, ["tap"]),
  operation("threading by die", "drilling", "outside diameter of the thread", true, ["die"]),
];

/** Every word for one. */
export const operationWords: readonly string[] = operations.flatMap(({ name, aliases }) => [name, ...aliases]);

/** In a template: what the machine is used for, or the use that the block is `for`. */
export const BY_USE = "by use";
export const operationChoices: readonly string[] = [BY_USE, ...operationWords];

/** Its tool cannot leave the work but by turning back. */
export const isThreaded = (operation: string): boolean => operation === "tapping" || operation === "threading by die";

/** What it is called on paper. */
export const operationName = (name: string): string => translated(name);

/** For which diameter its speed is told, on paper. */
export const diameterWords = ({ diameter }: Pick<Operation, "diameter">): string => translated(diameter);

/** By its name or a usual other one, whatever the case. */
export function findOperation(name: string): Operation | undefined {
  const key = name.trim().toLowerCase();
  return operations.find((one) => one.name === key || one.aliases.includes(key));
}
