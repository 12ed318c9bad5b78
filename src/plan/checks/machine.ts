import { rpmFor } from "../../cutting/rates.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { wheelFor } from "../../findings/roles.js";
import { tenthOfDivision } from "../../findings/settings.js";
import { noFeedWords } from "../../findings/travelWords.js";
import { largestDrill } from "../../findings/uses.js";
import type { Job, JobStep } from "../../job/job.js";
import { limitRpm } from "../../machine/limits.js";
import { byHandWords } from "../chips.js";
import { refused, type StepFinding, takeCare } from "../finding.js";
import { firmnessOf } from "../firmness.js";
import { MOST_PASSES } from "../passes.js";
import type { PlannedStep } from "../plannedStep.js";
import type { Show } from "../words.js";

/** What of one step is beyond the machine, or beyond what its file tells. */
export function machineCheck(planned: PlannedStep, job: Job, findings: Findings, show: Show): StepFinding[] {
  return [
    ...wheelsReach(planned, findings, show),
    ...holdsTolerance(planned, job, show),
    ...bears(planned, findings, show),
    ...(planned.byHand ? [] : speedCheck(planned, job, findings, show)),
  ];
}

function wheelsReach(
  { stage, depthWheel, passes, places }: PlannedStep,
  { handwheels }: Findings,
  show: Show,
): StepFinding[] {
  const { step } = stage;
  const ends = new Map<HandwheelFinding, { readonly back: number; readonly on: number }>();
  const reach = (wheel: HandwheelFinding, travel: number) => {
    const { back, on } = ends.get(wheel) ?? { back: 0, on: 0 };
    ends.set(wheel, { back: Math.min(back, travel), on: Math.max(on, travel) });
  };
  for (const { travel } of passes) if (depthWheel) reach(depthWheel, travel);
  for (const { wheel, reading } of places) reach(wheel, reading.travel);
  const barrel = wheelFor("barrel", handwheels);
  const found = [...ends].flatMap(([wheel, { back, on }]) => {
    const { handwheel } = wheel;
    const travel = on - back;
    if (handwheel.travel === undefined || travel <= handwheel.travel + 1e-6) return [];
    const what = `needs ${show(travel, 2)} of the ${handwheel.name}, which travels ${show(handwheel.travel, 2)}`;
    // A tailstock is pushed up after its barrel, a table raised to its quill; a slide has nothing behind it.
    return wheel === barrel
      ? [
          takeCare(
            "beyond-travel",
            what,
            "draw it back half way, bring the tailstock or the table up by as much, and go on counting from that reading",
          ),
        ]
      : [refused("beyond-travel", what, "make it shorter or shallower, or do it in two settings")];
  });
  if ("cut" in step && depthWheel === undefined)
    found.push(
      takeCare(
        "no-wheel",
        `no handwheel with a feed sets this depth: dial readings cannot be told${handwheels.map((wheel) => (wheel.miscounted ? ` (${wheel.handwheel.name}: ${noFeedWords(wheel)})` : "")).join("")}`,
        "measure that wheel's feed, or say which one it is with moves: across",
      ),
    );
  if ("cut" in step && depthWheel !== undefined && passes.length === 0 && stage.shaping.removed > 1e-4)
    found.push(
      refused(
        "too-many-cuts",
        `would take more than ${MOST_PASSES} cuts of ${show(step.cut)}`,
        "raise cut:, or begin from stock nearer to size",
      ),
    );
  return found;
}

/** Whether the slide can hold what is asked: ± on either side of the size. */
function holdsTolerance({ sizes, depthWheel, passes }: PlannedStep, job: Job, show: Show): StepFinding[] {
  return sizes.flatMap(({ what, least, most, doubt }) => {
    if (what !== "diameter" || least === undefined || most === undefined) return [];
    const measured = passes.some(({ kind }) => kind === "rough");
    // What is fed in to a reading at once is as good as the touch, the feed and the dial together.
    if (!measured && doubt !== undefined && 2 * doubt > most - least + 1e-9)
      return [
        takeCare(
          "finer-than-the-slide",
          `a tolerance of ${show(most - least)} from end to end is finer than the dial alone gives, about ${show(2 * doubt, 3)}`,
          "go in by halves of what is left, and measure between",
        ),
      ];
    if (depthWheel === undefined) return [];
    const holds = 4 * Math.hypot(tenthOfDivision(depthWheel), 2 * (depthWheel.feed?.fit?.residualDeviation ?? 0));
    return holds > most - least + 1e-9
      ? [
          takeCare(
            "finer-than-the-slide",
            `a tolerance of ${show(most - least)} from end to end is finer than this slide holds, about ${show(holds, 3)}`,
            byHandWords(job),
          ),
        ]
      : [];
  });
}

