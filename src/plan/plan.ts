import { burns } from "../findings/chipFire.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { type Role, wheelFor } from "../findings/roles.js";
import { settingToMove } from "../findings/settings.js";
import { speedDoubt } from "../findings/speedDoubt.js";
import { BY_HAND, byHandOnly, usesOf } from "../findings/uses.js";
import type { Job, JobStep, Reduce } from "../job/job.js";
import type { Machine } from "../machine/machine.js";
import { toDegrees } from "../quantity/angle.js";
import { halfAngle } from "../taper/taper.js";
import { dieBlank, tappingHole, threadNamed, turnsFor, USUAL_ENGAGEMENT } from "../thread/thread.js";
import { chipNotes, lastCut, mayScrape, wetWords } from "./chips.js";
import { type Fed, type FedCut, speedAndFeed } from "./feed.js";
import { barObjections, orderObjections, stepObjections } from "./objections.js";
import { passes } from "./passes.js";
import type { PlannedStep } from "./plannedStep.js";
import { type Show, showIn } from "./words.js";

export type { PlannedStep } from "./plannedStep.js";

/** A job carried to one machine. `objections`: what it cannot do, or must be minded, before the first chip. */
export type Plan = {
  readonly job: Job;
  readonly steps: readonly PlannedStep[];
  readonly objections: readonly string[];
};

/** Pure: the same job and findings give the same plan. */
export function planOf(job: Job, findings: Findings): Plan {
  const steps = job.steps.map((step, index) => planned(step, job, findings, job.steps.slice(0, index)));
  const found = steps.flatMap((step, index) =>
    stepObjections(step, job, findings).map((words) => `Step ${index + 1}, ${step.title}: ${words}`),
  );
  return {
    job,
    steps,
    objections: [...speedDoubt(findings), ...barObjections(job, findings), ...orderObjections(job, findings), ...found],
  };
}

/** Cuts of a face leave this much for the last, mm. Common practice. */
const lastFacingCut = 0.1;
/** A drilled hole further than this from the tapping size was not meant for it, mm. */
const nearHole = 0.35;

const CLAMPED = "Clamp the part, on packing that the drill may go into; never hold it in the hand.";

const isDrill = (machine: Machine): boolean => usesOf(machine)[0] === "drilling";

type WheelOf = (role: Role) => HandwheelFinding | undefined;
type CutOf = (cut: FedCut, wheel: HandwheelFinding | undefined) => Fed;
/** What the fineness of its chips asks of a step. */
type NotesOf = (fed: Fed) => string[];

function planned(step: JobStep, job: Job, findings: Findings, before: readonly JobStep[]): PlannedStep {
  const wheel: WheelOf = (role) => wheelFor(role, findings.handwheels);
  const cut: CutOf = (wanted, by) => speedAndFeed(wanted, by, job, findings);
  const { units } = findings.machine;
  const chips: NotesOf = ({ published }) => chipNotes(job, step.do, published, units);
  const show = showIn(findings.machine, job);
  switch (step.do) {
    case "face": {
      // The finer slide divides the depth better.
      const along = wheel("swivelled") ?? wheel("along");
      const fed = cut({ operation: "facing", diameter: step.diameter, fed: "finishing" }, wheel("across"));
      return {
        ...begun(step, `face off ${show(step.depth)}`, "facing or knife tool", along),
        ...fed,
        passes: passes(step.depth, step.cut, lastCut(lastFacingCut, job), along, false),
        notes: [
          "Lock the slide that sets the depth. Feed from the outside in; the dial's zero for lengths is this face.",
          ...chips(fed),
        ],
      };
    }
    case "turn":
    case "shoulder":
    case "bore":
      return reduced(step, job, wheel, cut, chips, show);
    case "taper":
      return tapered(step, job, wheel, cut, chips, show);
    case "part": {
      const along = wheel("along");
      const fed = cut({ operation: "parting", diameter: step.diameter, fed: "parting" }, wheel("across"));
      const beyond = step.length + step.blade;
      return {
        ...begun(step, `part off ${show(step.length)} long`, `parting blade, ${show(step.blade)} wide`, undefined),
        ...fed,
        passes: [],
        ...(along && lengthBy(along, beyond)),
        notes: [
          `Touch the face with the blade's chuck-side edge, then move on by the length and the blade's width, ${show(beyond)}.`,
          `Close to the chuck, slide locked, steady hand. Never catch the part by hand.${wetWords(job)}`,
          ...chips(fed),
        ],
      };
    }
    case "drill":
    case "ream":
      return holed(step, job, findings.machine, wheel, cut, chips, show);
    case "tap":
    case "die":
      return threaded(step, before, findings.machine, wheel, show);
  }
}

