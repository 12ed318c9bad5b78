import { rmSync } from "node:fs";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import { wheelNamed } from "../answers/wheelNamed.js";
import { isOurOutput } from "../drawing/ours.js";
import type { Print } from "../drawing/page.js";
import type { Findings } from "../findings/findings.js";
import type { Format } from "../output/formats.js";
import type { Tools } from "../output/render.js";
import { absentInEnglish, leftOutInEnglish, printsOf, withHandwheels } from "../printing/prints.js";
import type { NamedJob } from "../sheets/pack.js";
import type { LanguageCode } from "../words/languages.generated.js";
import { answered } from "./answered.js";
import { type Io, Refusal, readIfThere, told } from "./io.js";
import type { FiledJob } from "./jobs.js";
import { load } from "./load.js";
import { packageBytes } from "./packageFiles.js";
import { type Recorded, recorded } from "./recording.js";
import { report } from "./report.js";
import { stemOf } from "./stem.js";
import { type Output, writeWhole } from "./wholeFiles.js";

/** What is to be made of every machine file; plain data, so that it can be handed to another thread. */
export type PrintRequest = Recorded & {
  /** Whether each of the templates was asked for, so that one which cannot be made is an error. */
  readonly asked: boolean;
  readonly format: Format;
  /** Of pictures. */
  readonly dpi: number;
  /** Also replace files that witnessmark did not make. */
  readonly replace: boolean;
  /** What plans are made from: each with its file, for messages. */
  readonly jobs: readonly (NamedJob & { readonly file: string })[];
  /** Also one PDF of every sheet, with contents and bookmarks. */
  readonly all: boolean;
  /** Make plans of refused jobs too. */
  readonly anyway: boolean;
  /** Of the paper, before what the machine file says. */
  readonly language?: LanguageCode | undefined;
  readonly colour: boolean;
};

/** What came of one machine file: the paths written, the lines to show on standard error, the exit status. */
export type Outcome = {
  readonly written: readonly string[];
  readonly lines: readonly string[];
  readonly status: number;
};

/** Makes the sheets of one machine file, all of them or none. Never throws: another file's pages do not wait for this one. */
export async function printMachine(path: string, request: PrintRequest): Promise<Outcome> {
  const lines: string[] = [];
  const io: Io = { out: () => undefined, err: (line) => void lines.push(line), colour: request.colour };
  const written: string[] = [];
  const status = await told(
    io,
    async () => {
      const made = await makePages(path, request, io);
      if (made === undefined) return 1;
      const { outputs, record } = made;
      if (!request.replace) refuseForeign([...outputs, record]);
      writeWhole([...outputs, record]);
      removeLeft(outputs);
      written.push(...outputs.map((output) => output.path));
      return 0;
    },
    path,
  );
  return { written, lines, status };
}

/** The pages, and the record of what was printed. Undefined where the file holds an error, which is reported. */
async function makePages(
  path: string,
  request: PrintRequest,
  io: Io,
): Promise<{ outputs: Output[]; record: Output } | undefined> {
  const { findings, problems } = await load(path);
  report(problems, path, io);
  if (findings === undefined) return undefined;
  if (!(await jobsStand(request, findings, path, io))) return undefined;
  const handwheels = namedWheels(findings, request.handwheels, path);
  if (request.handwheels !== undefined && request.asked)
    for (const { name } of request.templates.filter((sheet) => withoutWheels.includes(sheet.name)))
      io.err(`${path}: the ${name} sheet shows no handwheel: --handwheel changes nothing on it`);
  const chosen = withHandwheels(findings, handwheels);
  const wish = { ...request, handwheels };
  const made = printsOf(findings, wish);
  const { prints, language, binder } = made;
  for (const { name, why, at } of absentInEnglish(findings, wish, made)) {
    if (at !== undefined) throw new Refusal(`${request.templateFiles[name] ?? name}:${at}: ${why}`);
    if (request.asked) throw new Refusal(`${path}: sheet ${name} cannot be made: ${why}`);
    io.err(`${path}: no ${name} sheet: ${why}`);
  }
  for (const { sheet, leftOut = [] } of leftOutInEnglish(findings, wish, made))
    for (const words of leftOut) io.err(`${path}: the ${sheet} sheet is printed ${words}`);
  const outputs = await outputsOf(prints, chosen, path, request);
  const record = recorded(prints, chosen, path, { ...request, language }, io.err);
  if (!request.all) return { outputs, record };
  const bound = await outputsOf([binder()], chosen, path, { ...request, format: "pdf" });
  return { outputs: [...outputs, ...bound], record };
}

