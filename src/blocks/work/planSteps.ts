import type { Drawing } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import type { Machine, Units } from "../../machine/machine.js";
import { positionOf } from "../../plan/belts.js";
import { isRefusedStep, type Plan } from "../../plan/plan.js";
import type { PlannedStep } from "../../plan/plannedStep.js";
import { showIn } from "../../plan/words.js";
import type { Zero } from "../../plan/zero.js";
import { largestOf } from "../../quantity/extremes.js";
import { capital } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { goingOn, heightOf, joined, kept, lowered } from "../shared/runs.js";
import { correctedReadings, movementsOf } from "./correctedReadings.js";
import { type Readings, readings, readingsTable, readingsWidth } from "./planReadings.js";
import { isFixed, type Labels, type ZeroInForce, type ZeroOf } from "./planWords.js";
import { type SharedNote, sharedNotes } from "./sharedNotes.js";
import { stepPicture } from "./stepPicture.js";
import { batchBoxes, stepSums } from "./stepSums.js";
import { gutter, leastHeight, type StepTitle, stepTitle } from "./stepTitle.js";
import { allWords, stepOutcome, stepWords } from "./stepWords.js";
import { thePlan } from "./thePlan.js";

/** Between words and readings beside each other, mm. */
const between = 6;
/** Narrower, words are no lines any more. */
const leastWords = 48;
const picture = { width: 46, height: 19 } as const;
/** A picture beside readings: its least width, and how far from them. */
const smallPicture = 28;
const aside = 4;
/** A step that takes more of a page may go on overleaf: kept whole it could leave the page before it empty. */
const WHOLE = 0.75;
/** The same of a step whose readings stand below its words. */
const UNBROKEN = 0.5;
/** Of the width, for readings without room to write: words go on below them. */
const leastShare = 0.53;
/** Above a step. */
const gap = 4.5;

/** A job on this machine, step by step, to tick and write on: words at the left, readings at the right, where all steps have them. */
export const planSteps = block({}, ({ findings, width, height }): Run[] => {
  const plan = thePlan(findings);
  if (plan === undefined) return [];
  const { machine } = findings;
  const show = showIn(machine, plan.job);
  const labels = labelsOf(plan, machine.units);
  const shared = sharedNotes(plan);
  const tables = plan.steps.map((step, place) =>
    readings(step, isRefusedStep(plan, step), machine.units, show, zeroOf(labels[place] as Labels)),
  );
  const room = width - gutter - between - leastWords;
  // Two widths, that with room to write and that without, so that readings stand below each other.
  const widths = [true, false].map((written) =>
    largestOf(
      tables
        .filter((table) => isWritten(table) === written)
        .map(readingsWidth)
        .filter((own) => own <= room),
    ),
  );
  const [wide, narrow] = widths.map((own) => Math.max(own, 0)) as [number, number];
  let position: string | undefined;
  return plan.steps.flatMap((step, place) => {
    const before = position;
    position = positionOf(step) ?? position;
    const sheet: Sheet = {
      ...{ plan, machine, shared, width, height },
      column: isWritten(tables[place]) ? wide : Math.min(Math.max(narrow, leastShare * (width - gutter)), room),
      labels: labels[place] as Labels,
      moved: before !== undefined && before !== position,
    };
    return stepRuns(step, tables[place], sheet);
  });
});

/** Whether something is measured and written down beside its readings. */
const isWritten = (table: Readings | undefined): boolean =>
  table?.cells.some((row) => row.some(({ drawn }) => drawn === "line")) === true;

type Sheet = {
  readonly plan: Plan;
  readonly machine: Machine;
  readonly shared: readonly SharedNote[];
  readonly labels: Labels;
  /** The belt is moved before this step. */
  readonly moved: boolean;
  readonly width: number;
  readonly height: number;
  /** Of the readings, where they stand beside the words. */
  readonly column: number;
};

/** Blanks are numbered through the whole plan, so that a sum says which one it is made from. */
function labelsOf({ steps }: Plan, units: Units): Labels[] {
  const ruled = new Set<Zero>();
  const current = new Map<string, ZeroInForce>();
  let count = 0;
  const named = (zeros: readonly Zero[], since: PlannedStep) =>
    zeros.map((zero) => {
      const label = isFixed(zero.wheel) ? `S${++count}` : "";
      current.set(zero.wheel.handwheel.name, { zero, label, since });
      return label;
    });
  return steps.map((step) => {
    const before = named(step.zeros, step);
    const now = new Map(current);
    for (const movement of movementsOf(step)) {
      const since = now.get(movement.wheel.handwheel.name);
      if (since && correctedReadings(movement, units)) ruled.add(since.zero);
    }
    return { zeros: before, zerosAfter: named(step.zerosAfter, step), now, ruled };
  });
}

