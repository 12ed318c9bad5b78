import { everySetting } from "../../answers/blockSettings.js";
import type { Findings } from "../../findings/findings.js";
import { ofText } from "../../findings/ofText.js";
import { unitsAt } from "../../findings/settingWords.js";
import type { Job } from "../../job/job.js";
import { readJob } from "../../job/read.js";
import { readCsv } from "../../machine/csv.js";
import type { CsvReadings } from "../../machine/csvReadings.js";
import type { Machine } from "../../machine/machine.js";
import type { Places, Problem } from "../../machine/problem.js";
import type { Tools } from "../../output/render.js";
import { remedyInFile } from "../../plan/finding.js";
import { foreignFindings } from "../../plan/foreign.js";
import { isRefused, planOf } from "../../plan/plan.js";
import { filesOf } from "../../printing/files.js";
import { absentInEnglish, type Prints, printsOf } from "../../printing/prints.js";
import { stemOf } from "../../printing/stem.js";
import { builtIn } from "../../sheets/builtIn.generated.js";
import { isAboutJob, type NamedJob } from "../../sheets/pack.js";
import { readTemplate } from "../../sheets/readTemplate.js";
import type { Template } from "../../sheets/template.js";
import { explainableNow, measuresNow, supposedAnswer, verifiedNow, wishesNow, workingsNow } from "./asCommanded.js";
import { type AsIf, alikeFrom, asIfMended } from "./asIf.js";
import { choices, distanceAnswer, speedAnswer } from "./asked.js";
import { dialSeen, standing } from "./inHand.js";
import { pagesAsSeen } from "./pagesAsSeen.js";
import { answerOf, exercisesSeen, marked } from "./practice.js";
import type { AnswerTo, Asked, Files, SheetState, Told, WorkName } from "./protocol.js";
import { readingsSoFar } from "./readingsSoFar.js";
import { sheetSchema } from "./sheetSchema.js";
import { tableRead } from "./tableRead.js";

type FiledJob = NamedJob & { readonly file: string };

