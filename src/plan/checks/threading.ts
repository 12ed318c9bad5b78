import { between, diameterAt, least } from "../../part/outline.js";
import { boreOver, depthOfHole, endsOf, openOver, outsideOver, type Workpiece } from "../../part/workpiece.js";
import {
  depthOnDiameter,
  dieBlank,
  engagementOf,
  type Thread,
  tappingHole,
  threadNamed,
  USUAL_ENGAGEMENT,
} from "../../thread/thread.js";
import { BOTTOMING_LEAD, DIE_LEAD, THREAD_ENDS_SOURCE, threadEnds } from "../../thread/threadEnds.js";
import { type Check, type Checked, refused, type StepFinding, takeCare } from "../finding.js";
import type { Stage } from "../stage.js";
import type { Show } from "../words.js";

/** Shares of full thread between which a tap turned by hand is at ease. Common practice: tables aim at 65 to 80 %. */
const TIGHTEST = 0.85;
const LOOSEST = 0.5;

/** Less metal round a thread, mm, splits. Common practice. */
const LEAST_WALL = 0.3;

/** Rod and hole of a thread, and the room at its end. */
export const threadingCheck: Check = (checked) => {
  const { step } = checked.stage;
  if (step.do !== "tap" && step.do !== "die") return [];
  const thread = threadNamed(step.thread);
  if (thread === undefined) return [];
  return step.do === "tap" ? tapped(checked, step.depth, thread) : died(checked, step.depth, thread);
};

function tapped({ stage: { before }, show, job }: Checked, depth: number, thread: Thread): StepFinding[] {
  const { from, to } = endsOf(before);
  const hole = openOver(before, Math.max(0, from), Math.min(depth, to));
  const widest = boreOver(before, from, to);
  const smallest = tappingHole(thread, 1);
  const wants = `wants a hole from ${show(smallest, 3)} (full thread) to less than ${show(thread.major)}`;
  if (hole === 0)
    return [
      refused(
        "no-hole",
        widest === 0 ? `${wants}; none was made` : `taps ${show(depth)} deep, and the hole is not so deep`,
        "drill first, to the tapping size and deeper than the thread",
      ),
    ];
  // A countersink at the mouth does not matter: the narrowest place does.
  if (hole >= thread.major || hole < smallest - 1e-9)
    return [
      refused(
        "wrong-hole",
        `${wants}; the last one is ${show(hole)}`,
        `drill ${show(tappingHole(thread, USUAL_ENGAGEMENT), 2)} or near it: the threads sheet has the drill`,
      ),
    ];
  return [
    ...engaged(thread, hole, show),
    ...walled(before, depth, thread, show),
    ...floored({ stage: { before }, show, job }, depth, thread),
  ];
}

/** Too much thread breaks the tap, too little strips. */
function engaged(thread: Thread, hole: number, show: Show): StepFinding[] {
  const share = engagementOf(thread, hole);
  const what = `the hole of ${show(hole)} leaves ${Math.round(share * 100)} % of full thread`;
  const remedy = `drill ${show(tappingHole(thread, USUAL_ENGAGEMENT), 2)} or near it, for ${USUAL_ENGAGEMENT * 100} %`;
  // What the tables print is taken as it is.
  const published = thread.publishedDrill !== undefined && Math.abs(thread.publishedDrill - hole) < 1e-6;
  if (share > TIGHTEST && !published)
    return [takeCare("tight-hole", `${what}: a tap turned by hand may break in it`, remedy)];
  return share < LOOSEST - 1e-9 ? [takeCare("loose-hole", `${what}: it strips easily`, remedy)] : [];
}

/** What is left round the thread. */
function walled({ outside }: Workpiece, depth: number, thread: Thread, show: Show): StepFinding[] {
  const wall = (least(outside, 0, depth) - thread.major) / 2;
  return wall < LEAST_WALL - 1e-9
    ? [
        refused(
          "thin-wall",
          wall <= 0
            ? `the thread is as wide as the work there, ${show(least(outside, 0, depth))}`
            : `leaves ${show(wall, 2)} of wall round the thread: it splits`,
          "take a smaller thread, or tap it before the outside is turned down",
        ),
      ]
    : [];
}

