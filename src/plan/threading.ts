import { powerOffFirst } from "../findings/powerOff.js";
import type { JobStep } from "../job/job.js";
import { between } from "../part/outline.js";
import { endsOf, openOver, outsideOver } from "../part/workpiece.js";
import { threadOnPaper } from "../thread/onPaper.js";
import {
  depthOnDiameter,
  dieBlank,
  engagementOf,
  tappingHole,
  threadNamed,
  turnsFor,
  turnsWritten,
  USUAL_ENGAGEMENT,
} from "../thread/thread.js";
import { BOTTOMING_LEAD } from "../thread/threadEnds.js";
import { say } from "../words/say.js";
import { wetWords } from "./chips.js";
import { drillWords } from "./drillWords.js";
import { clamped, depthBy } from "./holes.js";
import { begun, type Making, type Step } from "./making.js";
import { isOnTheTable } from "./onTheTable.js";
import { threadBegins } from "./shape.js";

/** A thread that begins no further in than this, mm, begins at the face: its edge is broken. */
const NEAR_THE_FACE = 1;

/** By hand alone: nothing here is for power. */
export function threaded(making: Making<Extract<JobStep, { do: "tap" | "die" }>>): Step {
  const { stage, step, wheels, findings, job, show } = making;
  const { machine } = findings;
  const tap = step.do === "tap";
  const thread = threadNamed(step.thread);
  const drilling = isOnTheTable(job, machine);
  const { to } = endsOf(stage.before);
  // Past a wider bore a tap bites further in: its turns and the barrel count from there.
  const begins = tap ? threadBegins(stage.before, step.thread) : 0;
  const deep = begins > NEAR_THE_FACE ? step.depth - begins : step.depth;
  // A tap's full thread ends behind its lead: by so much it goes further in.
  const lead = tap && thread !== undefined ? BOTTOMING_LEAD * thread.pitch : 0;
  const turns = thread === undefined ? undefined : turnsFor(deep + lead, thread.pitch);
  const sizes = thread === undefined ? [] : tap ? holeWords() : rodWords();

  function holeWords(): string[] {
    if (thread === undefined) return [];
    const hole = openOver(stage.before, 0, Math.min(step.depth, to));
    const usual = tappingHole(thread, USUAL_ENGAGEMENT);
    return [
      [
        say("plan.tap hole", { share: USUAL_ENGAGEMENT * 100, hole: show(usual, 2) }),
        ...(hole > 0
          ? [
              say("plan.tap hole gives", {
                hole: drillWords(hole, { job, machine }, show),
                share: Math.round(engagementOf(thread, hole) * 100),
              }),
            ]
          : []),
        ...(deep < step.depth ? [] : [say("plan.tap edge", { size: show(thread.major, 2) })]),
      ].join(" "),
      say("plan.tap order", { lead: show(lead, 2), mark: show(step.depth + lead, 2) }),
    ];
  }

  function rodWords(): string[] {
    if (thread === undefined) return [];
    const core = thread.major - depthOnDiameter[thread.system] * thread.pitch;
    return [
      say("plan.die rod", {
        rod: show(dieBlank(thread), 2),
        now: show(outsideOver(stage.before, 0, step.depth), 2),
        core: show(core, 2),
      }),
      ...shoulderWords(),
    ];
  }

  function shoulderWords(): string[] {
    const shoulder = between(stage.before.outside, step.depth, to).find(
      ({ start }) => thread !== undefined && start > thread.major,
    );
    return shoulder === undefined ? [] : [say("plan.die shoulder", { room: show(shoulder.from - step.depth, 2) })];
  }

  const count = turnsWritten(turns ?? 0);
  const length = show(deep, 2);
  const counted = tap
    ? say("plan.tap turns", { turns: count, length, lead: show(lead, 2) })
    : say("plan.thread turns", { turns: count, length });
  const turned = deep < step.depth ? say("plan.thread turns behind", { counted, begins: show(begins, 2) }) : counted;
  const halfTurns = Math.max(1, Math.round((turns ?? 0) / 2));
  return {
    made: {
      ...begun(
        say(tap ? "plan.tap" : "plan.die", { thread: threadOnPaper(step.thread), depth: show(step.depth) }),
        tap ? say(drilling ? "plan.tap in the drill" : "plan.tap in the tailstock") : say("plan.die holder"),
      ),
      byHand: true,
      ...depthBy(wheels.barrel, deep + lead, findings.machine.units),
      // What is made is the full thread, without its tap's lead.
      sizes: depthBy(wheels.barrel, deep, findings.machine.units).sizes,
      notes: [
        ...(drilling ? [clamped()] : []),
        say("plan.thread by hand", { off: powerOffFirst(machine) }),
        ...sizes,
        ...(turns === undefined || thread === undefined
          ? []
          : [
              say(drilling ? "plan.thread how drill" : "plan.thread how", {
                begun: turned,
                halfTurns,
                half: show(halfTurns * thread.pitch, 2),
                wet: wetWords(job),
              }),
            ]),
        say(tap ? "plan.tap binds" : "plan.die binds"),
      ],
    },
    bench: making.bench,
  };
}
