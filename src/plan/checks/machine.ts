import { materialName } from "../../cutting/materials.js";
import { rpmFor } from "../../cutting/rates.js";
import { toolName } from "../../cutting/tools.js";
import { dialToRead } from "../../findings/dialToRead.js";
import { beyondTheDrillLimit } from "../../findings/drills.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { wheelFor } from "../../findings/roles.js";
import { tenthOfDivision } from "../../findings/settings.js";
import { noFeedWords } from "../../findings/travelWords.js";
import type { Job, JobStep } from "../../job/job.js";
import { limitRpm } from "../../machine/limits.js";
import type { Units } from "../../machine/machine.js";
import { smallestOf } from "../../quantity/extremes.js";
import { say } from "../../words/say.js";
import { byHandWords, mayScrape } from "../chips.js";
import { knownAtMost, measuredAtBest, TOUCHED } from "../doubt.js";
import { refused, type StepFinding, takeCare } from "../finding.js";
import { firmnessOf } from "../firmness.js";
import { MOST_PASSES } from "../passes.js";
import type { PlannedStep } from "../plannedStep.js";
import { marginOf } from "../reached.js";
import type { Show } from "../words.js";

/** What of one step is beyond the machine, or beyond what its file tells. */
export function machineCheck(planned: PlannedStep, job: Job, findings: Findings, show: Show): StepFinding[] {
  return [
    ...wheelsReach(planned, findings, show),
    ...holdsTolerance(planned, job, findings, show),
    ...bears(planned, job, findings, show),
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
    const what = say("plan findings.beyond travel", {
      travel: show(travel, 2),
      wheel: handwheel.name,
      has: show(handwheel.travel, 2),
    });
    // A tailstock is pushed up after its barrel, a table raised to its quill; a slide has nothing behind it.
    return wheel === barrel
      ? [takeCare("beyond-travel", what, say("plan findings.beyond travel remedy, barrel"))]
      : [refused("beyond-travel", what, say("plan findings.beyond travel remedy"))];
  });
  if ("cut" in step && depthWheel === undefined)
    found.push(
      takeCare(
        "no-wheel",
        [
          say("plan findings.no wheel"),
          ...handwheels.flatMap((wheel) =>
            wheel.miscounted ? [`(${wheel.handwheel.name}: ${noFeedWords(wheel)})`] : [],
          ),
        ].join(" "),
        // A face is cut into along the work, all else across it; a wheel that tells no feed for its readings is known.
        say(
          handwheels.some(({ miscounted }) => miscounted)
            ? "plan findings.no wheel remedy, readings"
            : step.do === "face"
              ? "plan findings.no wheel remedy, face"
              : "plan findings.no wheel remedy",
        ),
        handwheels.some(({ miscounted }) => miscounted)
          ? undefined
          : step.do === "face"
            ? "moves: along"
            : "moves: across",
      ),
    );
  if ("cut" in step && depthWheel !== undefined && passes.length === 0 && stage.shaping.removed > 1e-4)
    found.push(
      refused(
        "too-many-cuts",
        say("plan findings.too many cuts", { most: MOST_PASSES, cut: show(step.cut) }),
        say("plan findings.too many cuts remedy"),
        "cut:",
      ),
    );
  return found;
}

