/** Measures every page of machine files and tells what is wrong with it: text over text, marks through letters, letters over a
 *  cut, and the like. `node scripts/run.mjs scripts/measurePages.ts [--sheet turns,dial] [--job job.yaml] [--language de]
 *  [--all] [--marked DIR] FILE.yaml…` By sheet and kind with one example of each; `--all` tells every fault; `--marked` writes each sheet that has one as a
 *  PDF with every fault ringed. Ends with status 1 where there is one. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { load } from "../src/cli/load.js";
import type { Print } from "../src/drawing/page.js";
import { circle } from "../src/drawing/shapes.js";
import { compute } from "../src/findings/compute.js";
import { readJob } from "../src/job/read.js";
import { inLanguage } from "../src/words/language.js";
import type { LanguageCode } from "../src/words/languages.generated.js";
import { faultLine, measureSheets, type SheetFault, summary } from "../tests/support/measureSheets.js";
import { pdfOf } from "../tests/support/pdfOf.js";

const words = process.argv.slice(2);
const given = (flag: string): string | undefined => {
  const at = words.indexOf(flag);
  return at < 0 ? undefined : words.splice(at, 2)[1];
};
const only = given("--sheet")?.split(",");
const jobFile = given("--job");
const marked = given("--marked");
const language = given("--language") as LanguageCode | undefined;
const all = words.includes("--all");
const job = jobFile === undefined ? undefined : readJob(readFileSync(jobFile, "utf8")).job;
for (const file of words.filter((word) => word !== "--all")) {
  const { findings: computed, problems } = await load(file);
  for (const { line, column, what, severity } of problems)
    console.log(`${file}:${line}:${column}: ${severity}: ${what}`);
  if (computed === undefined) {
    process.exitCode = 1;
    continue;
  }
  const { faults, pages, refused, prints } = inLanguage(language ?? computed.machine.language ?? "en", () =>
    // Its words are those of the paper, so that it is computed anew.
    measureSheets({ ...compute(computed.machine), ...(job && { job }) }, only),
  );
  for (const line of all ? faults.map(faultLine) : summary(faults)) console.log(line);
  for (const { sheet, why } of refused)
    if (/too large|does not fit|larger/.test(why)) console.log(`  refused  ${sheet}: ${why}`);
  if (marked !== undefined)
    for (const print of prints) {
      const own = faults.filter(({ sheet }) => sheet === print.sheet);
      if (own.length === 0) continue;
      mkdirSync(marked, { recursive: true });
      writeFileSync(join(marked, `${basename(file, ".yaml")}-${print.sheet}.pdf`), await pdfOf(ringed(print, own)));
    }
  console.log(`${file}: ${pages} pages, ${faults.length} faults`);
  if (faults.length > 0) process.exitCode = 1;
}

/** Every fault in a ring of the warning colour; sizes are left out, since they ring the whole page. */
function ringed(print: Print, faults: readonly SheetFault[]): Print {
  const pages = print.pages.map((page, index) => {
    const rings = faults
      .filter((fault) => fault.page === index + 1 && fault.kind !== "too small")
      .map(({ at }) => circle(at, 3, { pen: { width: 0.4, ink: "accent" } }));
    return { ...page, drawing: { ...page.drawing, marks: [...page.drawing.marks, ...rings] } };
  });
  return { ...print, pages };
}
