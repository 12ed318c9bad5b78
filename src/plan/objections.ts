import type { Findings } from "../findings/findings.js";
import { tenthOfDivision } from "../findings/settings.js";
import { noFeedWords } from "../findings/travelWords.js";
import { largestDrill } from "../findings/uses.js";
import type { Job, JobStep } from "../job/job.js";
import { dieBlank, tappingHole, threadNamed } from "../thread/thread.js";
import { byHandWords } from "./chips.js";
import type { PlannedStep } from "./plannedStep.js";
import { type Show, showIn } from "./words.js";

/** Bar that stands out further than this many diameters bends and chatters. Common practice. */
const slender = 4;

export function barObjections(job: Job, { machine }: Findings): string[] {
  const { bar, steps } = job;
  const show = showIn(machine, job);
  const reach = Math.max(0, ...steps.map((step) => ("length" in step ? alongWork(step) : 0)));
  return [
    ...(machine.limits.chuckRpm === undefined
      ? ["The file does not say how fast the chuck may run: read its marking, and never go above it."]
      : []),
    ...(bar && !bar.supported && bar.out > slender * bar.diameter
      ? [
          `The bar stands out ${show(bar.out)}, more than ${slender} times its diameter, with nothing at its free end: let it out less or hold it with a centre.`,
        ]
      : []),
    ...(bar && reach > bar.out
      ? [`A step reaches ${show(reach)} along the work, but the bar stands out only ${show(bar.out)}.`]
      : []),
  ];
}

/** How far the tool goes along the work; a blade cuts beyond the part. */
const alongWork = (step: Extract<JobStep, { readonly length: number }>): number =>
  step.length + (step.do === "part" ? step.blade : 0);

/** What of one step is beyond the machine, or beyond what its file tells. */
export function stepObjections(planned: PlannedStep, job: Job, { drive, machine, handwheels }: Findings): string[] {
  const show = showIn(machine, job);
  const { step, depthWheel, lengthWheel, speed } = planned;
  const found: string[] = [];
  const deepest = planned.passes.at(-1)?.total ?? 0;
  if (depthWheel?.handwheel.travel !== undefined && deepest > depthWheel.handwheel.travel)
    found.push(beyond(show, deepest, depthWheel.handwheel.name, depthWheel.handwheel.travel));
  if (planned.passes.length > 0 && depthWheel === undefined)
    found.push(
      `no handwheel with a feed sets this depth: dial readings cannot be told.${handwheels.map((wheel) => (wheel.miscounted ? ` ${wheel.handwheel.name}: ${noFeedWords(wheel)}` : "")).join("")}`,
    );
  const long = "length" in step ? alongWork(step) : step.do === "drill" || step.do === "ream" ? step.depth : 0;
  if (lengthWheel?.handwheel.travel !== undefined && long > lengthWheel.handwheel.travel)
    found.push(beyond(show, long, lengthWheel.handwheel.name, lengthWheel.handwheel.travel));
  if ((step.do === "drill" || step.do === "ream") && step.diameter > largestDrill(machine.limits) + 1e-9)
    found.push(
      `${show(step.diameter)} is larger than the machine drives: limits: drill: ${show(machine.limits.largestDrill ?? 0)}. Do not run it.`,
    );
  const { wanted } = planned;
  if (wanted?.tolerance !== undefined && depthWheel !== undefined) {
    // On diameter both count twice; ± on either side of the size.
    const holds = 4 * Math.hypot(tenthOfDivision(depthWheel), 2 * (depthWheel.feed?.fit?.residualDeviation ?? 0));
    if (holds > wanted.tolerance)
      found.push(
        `${show(wanted.tolerance)} is finer than this slide holds, about ${show(holds)}: ${byHandWords(job)}.`,
      );
  }
  if (planned.byHand) return found;
  if (drive === undefined) return [...found, "the file has no drive: the speed is yours to choose, slow first."];
  if (speed === undefined) return [...found, `no cutting speed is known for ${job.material} with ${job.tool}.`];
  // That no speed is known stands once, above all steps.
  if (speed.heldBy === "hand" && speed.speed === undefined)
    found.push(`at every position the hand would feed ${job.material} too finely, and fine chips burn: do not run it.`);
  else if (speed.speed === undefined && speed.verdict !== "no speed is known")
    found.push(
      `even the slowest position is too fast for this diameter${machine.limits.chuckRpm === undefined ? "" : " or beyond the chuck's limit"}: do not run it.`,
    );
  return found;
}

const beyond = (show: Show, needed: number, wheel: string, travel: number): string =>
  `needs ${show(needed)} of the ${wheel.toLowerCase()}, which travels ${show(travel)}.`;

/** What an earlier step must have left: the diameter a cut begins at, the hole for a tap, a bore or a reamer, the rod for a die. */
export function orderObjections(job: Job, { machine }: Findings): string[] {
  const { bar, steps } = job;
  const show = showIn(machine, job);
  const found: string[] = [];
  let outside = bar?.diameter ?? Number.POSITIVE_INFINITY;
  let hole = 0;
  let parted = false;
  const say = (index: number, words: string) => found.push(`Step ${index + 1} ${words}`);
  const before = () => (hole === 0 ? "none was made" : `the last one is ${show(hole)}`);
  for (const [index, step] of steps.entries()) {
    if (parted) say(index, "comes after parting off: the part must be held again, and true.");
    if (step.do === "part") parted = true;
    if (step.do === "turn" || step.do === "shoulder") {
      if (step.from < outside - 1e-6)
        say(
          index,
          `begins at ${show(step.from)}, but the work is still ${show(outside)}: a first cut would be too deep.`,
        );
      outside = step.to;
    }
    if (step.do === "bore") {
      if (hole < step.from - 1e-6) say(index, `begins in a hole of ${show(step.from)}; ${before()}.`);
      hole = step.to;
    }
    if (step.do === "ream" && (hole === 0 || hole > step.diameter + 1e-6))
      say(index, `wants a hole a little under ${show(step.diameter)}; ${before()}.`);
    if (step.do === "drill" || step.do === "ream") hole = step.diameter;
    const thread = step.do === "tap" || step.do === "die" ? threadNamed(step.thread) : undefined;
    if (thread === undefined) continue;
    if (step.do === "tap" && (hole >= thread.major || hole < tappingHole(thread, 1)))
      say(
        index,
        `wants a hole from ${show(tappingHole(thread, 1))} (full thread) to less than ${show(thread.major)}; ${before()}.`,
      );
    if (step.do === "die" && (outside > thread.major + 1e-6 || outside < dieBlank(thread) - thread.pitch / 4))
      say(index, `wants a rod of about ${show(dieBlank(thread))}; the work is ${show(outside)}.`);
  }
  return found;
}