/** Whether the machine holds what is asked: a size's ± against its tolerance. */
function holdsTolerance(planned: PlannedStep, job: Job, { machine: { units } }: Findings, show: Show): StepFinding[] {
  const { sizes, depthWheel, passes } = planned;
  return sizes.flatMap((size) => {
    const margin = marginOf(size);
    if (size.what !== "diameter" || margin === undefined) return [];
    const { doubt } = size;
    const measured = passes.some(({ kind }) => kind === "rough");
    // What is fed in to a reading at once is as good as the touch, the feed and the dial together.
    if (!measured && doubt !== undefined && doubt > margin + 1e-9)
      return [
        takeCare(
          "finer-than-the-slide",
          say("plan findings.finer than the dial", { tolerance: show(2 * margin, 4), gives: show(2 * doubt, 3) }),
          say("plan findings.finer than the dial remedy"),
        ),
      ];
    const gone = measured || doubt !== undefined ? undefined : goneToAtOnce(planned);
    const atOnce = gone && knownAtMost(gone.wheel, gone.travel);
    const known = atOnce === undefined ? 0 : 2 * (TOUCHED + atOnce);
    if (known > margin + 1e-9)
      return [
        takeCare(
          "finer-than-the-slide",
          say("plan findings.finer than at once", { doubt: show(known, 3), margin: show(margin, 4) }),
          say("plan findings.finer than the dial remedy"),
        ),
      ];
    if (depthWheel === undefined) return [];
    // Wear and wave are none of it: over the little that is left after a measured cut a worn slide goes as an even one.
    const holds = 4 * Math.hypot(tenthOfDivision(depthWheel), depthWheel.feed?.measured?.position ?? 0);
    if (holds > 2 * margin + 1e-9)
      return [
        takeCare(
          "finer-than-the-slide",
          say("plan findings.finer than the slide", { tolerance: show(2 * margin, 4), holds: show(holds, 3) }),
          byHandWords(job),
        ),
      ];
    return measured ? corrected(doubt, margin, depthWheel, units, job, show) : [];
  });
}

/** The movement that brings a tool to its diameter: of a cut its last, of a blade its plunge. A reamer makes its own. */
function goneToAtOnce({ stage, depthWheel, passes, places }: PlannedStep) {
  const last = passes.at(-1);
  if (depthWheel && last) return { wheel: depthWheel, travel: last.travel };
  const plunge = stage.step.do === "groove" ? places.find(({ what }) => what === "depth") : undefined;
  return plunge && { wheel: plunge.wheel, travel: plunge.reading.travel };
}

/** A size that measuring once before the last cut does not bring within its tolerance for certain. Where nothing can be
 *  promised, by what is in doubt of it however little is left to go. */
function corrected(
  doubt: number | undefined,
  margin: number,
  wheel: HandwheelFinding,
  units: Units,
  job: Job,
  show: Show,
): StepFinding[] {
  const off = doubt ?? measuredAtBest(wheel, units);
  if (off <= margin + 1e-9) return [];
  const sides = { doubt: show(off, 3), margin: show(margin, 4) };
  return [
    takeCare(
      "finer-than-the-reading",
      doubt === undefined ? atBestWords(wheel, sides) : say("plan findings.finer than the reading", sides),
      // Whose thin chips burn is not scraped to size.
      mayScrape(job) ? say("plan findings.measure and correct", { doubt: sides.doubt }) : byHandWords(job),
    ),
  ];
}

/** Why no more is known than that: nobody measured the feed, or there is no dial to read. */
function atBestWords(wheel: HandwheelFinding, sides: { readonly doubt: string; readonly margin: string }): string {
  const { dial, feed } = wheel;
  if (dial === undefined && dialToRead(wheel)) return say("plan findings.finer than the reading, old dial", sides);
  if (dial !== undefined) return say("plan findings.finer than the reading, feed unknown", sides);
  return feed?.measured?.uneven?.most === undefined
    ? say("plan findings.finer than the reading, no dial", sides)
    : say("plan findings.finer than the reading, worn and no dial", sides);
}

