import type { Findings } from "../findings/findings.js";
import type { Job, JobStep } from "../job/job.js";
import { isHolding } from "../job/job.js";
import { metalOf } from "../part/workpiece.js";
import { beltChanges } from "./beltChanges.js";
import { stepFindings } from "./checks/steps.js";
import { stagesOf } from "./stage.js";

/** Steps that stand where they stand: they make the zero, end a set-up, are begun by hand, or press the work askew. */
const fixed: readonly JobStep["do"][] = ["face", "part", "centre drill", "knurl", "taper"];

/** A drill may push the work askew in its jaws: what must come out to size stays on its side of it. Common practice. */
const pushes = ({ do: done }: JobStep): boolean => done === "drill";
const isToSize = (step: JobStep): boolean => "to" in step && step.to.least !== undefined;

/** In which order to work: steps that share a belt position come together where the order does not matter, since every change is
 *  a hand under the cover. `positionOf`: a name for the position of each step of the file, undefined for what goes by hand.
 *  A step is moved only where the part, every check and the metal that each step takes stay the same. Pure. */
export function workingOrder(
  job: Job,
  findings: Findings,
  positionOf: (index: number) => string | undefined,
): readonly number[] {
  const asGiven = job.steps.map((_, index) => index);
  // Every swap is tried out on the whole job: long ones keep their order.
  if (job.steps.length > LONGEST_SORTED || asGiven.every((index) => positionOf(index) === undefined)) return asGiven;
  let order = asGiven;
  let sound = outcomeOf(job, order, findings);
  for (let place = 1; place < order.length; place++) {
    const index = order[place] as number;
    const position = positionOf(index);
    if (position === undefined || positionOf(order[place - 1] as number) === position) continue;
    // The nearest earlier step at that position, with nothing between that must stay before this one.
    for (let to = place - 1; to > 0; to--) {
      if (!movable(job.steps[index], job.steps[order[to] as number])) break;
      if (positionOf(order[to - 1] as number) !== position) continue;
      const tried = [...order.slice(0, to), index, ...order.slice(to, place), ...order.slice(place + 1)];
      if (beltChanges(tried.map(positionOf)) >= beltChanges(order.map(positionOf))) break;
      // A belt is not saved by setting and touching off another tool instead.
      const tools = (list: readonly number[]) => beltChanges(list.map((one) => postedTool(job.steps[one])));
      if (tools(tried) > tools(order)) break;
      const outcome = outcomeOf(job, tried, findings);
      if (outcome === sound) {
        order = tried;
        sound = outcome;
      }
      break;
    }
  }
  return order;
}

const LONGEST_SORTED = 40;

/** What stands in the tool post for a step; undefined for what the tailstock holds. */
function postedTool(step: JobStep | undefined): string | undefined {
  switch (step?.do) {
    case "face":
    case "turn":
    case "shoulder":
      return "knife tool";
    case "groove":
    case "part":
      return `blade ${step.blade}`;
    case "bore":
    case "knurl":
      return step.do;
    case "chamfer":
      return step.side === "bore" ? undefined : step.do;
    default:
      return undefined;
  }
}

const movable = (one: JobStep | undefined, over: JobStep | undefined): boolean =>
  one !== undefined &&
  over !== undefined &&
  [one, over].every((step) => !isHolding(step) && !fixed.includes(step.do)) &&
  !(pushes(one) && isToSize(over)) &&
  !(isToSize(one) && pushes(over));

/** All that must not differ between two orders, in a form that compares: what each step takes off, and what is found. */
function outcomeOf(job: Job, order: readonly number[], findings: Findings): string {
  const stages = stagesOf(job, order);
  const steps = stages.map(
    ({ index, before, after, hole }) =>
      `${index}:${(metalOf(before) - metalOf(after)).toFixed(3)}:${hole?.begunBy}:${hole?.count}`,
  );
  const found = stepFindings(stages, job, findings).map(({ step, kind, code }) => `${step} ${kind} ${code}`);
  return [...steps.sort(), ...found.sort()].join("\n");
}
