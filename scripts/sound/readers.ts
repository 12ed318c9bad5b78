import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { getDocument, VerbosityLevel } from "pdfjs-dist/legacy/build/pdf.mjs";
import { SaxesParser } from "saxes";
import { readDxf } from "../../tests/support/readDxf.js";

/** What independent readers say against a file: nothing where it is sound. */
export type Complaints = readonly string[];

/** Programs that read PDFs and share no code with each other, nor with what writes ours: what they are called with, and the Debian
 *  package that has them. Each draws or checks every page. */
const programs = [
  { name: "pdftoppm", from: "poppler-utils", args: (file: string) => ["-r", "10", "-gray", file, `${file}-page`] },
  { name: "qpdf", from: "qpdf", args: (file: string) => ["--check", file] },
] as const;

const isHere = ({ name }: (typeof programs)[number]): boolean => spawnSync(name, ["--version"]).error === undefined;
const here = programs.filter(isHere);

/** Debian packages that are missing here. */
export const missingPrograms = (): string[] => programs.filter((one) => !here.includes(one)).map(({ from }) => from);

/** By those programs that are here, then by pdf.js, page by page. */
export async function readPdfStrictly(bytes: Uint8Array): Promise<Complaints> {
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-sound-"));
  const file = join(folder, "sheets.pdf");
  writeFileSync(file, bytes);
  const said = here.flatMap(({ name, args }) => {
    const { status, stderr, stdout } = spawnSync(name, args(file), { encoding: "utf8" });
    const warned = `${stderr}${/warning|error/i.test(stdout.replace(/No syntax or stream encoding errors found.*/s, "")) ? stdout : ""}`;
    return status === 0 && warned.trim() === "" ? [] : [`${name} (${status}): ${warned.trim().slice(0, 400)}`];
  });
  rmSync(folder, { recursive: true });
  return [...said, ...(await readByPdfJs(bytes))];
}

async function readByPdfJs(bytes: Uint8Array): Promise<Complaints> {
  const said: string[] = [];
  const { warn, log } = console;
  console.warn = console.log = (...words: unknown[]) => void said.push(`pdf.js: ${words.join(" ")}`);
  const task = getDocument({
    data: new Uint8Array(bytes),
    verbosity: VerbosityLevel.WARNINGS,
    stopAtErrors: true,
    isEvalSupported: false,
  });
  try {
    const pdf = await task.promise;
    for (let number = 1; number <= pdf.numPages; number++) {
      const page = await pdf.getPage(number);
      const { fnArray } = await page.getOperatorList();
      const { items } = await page.getTextContent();
      if (fnArray.length === 0 || items.length === 0) said.push(`pdf.js: nothing on page ${number}`);
    }
  } catch (error) {
    said.push(`pdf.js: ${error}`);
  } finally {
    await task.destroy();
    Object.assign(console, { warn, log });
  }
  return said;
}

/** As XML 1.0 with namespaces; whatever is not well-formed is an error. */
export function readXmlStrictly(text: string): Complaints {
  const said: string[] = [];
  const parser = new SaxesParser({ xmlns: true });
  parser.on("error", (error) => void said.push(`XML: ${error.message}`));
  parser.write(text).close();
  return said;
}

/** That it can be read, has something on each of its layers, and no place that is no number. */
export function readDxfStrictly(text: string): Complaints {
  try {
    const { entities, layers } = readDxf(text);
    const strange = entities
      .filter(({ layer }) => !layers.includes(layer))
      .map(({ layer }) => `DXF: no layer ${layer}`);
    const places = entities.flatMap(({ vertices = [], center, radius }) => [
      ...vertices.flatMap(({ x, y }) => [x, y]),
      ...(center === undefined ? [] : [center.x, center.y]),
      ...(radius === undefined ? [] : [radius]),
    ]);
    return [
      ...(entities.length === 0 ? ["DXF: nothing in it"] : []),
      ...strange,
      ...(places.every(Number.isFinite) ? [] : ["DXF: a place that is no number"]),
    ];
  } catch (error) {
    return [`DXF: ${error}`];
  }
}