function floored(
  { stage: { before }, show, job }: Pick<Checked, "show" | "job"> & { stage: Pick<Stage, "before"> },
  depth: number,
  thread: Thread,
): StepFinding[] {
  const { to } = endsOf(before);
  const smallest = tappingHole(thread, 1);
  const deep = depthOfHole(before, smallest);
  // Through the part, and with a bar on through what is parted off.
  if (deep >= to - 1e-6 || (job.bar === undefined && deep >= to)) return [];
  const below = deep - depth;
  const { blind } = threadEnds(thread.pitch);
  const what = `leaves ${show(Math.max(0, below), 2)} of hole below ${show(depth)} of thread`;
  if (below < BOTTOMING_LEAD * thread.pitch - 1e-6)
    return [
      refused(
        "tap-on-the-floor",
        `${what}: the tap's lead alone needs ${show(BOTTOMING_LEAD * thread.pitch, 2)}, and it breaks on the floor`,
        `drill ${show(depth + blind, 2)} deep at full diameter, or tap less deep`,
      ),
    ];
  return below < blind - 1e-6
    ? [
        takeCare(
          "short-below",
          `${what}; ${THREAD_ENDS_SOURCE} asks ${show(blind, 2)}`,
          `drill ${show(depth + blind, 2)} deep at full diameter, or finish with a bottoming tap and count its turns`,
        ),
      ]
    : [];
}

function died({ stage: { before }, show }: Checked, length: number, thread: Thread): StepFinding[] {
  const { from, to } = endsOf(before);
  // The chamfer that leads the die on is no fault of the rod.
  const lead = Math.min(length / 2, 2 * thread.pitch);
  const [thick, thin] = [outsideOver(before, from, length), least(before.outside, Math.max(0, from) + lead, length)];
  if (thick > thread.major + 1e-6 || thin < dieBlank(thread) - thread.pitch / 4)
    return [
      refused(
        "wrong-rod",
        `wants a rod of about ${show(dieBlank(thread), 2)} for ${show(length)}; the work is ${thick - thin < 1e-6 ? show(thick) : `${show(thin)} to ${show(thick)}`}`,
        `turn it to ${show(dieBlank(thread), 2)} first`,
      ),
    ];
  const bore = boreOver(before, from, length);
  if (bore > 0 && (coreOf(thread) - bore) / 2 < LEAST_WALL - 1e-9)
    return [
      refused(
        "thin-wall",
        `leaves ${show(Math.max(0, (coreOf(thread) - bore) / 2), 2)} of wall between the thread's root and the bore of ${show(bore)}: it collapses`,
        "cut the thread before the hole is made, or take a smaller hole",
      ),
    ];
  const shoulder = between(before.outside, length, to).find(
    ({ start, end }) => Math.max(start, end) > thread.major + 1e-6,
  );
  if (shoulder === undefined) return [];
  return beforeShoulder(before, length, shoulder.from, thread, show);
}

const coreOf = ({ major, system, pitch }: Thread): number => major - depthOnDiameter[system] * pitch;

function beforeShoulder(work: Workpiece, length: number, shoulder: number, thread: Thread, show: Show): StepFinding[] {
  const room = shoulder - length;
  const ends = threadEnds(thread.pitch);
  const grooved = diameterAt(work.outside, shoulder, -1) <= coreOf(thread) + 1e-6;
  const groove = grooved
    ? shoulder - (work.outside.find(({ to }) => Math.abs(to - shoulder) < 1e-6)?.from ?? shoulder)
    : 0;
  if (room + 1e-6 >= ends.runOut || groove + 1e-6 >= ends.undercut) return [];
  const what = `ends ${show(Math.max(0, room), 2)} before a shoulder`;
  const remedy = `end it ${show(ends.runOut, 2)} before the shoulder, or cut a groove ${show(ends.undercut, 2)} wide to ${show(thread.major - ends.floor, 2)} there, by ${THREAD_ENDS_SOURCE}`;
  // What the lead leaves unfinished is in the way whether a groove receives it or not.
  return room < DIE_LEAD * thread.pitch - 1e-6
    ? [
        refused(
          "die-on-the-shoulder",
          `${what}: the die's lead leaves about ${show(DIE_LEAD * thread.pitch, 2)} unfinished, so it runs against the shoulder`,
          remedy,
        ),
      ]
    : [takeCare("short-run-out", what, `${remedy}; or turn the die over for the last turns`)];
}
