import { readdirSync, readFileSync } from "node:fs";
import { verified } from "../../src/answers/verified.js";
import type { Print } from "../../src/drawing/page.js";
import { compute } from "../../src/findings/compute.js";
import type { Findings } from "../../src/findings/findings.js";
import { ofText } from "../../src/findings/ofText.js";
import { readJob } from "../../src/job/read.js";
import { readCsv } from "../../src/machine/csv.js";
import { readMachine } from "../../src/machine/read.js";
import { renderSvg } from "../../src/output/svg.js";
import { identity } from "../../src/paper/printerCorrection.js";
import { foreignFindings } from "../../src/plan/foreign.js";
import { planOf } from "../../src/plan/plan.js";
import { printsOf } from "../../src/printing/prints.js";
import { builtIn } from "../../src/sheets/builtIn.generated.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";

/** A kind of input: what it is made from, and what is done with it. `deep`: print it too, where it can be printed. Throws where a
 *  promise is broken. */
export type Target = { readonly seeds: readonly string[]; readonly run: (text: string, deep: boolean) => void };

const texts = (...folders: string[]): string[] =>
  folders.flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => /\.(yaml|csv)$/.test(name))
      .map((name) => readFileSync(`${folder}/${name}`, "utf8")),
  );

const demo = compute(readMachine(readFileSync("templates/machines/boathouse.yaml", "utf8")).machine ?? fail());
function fail(): never {
  throw new Error("the demo cannot be read");
}

type Told = { readonly line: number; readonly column: number; readonly what: string; readonly remedy: string };

/** A message has a place in the file, says what is wrong and what would be right, and shows no insides. */
function sound(problems: readonly Told[]): void {
  for (const { line, column, what, remedy } of problems) {
    if (!(line >= 1 && column >= 1)) throw new Error(`no place: ${line}:${column}: ${what}`);
    if (what.trim() === "" || remedy.trim() === "") throw new Error(`not told what, or the remedy: ${what}; ${remedy}`);
    inside(what.replace(/"[^"]*"/g, ""));
  }
}

/** What only the program's insides say; words of the file stand in quotes. */
export function inside(words: string): void {
  const found = /\[object |\bundefined\b|\bNaN\b|function \(|at \w+ \(/.exec(words);
  if (found) throw new Error(`shows its insides: ${words}`);
}

/** Every page is drawn with numbers that are numbers. */
function drawn(prints: readonly Print[]): void {
  for (const print of prints)
    for (const page of print.pages) {
      const svg = renderSvg(page, print, identity);
      const wrong = /="[^"]*(NaN|Infinity|undefined)[^"]*"/.exec(svg);
      if (wrong) throw new Error(`drawn with ${wrong[0]} on ${print.title}`);
    }
}

function printed(findings: Findings, names: readonly string[] | undefined): void {
  const templates = builtIn.filter(({ name, onRequest }) => (names ? names.includes(name) : !onRequest));
  const { prints, absent } = printsOf(findings, { templates });
  for (const { why } of absent) inside(why.replace(/"[^"]*"/g, ""));
  drawn(prints);
}

export const targets: Readonly<Record<string, Target>> = {
  machine: {
    seeds: texts("templates/machines", "tests/machine/sound", "tests/machine/bad"),
    run(text, deep) {
      const { findings, problems } = ofText(text, { files: new Map(), problems: [] });
      sound(problems);
      if (findings === undefined) return;
      for (const { handwheel } of findings.handwheels.slice(0, 2))
        quietly(() => verified(findings, { handwheel: handwheel.name, measured: "119.7" }));
      if (deep) printed(findings, undefined);
    },
  },
  job: {
    seeds: texts("templates/jobs", "tests/job/sound", "tests/job/bad"),
    run(text, deep) {
      const { job, problems } = readJob(text);
      sound(problems);
      if (job === undefined || foreignFindings(job, demo.machine).length > 0) return;
      for (const { what, remedy } of planOf(job, demo).findings) sound([{ line: 1, column: 1, what, remedy }]);
      if (!deep) return;
      const { prints } = printsOf(demo, {
        templates: builtIn.filter(({ name }) => name === "plan"),
        jobs: [{ name: "job", job }],
      });
      drawn(prints);
    },
  },
  template: {
    seeds: [...texts("templates/sheets"), readFileSync("tests/sheets/wallCard.yaml", "utf8")],
    run(text, deep) {
      const { template, problems } = readTemplate(text, "own");
      for (const line of problems) if (!/^\d+:\d+: .+/s.test(line)) throw new Error(`no place: ${line}`);
      if (template === undefined || !deep) return;
      const { prints, absent } = printsOf(demo, { templates: [template] });
      for (const { why } of absent) inside(why.replace(/"[^"]*"/g, ""));
      drawn(prints);
    },
  },
  csv: {
    seeds: [
      "turns;travel;return\n0;0;0,10\n1;1,99;2,09\n2;3,99;4,09\n3;5,98;6,08\n",
      "turns,travel (in)\n0,0\n5,0.394\n10,0.787\n15,1.181\n",
      "turns\ttravel [mm]\treturn, mm\n0\t0\t0.1\n\n2\t4 mm\t4.1\n4\t8\t8.1\n",
    ],
    run(text, deep) {
      const { readings, problems } = readCsv(text, "slide.csv");
      sound(problems);
      const machine =
        "name: L\nhandwheels: [{ name: Slide, feed: { readings: slide.csv }, dial: { shape: drum, diameter: 38, width: 9 } }]\n";
      const loaded = ofText(machine, { files: new Map([["slide.csv", readings]]), problems });
      sound(loaded.problems);
      if (deep && loaded.findings) printed(loaded.findings, ["dial", "turns", "measured-report"]);
    },
  },
};

/** A question without an answer is an answer in words. */
function quietly(ask: () => unknown): void {
  try {
    ask();
  } catch (error) {
    if (!(error instanceof Error) || error.constructor.name !== "Unanswered") throw error;
    inside(error.message.replace(/"[^"]*"/g, ""));
  }
}
