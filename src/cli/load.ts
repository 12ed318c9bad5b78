import { dirname, join } from "node:path";
import { compute } from "../findings/compute.js";
import type { Findings } from "../findings/findings.js";
import { remarks, unknownNames } from "../findings/remarks.js";
import type { CsvFiles } from "../machine/context.js";
import type { CsvReadings } from "../machine/csvReadings.js";
import type { Places, Problem } from "../machine/problem.js";
import { csvNames, readMachine } from "../machine/read.js";
import { readIfThere, readText } from "./io.js";

export type Loaded = { readonly findings?: Findings; readonly problems: readonly Problem[]; readonly places: Places };

/** From a path to findings: reads, checks, computes. Findings are absent when the file holds an error. */
export async function load(path: string): Promise<Loaded> {
  const text = readText(path);
  const { files, problems: csvProblems } = await loadCsv(path, csvNames(text));
  const { machine, sound, problems: ownProblems, places } = readMachine(text, files);
  const names =
    sound === undefined ? [] : unknownNames(sound).map(({ path, ...rest }) => ({ ...rest, ...places(path) }));
  const problems = [...ownProblems, ...csvProblems, ...names].sort((a, b) => a.line - b.line || a.column - b.column);
  if (machine === undefined || csvProblems.length > 0) return { problems, places };
  const findings = compute(machine);
  const computed = remarks(findings).map(({ path, ...rest }) => ({ ...rest, ...places(path) }));
  const all = [...problems, ...computed].sort((a, b) => a.line - b.line || a.column - b.column);
  return all.some(({ severity }) => severity === "error")
    ? { problems: all, places }
    : { findings, problems: all, places };
}

/** The CSV files that a machine file names, from beside it. One that is not there is left to the reader to tell. */
async function loadCsv(path: string, names: readonly string[]): Promise<{ files: CsvFiles; problems: Problem[] }> {
  const files = new Map<string, CsvReadings | undefined>();
  const problems: Problem[] = [];
  if (names.length === 0) return { files, problems };
  const { readCsv } = await import("../machine/csv.js");
  for (const name of names) {
    const place = join(dirname(path), name);
    const bytes = readIfThere(place);
    if (bytes === undefined) continue;
    const read = readCsv(new TextDecoder().decode(bytes), place);
    for (const problem of read.problems) problems.push(problem);
    files.set(name, read.readings);
  }
  return { files, problems };
}
