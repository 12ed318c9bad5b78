import { basename, extname, join } from "node:path";
import { deflateSync } from "node:zlib";
import type { Print } from "../drawing/page.js";
import type { Findings } from "../findings/findings.js";
import { closest } from "../machine/closest.js";
import { identity, printerCorrection } from "../paper/printerCorrection.js";
import { arrange } from "../sheets/arrange.js";
import { builtIn } from "../sheets/builtIn.generated.js";
import type { Template } from "../sheets/template.js";
import { type Io, type Output, Refusal, readIfThere, readText, writeWhole } from "./io.js";
import { load, loadJob } from "./load.js";
import { packageBytes } from "./packageFiles.js";
import { report } from "./report.js";

export type PrintArgs = {
  readonly files: readonly string[];
  readonly sheets: readonly string[] | undefined;
  readonly handwheels: readonly string[] | undefined;
  readonly format: "pdf" | "svg" | "dxf";
  readonly out: string;
  readonly replace: boolean;
  /** A job file, for the plan. */
  readonly job?: string | undefined;
  /** Also one PDF of every sheet, with contents and bookmarks. */
  readonly all?: boolean;
};

/** Makes the asked sheets of every file, all or nothing. */
export async function print(args: PrintArgs, io: Io): Promise<number> {
  const templates = await readTemplates(args.sheets);
  const loaded = await Promise.all(args.files.map(async (path) => ({ path, ...(await load(path)) })));
  for (const { path, problems } of loaded) report(problems, path, io);
  if (loaded.some(({ findings }) => findings === undefined)) return 1;
  refuseSameNames(args.files);
  const job = args.job === undefined ? undefined : await loadJob(args.job, io);
  if (args.job !== undefined && job === undefined) return 1;

  const outputs: Output[] = [];
  for (const { path, findings } of loaded) {
    if (findings === undefined) continue;
    const chosen = { ...onlyHandwheels(findings, args.handwheels, path), ...(job && { job }) };
    const prints: Print[] = [];
    const absent: { title: string; why: string }[] = [];
    for (const template of templates) {
      if (template.onRequest && args.sheets === undefined) continue;
      const result = arrange(chosen, template);
      if ("missing" in result) {
        if (args.sheets !== undefined)
          throw new Refusal(`${path}: sheet ${template.name} cannot be made: ${result.missing}`);
        absent.push({ title: template.title, why: result.missing });
        io.err(`${path}: no ${template.name} sheet: ${result.missing}`);
      } else prints.push(result.print);
    }
    outputs.push(...(await renderAll(prints, chosen, path, args)));
    if (args.all) {
      const { bind } = await import("../sheets/binder.js");
      const binder = bind(chosen.machine, prints, absent);
      outputs.push(...(await renderAll([binder], chosen, path, { ...args, format: "pdf" })));
    }
  }
  if (!args.replace) await refuseForeign(outputs);
  await writeWhole(outputs);
  for (const { path } of outputs) io.out(path);
  return 0;
}

/** Those that come with the program, or a template file of the user's own where its name ends so. */
async function readTemplates(wanted: readonly string[] | undefined): Promise<readonly Template[]> {
  const names = wanted?.flatMap((name) => name.split(",")).filter((name) => name !== "");
  if (names === undefined) return builtIn;
  const templates: Template[] = [];
  for (const name of names) templates.push(/\.ya?ml$/.test(name) ? await ownTemplate(name) : builtInTemplate(name));
  return templates;
}

function builtInTemplate(name: string): Template {
  const template = builtIn.find((other) => other.name === name);
  if (template !== undefined) return template;
  const known = builtIn.map((other) => other.name);
  const nearest = closest(name, known);
  throw new Refusal(
    `there is no sheet "${name}"; ${nearest ? `did you mean ${nearest}?` : `there are ${known.join(", ")}`}`,
  );
}

async function ownTemplate(file: string): Promise<Template> {
  const { readTemplate } = await import("../sheets/readTemplate.js");
  const { template, problems } = readTemplate(await readText(file), basename(file, extname(file)));
  if (template === undefined) throw new Refusal(problems.map((problem) => `${file}:${problem}`).join("\n"));
  return template;
}

function onlyHandwheels(findings: Findings, names: readonly string[] | undefined, path: string): Findings {
  if (names === undefined) return findings;
  const known = findings.handwheels.map(({ handwheel }) => handwheel.name);
  const same = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();
  for (const name of names)
    if (!known.some((other) => same(name, other)))
      throw new Refusal(
        `${path}: there is no handwheel "${name}"; there are ${known.map((other) => `"${other}"`).join(", ") || "none in this file"}`,
      );
  return {
    ...findings,
    handwheels: findings.handwheels.filter(({ handwheel }) => names.some((name) => same(name, handwheel.name))),
  };
}

async function renderAll(
  prints: readonly Print[],
  { machine }: Findings,
  path: string,
  { format, out }: PrintArgs,
): Promise<Output[]> {
  const { outlined, renderDxf, renderPdf, renderSvg } = await import("../output/render.js");
  const printer = machine.paper.printer === undefined ? undefined : machine.printers[machine.paper.printer];
  const fontFile = (weight: string) => packageBytes("dist", "fonts", `${weight}.${format === "svg" ? "woff" : "ttf"}`);
  const fonts = { regular: await fontFile("regular"), bold: await fontFile("bold") };
  const stem = join(out, basename(path, extname(path)));
  const outputs: Output[] = [];
  for (const arranged of prints) {
    const print = arranged.outlines ? await outlined(arranged) : arranged;
    const correction = arranged.outlines || arranged.uncorrected ? identity : printerCorrection(printer);
    if (format === "pdf")
      outputs.push({
        path: `${stem}-${print.sheet}.pdf`,
        bytes: await renderPdf(print, correction, fonts, deflateSync),
      });
    else
      for (const [index, page] of print.pages.entries())
        outputs.push({
          path: `${stem}-${print.sheet}-${index + 1}.${format}`,
          bytes: format === "dxf" ? await renderDxf(page, print) : await renderSvg(page, print, correction, fonts),
        });
  }
  return outputs;
}

function refuseSameNames(files: readonly string[]): void {
  const stems = files.map((file) => basename(file, extname(file)));
  const twice = stems.find((stem, index) => stems.indexOf(stem) !== index);
  if (twice !== undefined)
    throw new Refusal(
      `two machine files are named "${twice}", and their pages would have the same names; print them one at a time with --out`,
    );
}

/** Nothing of the user's is overwritten: only what witnessmark made itself is replaced. */
async function refuseForeign(outputs: readonly Output[]): Promise<void> {
  const { isOurOutput } = await import("../output/ours.js");
  for (const { path } of outputs) {
    const bytes = await readIfThere(path);
    if (bytes && !isOurOutput(bytes))
      throw new Refusal(
        `${path} is there already and was not made by witnessmark; choose another folder with --out, or allow it with --replace`,
      );
  }
}
