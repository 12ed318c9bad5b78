import type { Supposed } from "../answers/supposed.js";
import type { Findings } from "../findings/findings.js";
import type { JobReading } from "../job/read.js";
import { answered } from "./answered.js";
import { choiceLines } from "./choiceLines.js";
import { fitted } from "./inColumns.js";
import { type Io, Refusal } from "./io.js";
import { load } from "./load.js";
import { overview, positionsFit } from "./overview.js";
import { packageVersion } from "./packageFiles.js";
import type { OutOfDate } from "./printed.js";
import { mayDiffer, readRecord, recordPath, upToDate } from "./record.js";
import { report } from "./report.js";
import { known, summary } from "./summary.js";

export type CheckOptions = {
  readonly json: boolean;
  readonly out: string;
  /** The other ways to divide each dial as well. */
  readonly choices?: boolean;
  /** Changes of the drive, in words. */
  readonly suppose?: readonly string[];
  /** Files. */
  readonly jobs?: readonly string[];
};

/** Reports every problem of a file, and shows what follows from it. Exit status 1 when it holds an error. */
export async function check(path: string, options: CheckOptions, io: Io): Promise<number> {
  const { findings, problems } = await load(path);
  const wishes = options.suppose ?? [];
  const after = findings === undefined || wishes.length === 0 ? undefined : await supposedOf(findings, wishes, path);
  const jobs = await judgedJobs(options.jobs ?? [], findings, path, io);
  const stale = findings && (await sincePrinted(findings, path, options.out));
  if (options.json) {
    const then = after && { changes: after.changes, speeds: known({ ...findings, ...after } as Findings).speeds };
    io.out(
      JSON.stringify(
        {
          ...summary(findings, problems),
          ...(stale?.sheets && { printed: { dials: stale.dials, sheets: stale.sheets } }),
          ...(then && { supposed: then }),
          ...(jobs.length > 0 && { jobs: jobs.map(({ summary }) => summary) }),
        },
        null,
        2,
      ),
    );
  } else {
    report(problems, path, io);
    const lines = [
      ...(findings ? await overviewOf(findings) : []),
      ...(findings && options.choices ? choiceLines(findings) : []),
      ...(findings && !options.choices && findings.handwheels.some(({ feed }) => feed) ? choicesWords : []),
      ...(stale?.lines ?? []),
      ...jobs.flatMap(({ lines }) => lines),
      ...(findings && after ? await supposedText(findings, after) : []),
    ];
    for (const line of lines.flatMap(fitted)) io.out(line);
  }
  return findings && jobs.every(({ refused }) => !refused) ? 0 : 1;
}

/** Positions whose names have no room are called as on the cards. */
async function overviewOf(findings: Findings): Promise<string[]> {
  if (positionsFit(findings)) return overview(findings);
  const { withSigns } = await import("../blocks/shared/stepSigns.js");
  return overview(findings, withSigns(findings));
}

async function supposedOf(findings: Findings, wishes: readonly string[], path: string): Promise<Supposed> {
  const { supposed } = await import("../answers/supposed.js");
  return answered(path, () => supposed(findings, wishes));
}

async function supposedText(findings: Findings, after: Supposed): Promise<string[]> {
  const { supposedLaid, supposedLines } = await import("../answers/supposed.js");
  return supposedLines(supposedLaid(findings, after));
}

const choicesWords = ["", "--choices shows lost motion, strips, and the other ways to divide each dial."];

/** Jobs against this machine, or what is wrong with their files. */
async function judgedJobs(
  files: readonly string[],
  findings: Findings | undefined,
  path: string,
  io: Io,
): Promise<{ refused: boolean; lines: string[]; summary: unknown }[]> {
  if (files.length === 0) return [];
  const { faultyJob, judged, jobLines, jobSummary, readJobFile, refuseForeignJob } = await import("./jobs.js");
  return files.map((file) => {
    const read = readOrFault(() => readJobFile(file), file);
    const { job, problems } = read;
    report(problems, file, io);
    if (job === undefined || findings === undefined)
      return { refused: true, lines: [], summary: faultyJob(file, problems) };
    refuseForeignJob({ job, file }, findings, path);
    const one = judged({ job, file }, findings, io);
    return { refused: one.refused, lines: jobLines(one), summary: jobSummary(one) };
  });
}

/** A job file that is not there, or cannot be read, is a fault like any other: the rest is told all the same. */
function readOrFault(read: () => JobReading, file: string): JobReading {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const [what = "", ...remedy] = error.message.replace(`${file}: `, "").split("; ");
    return {
      problems: [
        {
          severity: "error",
          code: "unreadable",
          line: 1,
          column: 1,
          what,
          remedy: remedy.join("; ") || "look at its name and place",
        },
      ],
    };
  }
}

/** What was printed before and is out of date now, in words too. Pages are laid out for it only where something can have
 *  changed. Without lists where nothing is recorded: silence would be taken for all is well. */
async function sincePrinted(
  findings: Findings,
  path: string,
  out: string,
): Promise<Partial<OutOfDate> & Pick<OutOfDate, "lines">> {
  const place = recordPath(out, path);
  const record = readRecord(place);
  if (record === "none")
    return { lines: ["", `Nothing was printed into ${out} yet; if you print elsewhere, name the folder: --out.`] };
  if (record === "unreadable")
    return { lines: ["", `${place} cannot be understood: print again what is to be compared.`] };
  const version = packageVersion();
  if (mayDiffer(record, findings, version, place))
    return (await import("./printed.js")).outOfDate(record, findings, version, place);
  return { dials: [], sheets: [], lines: upToDate(record) };
}