function bears({ stage: { step } }: PlannedStep, { machine }: Findings, show: Show): StepFinding[] {
  if ((step.do === "drill" || step.do === "ream") && step.diameter > largestDrill(machine.limits) + 1e-9)
    return [
      refused(
        "beyond-the-limit",
        `${show(step.diameter)} is larger than the machine drives: limits: drill: ${show(machine.limits.largestDrill ?? 0)}`,
        "do not run it; bore it, or take it to another machine",
      ),
    ];
  if (step.do === "knurl" && !step.pinched && (machine.work.firmness ?? "light") === "light")
    return [
      refused(
        "side-load",
        "a plain knurling tool presses harder than a light machine's slides and bearings bear",
        "use one that pinches the work between two wheels and say pinched: true, or work: { firmness: firm } where it was tried",
      ),
    ];
  if (step.do === "taper" && step.by === "headstock" && !machine.angleScales?.some(({ part }) => part === "headstock"))
    return [
      refused(
        "no-swivel",
        "swings the headstock, and the machine's file knows of none that swivels",
        "take by: top slide; or give it a scale under angleScales: with part: headstock, where it does",
      ),
    ];
  if ((step.do === "part" || step.do === "groove") && step.blade > widestBlade(machine.work) + 1e-9)
    return [
      takeCare(
        "wide-blade",
        `a blade of ${show(step.blade)} is wide for this machine (about ${show(widestBlade(machine.work))} at most, common practice): it chatters and digs in`,
        "take a narrower one, and cut a wide groove in several plunges",
      ),
    ];
  return [];
}

/** A blade wider than this, mm, wants more force than such a machine has. Common practice: three times the deepest cut. */
const widestBlade = (work: Parameters<typeof firmnessOf>[0]): number => 3 * firmnessOf(work).deepest;

function speedCheck(
  { speed, aboveAim, stage }: PlannedStep,
  job: Job,
  { drive, machine }: Findings,
  show: Show,
): StepFinding[] {
  const { step } = stage;
  if (drive === undefined)
    return [
      takeCare("no-drive", "the machine's file has no drive: every speed is yours to choose", "begin at the slowest"),
    ];
  // Where nothing is cut the checks of the metal say so, and no speed is missed.
  if (speed === undefined && stage.shaping.removed <= 1e-4 && step.do !== "knurl") return [];
  if (speed === undefined)
    return [
      takeCare(
        "no-speed",
        `no cutting speed is known for ${job.material} with ${job.tool}`,
        `give one under work: { cuttingSpeeds: … } for ${step.do}`,
      ),
    ];
  if (aboveAim)
    return [
      takeCare(
        "fast",
        `even the slowest position, ${Math.round(speed.rpm ?? 0)} rpm, is faster than such a machine is given for ${show(speed.diameter)}, though not faster than is published`,
        "sharp tool, light cuts, plenty to wet it; stop if it chatters or the tool's edge turns blue",
      ),
    ];
  // That no speed is known stands once, above all steps.
  if (speed.speed !== undefined || speed.verdict === "no speed is known") return [];
  const slowest = Math.round(Math.min(...drive.speeds.map(({ slowestRpm }) => slowestRpm)));
  const most = Math.floor(rpmFor(speed.band.most, speed.diameter));
  return speed.heldBy === "hand"
    ? [
        refused(
          "too-fine",
          `at every position the hand would feed ${job.material} too finely, and fine chips burn`,
          "do not run it",
        ),
      ]
    : [
        refused(
          "too-fast",
          speed.verdict === "slowest is too fast"
            ? `even the slowest position, ${slowest} rpm, is too fast: ${speed.band.rpm === undefined ? show(speed.diameter) : step.do === "knurl" ? "knurling" : "it"} wants no more than ${most} rpm`
            : `every position that is slow enough for ${show(speed.diameter)} (${most} rpm) may run beyond the ${speed.heldBy}'s limit of ${Math.floor(limitRpm(machine.limits))} rpm`,
          tooFastRemedies[step.do] ?? "do not run it: a smaller diameter, a slower drive, or another machine",
        ),
      ];
}

const tooFastRemedies: Partial<Record<JobStep["do"], string>> = {
  part: "do not run it: saw it off with the machine stopped, and face it after { do: turn round }",
  knurl: "turn the spindle by hand, or give a row of your own where it was tried: work: { cuttingSpeeds: … }",
  chamfer: "break the edge with a file, work stopped, or take a smaller diameter",
};