const zeroOf =
  ({ now }: Labels): ZeroOf =>
  (wheel) =>
    now.get(wheel.handwheel.name);

function stepRuns(step: PlannedStep, table: Readings | undefined, sheet: Sheet): Run[] {
  const { plan, machine, moved, width, height, column } = sheet;
  const title = stepTitle(step, machine.limits, { moved, refused: isRefusedStep(plan, step) }, width);
  const fits = table === undefined || readingsWidth(table) <= column + 1e-6;
  const whole = fits && column > 0 ? beside(step, table, sheet, title, "whole") : undefined;
  return whole !== undefined && whole.height <= WHOLE * height
    ? [{ drawing: whole, gap, parts: inParts(step, table, sheet, title) }]
    : below(step, table, sheet, title);
}

/** What is done and read; then, on a page on which it goes on, what is summed up, and what comes out. */
function inParts(step: PlannedStep, table: Readings | undefined, sheet: Sheet, title: StepTitle): Run[] {
  const { plan, machine, labels, width } = sheet;
  const inner = width - gutter;
  const after = [
    stepSums(step, plan, labels, machine.units, inner),
    stepOutcome(step, plan, zeroOf(labels), machine.units, inner),
    batchBoxes(step, plan, inner),
  ]
    .filter((runs) => runs.length > 0)
    .map((runs): Run => ({ drawing: joined(runs, inner), gap: 1.5 }));
  if (after.length === 0) return [];
  const first: Run = { drawing: beside(step, table, sheet, title, "first part"), gap };
  return goingOn([first, ...inset(after, width)], capital(say("plan.steps", { n: 1, steps: step.number })), width);
}

/** Columns of a step beside each other, and what stands under both. */
type Body = { readonly left: Drawing; readonly right: Drawing; readonly under: Drawing };

/** What comes first at the left, readings at the right; what is minded, the sums, the outcome and the picture where they make the
 *  step lowest. Its first part is without sums and outcome. */
function beside(
  step: PlannedStep,
  table: Readings | undefined,
  sheet: Sheet,
  title: StepTitle,
  extent: "whole" | "first part",
): Drawing {
  const { plan, machine, shared, labels, width, column } = sheet;
  const { units } = machine;
  const inner = width - gutter;
  const wide = inner - between - column;
  const look = { ...picture, width: Math.min(picture.width, wide, column) };
  const seen: Run = { drawing: stepPicture(step.stage, look), gap: 1.5 };
  const told = (own: number) => ({
    words: stepWords(step, labels, shared, units, own),
    outcome: extent === "whole" ? lowered(stepOutcome(step, plan, zeroOf(labels), units, own), 1.2) : [],
    sums: extent === "whole" ? stepSums(step, plan, labels, units, own) : [],
  });
  const [left, right, whole] = [told(wide), told(column), told(inner)];
  const rows = table ? readingsTable(table, column) : [];
  const seenBeside = table && besideReadings(step, rows, readingsWidth(table), column);
  const boxes =
    extent === "whole"
      ? batchBoxes(step, plan, inner)
      : paragraph(say("plan.step goes on"), inner, { weight: "bold", gap: 1 });
  const bottom = (body: Body) => Math.max(title.left + body.left.height, title.height + body.right.height) + 1;
  const heightOfAll = (body: Body) => bottom(body) + body.under.height;
  let best: Body | undefined;
  // Rather what is minded at the left, in one piece, and sums at once below the readings.
  for (const sumsRight of whole.sums.length > 0 ? [true, false] : [true])
    for (let kept = left.words.mind.length; kept >= 0; kept--)
      for (const outcomeLeft of [true, false])
        for (const seenAt of seenBeside ? places : (["left", "right"] as const)) {
          const one: Run[] = [
            ...left.words.before,
            ...left.words.mind.slice(0, kept).flat(),
            ...(outcomeLeft ? left.outcome : []),
            ...(seenAt === "left" ? [seen] : []),
          ];
          const other: Run[] = [
            ...(seenAt === "readings" && seenBeside ? [seenBeside] : rows),
            ...(sumsRight ? right.sums : []),
            ...right.words.mind.slice(kept).flat(),
            ...(outcomeLeft ? [] : right.outcome),
            ...(seenAt === "right" ? [seen] : []),
          ];
          const body = {
            left: joined(one, wide),
            right: joined(other, column),
            under: joined([...(sumsRight ? [] : whole.sums), ...boxes], inner),
          };
          if (best === undefined || heightOfAll(body) < heightOfAll(best) - WORTH) best = body;
        }
  if (best === undefined) throw new Error("a step without a layout");
  return {
    width,
    height: Math.max(leastHeight, heightOfAll(best)),
    marks: [
      ...title.marks,
      group({ x: gutter, y: title.left }, best.left.marks),
      group({ x: width - column, y: title.height }, best.right.marks),
      group({ x: gutter, y: bottom(best) }, best.under.marks),
    ],
  };
}

