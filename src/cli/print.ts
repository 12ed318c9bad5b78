import type { Format } from "../output/formats.js";
import type { LanguageCode } from "../words/languages.generated.js";
import { type Io, Refusal } from "./io.js";
import { packageVersion } from "./packageFiles.js";
import { type Outcome, type PrintRequest, printMachine } from "./printMachine.js";
import { stemOf } from "./stem.js";
import { readTemplates, templateFiles } from "./templates.js";

export type PrintArgs = {
  readonly files: readonly string[];
  readonly sheets: readonly string[] | undefined;
  readonly handwheels: readonly string[] | undefined;
  readonly format: Format;
  /** Of pictures. */
  readonly dpi?: number | undefined;
  readonly out: string;
  readonly replace: boolean;
  /** Job files, for the plans. */
  readonly jobs?: readonly string[] | undefined;
  /** Also one PDF of every sheet, with contents and bookmarks. */
  readonly all: boolean;
  /** Make plans of refused jobs too. */
  readonly anyway?: boolean;
  /** Of the paper, before what the machine file says. */
  readonly language?: LanguageCode | undefined;
  /** Print again after each save. */
  readonly watch?: boolean;
};

const USUAL_DPI = 150;
/** Below, no word can be read; above, a large page takes a gigabyte and more to draw. */
const [COARSEST_DPI, FINEST_DPI] = [20, 600];

/** Below this many files a second thread costs more than it saves. */
const worthThreads = 12;

/** Makes the asked sheets of every file, once or again after each save; resolves to the exit status. */
export async function print(args: PrintArgs, io: Io): Promise<number> {
  const { files, jobs = [], format, dpi } = args;
  refuseSameNames(files, "machine");
  refuseSameNames(jobs, "job");
  refuseSize(dpi, format);
  // Told once and at the beginning, not for each machine.
  if (format === "png") await (await import("./picture.js")).pictureAt(dpi ?? USUAL_DPI);
  if (!args.watch) return printOnce(args, io);
  return (await import("./watch.js")).printAgain(args, io, (told) => printOnce(args, told));
}

/** The sheets of one file all or nothing, and a faulty file stops only itself. */
async function printOnce(
  { files, sheets, jobs: jobFiles = [], anyway = false, dpi = USUAL_DPI, watch: _, ...rest }: PrintArgs,
  io: Io,
): Promise<number> {
  const templates = await readTemplates(sheets, io.err);
  const loaded = jobFiles.length === 0 ? [] : await (await import("./jobs.js")).loadJobs(jobFiles, io);
  if (loaded === undefined) return 1;
  const jobs = loaded.map(({ file, job }) => ({ file, name: stemOf(file), job }));
  const request: PrintRequest = {
    ...{ ...rest, anyway, dpi },
    ...{ templates, asked: sheets !== undefined, jobs, colour: io.colour },
    ...{ templateFiles: templateFiles(sheets), version: packageVersion() },
  };

  let status = 0;
  const tell = (outcome: Outcome) => {
    for (const line of outcome.lines) io.err(line);
    for (const path of outcome.written) io.out(path);
    status = Math.max(status, outcome.status);
  };
  if (files.length < worthThreads) for (const path of files) tell(await printMachine(path, request));
  else await (await import("./printMany.js")).printMany(files, request, tell);
  return status;
}

function refuseSize(dpi: number | undefined, format: Format): void {
  if (dpi === undefined) return;
  if (format !== "png") throw new Refusal(`--dpi is for pictures; add --format png, or leave it out`, 2);
  if (!(dpi >= COARSEST_DPI && dpi <= FINEST_DPI))
    throw new Refusal(`--dpi takes a number from ${COARSEST_DPI} to ${FINEST_DPI}; for example: --dpi 300`, 2);
}

function refuseSameNames(files: readonly string[], kind: "machine" | "job"): void {
  const stems = files.map((file) => stemOf(file));
  const twice = stems.find((stem, index) => stems.indexOf(stem) !== index);
  if (twice !== undefined)
    throw new Refusal(
      `two ${kind} files are named "${twice}", and their pages would have the same names; print them one at a time with --out`,
    );
}
