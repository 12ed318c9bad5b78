import type { JobStep } from "../job/job.js";
import { between } from "../part/outline.js";
import { endsOf, narrowsAt, openOver, outsideOver } from "../part/workpiece.js";
import {
  depthOnDiameter,
  dieBlank,
  engagementOf,
  tappingHole,
  threadNamed,
  turnsFor,
  USUAL_ENGAGEMENT,
} from "../thread/thread.js";
import { BOTTOMING_LEAD } from "../thread/threadEnds.js";
import { wetWords } from "./chips.js";
import { CLAMPED, depthBy, isDrill } from "./holes.js";
import { begun, type Making, type Step } from "./making.js";

/** A thread that begins no further in than this, mm, begins at the face: its edge is broken. */
const NEAR_THE_FACE = 1;

/** By hand alone: nothing here is for power. */
export function threaded(making: Making<Extract<JobStep, { do: "tap" | "die" }>>): Step {
  const { stage, step, wheels, findings, job, show } = making;
  const { machine } = findings;
  const tap = step.do === "tap";
  const thread = threadNamed(step.thread);
  const drilling = isDrill(machine);
  const { to } = endsOf(stage.before);
  // Past a wider bore a tap bites further in: its turns and the barrel count from there.
  const begins = tap && thread !== undefined ? Math.max(0, narrowsAt(stage.before, thread.major)) : 0;
  const deep = begins > NEAR_THE_FACE ? step.depth - begins : step.depth;
  const turns = thread === undefined ? undefined : turnsFor(deep, thread.pitch);
  const sizes = thread === undefined ? [] : tap ? holeWords() : rodWords();

  function holeWords(): string[] {
    if (thread === undefined) return [];
    const hole = openOver(stage.before, 0, Math.min(step.depth, to));
    const usual = tappingHole(thread, USUAL_ENGAGEMENT);
    const share =
      hole > 0 ? ` The hole of ${show(hole)} leaves ${Math.round(engagementOf(thread, hole) * 100)} %.` : "";
    return [
      `Hole for ${USUAL_ENGAGEMENT * 100} % of full depth: ${show(usual, 2)}.${share}${deep < step.depth ? "" : ` Break its edge to ${show(thread.major, 2)} first.`}`,
      `Go in with the taper tap, then the second; the tap's lead needs about ${show(BOTTOMING_LEAD * thread.pitch, 2)} below the thread even of a bottoming one.`,
    ];
  }

  function rodWords(): string[] {
    if (thread === undefined) return [];
    const core = thread.major - depthOnDiameter[thread.system] * thread.pitch;
    return [
      `Rod about ${show(dieBlank(thread), 2)}, this one is ${show(outsideOver(stage.before, 0, step.depth), 2)}; chamfer its end at 45° down to about ${show(core, 2)}, so that the die starts square.`,
      ...shoulderWords(),
    ];
  }

  function shoulderWords(): string[] {
    const shoulder = between(stage.before.outside, step.depth, to).find(
      ({ start }) => thread !== undefined && start > thread.major,
    );
    return shoulder === undefined
      ? []
      : [
          `A shoulder stands ${show(shoulder.from - step.depth, 2)} beyond: count the turns, and feel for it. For the last turns turn the die over, its side without lead first.`,
        ];
  }

  const halfTurns = Math.max(1, Math.round((turns ?? 0) / 2));
  return {
    made: {
      ...begun(
        `${tap ? "tap" : "thread by die,"} ${step.thread}, ${show(step.depth)}`,
        tap
          ? `tap, held square by ${drilling ? "the drill's chuck" : "the tailstock's chuck"}`
          : "die in a holder that slides on the tailstock barrel",
      ),
      byHand: true,
      ...depthBy(wheels.barrel, deep),
      notes: [
        ...(drilling ? [CLAMPED] : []),
        "Power off, plug pulled, belt off or slack: turn the spindle by hand at the chuck or pulley. Never by power.",
        ...sizes,
        ...(turns === undefined || thread === undefined
          ? []
          : [
              `${turns.toFixed(1)} turns for ${show(deep, 2)}${deep < step.depth ? `: the thread begins ${show(begins, 2)} behind the face, where the narrow hole does` : ""}. Press lightly behind it for the first two turns, then it draws itself in and the barrel only follows. Half a turn on, a quarter back to break the chip; after ${halfTurns} turns (${show(halfTurns * thread.pitch, 2)}) back out and clear it.${wetWords(job)}`,
            ]),
        `If it binds: do not force it. Turn back at once, clear the chips, try again lightly; if it still binds the ${tap ? "hole is too small or the tap has reached its floor" : "rod is too thick or the die stands askew"}.`,
      ],
    },
    bench: making.bench,
  };
}
