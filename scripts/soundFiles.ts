/** `npm run sound [machines] [seed]`: all sheets of random machines, 1000 when left out, bound as PDF, as SVG, and what is engraved as DXF,
 *  read by programs that know nothing of ours, and every page measured; ends with status 1 where one of them complains. It needs two
 *  programs beside Node (poppler-utils and qpdf). */
import { readFileSync } from "node:fs";
import { deflateSync } from "node:zlib";
import fc from "fast-check";
import { render } from "../src/output/render.js";
import { printerOf } from "../src/printing/files.js";
import { bind } from "../src/sheets/binder.js";
import { anyMachine, sound } from "../tests/support/anyMachine.js";
import { measureSheets } from "../tests/support/measureSheets.js";
import { fontFiles, readFonts } from "./font.js";
import { missingPrograms, readDxfStrictly, readPdfStrictly, readXmlStrictly } from "./sound/readers.js";

const [count = "1000", seed = String(Date.now() % 2 ** 31)] = process.argv.slice(2);
const missing = missingPrograms();
if (missing.length > 0) {
  console.error(`needs ${missing.join(" and ")}: apt-get install ${missing.join(" ")}`);
  process.exit(2);
}
const ttf = readFonts();
const woff = { regular: readFileSync(fontFiles.regular), bold: readFileSync(fontFiles.bold) };
const tools = { fonts: (kind: "ttf" | "woff") => (kind === "ttf" ? ttf : woff), deflate: deflateSync };

const started = Date.now();
const read = { machines: 0, pages: 0, pdf: 0, svg: 0, dxf: 0 };
let complaints = 0;
for (const made of fc.sample(anyMachine, { numRuns: Number(count), seed: Number(seed) })) {
  const findings = sound(made);
  if (findings === undefined) continue;
  const say = (about: string, said: readonly string[]): void => {
    for (const what of said) console.log(`machine ${read.machines} of seed ${seed}, ${about}: ${what}`);
    complaints += said.length;
  };
  const { prints: measured, faults } = measureSheets(findings);
  say(
    "measured",
    faults.filter(({ kind }) => kind === "off the page").map(({ sheet, page, what }) => `${sheet} ${page}: ${what}`),
  );
  const prints = measured.filter(({ sheet }) => sheet !== "binder");
  const printer = printerOf(findings.machine);
  for (const { bytes } of await render(bind(findings, prints, []), "pdf", printer, tools)) {
    read.pdf++;
    say("all sheets", await readPdfStrictly(bytes as Uint8Array));
  }
  for (const print of prints) {
    read.pages += print.pages.length;
    for (const { bytes, ending } of await render(print, "svg", printer, tools)) {
      read.svg++;
      say(`${print.sheet}${ending}`, readXmlStrictly(String(bytes)));
    }
    if (!print.outlines) continue;
    for (const { bytes, ending } of await render(print, "dxf", printer, tools)) {
      read.dxf++;
      say(`${print.sheet}${ending}`, readDxfStrictly(String(bytes)));
    }
  }
  read.machines++;
}
const { machines, pages, pdf, svg, dxf } = read;
console.log(
  `${machines} machines of seed ${seed}: ${pages} pages in ${pdf} PDFs, ${svg} SVGs, ${dxf} DXFs, in ${Math.round((Date.now() - started) / 1000)} s; ${complaints} complaints`,
);
process.exitCode = complaints > 0 ? 1 : 0;
