import type { Mark } from "../../drawing/drawing.js";
import { rectangle, text } from "../../drawing/shapes.js";
import { dialToRead } from "../../findings/dialToRead.js";
import { onDial } from "../../findings/onDial.js";
import type { Units } from "../../machine/machine.js";
import { isRefusedStep, type Plan } from "../../plan/plan.js";
import type { PlannedStep } from "../../plan/plannedStep.js";
import { figureWithin, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { joined, kept } from "../shared/runs.js";
import { objectLine, rowLine, size } from "../shared/style.js";
import { fillIn } from "./blanks.js";
import { correctedReadings } from "./correctedReadings.js";
import { isFixed, type Labels, readingWords, ruleWords, within } from "./planWords.js";

/** What is measured, summed up and set after a step's readings: on the paper, with lines to write on. `labels`: of the blanks for
 *  zeros set after it. */
export function stepSums(step: PlannedStep, plan: Plan, labels: Labels, units: Units, width: number): Run[] {
  return [
    ...(isRefusedStep(plan, step)
      ? []
      : [...measuredSum(step, plan, units, width), ...mendedZero(step, plan, units, width)]),
    ...step.zerosAfter.flatMap((zero, index) => [
      ...fillIn(
        isFixed(zero.wheel)
          ? say("plan.locked, written down", {
              wheel: zero.wheel.handwheel.name,
              label: labels.zerosAfter[index] ?? "",
            })
          : say(dialToRead(zero.wheel) === undefined ? "plan.locked, marked" : "plan.locked, set", {
              wheel: zero.wheel.handwheel.name,
            }),
        width,
        { gap: 1, weight: "bold" },
      ),
      ...ruleWords(zero, labels.ruled, units).flatMap((words) => fillIn(words, width, { gap: 0.7 })),
    ]),
  ];
}

/** After a measured cut the remaining depth is one line to compute. */
function measuredSum(planned: PlannedStep, plan: Plan, units: Units, width: number): Run[] {
  const { passes, sizes, depthWheel, anew } = planned;
  const { step } = planned.stage;
  const wanted = sizes.find(({ what }) => what === "diameter");
  if (wanted === undefined || passes.length === 0 || step.do === "taper") return [];
  const { least, most, aim } = wanted;
  const diameter = figureWithin(aim, least === undefined || most === undefined ? undefined : most - least, units);
  const limits = least === undefined || most === undefined ? "" : ` (${within(least, most, units)})`;
  const way = step.do === "bore" ? "bore" : "outside";
  const reckoned = depthWheel && onDial(depthWheel, "diameter", units);
  const sum = [
    `${say(`plan.sum ${way}`, { diameter, unit: unitName(units) })}${limits}.`,
    reckoned === undefined ? say("plan.go on") : say("plan.go on, reckoned", reckoned),
  ].join(" ");
  const others =
    plan.job.parts < 2 || depthWheel === undefined || dialToRead(depthWheel) === undefined
      ? []
      : anew.across
        ? [say("plan.measure the others too")]
        : provesZero(planned, plan) && !isFixed(depthWheel)
          ? []
          : [say("plan.dial at the right size")];
  const inset = 1.6;
  const inside = joined(
    [sum, ...others].flatMap((words) => fillIn(words, width - 2 * inset)),
    width - 2 * inset,
  );
  const height = inside.height + 1.6;
  const marks: Mark[] = [
    rectangle({ x: 0, y: 0 }, width, height, { pen: rowLine }),
    { kind: "group", at: { x: inset, y: 0.2 }, marks: inside.marks },
  ];
  return [{ drawing: { width, height: height + 0.2, marks }, gap: 1.8 }];
}

/** Whether a step is the first measured cut from its zero, and so tells how true that is. */
function provesZero({ depthZero, depthWheel, passes, stage: { step }, number }: PlannedStep, plan: Plan): boolean {
  if (
    depthZero === undefined ||
    depthWheel === undefined ||
    dialToRead(depthWheel) === undefined ||
    step.do === "face" ||
    step.do === "taper"
  )
    return false;
  const measured = plan.steps.find(
    (one) =>
      one.depthZero === depthZero && one.passes.some(({ kind }) => kind === "rough") && !isRefusedStep(plan, one),
  );
  return measured?.number === number && passes.some(({ kind }) => kind === "finish");
}

/** From the first measured cut on the readings of a tool are true, or by how much they are not is known. */
function mendedZero(step: PlannedStep, plan: Plan, units: Units, width: number): Run[] {
  const finish = step.passes.findLast(({ kind }) => kind === "finish");
  const { depthWheel, anew } = step;
  if (finish?.reading === undefined || depthWheel === undefined || !provesZero(step, plan)) return [];
  const { reading, travel } = finish;
  const { turns, figure, row } = readingWords(depthWheel, reading);
  const straight = plan.job.parts > 1 && !anew.across;
  // Backwards the figure is where the dial comes to stand, and nothing to be added.
  const told = { reading: [reading.back ? `${turns}, ${figure}` : `${turns} + ${figure}`, row].join(" ").trimEnd() };
  const mended = (): string => {
    if (isFixed(depthWheel)) return say("plan.mend sum");
    if (depthWheel.feed?.measured?.uneven?.ahead === undefined)
      return say(straight ? "plan.mend zero, others too" : "plan.mend zero", told);
    const worn = correctedReadings({ wheel: depthWheel, travel }, units)
      ? say("plan.mend zero, by the rule")
      : say("plan.mend zero, worn", told);
    return straight ? `${worn} ${say("plan.others go straight")}` : worn;
  };
  return fillIn(mended(), width, { gap: 0.8 });
}

/** More parts than these are counted on another sheet. */
const mostBoxes = 60;

/** In a batch by operation each step has a box for each part. */
export function batchBoxes(step: PlannedStep, plan: Plan, width: number): Run[] {
  const { job } = plan;
  if (job.batch !== "operation" || job.parts < 2 || isRefusedStep(plan, step)) return [];
  const boxes = Math.min(job.parts, mostBoxes);
  const pitch = 6.4;
  const across = Math.max(1, Math.floor(width / pitch));
  const marks = Array.from({ length: boxes }, (_, index): Mark[] => {
    const at = { x: (index % across) * pitch, y: 0.6 + Math.floor(index / across) * 5.6 };
    return [
      rectangle(at, 4.6, 4.6, { pen: objectLine }),
      text(String(index + 1), { x: at.x + 2.3, y: at.y + 3.2 }, { size: size.source, anchor: "middle" }),
    ];
  }).flat();
  const done =
    job.parts > mostBoxes
      ? say("plan.done on part, more", { from: mostBoxes + 1, to: job.parts })
      : say("plan.done on part");
  return [
    ...kept(paragraph(done, width, { gap: 1 })),
    { drawing: { width, height: 0.6 + Math.ceil(boxes / across) * 5.6, marks } },
  ];
}
