import type { Drawing, Mark, Weight } from "../../drawing/drawing.js";
import { line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { choiceDoubt } from "../../findings/limits.js";
import type { Limits, Machine, Units } from "../../machine/machine.js";
import type { Plan } from "../../plan/plan.js";
import type { PlannedStep } from "../../plan/plannedStep.js";
import { type Show, showIn } from "../../plan/words.js";
import type { Zero } from "../../plan/zero.js";
import { capital, figureWithin, formatFixed } from "../../quantity/format.js";
import { block, type Run } from "../shared/block.js";
import { kept, lowered } from "../shared/runs.js";
import { leading, medium, pen, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { correctedLines } from "./corrected.js";
import { type LabelOf, readingsTable } from "./planReadings.js";
import { feedWords, isFixed, promiseWords, readingWords, within, zeroWords } from "./planWords.js";
import { stepPicture } from "./stepPicture.js";
import { thePlan } from "./thePlan.js";

/** A job on this machine, step by step, to tick and write on. */
export const planSteps = block({}, ({ findings, width, height }): Run[] => {
  const plan = thePlan(findings);
  if (plan === undefined) return [];
  const { machine } = findings;
  const show = showIn(machine, plan.job);
  const labels = blankLabels(plan);
  return plan.steps.flatMap((step, place) =>
    stepRuns(step, { plan, machine, show, labels: labels[place] as Labels, width, height }),
  );
});

/** Of each zero of a step the letter of its blank, and of each wheel that of the zero in force. */
type Labels = {
  readonly zeros: readonly string[];
  readonly zerosAfter: readonly string[];
  readonly label: LabelOf;
};

type Sheet = {
  readonly plan: Plan;
  readonly machine: Machine;
  readonly show: Show;
  readonly labels: Labels;
  readonly width: number;
  readonly height: number;
};

/** Blanks are numbered through the whole plan, so that a sum says which one it is made from. */
function blankLabels({ steps }: Plan): Labels[] {
  const current = new Map<string, string>();
  let count = 0;
  const named = (zeros: readonly Zero[]) =>
    zeros.map(({ wheel }) => {
      if (isFixed(wheel)) current.set(wheel.handwheel.name, `S${++count}`);
      return current.get(wheel.handwheel.name) ?? "";
    });
  return steps.map(({ zeros, zerosAfter }) => {
    const before = named(zeros);
    const now = new Map(current);
    const after = named(zerosAfter);
    return { zeros: before, zerosAfter: after, label: (wheel) => now.get(wheel.handwheel.name) ?? "" };
  });
}

const indent = 8;

function stepRuns(step: PlannedStep, sheet: Sheet): Run[] {
  const { machine, show, labels, width, plan } = sheet;
  const { units } = machine;
  const inner = width - indent;
  const table = readingsTable(step, units, show, labels.label, inner);
  const head: Run = { drawing: stepHead(step, sheet), gap: 4.5 };
  const after = [
    ...afterTable(step, plan, labels.zerosAfter, units, inner).map((run) => shifted(run, indent, width)),
    ...batchBoxes(step, plan, inner).map((run) => shifted(run, indent, width)),
  ];
  const rows = lowered(
    table.map((run) => shifted(run, indent, width)),
    1.5,
  );
  // A long table may go on overleaf, but neither its first rows alone nor what follows it without its last ones.
  return [
    // A step of words alone is followed by the next one, on whatever page.
    ...(rows.length + after.length > 0 ? kept([head]) : [head]),
    ...rows.map((run, index) => heldTogether(run, index, rows.length, after.length > 0)),
    ...kept(after.slice(0, -1)),
    ...after.slice(-1),
  ];
}

const heldTogether = (run: Run, index: number, count: number, followed: boolean): Run => {
  const last = index === count - 1;
  return (last ? followed : index < 2 || index >= count - 3) ? { ...run, keepWithNext: true } : run;
};

const shifted = (run: Run, by: number, width: number): Run => ({
  ...run,
  drawing: moved(run.drawing, by, width),
  ...(run.heading && { heading: moved(run.heading, by, width) }),
});

const moved = (drawing: Drawing, by: number, width: number): Drawing => ({
  width,
  height: drawing.height,
  marks: [{ kind: "group", at: { x: by, y: 0 }, marks: drawing.marks }],
});

const picture = { width: 36, height: 17 } as const;

/** A position's name takes at most so much of the width, mm; a longer one goes over several lines. */
const widestName = 46;

/** A box to tick, the step and its words at the left; belt position, speed and a small picture at the right. */
function stepHead(step: PlannedStep, { machine, labels, width }: Sheet): Drawing {
  const { units, limits } = machine;
  const holding = step.tool === "no tool";
  const side = speedSide(step, limits, holding);
  const right = Math.max(picture.width, ...side.map(({ words, em, weight }) => textWidth(words, em, weight)));
  const room = width - indent - right - 4;
  const marks: Mark[] = [
    line({ x: 0, y: 0.2 }, { x: width, y: 0.2 }, medium),
    rectangle({ x: 0.3, y: 2.2 }, 4.5, 4.5, { pen: medium }),
  ];
  let y = 1.6;
  const write = (words: string, em: number, weight: Weight = "regular", gap = 0.5) => {
    y += gap;
    for (const part of wrapText(words, room, em, weight)) {
      marks.push(text(part, { x: indent, y: y + em * leading * 0.76 }, { size: em, weight }));
      y += em * leading;
    }
  };
  const inFile = step.number !== step.stage.index + 1 ? ` (step ${step.stage.index + 1} of the file)` : "";
  write(`${step.number}.  ${capital(step.title)}${inFile}`, size.heading, "bold", 0);
  if (!holding) write(capital(step.tool), size.body);
  const feed = feedWords(step);
  if (feed !== undefined) write(feed, size.body, "bold");
  for (const words of step.first) write(words, size.body, "bold");
  for (const [index, zero] of step.zeros.entries())
    write(zeroWords(zero, step, labels.zeros[index] ?? "", units), size.body);
  for (const note of step.notes) write(note, size.small);
  let beside = 1.4;
  for (const { words, em, weight, alarm } of side) {
    marks.push(
      text(
        words,
        { x: width, y: beside + em * 1.1 },
        { size: em, weight, anchor: "end", ink: alarm ? "accent" : "black" },
      ),
    );
    beside += em * 1.3;
  }
  const top = beside + 1;
  const drawing = stepPicture(step.stage, picture);
  marks.push({ kind: "group", at: { x: width - picture.width, y: top }, marks: drawing.marks });
  return { width, height: Math.max(y, top + drawing.height) + 0.8, marks };
}

type SideLine = { readonly words: string; readonly em: number; readonly weight: Weight; readonly alarm?: boolean };

/** Position and speed, as large as they have room for. */
function speedSide(step: PlannedStep, limits: Limits, holding: boolean): SideLine[] {
  if (holding) return [];
  if (step.byHand) return [{ words: "by hand, power off", em: size.title, weight: "bold" }];
  const { speed } = step;
  if (speed?.speed === undefined || speed.rpm === undefined)
    return [
      { words: speed === undefined ? "no speed known" : "do not run", em: size.title, weight: "bold", alarm: true },
    ];
  const rpm = formatFixed(speed.rpm, 0);
  const name = speed.speed.position.name;
  const small = { words: `rpm${verdict(step, limits)}`, em: size.tiny, weight: "regular" } as const;
  const together = `${name}  ${rpm}`;
  if (textWidth(together, size.title, "bold") <= widestName)
    return [{ words: together, em: size.title, weight: "bold" }, ...wrapped(small)];
  const parts = wrapText(name, widestName, size.heading, "bold");
  return [
    ...parts.map((words): SideLine => ({ words, em: size.heading, weight: "bold" })),
    { words: rpm, em: size.title, weight: "bold" },
    ...wrapped(small),
  ];
}

const wrapped = (one: SideLine): SideLine[] =>
  wrapText(one.words, widestName, one.em, one.weight).map((words) => ({ ...one, words }));

function verdict({ speed }: PlannedStep, limits: Limits): string {
  const doubt = choiceDoubt(speed?.speed, limits);
  if (doubt !== "") return `, ${doubt}`;
  if (speed?.heldBy === "hand") return ", as fast as a hand can feed it";
  if (speed?.verdict === "slower than the band") return ", slower than the material would bear";
  return speed?.verdict === "held by a limit" ? ", held by a limit" : "";
}

/** What follows the readings: the sum after measuring, the zero mended by it, what the sizes will be, slides that are not even. */
function afterTable(step: PlannedStep, plan: Plan, labels: readonly string[], units: Units, width: number): Run[] {
  const show = (mm: number) => `${figureWithin(mm, undefined, units)} ${units}`;
  const promise = promiseWords(step, show, units);
  const small = { size: size.small, gap: 0.6 };
  const uneven = [
    ...(step.depthWheel && step.passes.at(-1)?.reading
      ? correctedLines(step.depthWheel, readOff(step.depthWheel, step.passes.at(-1)?.travel ?? 0), units)
      : []),
    ...step.places.flatMap(({ wheel, reading }) => correctedLines(wheel, readOff(wheel, reading.travel), units)),
  ];
  return [
    ...measuredSum(step, plan, units, width),
    ...mendedZero(step, plan, width),
    ...(promise === undefined ? [] : paragraph(promise, width, small)),
    ...step.zerosAfter.flatMap((zero, index) =>
      paragraph(
        `${zero.wheel.handwheel.name}, locked where it stands: ${isFixed(zero.wheel) ? `write down what its dial reads: ${labels[index] ?? ""} = __________, turn 0. Lengths count from this face.` : "set its dial to 0. Lengths count from this face."}`,
        width,
        { gap: 0.8, weight: "bold" },
      ),
    ),
    ...[...new Set(uneven)].flatMap((words) => paragraph(words, width, small)),
  ];
}

const readOff = ({ reading }: { readonly reading?: { readonly factor: number } }, travel: number): number =>
  Math.abs(travel) * (reading?.factor ?? 1);

/** After a measured cut the remaining depth is one line to compute, on the paper. */
function measuredSum(planned: PlannedStep, plan: Plan, units: Units, width: number): Run[] {
  const { passes, sizes, depthWheel, anew } = planned;
  const { step } = planned.stage;
  const wanted = sizes.find(({ what }) => what === "diameter");
  if (wanted === undefined || passes.length === 0 || step.do === "taper") return [];
  const { least, most, aim } = wanted;
  const diameter = figureWithin(aim, least === undefined || most === undefined ? undefined : most - least, units);
  const limits = least === undefined || most === undefined ? "" : `  (${within(least, most, units)})`;
  const halved = depthWheel?.handwheel.reads === "travel" ? "; go on by half of it" : "; go on by that";
  const sum =
    step.do === "bore"
      ? `Before the last cut: ${diameter} − measured ________ = ________ left${halved}${limits}`
      : `Before the last cut: measured ________ − ${diameter} = ________ left${halved}${limits}`;
  const others =
    plan.job.parts < 2 || depthWheel?.dial === undefined
      ? []
      : anew.across
        ? ["On every other part the tool is touched off anew: measure before the last cut there too."]
        : provesZero(planned, plan) && !isFixed(depthWheel)
          ? []
          : ["The dial at the right size: ________ ; the other parts go to that without measuring half way."];
  const lines = [sum, ...others].flatMap((words) => wrapText(words, width - 4, size.body, "regular"));
  const step_ = size.body * leading + 1;
  const height = lines.length * step_ + 1.4;
  const marks: Mark[] = [
    rectangle({ x: 0, y: 1 }, width, height - 1, { pen: pen(0.13) }),
    ...lines.map((words, row) => text(words, { x: 2, y: 1 + (row + 0.76) * step_ }, { size: size.body })),
  ];
  return [{ drawing: { width, height: height + 0.4, marks }, gap: 0.8 }];
}

/** Whether a step is the first measured cut from its zero, and so tells how true that is. */
function provesZero({ depthZero, depthWheel, passes, stage: { step }, number }: PlannedStep, { steps }: Plan): boolean {
  if (depthZero === undefined || depthWheel?.dial === undefined || step.do === "face" || step.do === "taper")
    return false;
  const measured = steps.find((one) => one.depthZero === depthZero && one.passes.some(({ kind }) => kind === "rough"));
  return measured?.number === number && passes.some(({ kind }) => kind === "finish");
}

/** From the first measured cut on the readings of a tool are true, or by how much they are not is known. */
function mendedZero(step: PlannedStep, plan: Plan, width: number): Run[] {
  const reading = step.passes.findLast(({ kind }) => kind === "finish")?.reading;
  const { depthWheel, anew } = step;
  if (reading === undefined || depthWheel === undefined || !provesZero(step, plan)) return [];
  const { turns, figure } = readingWords(depthWheel, reading);
  const others =
    plan.job.parts < 2 || anew.across ? "" : "; the other parts go straight to that, without measuring half way";
  const words = isFixed(depthWheel)
    ? "After the last cut measure again. If the size is right: what the dial reads less the sum above is ________ (mind its sign); add that to every later sum of this tool."
    : `After the last cut measure again. If the size is right, set the dial to what stands above (${turns} + ${figure}) without moving the slide: every later reading of this tool is then true${others}.`;
  return paragraph(words, width, { size: size.small, gap: 0.6 });
}

/** More parts than these are counted on another sheet. */
const mostBoxes = 60;

/** In a batch by operation each step has a box for each part. */
function batchBoxes(_: PlannedStep, { job }: Plan, width: number): Run[] {
  if (job.batch !== "operation" || job.parts < 2) return [];
  const boxes = Math.min(job.parts, mostBoxes);
  const pitch = 6.4;
  const across = Math.max(1, Math.floor(width / pitch));
  const marks = Array.from({ length: boxes }, (_, index): Mark[] => {
    const at = { x: (index % across) * pitch, y: 0.6 + Math.floor(index / across) * 5.6 };
    return [
      rectangle(at, 4.6, 4.6, { pen: medium }),
      text(String(index + 1), { x: at.x + 2.3, y: at.y + 3.2 }, { size: size.tiny, anchor: "middle" }),
    ];
  }).flat();
  const more = job.parts > mostBoxes ? `, ${mostBoxes + 1} to ${job.parts} on another sheet` : "";
  return [
    ...kept(paragraph(`Done on part${more}`, width, { size: size.small, gap: 1 })),
    { drawing: { width, height: 0.6 + Math.ceil(boxes / across) * 5.6, marks } },
  ];
}
