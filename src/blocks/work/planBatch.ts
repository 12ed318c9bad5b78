import { powerOff } from "../../findings/powerOff.js";
import type { Units } from "../../machine/machine.js";
import type { Compromise } from "../../plan/belts.js";
import { isDrawnOut } from "../../plan/drawnOut.js";
import { HANDLING, type Minutes } from "../../plan/minutes.js";
import { isRefusedStep, type Plan } from "../../plan/plan.js";
import { setsThePost } from "../../plan/toolPost.js";
import { formatFixed, trimmedSize } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept, whole } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { stepsWords } from "./planHead.js";
import { minutesWords, within } from "./planWords.js";
import { thePlan } from "./thePlan.js";

/** The parts after the first: what stays set, what is touched off again, how often the belt moves, how long it all takes. */
export const planBatch = block({}, ({ findings, width, height }): Run[] => {
  const plan = thePlan(findings);
  if (plan === undefined) return [];
  const { job } = plan;
  return [
    ...(job.parts > 1 ? whole(nextPart(plan, width), height) : []),
    ...whole(beltsAndTime(plan, powerOff(findings.machine), width), height),
    ...(job.parts > 1 ? partRows(plan, findings.machine.units, width, height) : []),
  ];
});

const small = { size: size.text, gap: 0.6 };

function nextPart({ job, steps }: Plan, width: number): Run[] {
  const posted = steps.filter(setsThePost);
  const tools = [...new Set(posted.map(({ tool }) => tool))];
  const lines = [
    ...lengthLines(job, steps),
    ...(tools.length > 1
      ? [say("plan.tools in the post", { count: tools.length, tools: tools.join("; ") })]
      : tools.length === 1
        ? [say("plan.one tool")]
        : []),
    ...swungLines(job, steps),
    steps.some(({ anew }) => anew.across) ? say("plan.others touched anew") : say("plan.others straight"),
    ...(job.batch === "operation"
      ? [say("plan.batch by operation")]
      : steps.some(({ stage }) => stage.step.do === "turn round")
        ? [say("plan.batch to turning round")]
        : [say("plan.batch part by part")]),
  ];
  return [
    ...heading(say("plan.parts alike", { count: job.parts }), width, 5),
    ...lines.flatMap((words) => paragraph(words, width, small)),
  ];
}

/** What a slide that was swung does to the other parts' zeros. Of a bar the next part is not there before the last is parted off. */
function swungLines(job: Plan["job"], steps: Plan["steps"]): string[] {
  const swung = steps.filter(({ first }) => first.length > 0);
  const ofBar = swung.filter(({ stage }) => isDrawnOut(job) && stage.holding.end === "first");
  const ofBlanks = swung.filter((step) => !ofBar.includes(step));
  const told = (these: Plan["steps"]) => stepsWords(these.map(({ number }) => number));
  return [
    ...(ofBar.length > 0 ? [say("plan.swung on a bar", { steps: told(ofBar) })] : []),
    ...(ofBlanks.length > 0 ? [say("plan.swung", { steps: told(ofBlanks) })] : []),
  ];
}

/** What becomes of the length zeros from part to part, in each holding. */
function lengthLines(job: Plan["job"], steps: Plan["steps"]): string[] {
  const { bar, spindleStop } = job;
  if (bar === undefined) return [say("plan.clamp against stops")];
  const centred = steps.some(({ stage }) => stage.holding.held === "between centres");
  const fresh = say("plan.length zeros fresh");
  const lines = isDrawnOut(job)
    ? [say("plan.bar drawn out", { fresh })]
    : [spindleStop ? say("plan.blanks against stop") : say("plan.blanks without stop", { fresh })];
  if (steps.some(({ stage }) => stage.step.do === "turn round"))
    lines.push(spindleStop ? say("plan.turned round, stop") : say("plan.turned round, same"));
  if (centred) lines.push(say("plan.between centres lengths"));
  return lines;
}

