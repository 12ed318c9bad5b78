import type { Units } from "../../machine/machine.js";
import { isRefusedStep, type Plan } from "../../plan/plan.js";
import type { PlannedStep } from "../../plan/plannedStep.js";
import { capital, figureWithin, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { size } from "../shared/style.js";
import { fillIn } from "./blanks.js";
import { correctedStep } from "./correctedReadings.js";
import { feedWords, type Labels, promiseWords, ruleWords, type ZeroOf, zeroWords } from "./planWords.js";
import type { SharedNote } from "./sharedNotes.js";

const gap = 0.7;

/** `before`: what is done before the first reading, in order: tool, feed, what is swung, what is touched. `mind`: what is minded
 *  meanwhile, each by itself. */
export type StepWords = { readonly before: readonly Run[]; readonly mind: readonly (readonly Run[])[] };

export function stepWords(
  step: PlannedStep,
  { zeros, ruled }: Labels,
  shared: readonly SharedNote[],
  units: Units,
  width: number,
): StepWords {
  const inFile = step.stage.index + 1;
  const feed = feedWords(step);
  const signs = shared.filter(({ words }) => step.notes.includes(words)).map(({ sign }) => sign);
  const own = step.notes.filter((note) => shared.every(({ words }) => words !== note));
  return {
    before: [
      ...(step.tool === say("plan.no tool") ? [] : paragraph(capital(step.tool), width, { weight: "bold", gap })),
      ...(feed === undefined ? [] : paragraph(feed, width, { gap })),
      ...step.first.flatMap((words) => paragraph(words, width, { gap, weight: "bold" })),
      ...step.zeros.flatMap((zero, index) =>
        [zeroWords(zero, step, zeros[index] ?? "", units), ...ruleWords(zero, ruled, units)].flatMap((words) =>
          fillIn(words, width, { gap }),
        ),
      ),
    ],
    mind: [
      ...own.map((note) => paragraph(note, width, { gap })),
      ...(signs.length === 0
        ? []
        : [
            paragraph(
              say("plan.see for several steps", { heading: say("plan.for several steps"), signs: signs.join(", ") }),
              width,
              { gap },
            ),
          ]),
      ...(step.number === inFile
        ? []
        : [paragraph(say("plan.step of the file", { inFile }), width, { gap, size: size.source })]),
    ],
  };
}

export const allWords = ({ before, mind }: StepWords): Run[] => [...before, ...mind.flat()];

/** What the sizes will be, and what to turn on worn slides. */
export function stepOutcome(step: PlannedStep, plan: Plan, zeroOf: ZeroOf, units: Units, width: number): Run[] {
  const show = (mm: number) => `${figureWithin(mm, undefined, units)} ${unitName(units)}`;
  const promise = isRefusedStep(plan, step) ? undefined : promiseWords(step, show, units);
  // The size that the last cut makes comes before the length that it is cut to.
  const promised = promise !== undefined && step.sizes[0]?.doubt !== undefined;
  return [
    ...(promise === undefined ? [] : paragraph(promise, width, { gap })),
    ...correctedStep(step, zeroOf, units, width, promised),
  ];
}