/** What is known of the files, kept until one of them changes. */
type Known = {
  readonly findings?: Findings;
  /** Where faults lie only in what says nothing of handwheels: the machine without that. */
  readonly ofWheels?: Findings;
  /** Of what sheets are made: of the findings, or, where there are none, of what stands in for them. */
  readonly asIf: AsIf;
  /** Lines of the machine's file. */
  readonly places: Places;
  readonly told: readonly Told[];
  /** Those that this machine can be asked for. */
  readonly jobs: readonly FiledJob[];
  /** Those of them that are refused, found out when it is asked. */
  readonly refused: () => readonly FiledJob[];
  /** Why it cannot be asked for the others, a sentence for each. */
  readonly foreign: readonly { readonly file: string; readonly why: string }[];
  readonly templates: readonly Template[];
  /** Names of the reader's own, those too that cannot be read. */
  readonly own: readonly string[];
  /** Sheets that were laid out already, by name and job. */
  readonly laid: Map<string, Prints | { readonly why: string }>;
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
      const { findings, told, ofWheels } = know(files);
      return {
        told,
        sound: findings !== undefined,
        handwheels: ofWheels?.handwheels.map(({ handwheel }) => handwheel.name) ?? [],
        readIn: ofWheels?.handwheels.map((wheel) => unitsAt(wheel, ofWheels.machine.units)) ?? [],
      };
    },
    sheets: (files) => sheetStates(know(files)),
    lacks: (files, { sheet }) => {
      const laid = laidOut(know(files), sheet);
      return "why" in laid ? laid : whyOf(laid.absent[0]);
    },
    sheet: (files, { sheet, job }) => {
      const laid = laidOut(know(files), sheet, job);
      if ("why" in laid) return { pages: [], ...laid };
      const { prints, absent, machine } = laid;
      const drawn = prints.flatMap(({ of }) => of ?? []);
      const refused =
        drawn.length > 0
          ? know(files)
              .refused()
              .filter(({ name }) => drawn.includes(name))
          : [];
      return {
        pages: prints.flatMap((print) => pagesAsSeen(print, machine)),
        ...(refused.length > 0 && { refused: filesOfJobs(refused) }),
        ...whyOf(absent[0]),
      };
    },
    print: async (files, { sheets, bound = false, format, handwheels, language, refusedJobs }) => {
      const known = know(files);
      const { templates, foreign } = known;
      const [machine] = known.asIf.machines;
      if (machine === undefined) return { files: [], why: [unsound] };
      const wanted = templates.filter(({ name, onRequest }) =>
        sheets === undefined ? !onRequest : sheets.includes(name),
      );
      const waiting = wanted.filter(({ name }) => known.asIf.waiting.length > 0 && "why" in laidOut(known, name));
      const ready = wanted.filter((one) => !waiting.includes(one));
      const refused = ready.some(isAboutJob) ? known.refused() : [];
      const others = ready.filter((one) => !isAboutJob(one));
      if (refused.length > 0 && refusedJobs === undefined) {
        const left = others.length > 0 || refused.length < known.jobs.length;
        return { files: [], why: [], toSay: { refused: filesOfJobs(refused), others: left } };
      }
      const leftOut = refusedJobs === "left out" ? refused : [];
      const jobs = known.jobs.filter((one) => !leftOut.includes(one));
      const made = jobs.length < known.jobs.length && jobs.length === 0 ? others : ready;
      const wish = { templates: made, jobs, handwheels, language };
      const printed = printsOf(machine, wish);
      const { prints, binder } = printed;
      const absent = absentInEnglish(machine, wish, printed);
      const how = { stem: stemOf(files.machine.name), format, tools };
      return {
        files: await filesOf(bound ? [binder()] : prints, machine.machine, how),
        why: [
          ...waiting.map(({ name }) => `${name}: ${waits(known.asIf)}`),
          ...filesOfJobs(leftOut).map((file) => `${file}: left out, since it is refused`),
          ...absent.map(({ name, why }) => {
            const template = wanted.find((one) => one.name === name);
            const against = jobs.length === 0 && template && isAboutJob(template) ? foreign[0] : undefined;
            return `${name}: ${against?.why ?? why}`;
          }),
        ],
      };
    },
    readings: (_, asked) => readingsSoFar(asked),
    table: (files, asked) => tableRead(files, asked),
    dial: (files, asked) => dialSeen(know(files).ofWheels, asked),
    standing: (files, asked) => standing(know(files).ofWheels, asked),
    exercises: (files) => exercisesSeen(know(files).findings),
    mark: (files, { at, given }) => marked(know(files).findings, at, given),
    solve: (files, { at }) => answerOf(know(files).findings, at),
    distance: (files, asked) => distanceAnswer(know(files).ofWheels, asked),
    choices: (files) => choices(know(files).findings),
    speed: (files, asked) => speedAnswer(know(files).findings, asked),
    explainable: (files) => explainableNow(know(files).findings),
    explain: (files, asked) => workingsNow(know(files).findings, know(files).places, asked),
    measures: (files) => measuresNow(know(files).ofWheels),
    verify: (files, asked) => {
      const { ofWheels, asIf } = know(files);
      const { mend, ...judged } = verifiedNow(ofWheels, asked);
      if (mend === undefined || !asIf.printer) return { ...judged, ...(mend && { mend }) };
      // Figures that are to be mended themselves are nothing to reckon on from.
      return { ...judged, lines: [...judged.lines, `Mend first what the file says of ${asIf.waiting.join(" and ")}.`] };
    },
    blocks: () => ({ lines: everySetting(), schema: sheetSchema() }),
    wishes: (files) => wishesNow(know(files).findings),
    suppose: (files, asked) => supposedAnswer(know(files).findings, asked),
  };
  return async (name, files, asked) => answers[name](files, asked);
}

const filesOfJobs = (jobs: readonly FiledJob[]): string[] => jobs.map(({ file }) => file);

const unsound = "the file has something to mend first";
const waits = ({ waiting }: AsIf): string => `it needs ${waiting.join(" and ")}, where something is to be mended first`;
const faulty = "its template has something to mend first";