const begun = (step: JobStep, title: string, tool: string, depthWheel: HandwheelFinding | undefined) => ({
  step,
  title,
  tool,
  byHand: false,
  ...(depthWheel && { depthWheel }),
});

function lengthBy(wheel: HandwheelFinding, length: number): Pick<PlannedStep, "lengthWheel" | "lengthSetting"> {
  const setting = settingToMove(wheel, length);
  return { lengthWheel: wheel, ...(setting && { lengthSetting: setting }) };
}

function reduced(
  step: { readonly do: "turn" | "shoulder" | "bore" } & Reduce,
  job: Job,
  wheel: WheelOf,
  cut: CutOf,
  chips: NotesOf,
  show: Show,
): PlannedStep {
  const bore = step.do === "bore";
  const across = wheel("across");
  const along = wheel("along");
  const operation = bore ? "boring" : "turning";
  const fed = cut({ operation, diameter: bore ? step.to : step.from, fed: "finishing" }, along);
  const sense = bore ? "outward, towards you" : "inward";
  const tool = bore ? "boring tool" : step.do === "shoulder" ? "knife tool, square to the axis" : "turning tool";
  const halved = across?.handwheel.reads === "travel" ? ", halved, since this dial reads travel" : "";
  return {
    ...begun(
      step,
      `${step.do} ${show(step.from)} to ${show(step.to)}, ${show(step.length)} ${bore ? "deep" : "long"}`,
      tool,
      across,
    ),
    ...fed,
    passes: passes(Math.abs(step.from - step.to) / 2, step.cut, lastCut(step.finish, job), across, mayScrape(job)),
    ...(along && lengthBy(along, step.length)),
    notes: [
      `Touch the ${show(step.from)} diameter lightly, coming ${sense}, and set the dial to 0 there. Come to every reading ${sense}; if you overshoot, go back half a turn${lostMotionWords(across)} and come again.`,
      ...(bore ? ["Outward the dial runs backwards: count turns and divisions against its numbers."] : []),
      `Before the finish cut: stop, measure. What is left on diameter = ${bore ? "wanted − measured" : "measured − wanted"}; turn the dial on by that${halved}.`,
      ...chips(fed),
    ],
    wanted: { diameter: step.to, ...(step.tolerance !== undefined && { tolerance: step.tolerance }) },
  };
}

/** Half a turn is more than any sound slide's lost motion; where it was measured to be more, that is said. */
function lostMotionWords(wheel: HandwheelFinding | undefined): string {
  const turn = wheel?.feed?.lostMotion?.turn;
  if (turn === undefined || turn <= 0) return " (the lost motion was not measured)";
  return ` (the lost motion is ${turn.toFixed(2)} of a turn${turn > 0.4 ? ": too much, go back a whole one" : ""})`;
}

