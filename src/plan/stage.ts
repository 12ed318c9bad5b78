import { type Bar, type Held, isHolding, type Job, type JobStep } from "../job/job.js";
import type { Outline } from "../part/outline.js";
import { bar, boreOver, endsOf, partedAt, shifted, turnedRound, type Workpiece } from "../part/workpiece.js";
import { BLOCK } from "./block.js";
import { type Shaping, shaped } from "./shape.js";

/** By what the work is held, and where that begins: nothing is cut beyond. `z` as for a workpiece. */
export type Holding = {
  readonly held: Held;
  /** Where jaws or driver begin. */
  readonly jaws: number;
  /** Counted up whenever the work is held anew. */
  readonly setUp: number;
  /** Whether the first end of the part is the free one, or the other. */
  readonly end: "first" | "other";
  /** Parted off, and not held by anything. */
  readonly loose: boolean;
};

/** One step of a job, with the work as it finds it and as it leaves it. */
export type Stage = {
  /** In the job's file. */
  readonly index: number;
  readonly step: JobStep;
  readonly holding: Holding;
  readonly before: Workpiece;
  readonly after: Workpiece;
  readonly shaping: Shaping;
  /** True where the far end of the bar is not known: it goes on into the spindle. */
  readonly openEnded: boolean;
  /** The same after it: parting off makes an end. */
  readonly endKnown: boolean;
};

/** A bar through the spindle is drawn and reckoned with this far inside the chuck, in diameters. */
const inTheChuck = 3;

/** The job step by step, from the bar to the part. Pure; steps in the order given, which may be another than the file's. */
export function stagesOf(
  job: Pick<Job, "bar" | "steps"> & { readonly units?: Job["units"] },
  order: readonly number[] = job.steps.map((_, index) => index),
): Stage[] {
  const steps = order.map((index) => job.steps[index]).filter((step) => step !== undefined);
  const first = steps.slice(0, endOfSetUp(steps, 0));
  const off = facedOff(first, job.bar?.length);
  let work = blankOf(job.bar, off);
  let openEnded = job.bar?.length === undefined;
  let holding: Holding = {
    held: job.bar?.held ?? "chuck",
    jaws: job.bar === undefined ? BLOCK : job.bar.out - off,
    setUp: 1,
    end: "first",
    loose: false,
  };
  return steps.map((step, place): Stage => {
    // On a drill's table holes lie beside each other: what cannot go on in one hole begins another.
    if (job.bar === undefined && beginsAnother(step, work)) work = blankOf(undefined, off);
    const before = work;
    const foundEnded = openEnded;
    if (isHolding(step)) {
      const length = lengthOf(before);
      const round = step.do === "turn round";
      if (round) {
        const ahead = steps.slice(place + 1, endOfSetUp(steps, place + 1));
        work = turnedRound(before, 0 - facedOff(ahead, openEnded ? undefined : length));
        // The far end is now the free one; what was free is in the chuck, and known.
        openEnded = false;
      }
      if (!round && holding.loose) {
        const ahead = steps.slice(place + 1, endOfSetUp(steps, place + 1));
        work = shifted(work, -facedOff(ahead, length) - endsOf(work).from);
      }
      const jaws = endsOf(work).from + step.out;
      holding = {
        held: step.held,
        jaws,
        setUp: holding.setUp + 1,
        end: round === (holding.end === "first") ? "other" : "first",
        loose: false,
      };
      if (openEnded) work = reachingTo(work, jaws + inTheChuck * (job.bar?.diameter ?? 0));
    }
    // Nobody knows how much a face to a length takes off a bar without end: none, and the checks refuse it.
    const asked = step.do === "face" && step.length !== undefined && openEnded ? { ...step, depth: 0 } : step;
    const shaping = shaped(asked, before, job.units);
    if (!isHolding(step)) work = shaping.after;
    if (step.do === "part") {
      work = partedAt(work, step.length);
      openEnded = false;
    }
    const stage = {
      index: order[place] ?? place,
      step,
      holding,
      before: isHolding(step) ? work : before,
      after: work,
      shaping: isHolding(step) ? { ...shaping, after: work } : shaping,
      openEnded: isHolding(step) ? openEnded : foundEnded,
      endKnown: !openEnded,
    };
    if (step.do === "part") holding = { ...holding, loose: true };
    return stage;
  });
}

/** A centre hole, or a drill after a tap, or one no larger than the hole that is there. */
const beginsAnother = (step: JobStep, work: Workpiece): boolean =>
  step.do === "centre drill" ||
  (step.do === "drill" &&
    (work.surfaces.length > 0 || step.diameter <= boreOver(work, endsOf(work).from, endsOf(work).to)));

const lengthOf = (work: Workpiece): number => endsOf(work).to - endsOf(work).from;

/** Where the steps with this end free are over. */
function endOfSetUp(steps: readonly JobStep[], from: number): number {
  const next = steps.findIndex((step, index) => index >= from && step.do === "turn round");
  return next < 0 ? steps.length : next;
}

/** What is faced off an end altogether; `length`: of the work before, where it is known. */
function facedOff(steps: readonly JobStep[], length: number | undefined): number {
  let left = length;
  let off = 0;
  for (const step of steps) {
    // What falls off is held anew, and its lengths count from its own finished face.
    if (step.do === "part") break;
    if (step.do !== "face") continue;
    const depth = step.depth ?? (left === undefined ? 0 : Math.max(0, left - (step.length ?? 0)));
    off += depth;
    if (left !== undefined) left -= depth;
  }
  return off;
}

function blankOf(given: Bar | undefined, off: number): Workpiece {
  if (given === undefined) return bar(BLOCK, 0 - off, BLOCK);
  const { diameter, out, length, bore } = given;
  return bar(diameter, 0 - off, length === undefined ? out - off + inTheChuck * diameter : length - off, bore);
}

/** A bar, or a tube, that is drawn out of the spindle by more. */
function reachingTo(work: Workpiece, to: number): Workpiece {
  const end = endsOf(work).to;
  if (end >= to) return work;
  const longer = (outline: Outline): Outline =>
    outline.map((stretch) => (Math.abs(stretch.to - end) < 1e-9 ? { ...stretch, to } : stretch));
  return { ...work, outside: longer(work.outside), bore: longer(work.bore) };
}