function beltsAndTime(plan: Plan, off: string, width: number): Run[] {
  const { job, minutes, beltChanges, compromises } = plan;
  const byOperation = job.bar === undefined || job.bar.length !== undefined;
  const ways: readonly (readonly ["part" | "operation" | "one", Minutes])[] =
    job.parts > 1 && byOperation
      ? [
          ["part", minutes.part],
          ["operation", minutes.operation],
        ]
      : [[job.parts > 1 ? "part" : "one", minutes.part]];
  const columns: Column[] = [
    { heading: [say("plan.column way of working")], align: "start" },
    { heading: [say("plan.column belt changes")], align: "end" },
    { heading: [say("plan.column under the tool"), say("plan.column minutes")], align: "end" },
    { heading: [say("plan.column handling"), say("plan.column minutes")], align: "end" },
    { heading: [say("plan.column tools and"), say("plan.column holding")], align: "end" },
    { heading: [say("plan.column belts"), say("plan.column minutes")], align: "end" },
    { heading: [say("plan.column all"), ""], align: "end" },
  ];
  const rows = ways.map(([way, time]): Cell[] => [
    {
      text: say(`plan.way ${way}`),
      weight: (way === "operation") === (job.batch === "operation") ? "bold" : "regular",
    },
    { text: String(time.beltChanges) },
    { text: formatFixed(time.cutting * job.parts, 0) },
    { text: formatFixed(time.handling * job.parts, 0) },
    { text: formatFixed(time.tools + time.holding, 0) },
    { text: formatFixed(time.belts, 0) },
    { text: minutesWords(time.batch), weight: "bold" },
  ]);
  const uncounted = minutes[job.batch].uncounted;
  return [
    ...heading(say("plan.belts and time"), width, 5),
    ...kept(
      paragraph(
        beltChanges === 0 ? say("plan.belt stays") : say("plan.belt changes", { n: beltChanges, off }),
        width,
        small,
      ),
    ),
    ...compromises.flatMap((one) => paragraph(compromiseWords(one, plan), width, { ...small, weight: "bold" })),
    ...table(columns, rows, { width, size: size.text }),
    ...paragraph(
      [
        say("plan.reckoned", HANDLING),
        ...(plan.steps.some(({ stage }) => (stage.hole?.count ?? 1) > 1) ? [say("plan.reckoned holes", HANDLING)] : []),
        ...(uncounted > 0 ? [say("plan.uncounted", { n: uncounted })] : []),
        say("plan.trial tells"),
      ].join(" "),
      width,
      small,
    ),
  ];
}

function compromiseWords({ steps, position, rpm, more, saved }: Compromise, { job }: Plan): string {
  const told = {
    steps: stepsWords(steps.map(({ number }) => number)),
    position,
    rpm: formatFixed(rpm, 0),
    more: minutesWords(more),
    n: saved,
  };
  if (job.parts < 2 || job.batch !== "part") return say("plan.slower", told);
  return say(more < saved * HANDLING.belt ? "plan.slower, less in all" : "plan.slower, no time saved", told);
}

/** More sizes than these are measured by their steps. */
const mostColumns = 6;
/** More rows than these go on another sheet. */
const mostRows = 40;

/** A row for each part: what was measured, and a box when it is done. */
function partRows(plan: Plan, units: Units, width: number, height: number): Run[] {
  const { job } = plan;
  const steps = plan.steps.filter((step) => !isRefusedStep(plan, step));
  const all = steps.flatMap(({ number, sizes, stage }) =>
    sizes
      .filter(({ what }) => what === "diameter" || ["face", "part"].includes(stage.step.do))
      .map((one) => ({ ...one, number })),
  );
  // What is parted off and then faced to length is measured once, when it is as long as it stays.
  const length = all.findLast(({ what }) => what === "length");
  const sizes = all
    .filter((one) => one.what !== "length" || one === length)
    // Those with limits first, in the order of work.
    .sort((a, b) => Number(a.least === undefined) - Number(b.least === undefined) || a.number - b.number)
    .slice(0, mostColumns)
    .sort((a, b) => a.number - b.number);
  const columns: Column[] = [
    { heading: [say("plan.column part")], align: "middle" },
    ...sizes.map(
      ({ number, aim, least, most }): Column => ({
        heading: [
          say("plan.steps", { n: 1, steps: number }),
          least === undefined || most === undefined ? trimmedSize(aim, units, 4) : within(least, most, units),
        ],
        align: "middle",
      }),
    ),
    { heading: [say("plan.column done")], align: "middle" },
  ];
  const rows = Array.from({ length: Math.min(job.parts, mostRows) }, (_, index): Cell[] => [
    { text: String(index + 1), weight: "bold" },
    ...sizes.map((): Cell => ({ text: "", drawn: "line" })),
    { text: "", drawn: "box" },
  ]);
  const title =
    job.parts > mostRows ? say("plan.measured parts, more", { last: mostRows }) : say("plan.measured parts");
  const list = sizes.length === 0;
  const runs = [...heading(title, width, 5), ...table(columns, rows, { width, size: size.card, list })];
  return list ? runs : whole(runs, height);
}
