import { burns } from "../findings/chipFire.js";
import { byHandOnly, drillsOf } from "../findings/drills.js";
import type { HandwheelFinding } from "../findings/findings.js";
import { powerOff } from "../findings/powerOff.js";
import type { JobStep } from "../job/job.js";
import type { Machine, Units } from "../machine/machine.js";
import { centreHole } from "../part/centreHole.js";
import { drillPoint, LARGEST_FROM_THE_SOLID, WEB } from "../part/drillPoint.js";
import { endsOf, openOver } from "../part/workpiece.js";
import { inMm } from "../quantity/length.js";
import { say } from "../words/say.js";
import { wetWords } from "./chips.js";
import { alike, atMostFromZero } from "./doubt.js";
import { drillWords } from "./drillWords.js";
import { drillFeed } from "./feed.js";
import { begun, fedStep, type Making, type Step } from "./making.js";
import { isOnTheTable } from "./onTheTable.js";
import type { Made, PlannedSize } from "./plannedStep.js";
import { byRule, wantedWords } from "./reached.js";
import { pilotOf } from "./shape.js";
import { readingAt, type Zero } from "./zero.js";

export const clamped = (): string => say("plan.clamped");

/** By eye a drill's full diameter is seen to enter to this, mm, either way. Common practice. */
export const ENTERED = 0.2;

/** Depth by the barrel or quill, from where the full diameter enters the end as it is. */
export function depthBy(
  barrel: HandwheelFinding | undefined,
  depth: number,
  units: Units,
  end = 0,
): Pick<Made, "zeros" | "places" | "sizes"> {
  const zero: Zero | undefined = barrel && { wheel: barrel, of: "mouth", at: end };
  const reading = barrel && readingAt(barrel, depth - end);
  const moved = barrel && reading && atMostFromZero(barrel, reading.travel, units);
  const same = barrel && alike(barrel);
  const size: PlannedSize = {
    ...{ what: "depth", aim: depth },
    ...(moved !== undefined && { doubt: ENTERED + moved.off, ...byRule(moved) }),
    ...(same !== undefined && { alike: 2 * ENTERED + same }),
  };
  return {
    zeros: zero ? [zero] : [],
    places: barrel && reading ? [{ what: "depth", wheel: barrel, at: depth, reading }] : [],
    sizes: [size],
  };
}

export function centred(making: Making<Extract<JobStep, { do: "centre drill" }>>): Step {
  const { stage, step, wheels, show, job, findings } = making;
  const pilot = pilotOf(step, stage.before, job.units);
  const tip = drillWords(pilot, { job, machine: findings.machine }, show);
  const { depth, mouth } = centreHole(pilot);
  // The speed by the widest place that cuts, the feed by the thin tip.
  const cut = { operation: "drilling", diameter: mouth, fed: "drilling", fedAs: pilot } as const;
  const { fed, chips } = fedStep(making, cut, wheels.barrel);
  const zero: Zero | undefined = wheels.barrel && { wheel: wheels.barrel, of: "tip", at: 0 };
  const reading = wheels.barrel && readingAt(wheels.barrel, depth);
  return {
    made: {
      ...begun(say("plan.centre drill", { pilot: tip }), say("plan.centre drill tool", { pilot: tip })),
      ...fed,
      zeros: zero ? [zero] : [],
      places: zero && reading ? [{ what: "depth", wheel: zero.wheel, at: depth, reading }] : [],
      notes: [
        ...(isOnTheTable(job, findings.machine) ? [clamped()] : []),
        say("plan.centre drill note", { mouth: show(mouth, 2), depth: show(depth, 2) }),
        ...chips,
      ],
      stroke: depth,
    },
    // What stands in the tool post stays, and so do its zeros.
    bench: making.bench,
  };
}

export function holed(making: Making<Extract<JobStep, { do: "drill" | "ream" }>>): Step {
  const { stage, step, wheels, job, findings, show } = making;
  const { machine } = findings;
  const drill = step.do === "drill";
  const byHand = byHandOnly(drill ? "drilling" : "reaming", machine);
  const { diameter, depth } = step;
  const named = (mm: number) => drillWords(mm, { job, machine }, show);
  const { fed, chips } = fedStep(
    making,
    drill
      ? { operation: "drilling", diameter, fed: "drilling" }
      : // A reamer has no feed of its own in print; where fine chips burn the hand must give the least that does not.
        { operation: "reaming", diameter, ...(burns(job.material) && { fed: "finishing" as const }) },
    wheels.barrel,
  );
  const { from, to } = endsOf(stage.before);
  const drills = drill
    ? drillStages(diameter, openOver(stage.before, Math.max(0, from), Math.min(depth, to)), machine).map((stageOf) => ({
        diameter: stageOf,
        depth,
        name: named(stageOf),
        ...drillFeed(stageOf, fed, wheels.barrel, job),
      }))
    : [];
  const deep = depthBy(wheels.barrel, depth, findings.machine.units, from);
  const tip = drillPoint(diameter);
  return {
    made: {
      ...begun(
        say(drill ? "plan.drill" : "plan.ream", {
          size: step.wanted ? wantedWords(step.wanted, show) : drill ? named(diameter) : show(diameter),
          depth: show(depth),
        }),
        drill ? say(drills.length > 1 ? "plan.twist drills" : "plan.twist drill") : say("plan.reamer"),
      ),
      ...(byHand ? { byHand } : fed),
      ...deep,
      ...(step.wanted && { sizes: [...deep.sizes, { what: "diameter", ...step.wanted }] }),
      drills,
      notes: [
        ...(isOnTheTable(job, machine) ? [clamped()] : []),
        ...(byHand ? [say("plan.by hand, no reverse", { off: powerOff(machine) })] : []),
        ...(drill
          ? [
              ...(drills.length > 1
                ? [say("plan.drills in turn", { drills: drills.map(({ name }) => name).join(", ") })]
                : []),
              say("plan.clear drill"),
              say("plan.drill depth counts", { tip: show(tip, 2) }),
            ]
          : [say("plan.ream note", { wet: wetWords(job) })]),
        ...chips,
      ],
      stroke: depth * Math.max(1, drills.length),
    },
    // What stands in the tool post stays, and so do its zeros.
    bench: making.bench,
  };
}

/** Drills from the solid to a large hole (a centre hole is none: `hole` is what is open over the whole depth): one that clears the next one's web, then one between where that is a long way. Of the
 *  drills at hand where the file lists them. */
export function drillStages(
  diameter: number,
  hole: number,
  machine: Pick<Machine, "work" | "units" | "limits">,
): number[] {
  if (diameter <= LARGEST_FROM_THE_SOLID + 1e-9 || hole >= diameter / 4) return [diameter];
  const nice = machine.units === "mm" ? 0.5 : inMm(1 / 32, "in");
  const atHand = machine.work.drills === undefined ? undefined : drillsOf(machine);
  const near = (wanted: number, least: number, most: number): number | undefined => {
    const listed = atHand?.filter((one) => one >= least && one <= most) ?? [];
    if (listed.length > 0) return listed.reduce((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a));
    return atHand === undefined ? Math.round(wanted / nice) * nice : undefined;
  };
  const first = near(diameter / 3, WEB * diameter, diameter / 2);
  const second =
    first !== undefined && diameter > 2.5 * first ? near(0.65 * diameter, 1.2 * first, 0.85 * diameter) : undefined;
  return [first, second, diameter].filter((one) => one !== undefined);
}