function read({ machine, jobs, readings, sheets }: Files): Known {
  const csv = new Map<string, CsvReadings | undefined>();
  const [problems, unused]: [Problem[], Problem[]] = [[], []];
  for (const { name, text } of readings) {
    const one = readCsv(text, name);
    // A table that no handwheel uses stops no sheet.
    if (machine.text.includes(name)) problems.push(...one.problems);
    else unused.push(...one.problems.map((problem) => ({ ...problem, severity: "warning" as const })));
    csv.set(name, one.readings);
  }
  const loaded = ofText(machine.text, { files: csv, problems });
  const asIf = loaded.findings
    ? { machines: [loaded.findings], waiting: [], printer: false, wheelsSure: true }
    : asIfMended(machine.text, { files: csv, problems }, loaded.problems);
  const readJobs = jobs.map(({ name, text }) => ({ name, ...readJob(text) }));
  const ownSheets = sheets.map(({ name, text }) => ({ file: name, ...readTemplate(text, stemOf(name)) }));
  const own = ownSheets.flatMap(({ template }) => template ?? []);
  const named = readJobs.flatMap(({ name, job }) => (job ? [{ file: name, name: stemOf(name), job }] : []));
  let refused: readonly FiledJob[] | undefined;
  const againstJob = ({ job }: NamedJob) =>
    asIf.machines.slice(0, 1).flatMap((one) => foreignFindings(job, one.machine));
  // The command makes nothing of a job that the machine cannot be asked for, not with --anyway either.
  const asked = named.filter((one) => againstJob(one).length === 0);
  return {
    ...(loaded.findings && { findings: loaded.findings }),
    ...(asIf.wheelsSure && asIf.machines[0] && { ofWheels: asIf.machines[0] }),
    asIf,
    places: loaded.places,
    told: [
      ...loaded.problems.map((problem) =>
        toldOf(problem, machine.name, asIf.machines.length === 0 ? "every sheet" : "what needs it"),
      ),
      ...unused.map((problem) => toldOf(problem, machine.name, "its own")),
      ...readJobs.flatMap(({ name, problems }) => problems.map((problem) => toldOf(problem, name, "its own"))),
      ...readJobs.flatMap(({ name, job }) => (job && loaded.findings ? jobTold(job, name, loaded.findings) : [])),
      ...ownSheets.flatMap(({ file, problems, doubts = [] }) => [
        ...problems.map((line) => toldOfLine(line, file, "error")),
        ...doubts.map((line) => toldOfLine(line.replace(": mind: ", ": "), file, "warning")),
      ]),
      ...(own.length > 0 && loaded.findings ? misnamed(ownSheets, loaded.findings) : []),
    ],
    jobs: asked,
    refused: () => (refused ??= asked.filter(({ job }) => asIf.machines.some((one) => isRefused(planOf(job, one))))),
    foreign: [
      ...named.flatMap((one) =>
        againstJob(one).map(({ what, remedy }) => ({ file: one.file, why: `${one.file}: ${what}; ${remedy}` })),
      ),
      ...readJobs.flatMap(({ name, job }) =>
        job ? [] : [{ file: name, why: `${name} has something to fill in or to mend first` }],
      ),
    ],
    // One of the program's name takes its place, as the command prints it under that name.
    templates: [...builtIn.filter(({ name }) => !own.some((one) => one.name === name)), ...own],
    own: ownSheets.map(({ file }) => stemOf(file)),
    laid: new Map(),
  };
}

const toldOf = (
  { file, severity, line, column, path, what, remedy }: Problem,
  name: string,
  stops: NonNullable<Told["stops"]>,
): Told => ({
  ...(severity === "error" && { stops }),
  file: file ?? name,
  ...(path && { way: path }),
  ...{ severity, line, column, what, remedy },
});

