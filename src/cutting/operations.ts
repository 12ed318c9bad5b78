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
  operation("turning", "turning", "of the work", false, ["turn"]),
  operation("facing", "turning", "outside of the work: from the outside in", false, ["face"]),
  operation("boring", "turning", "of the bore", false, ["bore"]),
  operation("parting", "turning", "outside of the work: from the outside in", true, ["part", "parting off"]),
  operation("forming", "turning", "largest under the tool", true, ["form"]),
  operation("knurling", "turning", "of the work", true, ["knurl"]),
  operation("threading", "turning", "outside of the thread", true, ["thread", "threading by tool"]),
  operation("drilling", "drilling", "of the drill", false, ["drill"]),
  operation("reaming", "drilling", "of the reamer", true, ["ream"]),
  operation("countersinking", "drilling", "largest of the countersink", true, ["countersink"]),
  operation("tapping", "drilling", "outside of the thread", true, ["tap"]),
  operation("threading by die", "drilling", "outside of the thread", true, ["die"]),
];

/** By its name or a usual other one, whatever the case. */
export function findOperation(name: string): Operation | undefined {
  const key = name.trim().toLowerCase();
  return operations.find((one) => one.name === key || one.aliases.includes(key));
}
