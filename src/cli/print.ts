import { basename, extname } from "node:path";
import type { Format } from "../output/formats.js";
import { type Io, Refusal } from "./io.js";
import { packageVersion } from "./packageFiles.js";
import { type Outcome, type PrintRequest, printMachine } from "./printMachine.js";
import { readTemplates, templateFiles } from "./templates.js";

export type PrintArgs = {
  readonly files: readonly string[];
  readonly sheets: readonly string[] | undefined;
  readonly handwheels: readonly string[] | undefined;
  readonly format: Format;
  readonly out: string;
  readonly replace: boolean;
  /** Job files, for the plans. */
  readonly jobs?: readonly string[] | undefined;
  /** Also one PDF of every sheet, with contents and bookmarks. */
  readonly all: boolean;
  /** Make plans of refused jobs too. */
  readonly anyway?: boolean;
};

/** Below this many files a second thread costs more than it saves. */
const worthThreads = 12;

/** Makes the asked sheets of every file: those of one file all or nothing, and a faulty file stops only itself. */
export async function print(
  { files, sheets, jobs: jobFiles = [], anyway = false, ...rest }: PrintArgs,
  io: Io,
): Promise<number> {
  refuseSameNames(files, "machine");
  refuseSameNames(jobFiles, "job");
  const templates = await readTemplates(sheets);
  const loaded = jobFiles.length === 0 ? [] : await (await import("./jobs.js")).loadJobs(jobFiles, io);
  if (loaded === undefined) return 1;
  const jobs = loaded.map(({ file, job }) => ({ file, name: basename(file, extname(file)), job }));
  const request: PrintRequest = {
    ...{ ...rest, anyway },
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

function refuseSameNames(files: readonly string[], kind: "machine" | "job"): void {
  const stems = files.map((file) => basename(file, extname(file)));
  const twice = stems.find((stem, index) => stems.indexOf(stem) !== index);
  if (twice !== undefined)
    throw new Refusal(
      `two ${kind} files are named "${twice}", and their pages would have the same names; print them one at a time with --out`,
    );
}
