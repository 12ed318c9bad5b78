import { readdirSync, readFileSync } from "node:fs";
import type { Print } from "../../src/drawing/page.js";
import { compute } from "../../src/findings/compute.js";
import type { Findings } from "../../src/findings/findings.js";
import { readJob } from "../../src/job/read.js";
import { readMachine } from "../../src/machine/read.js";
import { arrange } from "../../src/sheets/arrange.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { walk } from "./marks.js";

/** Findings of a machine file's text; throws with its problems when it is faulty. */
export function findingsOf(text: string): Findings {
  const { machine, problems } = readMachine(text);
  if (machine === undefined) throw new Error(JSON.stringify(problems));
  return compute(machine);
}

/** The demo's machine with the demo's job. */
export function demoFindings(): Findings {
  const { job } = readJob(readFileSync("templates/jobs/deck-pin.yaml", "utf8"));
  return { ...findingsOf(readFileSync("templates/machines/boathouse.yaml", "utf8")), ...(job && { job }) };
}

export const sheetNames = (): string[] => readdirSync("templates/sheets").map((file) => file.replace(/\.yaml$/, ""));

export function template(sheet: string) {
  const { template, problems } = readTemplate(readFileSync(`templates/sheets/${sheet}.yaml`, "utf8"), sheet);
  if (template === undefined) throw new Error(problems.join("\n"));
  return template;
}

/** The sheet's pages; throws with what is missing. */
export function printOf(findings: Findings, sheet: string): Print {
  const result = arrange(findings, template(sheet));
  if ("missing" in result) throw new Error(`${sheet}: ${result.missing}`);
  return result.print;
}

/** All words of a sheet of one's own, by its template's text. */
export function ownTexts(findings: Findings, text: string): string {
  const { template: own, problems } = readTemplate(text, "own");
  if (own === undefined) throw new Error(problems.join("\n"));
  const result = arrange(findings, own);
  if ("missing" in result) throw new Error(result.missing);
  return wordsIn(result.print);
}

/** All words of a sheet, in the order in which they were drawn. */
export const textsOf = (findings: Findings, sheet: string): string => wordsIn(printOf(findings, sheet));

function wordsIn({ pages }: Print): string {
  const words: string[] = [];
  for (const { drawing } of pages)
    walk(drawing.marks, (mark) => {
      if (mark.kind === "text") words.push(mark.text);
    });
  return words.join(" ");
}
