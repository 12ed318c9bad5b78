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
import { say, translated } from "../../words/say.js";
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
  const wants = { least: show(smallest, 3), most: show(thread.major) };
  if (hole === 0)
    return [
      refused(
        "no-hole",
        widest === 0
          ? say("plan findings.tap, no hole", wants)
          : say("plan findings.tap deeper than hole", { depth: show(depth) }),
        say("plan findings.tap, no hole remedy"),
      ),
    ];
  // A countersink at the mouth does not matter: the narrowest place does.
  if (hole >= thread.major || hole < smallest - 1e-9)
    return [
      refused(
        "wrong-hole",
        say("plan findings.tap, wrong hole", { ...wants, hole: show(hole) }),
        say("plan findings.tap, wrong hole remedy", { hole: show(tappingHole(thread, USUAL_ENGAGEMENT), 2) }),
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
  const what = { hole: show(hole), share: Math.round(share * 100) };
  const remedy = say("plan findings.tap, hole for share", {
    hole: show(tappingHole(thread, USUAL_ENGAGEMENT), 2),
    share: USUAL_ENGAGEMENT * 100,
  });
  // What the tables print is taken as it is.
  const published = thread.publishedDrill !== undefined && Math.abs(thread.publishedDrill - hole) < 1e-6;
  if (share > TIGHTEST && !published) return [takeCare("tight-hole", say("plan findings.tight hole", what), remedy)];
  return share < LOOSEST - 1e-9 ? [takeCare("loose-hole", say("plan findings.loose hole", what), remedy)] : [];
}

/** What is left round the thread. */
function walled({ outside }: Workpiece, depth: number, thread: Thread, show: Show): StepFinding[] {
  const wall = (least(outside, 0, depth) - thread.major) / 2;
  return wall < LEAST_WALL - 1e-9
    ? [
        refused(
          "thin-wall",
          wall <= 0
            ? say("plan findings.thread as wide as work", { size: show(least(outside, 0, depth)) })
            : say("plan findings.thin wall round thread", { wall: show(wall, 2) }),
          say("plan findings.thin wall round thread remedy"),
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
  const what = { room: show(Math.max(0, below), 2), depth: show(depth) };
  if (below < BOTTOMING_LEAD * thread.pitch - 1e-6)
    return [
      refused(
        "tap-on-the-floor",
        say("plan findings.tap on the floor", { ...what, lead: show(BOTTOMING_LEAD * thread.pitch, 2) }),
        say("plan findings.tap on the floor remedy", { depth: show(depth + blind, 2) }),
      ),
    ];
  return below < blind - 1e-6
    ? [
        takeCare(
          "short-below",
          say("plan findings.tap, short below", {
            ...what,
            source: translated(THREAD_ENDS_SOURCE),
            asks: show(blind, 2),
          }),
          say("plan findings.tap, short below remedy", { depth: show(depth + blind, 2) }),
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
        say("plan findings.wrong rod", {
          rod: show(dieBlank(thread), 2),
          length: show(length),
          work:
            thick - thin < 1e-6 ? show(thick) : say("plan findings.thick", { least: show(thin), most: show(thick) }),
        }),
        say("plan findings.wrong rod remedy", { rod: show(dieBlank(thread), 2) }),
      ),
    ];
  const bore = boreOver(before, from, length);
  if (bore > 0 && (coreOf(thread) - bore) / 2 < LEAST_WALL - 1e-9)
    return [
      refused(
        "thin-wall",
        say("plan findings.thin wall under thread", {
          wall: show(Math.max(0, (coreOf(thread) - bore) / 2), 2),
          bore: show(bore),
        }),
        say("plan findings.thin wall under thread remedy"),
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
  const what = { room: show(Math.max(0, room), 2) };
  const remedy = say("plan findings.die before shoulder remedy", {
    before: show(ends.runOut, 2),
    width: show(ends.undercut, 2),
    floor: show(thread.major - ends.floor, 2),
    source: translated(THREAD_ENDS_SOURCE),
  });
  // What the lead leaves unfinished is in the way whether a groove receives it or not.
  return room < DIE_LEAD * thread.pitch - 1e-6
    ? [
        refused(
          "die-on-the-shoulder",
          say("plan findings.die on the shoulder", { ...what, lead: show(DIE_LEAD * thread.pitch, 2) }),
          remedy,
        ),
      ]
    : [
        takeCare(
          "short-run-out",
          say("plan findings.short run-out", what),
          say("plan findings.short run-out remedy", { remedy }),
        ),
      ];
}