/** Where the picture may stand, the best first. */
const places = ["readings", "left", "right"] as const;

/** Readings with the picture beside them; undefined where that has no room. */
function besideReadings(step: PlannedStep, rows: readonly Run[], own: number, column: number): Run | undefined {
  const width = Math.min(picture.width, column - own - aside);
  if (width < smallPicture - 1e-6) return undefined;
  const table = joined(rows, own);
  const seen = stepPicture(step.stage, { ...picture, width });
  return {
    drawing: {
      width: column,
      height: Math.max(table.height, seen.height),
      marks: [...table.marks, group({ x: column - width, y: 0 }, seen.marks)],
    },
  };
}

/** Less is no reason to set a step otherwise, mm. */
const WORTH = 1;

/** On narrow paper, or with a wide or a long table: words with the picture beside them, readings below. */
function below(step: PlannedStep, table: Readings | undefined, sheet: Sheet, title: StepTitle): Run[] {
  const { plan, machine, shared, labels, width, height } = sheet;
  const { units } = machine;
  const inner = width - gutter;
  const room = { ...picture, width: Math.min(picture.width, inner / 3) };
  const wide = inner - room.width - 4;
  const words = joined(allWords(stepWords(step, labels, shared, units, wide)), wide);
  const head: Drawing = {
    width,
    height: Math.max(leastHeight, title.height + Math.max(words.height, room.height)),
    marks: [
      ...title.marks,
      group({ x: gutter, y: title.height }, words.marks),
      group({ x: width - room.width, y: title.height }, stepPicture(step.stage, room).marks),
    ],
  };
  const heads: Run[] =
    head.height <= height * 0.7
      ? [{ drawing: head, gap }]
      : [
          { drawing: { ...title, height: Math.max(leastHeight, title.height) }, gap },
          ...inset(allWords(stepWords(step, labels, shared, units, inner)), width),
        ];
  const rows = inset(lowered(table ? readingsTable(table, inner) : [], 1.5), width);
  const after = inset(
    [
      ...stepSums(step, plan, labels, units, inner),
      ...stepOutcome(step, plan, zeroOf(labels), units, inner),
      ...batchBoxes(step, plan, inner),
    ],
    width,
  );
  const all = [...heads, ...rows, ...after];
  // Whole, or neither its first rows stand alone nor what follows it without its last ones.
  if (heightOf(all) <= UNBROKEN * height) return [...kept(all.slice(0, -1)), ...all.slice(-1)];
  return [
    ...(heads.length === 1 && rows.length + after.length > 0 ? kept(heads) : heads),
    ...rows.map((run, index) => heldTogether(run, index, rows.length, after.length > 0)),
    ...kept(after.slice(0, -1)),
    ...after.slice(-1),
  ];
}

const heldTogether = (run: Run, index: number, count: number, followed: boolean): Run => {
  const last = index === count - 1;
  return (last ? followed : index < 2 || index >= count - 3) ? { ...run, keepWithNext: true } : run;
};

const inset = (runs: readonly Run[], width: number): Run[] =>
  runs.map((run) => ({
    ...run,
    drawing: moved(run.drawing, width),
    ...(run.heading && { heading: moved(run.heading, width) }),
  }));

const moved = (drawing: Drawing, width: number): Drawing => ({
  width,
  height: drawing.height,
  marks: [group({ x: gutter, y: 0 }, drawing.marks)],
});
