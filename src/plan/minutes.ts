import { cutMinutes } from "../cutting/handFeed.js";
import type { Job } from "../job/job.js";
import { threadNamed, turnsFor } from "../thread/thread.js";
import { say } from "../words/say.js";
import { beltChanges } from "./beltChanges.js";
import type { PlannedStep } from "./plannedStep.js";
import { setsThePost } from "./toolPost.js";

/** What handling takes, minutes: own figures for unhurried work by one person; a trial part tells better. */
export const HANDLING = {
  /** Stop, isolate, open the cover, move belts, close it. */
  belt: 3,
  /** Clamp a tool at centre height and touch off. */
  tool: 3,
  /** Draw back, return, set the dial to the next reading. */
  pass: 0.4,
  measure: 1,
  /** Take a part out, put the next one in, see that it runs true. */
  part: 2,
  /** A drill or tap into the tailstock's chuck. */
  drill: 1,
  /** The next mark under the drill, and the part clamped again. */
  hole: 1,
  /** A turn of a tap or die by hand, with its quarter back. */
  threadTurn: 0.1,
} as const;

/** Drilling stops to clear the hole. */
const PECKING = 1.5;

/** Minutes under the tool for one part; undefined where a step under power has no speed or no feed in print. */
export function cuttingMinutes(step: PlannedStep, rpm = step.speed?.rpm): number | undefined {
  const once = inOneHole(step, rpm);
  return once === undefined ? undefined : once * holesOf(step);
}

/** Holes alike that a step is done in. */
const holesOf = ({ stage: { hole } }: PlannedStep): number => hole?.count ?? 1;

function inOneHole(
  { passes, stroke, published, byHand, stage, drills }: PlannedStep,
  rpm: number | undefined,
): number | undefined {
  if (byHand || stroke === 0) return 0;
  if (rpm === undefined || published === undefined) return undefined;
  if (drills.length > 0)
    return drills.reduce(
      (sum, { depth, published: own = published }) => sum + PECKING * cutMinutes(depth, own.from, rpm),
      0,
    );
  const once = cutMinutes(stroke, published.from, rpm);
  if (stage.step.do === "ream" || stage.step.do === "centre drill") return once * PECKING;
  return once * Math.max(1, passes.length);
}

/** Minutes of handling for one part at one step, without belts and tools. */
export function handlingMinutes(planned: PlannedStep): number {
  const { passes, drills, stage } = planned;
  const { step } = stage;
  const { pass, measure, part, drill, hole, threadTurn } = HANDLING;
  const holes = holesOf(planned);
  const tools = Math.max(1, drills.length);
  const nextHoles = hole * (holes - 1) * tools;
  switch (step.do) {
    case "turn round":
      // Counted with the holding of each end.
      return 0;
    case "hold":
      return part;
    case "tap":
    case "die": {
      const thread = threadNamed(step.thread);
      return drill + nextHoles + holes * (thread === undefined ? 2 : turnsFor(step.depth, thread.pitch) * threadTurn);
    }
    case "drill":
    case "ream":
    case "centre drill":
      return drill * tools + nextHoles;
    default:
      return (
        nextHoles + pass * Math.max(1, passes.length) + (passes.some(({ kind }) => kind === "finish") ? measure : 0)
      );
  }
}

export type Minutes = {
  /** Under the tool, one part; steps without a feed in print are left out, and counted. */
  readonly cutting: number;
  readonly uncounted: number;
  readonly handling: number;
  readonly belts: number;
  readonly tools: number;
  readonly holding: number;
  /** All of it, for the batch. */
  readonly batch: number;
  readonly beltChanges: number;
};

/** How long a batch takes in one of its two ways. All parts come up to where the work is turned round before any of them goes on:
 *  `ends` are the steps up to there, and from there. */
export function minutesOf(
  ends: readonly (readonly PlannedStep[])[],
  job: Pick<Job, "parts">,
  way: Job["batch"],
  positionOf: (step: PlannedStep) => string | undefined,
): Minutes {
  const { parts } = job;
  const once = way === "operation";
  const steps = ends.flat();
  const cut = steps.map((step) => cuttingMinutes(step));
  const cutting = cut.reduce<number>((sum, one) => sum + (one ?? 0), 0);
  const handling = steps.reduce((sum, step) => sum + handlingMinutes(step), 0);
  const sum = (of: (end: readonly PlannedStep[]) => number) => ends.reduce((total, end) => total + of(end), 0);
  const passed = ends.flatMap((end) => Array.from({ length: once ? 1 : parts }, () => end).flat());
  const belted = beltChanges(passed.map(positionOf));
  const tools = sum((end) => toolChanges(end, once ? 1 : parts)) * HANDLING.tool;
  const working = steps.filter(({ tool }) => tool !== say("plan.no tool")).length;
  const holding = (once ? working : ends.length) * parts * HANDLING.part;
  const belts = belted * HANDLING.belt;
  return {
    ...{ cutting, handling, belts, tools, holding, beltChanges: belted },
    uncounted: cut.filter((one) => one === undefined).length,
    batch: (cutting + handling) * parts + belts + tools + holding,
  };
}

/** How often the tool post gets another tool, the first one counted, when all steps are gone through so many times. What goes into
 *  the tailstock's chuck is handling of its own. */
export function toolChanges(steps: readonly PlannedStep[], times = 1): number {
  const tools = steps.filter(setsThePost).map(({ tool }) => tool);
  const once = tools.filter((tool, index) => tool !== tools[index - 1]).length;
  // The next part begins with the tool that the last one ended with, or with another.
  const again = tools.filter((tool, index) => tool !== tools.at(index - 1)).length;
  return once + again * (times - 1);
}
