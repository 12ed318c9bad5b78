import { isHolding, type JobStep } from "../job/job.js";
import type { Units } from "../machine/machine.js";
import { centreDrillFor, centreDrillUpTo, centreHole } from "../part/centreHole.js";
import { drillPoint } from "../part/drillPoint.js";
import { cylinder, diameterAt, moved, type Stretch } from "../part/outline.js";
import {
  bored,
  endsOf,
  facedTo,
  marked,
  metalOf,
  narrowsAt,
  outsideOver,
  turned,
  type Workpiece,
} from "../part/workpiece.js";
import { largestOf, smallestOf } from "../quantity/extremes.js";
import { threadNamed } from "../thread/thread.js";
import { isBlock } from "./block.js";

/** What a step does to the work. */
export type Shaping = {
  readonly after: Workpiece;
  /** Where its tool comes to lie at the end, from outside or inside; empty for a face, and for threads and knurls. */
  readonly outside: readonly Stretch[];
  readonly inside: readonly Stretch[];
  /** How far the tool goes along the work, at most and at least. */
  readonly from: number;
  readonly to: number;
  /** Metal taken off, mm³. */
  readonly removed: number;
};

export function shaped(step: JobStep, work: Workpiece, units: Units = "mm"): Shaping {
  const end = endsOf(work).from;
  // What begins at the end begins at the end as it now is, faced or not.
  const begin = (at: number) => (at <= 1e-9 ? Math.min(at, end) : at);
  const cut = (outside: readonly Stretch[], inside: readonly Stretch[], after?: Workpiece): Shaping => {
    const all = [...outside, ...inside];
    const result = after ?? inside.reduce(bored, outside.reduce(turned, work));
    return {
      after: result,
      outside,
      inside,
      from: smallestOf(all.map(({ from }) => from)),
      to: largestOf(all.map(({ to }) => to)),
      removed: metalOf(work) - metalOf(result),
    };
  };
  const untouched = (from: number, to: number, after = work): Shaping => ({
    ...{ after, outside: [], inside: [], from, to, removed: 0 },
  });
  if (isHolding(step)) return untouched(end, end);
  switch (step.do) {
    case "face": {
      const to = end + depthOfFace(step, work);
      const after = facedTo(work, to);
      return { after, outside: [], inside: [], from: end, to, removed: metalOf(work) - metalOf(after) };
    }
    case "centre drill": {
      // Fed from the end as it is: what is faced off later takes some of its mouth along.
      return cut([], moved(centreHole(pilotOf(step, work, units)).cuts, end));
    }
    case "drill": {
      const { diameter, depth } = step;
      const tip = depth + drillPoint(diameter);
      return cut([], [cylinder(Math.min(0, end), depth, diameter), { from: depth, to: tip, start: diameter, end: 0 }]);
    }
    case "ream":
      return cut([], [cylinder(Math.min(0, end), step.depth, step.diameter)]);
    case "bore":
      return cut([], [cylinder(begin(step.at), step.at + step.length, step.to.aim)]);
    case "turn":
    case "shoulder":
      return cut([cylinder(begin(step.at), step.at + step.length, step.to.aim)], []);
    case "groove":
      return cut([cylinder(step.at, step.at + step.width, step.to.aim)], []);
    case "chamfer":
      return chamfered(step, work, cut);
    case "taper": {
      const [start, finish] = step.smallAt === "end" ? [step.small, step.large] : [step.large, step.small];
      return cut([{ from: step.at, to: step.at + step.length, start, end: finish }], []);
    }
    case "knurl": {
      const to = step.at + step.length;
      const name = "knurl";
      return untouched(step.at, to, marked(work, { kind: "knurl", side: "outside", from: step.at, to, name }));
    }
    case "tap":
    case "die": {
      const side = step.do === "tap" ? "inside" : "outside";
      const from = step.do === "tap" ? threadBegins(work, step.thread) : 0;
      const surface = { kind: "thread", side, from, to: step.depth, name: step.thread } as const;
      return untouched(0, step.depth, from < step.depth - 1e-6 ? marked(work, surface) : work);
    }
    case "part": {
      const { length, blade } = step;
      return cut([cylinder(length, length + blade, 0)], []);
    }
  }
}

/** A centre drill for a plate of which nothing is known, mm: it leads any usual drill. Common practice. */
const usualPilot = 2;

/** The centre drill of a step: as the file says, or as suits the work's end. */
export function pilotOf({ pilot }: Extract<JobStep, { do: "centre drill" }>, work: Workpiece, units: Units): number {
  const end = endsOf(work).from;
  return (
    pilot ??
    (isBlock(work) ? centreDrillUpTo(2.2 * usualPilot, units) : centreDrillFor(outsideOver(work, end, end + 1), units))
  );
}

/** From where on a tap finds metal: behind a countersink or a wider bore. */
export function threadBegins(work: Workpiece, name: string): number {
  const thread = threadNamed(name);
  return thread === undefined ? 0 : Math.max(0, narrowsAt(work, thread.major));
}

/** How much a facing step takes off. */
export function depthOfFace(step: Extract<JobStep, { do: "face" }>, work: Workpiece): number {
  const { from, to } = endsOf(work);
  return step.depth ?? Math.max(0, to - from - (step.length ?? 0));
}

/** Edges face the free end or the chuck, whichever side is the thicker one. */
function chamfered(
  { at, size, side }: Extract<JobStep, { do: "chamfer" }>,
  work: Workpiece,
  cut: (outside: readonly Stretch[], inside: readonly Stretch[]) => Shaping,
): Shaping {
  if (side === "bore") {
    // What is left of a centre hole's mouth is no part of the hole whose edge is broken.
    const hole = Math.min(diameterAt(work.bore, at, 1), diameterAt(work.bore, at + size, -1));
    return cut([], [{ from: at, to: at + size, start: hole + 2 * size, end: hole }]);
  }
  const [outer, inner] = [diameterAt(work.outside, at, -1), diameterAt(work.outside, at, 1)];
  return inner > outer
    ? cut([{ from: at, to: at + size, start: Math.max(0, inner - 2 * size), end: inner }], [])
    : cut([{ from: at - size, to: at, start: outer, end: Math.max(0, outer - 2 * size) }], []);
}
