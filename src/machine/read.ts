import { assemble } from "./assemble.js";
import { readDocument } from "./document.js";
import type { Machine } from "./machine.js";
import type { Places, Problem } from "./problem.js";
import { machineFile } from "./schema.js";

export type MachineReading = {
  readonly machine?: Machine;
  readonly problems: readonly Problem[];
  readonly places: Places;
};

/** Reads a machine file. All problems come at once, in the file's order; `machine` is there when none of them is an error.
 *  Never throws, whatever the text. */
export function readMachine(text: string): MachineReading {
  const kind = { noun: "machine file", begin: "name: Bench lathe" };
  const { value, problems, places } = readDocument(text, machineFile, kind, assemble);
  return value === undefined ? { problems, places } : { machine: value, problems, places };
}

/** `file:line:column: what is wrong; what would be right`. */
export function formatProblem({ line, column, what, remedy, severity }: Problem, fileName: string): string {
  return `${fileName}:${line}:${column}: ${severity === "warning" ? "mind: " : ""}${what}; ${remedy}`;
}
