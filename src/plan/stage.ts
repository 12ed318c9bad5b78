import { type Bar, type Held, type InHoles, isHolding, type Job, type JobStep } from "../job/job.js";
import { isCylinder, type Outline } from "../part/outline.js";
import { bar, endsOf, partedAt, shifted, turnedRound, type Workpiece } from "../part/workpiece.js";
import { largestOf } from "../quantity/extremes.js";
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

/** Holes alike that a step is done in. */
export type StageHole = {
  /** As the job calls it. */
  readonly name?: string;
  /** The step of the file that begins it: what belongs to one hole has this in common. */
  readonly begunBy: number;
  readonly count: number;
  /** How many there are of it so far: what was last drilled, or begun. */
  readonly drilled: number;
  /** Unnamed, and not the hole of the step before. */
  readonly another: boolean;
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
  /** Where nothing is turned: in which hole of those beside each other. */
  readonly hole?: StageHole;
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
  const holes = job.bar === undefined ? new Holes() : undefined;
  return steps.map((step, place): Stage => {
    const index = order[place] ?? place;
    const inHole = holes?.of(step, index);
    if (inHole !== undefined) work = inHole.work;
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
    holes?.leave(step, work);
    const stage = {
      ...{ index, step },
      ...(inHole && { hole: inHole.hole }),
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

/** On a drill's table holes lie beside each other: steps of one name are of one hole; without names what cannot go on in a hole begins
 *  another. */
class Holes {
  private readonly known = new Map<string | undefined, { readonly work: Workpiece; readonly hole: StageHole }>();
  /** What was done last. */
  private last: JobStep | undefined;

  /** The hole that a step finds. */
  of(step: JobStep, index: number): { readonly work: Workpiece; readonly hole: StageHole } {
    const { hole: name, holes }: InHoles = "hole" in step || "holes" in step ? step : {};
    const last = this.known.get(name);
    const goesOn = last !== undefined && (name !== undefined || !beginsAnother(step, last.work, this.last));
    const count = holes ?? (goesOn ? last.hole.count : 1);
    const hole: StageHole = {
      ...(name !== undefined && { name }),
      begunBy: goesOn ? last.hole.begunBy : index,
      count,
      drilled: goesOn ? last.hole.drilled : count,
      another: name === undefined && !goesOn && last !== undefined,
    };
    const found = { work: goesOn ? last.work : blankOf(undefined, 0), hole };
    this.known.set(name, found);
    return found;
  }

  /** The same hole as a step leaves it. */
  leave(step: JobStep, work: Workpiece): void {
    this.last = step;
    const name = "hole" in step ? step.hole : undefined;
    const hole = this.known.get(name)?.hole;
    if (hole === undefined) return;
    const drilled = step.do === "drill" ? Math.min(hole.drilled, hole.count) : hole.drilled;
    this.known.set(name, { work, hole: { ...hole, drilled } });
  }
}

/** A centre hole, or a drill after a tap, or one no larger than the hole that is there, whatever its edge: only a centre hole leads any
 *  drill. */
const beginsAnother = (step: JobStep, work: Workpiece, last: JobStep | undefined): boolean =>
  step.do === "centre drill" ||
  (step.do === "drill" &&
    last?.do !== "centre drill" &&
    (work.surfaces.length > 0 || step.diameter <= largestOf(work.bore.filter(isCylinder).map(({ start }) => start))));

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