function bears({ stage: { step } }: PlannedStep, { units }: Job, { machine }: Findings, show: Show): StepFinding[] {
  if ((step.do === "drill" || step.do === "ream") && beyondTheDrillLimit(step.diameter, machine.limits))
    return [
      refused(
        "beyond-the-limit",
        say("plan findings.beyond the drill limit", {
          diameter: show(step.diameter),
          limit: show(machine.limits.largestDrill ?? 0),
        }),
        say("plan findings.beyond the drill limit remedy"),
        "limits: drill:",
      ),
    ];
  if (step.do === "knurl" && !step.pinched && (machine.work.firmness ?? "light") === "light")
    return [
      refused(
        "side-load",
        say("plan findings.knurl presses"),
        say("plan findings.knurl presses remedy"),
        "pinched: true, work: { firmness: firm }",
      ),
    ];
  if (step.do === "taper" && step.by === "headstock" && !machine.angleScales?.some(({ part }) => part === "headstock"))
    return [
      refused(
        "no-swivel",
        say("plan findings.headstock does not swivel"),
        say("plan findings.headstock does not swivel remedy"),
        "by: top slide, angleScales: with part: headstock",
      ),
    ];
  if ((step.do === "part" || step.do === "groove") && step.blade > widestBlade(machine.work, units) + 1e-9)
    return [
      takeCare(
        "wide-blade",
        say("plan findings.wide blade", { blade: show(step.blade), most: show(widestBlade(machine.work, units)) }),
        say("plan findings.wide blade remedy"),
      ),
    ];
  return [];
}

/** A blade wider than this, mm, wants more force than such a machine has. Common practice: three times the deepest cut. */
const widestBlade = (...of: Parameters<typeof firmnessOf>): number => 3 * firmnessOf(...of).deepest;

function speedCheck(
  { speed, aboveAim, stage }: PlannedStep,
  job: Job,
  { drive, machine }: Findings,
  show: Show,
): StepFinding[] {
  const { step } = stage;
  if (drive === undefined)
    return [takeCare("no-drive", say("plan findings.no drive"), say("plan findings.no drive remedy"))];
  // Where nothing is cut the checks of the metal say so, and no speed is missed.
  if (speed === undefined && stage.shaping.removed <= 1e-4 && step.do !== "knurl") return [];
  if (speed === undefined)
    return [
      takeCare(
        "no-speed",
        say("plan findings.no speed", { material: materialName(job.material), tool: toolName(job.tool) }),
        say("plan findings.no speed remedy"),
        `work: { cuttingSpeeds: … }, ${step.do}`,
      ),
    ];
  if (aboveAim)
    return [
      takeCare(
        "fast",
        say("plan findings.fast", { rpm: Math.round(speed.rpm ?? 0), diameter: show(speed.diameter) }),
        say("plan findings.fast remedy"),
      ),
    ];
  // That no speed is known stands once, above all steps.
  if (speed.speed !== undefined || speed.verdict === "no speed is known") return [];
  const slowest = Math.round(smallestOf(drive.speeds.map(({ slowestRpm }) => slowestRpm)));
  const most = Math.floor(rpmFor(speed.band.most, speed.diameter));
  return speed.heldBy === "hand"
    ? [
        refused(
          "too-fine",
          say("plan findings.too fine", { material: materialName(job.material) }),
          say("plan findings.do not run"),
        ),
      ]
    : [
        refused(
          "too-fast",
          speed.verdict === "slowest is too fast"
            ? speed.band.rpm === undefined
              ? say("plan findings.too fast", { slowest, diameter: show(speed.diameter), most })
              : say(step.do === "knurl" ? "plan findings.too fast to knurl" : "plan findings.too fast for it", {
                  slowest,
                  most,
                })
            : say("plan findings.beyond limit", {
                diameter: show(speed.diameter),
                most,
                held: say(speed.heldBy === "chuck" ? "plan findings.chuck limit" : "plan findings.spindle limit"),
                limit: Math.floor(limitRpm(machine.limits)),
              }),
          ...tooFastRemedy(step.do),
        ),
      ];
}

function tooFastRemedy(step: JobStep["do"]): [remedy: string, inFile?: string] {
  switch (step) {
    case "part":
      return [say("plan findings.too fast to part remedy"), "{ do: turn round, out: … }"];
    case "knurl":
      return [say("plan findings.too fast to knurl remedy"), "work: { cuttingSpeeds: … }"];
    case "chamfer":
      return [say("plan findings.too fast to chamfer remedy")];
    default:
      return [say("plan findings.too fast remedy")];
  }
}