/** What stands against a job on this machine. */
function jobTold(job: Job, file: string, findings: Findings): Told[] {
  const foreign = foreignFindings(job, findings.machine);
  const all = foreign.length > 0 ? foreign : planOf(job, findings).findings;
  return all.map(({ kind, step, what, ...found }) => ({
    file,
    severity: kind === "refused" ? "error" : "warning",
    ...((step === undefined ? undefined : job.stepsAt?.[step]) ?? { line: 1, column: 1 }),
    ...(step !== undefined
      ? { way: ["steps", step] }
      : // Nothing else stands against a whole job that it could put right itself.
        job.unitsLeftOpen && foreign.length > 0 && { way: ["units"] }),
    // The command makes nothing of it, not with --anyway either.
    ...(foreign.length > 0 && { stops: "its own" as const }),
    ...{ what, remedy: remedyInFile(found) },
  }));
}

/** A template's faults come as whole lines: "line:column: what; remedy". */
function toldOfLine(words: string, file: string, severity: Told["severity"]): Told {
  const [, line = "1", column = "1", what = words, remedy = ""] = /^(\d+):(\d+): (.*?)(?:; (.*))?$/s.exec(words) ?? [];
  const stops = severity === "error" ? ({ stops: "its own" } as const) : {};
  return { file, severity, line: Number(line), column: Number(column), what, remedy, ...stops };
}

/** Templates that name what the machine's file does not hold. */
const misnamed = (
  own: readonly { readonly file: string; readonly template?: Template }[],
  findings: Findings,
): Told[] =>
  own.flatMap(({ file, template }) =>
    template === undefined
      ? []
      : printsOf(findings, { templates: [template], language: "en" }).absent.flatMap(({ why, at }) =>
          at === undefined ? [] : [toldOfLine(`${at}: ${why}`, file, "error")],
        ),
  );

/** A machine's own sheets and those of the reader, those too that cannot be read. */
function sheetStates({ templates, own }: Known): SheetState[] {
  const unread = own.filter((name) => !templates.some((one) => one.name === name));
  return [
    ...templates.map(({ name, title, onRequest }) => {
      const mine = own.includes(name);
      return { name, onRequest, title: mine ? `${title} (${name})` : title, own: mine };
    }),
    ...unread.map((name) => ({ name, title: name, onRequest: true, own: true, why: faulty })),
  ];
}

/** A sheet's pages, or why it has none. `only`: the file of the one job that it is drawn for, where it is about jobs. */
function laidOut(
  { asIf, jobs: all, foreign, templates, laid, own }: Known,
  sheet: string,
  only?: string,
): (Prints & { readonly machine: Machine }) | { readonly why: string } {
  const template = templates.find(({ name }) => name === sheet);
  if (template === undefined) return { why: own.includes(sheet) ? faulty : `there is no sheet "${sheet}"` };
  const [first] = asIf.machines;
  if (first === undefined) return { why: unsound };
  const of = isAboutJob(template) ? only : undefined;
  const isDrawn = ({ file }: { readonly file: string }) => of === undefined || file === of;
  const jobs = all.filter(isDrawn);
  const against = foreign.find(isDrawn);
  if (against !== undefined && jobs.length === 0 && isAboutJob(template)) return { why: against.why };
  // What must be true to a tenth waits for what the printer makes of it; that is measured on a sheet that goes on.
  if (asIf.printer && template.checkBars && !template.bare && !template.uncorrected) return { why: waits(asIf) };
  const key = JSON.stringify([sheet, of]);
  const made = laid.get(key) ?? printedFrom(asIf, template, jobs) ?? { why: waits(asIf) };
  laid.set(key, made);
  return "why" in made ? made : { ...made, machine: first.machine };
}

/** What comes out whatever is still to be mended; a form to measure by, with blanks for that: it is what one takes to the machine. */
const printedFrom = ({ machines }: AsIf, template: Template, jobs: readonly FiledJob[]): Prints | undefined => {
  const wish = { templates: [template], jobs };
  const [emptiest] = machines;
  if (emptiest === undefined) return undefined;
  const made = alikeFrom(machines, wish) ?? (isForm(template) ? printsOf(emptiest, wish) : undefined);
  // The page speaks English, whatever the paper's language.
  return made && { ...made, absent: absentInEnglish(emptiest, wish, made) };
};

const isForm = ({ blocks }: Template): boolean =>
  blocks.every(({ block }) => block === "handwheel form" || block === "drive form");

const whyOf = (absent: { readonly why: string } | undefined) => (absent ? { why: absent.why } : {});
