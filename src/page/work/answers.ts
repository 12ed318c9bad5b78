import type { Findings } from "../../findings/findings.js";
import { ofText } from "../../findings/ofText.js";
import type { Job } from "../../job/job.js";
import { readJob } from "../../job/read.js";
import { readCsv } from "../../machine/csv.js";
import type { CsvReadings } from "../../machine/csvReadings.js";
import type { Machine } from "../../machine/machine.js";
import type { Problem } from "../../machine/problem.js";
import type { Tools } from "../../output/render.js";
import { foreignFindings } from "../../plan/foreign.js";
import { planOf } from "../../plan/plan.js";
import { filesOf } from "../../printing/files.js";
import { type Prints, printsOf } from "../../printing/prints.js";
import { builtIn } from "../../sheets/builtIn.generated.js";
import type { NamedJob } from "../../sheets/pack.js";
import { readTemplate } from "../../sheets/readTemplate.js";
import type { Template } from "../../sheets/template.js";
import { choices, distanceAnswer, speedAnswer } from "./asked.js";
import { dialSeen, standing } from "./inHand.js";
import { pagesAsSeen } from "./pagesAsSeen.js";
import type { AnswerTo, Asked, Files, Told, WorkName } from "./protocol.js";
import { readingsSoFar } from "./readingsSoFar.js";

/** What is known of the files, kept until one of them changes. */
type Known = {
  readonly findings?: Findings;
  readonly told: readonly Told[];
  readonly jobs: readonly NamedJob[];
  readonly templates: readonly Template[];
  /** Sheets that were laid out already, by name. */
  readonly laid: Map<string, Prints>;
};

export type Answers = <N extends WorkName>(name: N, files: Files, asked: Asked<N>) => Promise<AnswerTo<N>>;

/** Answers all that the page asks. `tools`: what a renderer needs of the outside world. */
export function answersWith(tools: Tools): Answers {
  let last: { readonly files: Files; readonly known: Known } | undefined;
  const know = (files: Files): Known => {
    if (last?.files !== files) last = { files, known: read(files) };
    return last.known;
  };
  const answers: { readonly [N in WorkName]: (files: Files, asked: Asked<N>) => AnswerTo<N> | Promise<AnswerTo<N>> } = {
    read: (files) => {
      const { findings, told } = know(files);
      return {
        told,
        sound: findings !== undefined,
        handwheels: findings?.handwheels.map(({ handwheel }) => handwheel.name) ?? [],
      };
    },
    sheets: (files) => know(files).templates.map(({ name, title, onRequest }) => ({ name, title, onRequest })),
    lacks: (files, { sheet }) => {
      const laid = laidOut(know(files), sheet);
      return "why" in laid ? laid : whyOf(laid.absent[0]);
    },
    sheet: (files, { sheet }) => {
      const laid = laidOut(know(files), sheet);
      if ("why" in laid) return { pages: [], ...laid };
      const { prints, absent, machine } = laid;
      return { pages: prints.flatMap((print) => pagesAsSeen(print, machine)), ...whyOf(absent[0]) };
    },
    print: async (files, { sheets, bound = false, format }) => {
      const { findings, jobs, templates } = know(files);
      if (findings === undefined) return { files: [], why: [unsound] };
      const wanted = templates.filter(({ name, onRequest }) =>
        sheets === undefined ? !onRequest : sheets.includes(name),
      );
      const { prints, absent, binder } = printsOf(findings, { templates: wanted, jobs });
      const how = { stem: stemOf(files.machine.name), format, tools };
      return {
        files: await filesOf(bound ? [binder()] : prints, findings.machine, how),
        why: absent.map(({ name, why }) => `${name}: ${why}`),
      };
    },
    readings: (_, asked) => readingsSoFar(asked),
    dial: (files, asked) => dialSeen(know(files).findings, asked),
    standing: (files, asked) => standing(know(files).findings, asked),
    distance: (files, asked) => distanceAnswer(know(files).findings, asked),
    choices: (files) => choices(know(files).findings),
    speed: (files, asked) => speedAnswer(know(files).findings, asked),
  };
  return async (name, files, asked) => answers[name](files, asked);
}

const unsound = "the file has something to mend first";

function read({ machine, jobs, readings, sheets }: Files): Known {
  const csv = new Map<string, CsvReadings | undefined>();
  const problems: Problem[] = [];
  for (const { name, text } of readings) {
    const one = readCsv(text, name);
    problems.push(...one.problems);
    csv.set(name, one.readings);
  }
  const loaded = ofText(machine.text, { files: csv, problems });
  const readJobs = jobs.map(({ name, text }) => ({ name, ...readJob(text) }));
  const ownSheets = sheets.map(({ name, text }) => ({ name, ...readTemplate(text, stemOf(name)) }));
  return {
    ...(loaded.findings && { findings: loaded.findings }),
    told: [
      ...loaded.problems.map((problem) => toldOf(problem, machine.name)),
      ...readJobs.flatMap(({ name, problems }) => problems.map((problem) => toldOf(problem, name))),
      ...readJobs.flatMap(({ name, job }) => (job && loaded.findings ? jobTold(job, name, loaded.findings) : [])),
      ...ownSheets.flatMap(({ name, problems }) => problems.map((line) => toldOfLine(line, name))),
    ],
    jobs: readJobs.flatMap(({ name, job }) => (job ? [{ name: stemOf(name), job }] : [])),
    templates: [...builtIn, ...ownSheets.flatMap(({ template }) => template ?? [])],
    laid: new Map(),
  };
}

const toldOf = ({ file, severity, line, column, what, remedy }: Problem, name: string): Told => ({
  file: file ?? name,
  ...{ severity, line, column, what, remedy },
});

/** What stands against a job on this machine. */
function jobTold(job: Job, file: string, findings: Findings): Told[] {
  const foreign = foreignFindings(job, findings.machine);
  const all = foreign.length > 0 ? foreign : planOf(job, findings).findings;
  return all.map(({ kind, step, what, remedy }) => ({
    file,
    severity: kind === "refused" ? "error" : "warning",
    ...((step === undefined ? undefined : job.stepsAt?.[step]) ?? { line: 1, column: 1 }),
    ...{ what, remedy },
  }));
}

/** A template's faults come as whole lines: "line:column: what; remedy". */
function toldOfLine(words: string, file: string): Told {
  const [, line = "1", column = "1", what = words, remedy = ""] = /^(\d+):(\d+): (.*?)(?:; (.*))?$/s.exec(words) ?? [];
  return { file, severity: "error", line: Number(line), column: Number(column), what, remedy };
}

/** A sheet's pages, or why it has none. */
function laidOut(
  { findings, jobs, templates, laid }: Known,
  sheet: string,
): (Prints & { readonly machine: Machine }) | { readonly why: string } {
  const template = templates.find(({ name }) => name === sheet);
  if (template === undefined) return { why: `there is no sheet "${sheet}"` };
  if (findings === undefined) return { why: unsound };
  const made = laid.get(sheet) ?? printsOf(findings, { templates: [template], jobs });
  laid.set(sheet, made);
  return { ...made, machine: findings.machine };
}

const whyOf = (absent: { readonly why: string } | undefined) => (absent ? { why: absent.why } : {});
const stemOf = (name: string): string => name.replace(/\.[^.]*$/, "");