/** Whether every job can be planned on this machine: what breaks or hurts is refused, unless it is wanted anyway. */
async function jobsStand(
  { jobs, anyway }: { readonly jobs: readonly FiledJob[]; readonly anyway: boolean },
  findings: Findings,
  path: string,
  io: Io,
): Promise<boolean> {
  if (jobs.length === 0) return true;
  const { judged, refuseForeignJob } = await import("./jobs.js");
  for (const job of jobs) refuseForeignJob(job, findings, path);
  const refused = jobs.map((job) => judged(job, findings, io)).filter((job) => job.refused);
  if (refused.length === 0 || anyway) return true;
  for (const { file } of refused)
    io.err(
      `${file}: no plan is made of a refused job, and nothing was printed; mend it, or print it with --anyway, which every page then says`,
    );
  return false;
}

/** Sheets of the program on which every handwheel is one and the same. */
const withoutWheels: readonly string[] = ["belt-card", "speed-diagram", "speed-tree", "printer-check"];

function namedWheels(
  { handwheels }: Findings,
  names: readonly string[] | undefined,
  path: string,
): readonly string[] | undefined {
  const known = handwheels.map(({ handwheel }) => handwheel.name);
  return names?.map((name) => answered(path, () => wheelNamed(name, known)));
}

async function outputsOf(
  prints: readonly Print[],
  { machine }: Findings,
  path: string,
  { format, dpi, out }: Pick<PrintRequest, "format" | "dpi" | "out">,
): Promise<Output[]> {
  const { filesOf } = await import("../printing/files.js");
  const picture = format === "png" ? { picture: await (await import("./picture.js")).pictureAt(dpi) } : {};
  const tools = { ...ownTools, ...picture };
  const files = await filesOf(prints, machine, { stem: stemOf(path), format, tools });
  return files.map(({ name, bytes }) => ({ path: join(out, name), bytes }));
}

const ownTools: Tools = {
  fonts: (kind) => ({
    regular: packageBytes("dist", "fonts", `regular.${kind}`),
    bold: packageBytes("dist", "fonts", `bold.${kind}`),
  }),
  deflate: deflateSync,
};

/** Of a sheet that had more pages before, the further ones of its own making go: they would look like today's. */
function removeLeft(outputs: readonly Output[]): void {
  const paged = outputs.flatMap(({ path }) => /^(.*-)(\d+)(\.(?:svg|png|dxf))$/.exec(path) ?? []);
  const made = new Set(outputs.map(({ path }) => path));
  for (let at = 0; at < paged.length; at += 4) {
    const [, stem, number, ending] = paged.slice(at, at + 4);
    for (let next = Number(number) + 1; ; next++) {
      const path = `${stem}${next}${ending}`;
      const bytes = made.has(path) ? undefined : readIfThere(path);
      if (bytes === undefined || !isOurOutput(bytes)) break;
      rmSync(path);
    }
  }
}

/** Nothing of the user's is overwritten: only what witnessmark made itself is replaced. */
function refuseForeign(outputs: readonly Output[]): void {
  for (const { path } of outputs) {
    const bytes = readIfThere(path);
    if (bytes && !isOurOutput(bytes))
      throw new Refusal(
        `${path} is there already and was not made by witnessmark; choose another folder with --out, or allow it with --replace`,
      );
  }
}
