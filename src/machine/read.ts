import { assemble } from "./assemble.js";
import type { CsvFiles } from "./context.js";
import { readDocument } from "./document.js";
import type { Machine } from "./machine.js";
import type { Places, Problem } from "./problem.js";
import { machineFile } from "./schema.js";

export type MachineReading = {
  readonly machine?: Machine;
  /** What could be made of a faulty file, to judge more of it in the same round; never to compute from. */
  readonly sound?: Machine;
  readonly problems: readonly Problem[];
  readonly places: Places;
};

/** Reads a machine file. All problems come at once, in the file's order; `machine` is there when none of them is an error.
 *  Never throws, whatever the text. `csv`: readings from the files that `csvNames` found, by name. */
export function readMachine(text: string, csv: CsvFiles = new Map()): MachineReading {
  const kind = {
    noun: "machine file",
    begin: "name: Bench lathe",
    standIns: { name: "unnamed" },
    mistaken: [
      {
        keys: ["steps", "bar", "material", "parts"],
        noun: "job file",
        remedy: "name the machine's file, and give this one to print with --job",
      },
      {
        keys: ["blocks", "title"],
        noun: "sheet template",
        remedy: "name the machine's file, and give this one to print with --sheet",
      },
    ],
  };
  let sound: Machine | undefined;
  const { value, problems, places } = readDocument(text, machineFile, kind, (file, report) => {
    sound = assemble(file, report, csv);
    return sound;
  });
  if (value !== undefined) return { machine: value, problems, places };
  return { problems, places, ...(sound && { sound }) };
}

/** `file:line:column: what is wrong; what would be right`. */
export function formatProblem({ file, line, column, what, remedy, severity }: Problem, fileName: string): string {
  return `${file ?? fileName}:${line}:${column}: ${severity === "warning" ? "mind: " : ""}${what}; ${remedy}`;
}

/** Names of the CSV files that a machine file takes readings from: any scalar after `readings:` or `file:` that ends so. What the text
 *  means is judged when it is read; here a name too many only means a file read in vain. */
export function csvNames(text: string): string[] {
  const found = text.matchAll(
    /\b(?:readings|file)\s*:\s*(?:"([^"\n]+\.csv)"|'([^'\n]+\.csv)'|([^\s,{}"'#:](?:[^,{}"'#:\n]|:(?! ))*\.csv))/gi,
  );
  return [...new Set([...found].map((match) => (match[1] ?? match[2] ?? match[3] ?? "").trim()))];
}
