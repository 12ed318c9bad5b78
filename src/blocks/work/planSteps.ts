import type { Setting } from "../../dial/setting.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { aimWords } from "../../findings/aimWords.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { choiceDoubt } from "../../findings/limits.js";
import { doubtToRead } from "../../findings/settings.js";
import { figureUnit, settingWords, shownAt } from "../../findings/settingWords.js";
import { travelWords } from "../../findings/travelWords.js";
import type { Limits, Machine, Units } from "../../machine/machine.js";
import type { Pass } from "../../plan/passes.js";
import { type PlannedStep, planOf } from "../../plan/plan.js";
import { showIn } from "../../plan/words.js";
import { capital, figureWithin, formatBound, formatFixed, plural, trimmedSize } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept, lowered, together } from "../shared/runs.js";
import { leading, medium, pen, size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";
import { correctedLines } from "./corrected.js";

/** A job on this machine, step by step, to tick and write on. */
export const planSteps = block({}, ({ findings, width }): Run[] => {
  const { job, machine } = findings;
  if (job === undefined) return [];
  const plan = planOf(job, findings);
  const { units } = machine;
  const show = showIn(machine, job);
  return [
    ...paragraph(job.name, width, { size: size.title, weight: "bold", gap: 4 }),
    ...paragraph(
      `${plural(job.parts, "part")}, ${job.material}${job.bar === undefined ? "" : `, bar ${show(job.bar.diameter)}, standing out ${show(job.bar.out)}${job.bar.supported ? ", held by a centre" : ""}`}; ${job.tool}.`,
      width,
      { gap: 0.5 },
    ),
    ...(plan.steps.some(({ speed }) => speed?.band.nearest !== undefined)
      ? paragraph(aimWords(machine.work).join(" "), width, { size: size.small, gap: 0.5 })
      : []),
    ...objections(plan.objections, width),
    ...unevenLines(plan.steps, units, width),
    ...plan.steps.flatMap((step, index) => stepRuns(step, index + 1, machine, width)),
    ...(job.parts > 1 ? repeat(job.parts, job.bar === undefined, width) : []),
  ];
});

function objections(list: readonly string[], width: number): Run[] {
  if (list.length === 0)
    return paragraph("Nothing in this job is beyond the machine, as far as its file tells.", width, { gap: 1.5 });
  return [
    ...paragraph("Before the first chip", width, { size: size.heading, weight: "bold", ink: "accent", gap: 3 }),
    ...list.flatMap((words) => paragraph(words, width, { ink: "accent", gap: 0.5 })),
  ];
}

/** What the sheet must say of the slides that this job is done by. */
function unevenLines(steps: readonly PlannedStep[], units: Units, width: number): Run[] {
  const wheels = new Set(steps.flatMap(({ depthWheel, lengthWheel }) => [depthWheel ?? [], lengthWheel ?? []].flat()));
  return [...wheels].flatMap((wheel) =>
    travelWords(wheel, units).flatMap((words) =>
      paragraph(words, width, { size: size.small, weight: "bold", ink: "accent", gap: 0.8 }),
    ),
  );
}

/** What makes the others like the first, and a box for each. */
function repeat(parts: number, clamped: boolean, width: number): Run[] {
  const boxes = Math.min(parts, mostBoxes);
  const pitch = 8;
  const across = Math.max(1, Math.floor((width - 10) / pitch));
  const marks = Array.from({ length: boxes }, (_, index): Mark[] => {
    const at = { x: 10 + (index % across) * pitch, y: 1 + Math.floor(index / across) * pitch };
    return [
      rectangle(at, 4.5, 4.5, { pen: medium }),
      text(String(index + 1), { x: at.x + 2.25, y: at.y + 3.1 }, { size: size.tiny, anchor: "middle" }),
    ];
  }).flat();
  return [
    ...heading(`Repeat: ${parts} parts alike`, width, 4),
    ...kept(
      paragraph(
        `Leave every stop and zero as the first part left it. ${clamped ? "Clamp each part against the same stops" : "Push each blank to the same stop, close the chuck the same way"}, and go through the steps in one order; or do one step on all parts before the next. Measure the first, the third, then one in ten, and whenever a tool was touched.`,
        width - 10,
        { size: size.small, gap: 0.5 },
      ).map((run) => shifted(run, 10, width)),
    ),
    { drawing: { width, height: Math.ceil(boxes / across) * pitch, marks }, gap: 1 },
  ];
}

/** More parts than these are counted on another sheet. */
const mostBoxes = 120;

function stepRuns(step: PlannedStep, number: number, { units, limits }: Machine, width: number): Run[] {
  return together([
    { drawing: stepHead(step, number, limits, width), gap: 4 },
    ...step.notes.flatMap((note) =>
      paragraph(note, width - 10, { size: size.small, gap: 0.4 }).map((run) => shifted(run, 10, width)),
    ),
    ...lengthWords(step, units, width),
    ...lowered(
      passTable(step, units, width - 10).map((run) => shifted(run, 10, width)),
      1.5,
    ),
    ...afterMeasuring(step, units, width),
  ]);
}

const shifted = (run: Run, by: number, width: number): Run => ({
  ...run,
  drawing: {
    width,
    height: run.drawing.height,
    marks: [{ kind: "group", at: { x: by, y: 0 }, marks: run.drawing.marks }],
  },
  ...(run.heading && {
    heading: {
      width,
      height: run.heading.height,
      marks: [{ kind: "group", at: { x: by, y: 0 }, marks: run.heading.marks }],
    },
  }),
});

/** A box to tick, the step, and at the right the belt position and speed in large figures. */
function stepHead(step: PlannedStep, number: number, limits: Limits, width: number): Drawing {
  const speed = step.byHand ? "by hand, power off" : speedWords(step);
  const small = step.byHand || step.speed?.speed === undefined ? "" : `rpm${verdict(step, limits)}`;
  const right = Math.max(textWidth(speed, size.title, "bold"), textWidth(small, size.tiny, "regular"));
  const lines = wrapText(`${number}.  ${capital(step.title)}`, width - 10 - right - 4, size.heading, "bold");
  const marks: Mark[] = [
    line({ x: 0, y: 0.2 }, { x: width, y: 0.2 }, medium),
    rectangle({ x: 0.3, y: 2.2 }, 4.5, 4.5, { pen: medium }),
    ...lines.map((words, row) =>
      text(words, { x: 10, y: 5.2 + row * size.heading * leading }, { size: size.heading, weight: "bold" }),
    ),
    text(step.tool, { x: 10, y: 5.2 + lines.length * size.heading * leading - 0.6 }, { size: size.small }),
    text(
      speed,
      { x: width, y: 5.8 },
      { size: size.title, weight: "bold", anchor: "end", ink: step.byHand || step.speed?.speed ? "black" : "accent" },
    ),
    text(small, { x: width, y: 8.6 }, { size: size.tiny, anchor: "end" }),
  ];
  return { width, height: 6.6 + lines.length * size.heading * leading, marks };
}

function speedWords({ speed }: PlannedStep): string {
  if (speed?.speed === undefined || speed.rpm === undefined)
    return speed === undefined ? "no speed known" : "do not run";
  return `${speed.speed.position.name}  ${formatFixed(speed.rpm, 0)}`;
}

function verdict({ speed }: PlannedStep, limits: Limits): string {
  const doubt = choiceDoubt(speed?.speed, limits);
  if (doubt !== "") return `, ${doubt}`;
  if (speed?.heldBy === "hand") return ", as fast as a hand can feed it";
  if (speed?.verdict === "slower than the band") return ", slower than the material would bear";
  return speed?.verdict === "held by a limit" ? ", held by a limit" : "";
}

function lengthWords(planned: PlannedStep, units: Units, width: number): Run[] {
  const { lengthWheel, lengthSetting, feed, feedWheel } = planned;
  const stop =
    lengthSetting === undefined || lengthWheel === undefined
      ? ""
      : `${lengthWheel.handwheel.name}: stop after ${settingWords(lengthWheel, lengthSetting)}${doubtWords(lengthWheel, lengthSetting, units)}. `;
  const pace =
    feed === undefined || feedWheel === undefined ? "" : `Feed by the ${feedWheel.toLowerCase()}: ${feed.count}.`;
  const words = `${stop}${pace}`.trim();
  const corrected = [
    ...(lengthWheel && lengthSetting ? correctedLines(lengthWheel, wantedBy(lengthWheel, lengthSetting), units) : []),
    ...depthCorrected(planned, units),
  ];
  return [
    ...(words === "" ? [] : paragraph(words, width - 10, { size: size.small, weight: "bold", gap: 0.8 })),
    ...corrected.flatMap((line) => paragraph(line, width - 10, { size: size.small, gap: 0.4 })),
  ].map((run) => shifted(run, 10, width));
}

/** What the dial goes on by in a setting, mm of what it reads. */
const wantedBy = ({ reading }: HandwheelFinding, { turns }: Setting): number => turns * (reading?.perTurn ?? 0);

function doubtWords(wheel: HandwheelFinding, setting: Setting, units: Units): string {
  const doubt = doubtToRead(wheel, wantedBy(wheel, setting));
  return doubt === undefined ? "" : `, ± ${formatBound(doubt, units)}`;
}

/** The whole depth of a cut on a slide that is not even, once for all its passes. */
function depthCorrected({ passes, depthWheel }: PlannedStep, units: Units): string[] {
  const last = passes.at(-1)?.setting;
  return depthWheel && last ? correctedLines(depthWheel, wantedBy(depthWheel, last), units) : [];
}

function passTable({ passes, depthWheel, step, wanted }: PlannedStep, units: Units, width: number): Run[] {
  if (passes.length === 0) return [];
  const show = (mm: number) => formatFixed(fromMm(mm, units), units === "mm" ? 2 : 4);
  // As many places as the finished size below has, so that the two can be compared.
  const sized = (mm: number) => figureWithin(mm, wanted?.tolerance, units);
  const facing = step.do === "face";
  const columns: Column[] = [
    { heading: ["done"], align: "middle", stretch: 0 },
    { heading: ["cut"], align: "start", stretch: 0 },
    { heading: [facing ? "depth" : "depth of cut", units], align: "decimal", optional: true },
    ...(facing ? [] : [{ heading: ["to diameter", units], align: "decimal" } as const]),
    { heading: [depthWheel ? depthWheel.handwheel.name : "dial", "from its zero"], align: "start", stretch: 2 },
    ...(depthWheel?.dial
      ? [{ heading: ["then the dial", `reads, ${figureUnit(depthWheel)}`], align: "decimal" } as const]
      : []),
    { heading: ["measured"], align: "middle", stretch: 2 },
  ];
  let rough = 0;
  const rows = passes.map((pass): Cell[] => [
    { text: "[   ]" },
    { text: pass.kind === "rough" ? `rough ${++rough}` : pass.kind },
    { text: pass.kind === "spring" ? "0" : show(pass.depth) },
    ...(facing ? [] : [{ text: sized(diameterAfter(step, pass)), weight: "bold" } as const]),
    {
      text:
        pass.kind === "spring"
          ? "same setting again"
          : depthWheel && pass.setting && (depthWheel.dial || pass.setting.turns > 0.2)
            ? turnsWords(depthWheel, pass.setting, step.do === "bore")
            : "set by measuring",
      weight: "bold",
    },
    ...(depthWheel?.dial
      ? [{ text: readingWords(depthWheel, pass, step.do === "bore"), weight: "bold" } as const]
      : []),
    { text: pass.kind === "finish" || passes.length === 1 ? "measure first: ____________" : "____________" },
  ]);
  return table(columns, rows, { width, size: size.small });
}

/** Beside what the dial then reads, in a column of its own. */
function turnsWords(wheel: HandwheelFinding, setting: Setting, outwards: boolean): string {
  if (wheel.dial === undefined) return settingWords(wheel, setting);
  const row = shownAt(wheel, setting, outwards)?.row;
  return `${plural(setting.wholeTurns, "whole turn")}${row === undefined ? "" : `, row ${row}`}`;
}

function readingWords(wheel: HandwheelFinding, { kind, setting }: Pass, outwards: boolean): string {
  const shown = setting && kind !== "spring" ? shownAt(wheel, setting, outwards) : undefined;
  return shown?.figure ?? "";
}

function diameterAfter(step: PlannedStep["step"], { total }: Pass): number {
  if (step.do === "bore") return step.from + 2 * total;
  if (step.do === "taper") return step.large - 2 * total;
  return "from" in step ? step.from - 2 * total : 0;
}

/** After a measured cut the remaining depth is one line to compute, on the paper. */
function afterMeasuring({ wanted, passes, step }: PlannedStep, units: Units, width: number): Run[] {
  if (wanted === undefined || passes.length === 0) return [];
  const diameter = figureWithin(wanted.diameter, wanted.tolerance, units);
  const within = wanted.tolerance === undefined ? "" : `  (within ${trimmedSize(wanted.tolerance, units, 4)})`;
  const sum =
    step.do === "bore"
      ? `${diameter} − measured ________ = ________ left on diameter`
      : `measured ________ − ${diameter} = ________ left on diameter`;
  const words = `${sum}${within}`;
  const height = size.body * leading + 2.4;
  const marks: Mark[] = [
    rectangle({ x: 10, y: 1 }, width - 10, height - 1, { pen: pen(0.13) }),
    text(words, { x: 12, y: height - 1.6 }, { size: size.body }),
  ];
  return [{ drawing: { width, height: height + 0.4, marks }, gap: 0.8 }];
}
