import { dirname, join } from "node:path";
import { type CsvRead, type Loaded, ofText } from "../findings/ofText.js";
import { MOST } from "../machine/bounds.js";
import type { CsvReadings } from "../machine/csvReadings.js";
import type { Problem } from "../machine/problem.js";
import { csvNames } from "../machine/read.js";
import { readIfThere, readText } from "./io.js";

/** From a path to findings: reads, checks, computes. Findings are absent when the file holds an error. */
export async function load(path: string): Promise<Loaded> {
  const text = readText(path);
  return ofText(text, await loadCsv(path, csvNames(text)));
}

/** The CSV files that a machine file names, from beside it. One that is not there is left to the reader to tell. */
async function loadCsv(path: string, names: readonly string[]): Promise<CsvRead> {
  const files = new Map<string, CsvReadings | undefined>();
  const problems: Problem[] = [];
  if (names.length === 0) return { files, problems };
  const { readCsv } = await import("../machine/csv.js");
  for (const name of names) {
    const place = join(dirname(path), name);
    const bytes = readIfThere(place, MOST.csvBytes);
    if (bytes === undefined) continue;
    const read = readCsv(new TextDecoder().decode(bytes), place);
    for (const problem of read.problems) problems.push(problem);
    files.set(name, read.readings);
  }
  return { files, problems };
}