function tapered(
  step: Extract<JobStep, { do: "taper" }>,
  job: Job,
  wheel: WheelOf,
  cut: CutOf,
  chips: NotesOf,
  show: Show,
): PlannedStep {
  const across = wheel("across");
  const swivelled = wheel("swivelled");
  const angle = halfAngle(step.large, step.small, step.length);
  const slope = step.length / Math.cos(angle);
  const fed = cut({ operation: "turning", diameter: step.large, fed: "finishing" }, swivelled);
  return {
    ...begun(
      step,
      `taper ${show(step.large)} to ${show(step.small)} in ${show(step.length)}`,
      "turning tool, exactly at centre height",
      across,
    ),
    ...fed,
    passes: passes((step.large - step.small) / 2, step.cut, lastCut(step.finish, job), across, mayScrape(job)),
    ...(swivelled && lengthBy(swivelled, slope)),
    notes: [
      `Swing the top slide by ${toDegrees(angle).toFixed(3)}°, half the included angle; the tapers sheet shows which way. Feed with the top slide alone, carriage locked.`,
      "Depths count at the small end. Prove the angle after the second cut: measure both ends.",
      ...chips(fed),
    ],
    wanted: { diameter: step.small },
  };
}

function holed(
  step: Extract<JobStep, { do: "drill" | "ream" }>,
  job: Job,
  machine: Machine,
  wheel: WheelOf,
  cut: CutOf,
  chips: NotesOf,
  show: Show,
): PlannedStep {
  const barrel = wheel("barrel");
  const drill = step.do === "drill";
  const byHand = byHandOnly(drill ? "drilling" : "reaming", machine);
  const drilling = isDrill(machine);
  const { diameter } = step;
  const fed = cut(
    drill
      ? { operation: "drilling", diameter, fed: "drilling" }
      : // A reamer has no feed of its own in print; where fine chips burn the hand must give the least that does not.
        { operation: "reaming", diameter, ...(burns(job.material) && { fed: "finishing" as const }) },
    barrel,
  );
  return {
    ...begun(
      step,
      `${step.do} ${show(step.diameter)}, ${show(step.depth)} deep`,
      drill ? "twist drill" : "reamer",
      undefined,
    ),
    ...(byHand ? { byHand } : fed),
    passes: [],
    ...(barrel && lengthBy(barrel, step.depth)),
    notes: [
      ...(drilling ? [CLAMPED] : []),
      ...(byHand ? [`${BY_HAND}: the file says neither drive: reverses: nor clutch:.`] : []),
      ...(drill
        ? [
            "Start with a centre drill. Draw the drill out to clear it each time it has gone in by its own diameter.",
            "The depth counts from where the full diameter enters; the point goes deeper by about a third of the diameter.",
          ]
        : [`Ream in one steady pass, and never turn it backwards.${wetWords(job)}`]),
      ...chips(fed),
    ],
  };
}

function threaded(
  step: Extract<JobStep, { do: "tap" | "die" }>,
  before: readonly JobStep[],
  machine: Machine,
  wheel: WheelOf,
  show: Show,
): PlannedStep {
  const tap = step.do === "tap";
  const thread = threadNamed(step.thread);
  const barrel = wheel("barrel");
  const hole = thread && tappingHole(thread, USUAL_ENGAGEMENT);
  const drilled = before.some(
    (other) => other.do === "drill" && hole !== undefined && Math.abs(other.diameter - hole) < nearHole,
  );
  const sizes =
    thread === undefined || hole === undefined
      ? []
      : tap
        ? [
            `Hole for ${USUAL_ENGAGEMENT * 100} % of full depth: ${show(hole)}${drilled ? "" : "; no step before drills about that"}.`,
          ]
        : [`Rod for the die: ${show(dieBlank(thread))}. Chamfer its end first.`];
  const turns =
    thread === undefined
      ? []
      : [
          `${turnsFor(step.depth, thread.pitch).toFixed(1)} turns for ${show(step.depth)}. Half a turn on, a quarter back.`,
        ];
  return {
    ...begun(
      step,
      `${tap ? "tap" : "thread by die,"} ${step.thread}, ${show(step.depth)}`,
      tap
        ? `tap, held square by ${isDrill(machine) ? "the drill's chuck" : "the tailstock"}`
        : "die in a holder on the tailstock",
      undefined,
    ),
    byHand: true,
    passes: [],
    ...(barrel && { lengthWheel: barrel }),
    notes: [
      ...(isDrill(machine) ? [CLAMPED] : []),
      ...sizes,
      ...turns,
      "Power off, plug pulled: turn the spindle by hand.",
    ],
  };
}
