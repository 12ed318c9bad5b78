import type { CsvFiles } from "../machine/context.js";
import type { Places, Problem, Remark } from "../machine/problem.js";
import { readMachine } from "../machine/read.js";
import { compute } from "./compute.js";
import type { Findings } from "./findings.js";
import { remarks, unknownNames } from "./remarks.js";

export type Loaded = { readonly findings?: Findings; readonly problems: readonly Problem[]; readonly places: Places };

/** What was read of the CSV files that a machine file names, and what is wrong in them. */
export type CsvRead = { readonly files: CsvFiles; readonly problems: readonly Problem[] };

/** From a machine file's text to findings: reads, checks, computes. Findings are absent when the file, or a CSV that it names, holds
 *  an error. */
export function ofText(text: string, csv: CsvRead): Loaded {
  const { machine, sound, problems: ownProblems, places } = readMachine(text, csv.files);
  const placed = (remark: Remark): Problem => ({ ...remark, ...places(remark.path) });
  const names = sound === undefined ? [] : unknownNames(sound).map(placed);
  const problems = [...ownProblems, ...csv.problems, ...names].sort(inOrder);
  if (machine === undefined || csv.problems.length > 0) return { problems, places };
  const findings = compute(machine);
  const computed = remarks(findings).map(placed);
  const all = [...problems, ...computed].sort(inOrder);
  return all.some(({ severity }) => severity === "error")
    ? { problems: all, places }
    : { findings, problems: all, places };
}

const inOrder = (a: Problem, b: Problem): number => a.line - b.line || a.column - b.column;
