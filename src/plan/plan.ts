import type { SpeedChoice } from "../cutting/finding.js";
import type { Findings } from "../findings/findings.js";
import { speedDoubt } from "../findings/speedDoubt.js";
import type { Job, JobStep } from "../job/job.js";
import { say } from "../words/say.js";
import { withBeltBack } from "./beltBack.js";
import { beltChanges } from "./beltChanges.js";
import { type Compromise, compromises, positionOf } from "./belts.js";
import { type Bench, EMPTY_BENCH, wheelsOf } from "./bench.js";
import { machineCheck } from "./checks/machine.js";
import { stepFindings } from "./checks/steps.js";
import { isDrawnOut } from "./drawnOut.js";
import { chamfered } from "./edges.js";
import { endsOfWork } from "./endsOfWork.js";
import { faced } from "./facing.js";
import { type Finding, refused, takeCare } from "./finding.js";
import { heldAnew } from "./heldAnew.js";
import { centred, holed } from "./holes.js";
import { holesInTurn, inHoles } from "./inHoles.js";
import { withKeptBelts } from "./keptBelts.js";
import { knurled } from "./knurling.js";
import type { Making, Step } from "./making.js";
import { type Minutes, minutesOf } from "./minutes.js";
import { withNextPart } from "./nextPart.js";
import { isOnTheTable } from "./onTheTable.js";
import { workingOrder } from "./order.js";
import { grooved, parted } from "./parting.js";
import type { PlannedStep } from "./plannedStep.js";
import { withSharedPositions } from "./sharedPositions.js";
import { type Stage, stagesOf } from "./stage.js";
import { tapered } from "./tapers.js";
import { threaded } from "./threading.js";
import { reduced } from "./turning.js";
import { showIn } from "./words.js";

export type { PlannedStep } from "./plannedStep.js";

/** A job carried to one machine. */
export type Plan = {
  readonly job: Job;
  /** In the order of work. */
  readonly steps: readonly PlannedStep[];
  /** What stands against it, refusals first. */
  readonly findings: readonly Finding[];
  /** What is said of the machine as a whole. */
  readonly remarks: readonly string[];
  /** True where steps changed places to save belt changes. */
  readonly reordered: boolean;
  /** For one part. */
  readonly beltChanges: number;
  readonly compromises: readonly Compromise[];
  readonly minutes: Readonly<Record<Job["batch"], Minutes>>;
};

/** Pure: the same job and findings give the same plan. */
export function planOf(job: Job, findings: Findings): Plan {
  const asGiven = withSharedPositions(plannedSteps(job, findings, stagesOf(job)), job, findings);
  const positions = new Map(asGiven.map((step) => [step.stage.index, positionOf(step)]));
  const order = workingOrder(job, findings, (index) => positions.get(index));
  const reordered = order.some((index, place) => index !== place);
  const ordered = reordered
    ? withSharedPositions(plannedSteps(job, findings, stagesOf(job, order)), job, findings)
    : asGiven;
  const steps = withBeltBack(withKeptBelts(ordered, job), job, findings.machine);
  const show = showIn(findings.machine, job);
  const found: Finding[] = [
    ...batchFindings(job),
    ...stepFindings(
      steps.map(({ stage }) => stage),
      job,
      findings,
    ),
    ...onceEach(
      steps.flatMap((step) =>
        machineCheck(step, job, findings, show).map((one) => ({ ...one, step: step.stage.index })),
      ),
    ),
  ];
  const time = (way: Job["batch"]) => minutesOf(endsOfWork(steps), job, way, positionOf);
  return {
    job,
    steps,
    findings: [...found.filter(({ kind }) => kind === "refused"), ...found.filter(({ kind }) => kind === "take care")],
    remarks: [
      ...speedDoubt(findings),
      ...(findings.machine.limits.chuckRpm === undefined ? [say("plan.chuck limit unknown")] : []),
    ],
    reordered,
    beltChanges: beltChanges(steps.map(positionOf)),
    compromises: compromises(steps, job, findings.machine),
    minutes: { operation: time("operation"), part: time("part") },
  };
}

/** Whether the parts can be worked in the way that the job wants. */
function batchFindings(job: Job): Finding[] {
  const { batch, spindleStop, steps } = job;
  const does = (wanted: JobStep["do"]) => steps.some(({ do: verb }) => verb === wanted);
  if (!isDrawnOut(job) || !does("part")) return [];
  return [
    ...(batch === "operation"
      ? [
          refused(
            "no-blanks",
            say("plan findings.no blanks"),
            say("plan findings.no blanks remedy"),
            "bar: length:, batch: part",
          ),
        ]
      : []),
    ...(spindleStop && !does("turn round")
      ? [
          takeCare(
            "no-stop-behind",
            say("plan findings.no stop behind"),
            say("plan findings.no stop behind remedy"),
            "spindleStop:, bar: length:",
          ),
        ]
      : []),
  ];
}

/** What lies in the machine's file and not in a step is said at the first step that meets it. */
const onceEach = (found: readonly Finding[]): Finding[] =>
  found.filter(
    ({ code, what }, place) =>
      !ofTheFile.includes(code) || found.findIndex((one) => one.code === code && one.what === what) === place,
  );
const ofTheFile: readonly string[] = ["no-drive", "no-wheel"];

export const isRefused = ({ findings }: Pick<Plan, "findings">): boolean =>
  findings.some(({ kind }) => kind === "refused");

/** Whether a step is not to be done as it stands: nothing of it is ticked off, measured or promised. */
export const isRefusedStep = ({ findings }: Pick<Plan, "findings">, { stage, speed, byHand }: PlannedStep): boolean =>
  findings.some(({ kind, step }) => kind === "refused" && step === stage.index) || (!byHand && isTooFast(speed));

/** Whether no position is slow enough for a cut. */
export const isTooFast = (speed: SpeedChoice | undefined): boolean =>
  speed !== undefined && speed.speed === undefined && speed.verdict !== "no speed is known";

function plannedSteps(job: Job, findings: Findings, stages: readonly Stage[]): PlannedStep[] {
  const wheels = wheelsOf(findings.handwheels);
  const show = showIn(findings.machine, job);
  let bench: Bench = EMPTY_BENCH;
  const planned = stages.map((stage, place) => {
    const { made, bench: then } = step({ stage, step: stage.step, bench, wheels, job, findings, show });
    bench = then;
    const inTurn = holesInTurn(stage, isOnTheTable(job, findings.machine));
    return {
      ...made,
      ...{ title: inHoles(made.title, stage), notes: [...inTurn, ...made.notes] },
      ...{ stage, number: place + 1 },
    };
  });
  return withNextPart(planned, job);
}

type Of<Verb extends JobStep["do"]> = Making<Extract<JobStep, { do: Verb }>>;

function step(making: Making): Step {
  switch (making.step.do) {
    case "face":
      return faced(making as Of<"face">);
    case "turn":
    case "shoulder":
    case "bore":
      return reduced(making as Parameters<typeof reduced>[0]);
    case "groove":
      return grooved(making as Of<"groove">);
    case "chamfer":
      return chamfered(making as Of<"chamfer">);
    case "taper":
      return tapered(making as Of<"taper">);
    case "knurl":
      return knurled(making as Of<"knurl">);
    case "part":
      return parted(making as Of<"part">);
    case "centre drill":
      return centred(making as Of<"centre drill">);
    case "drill":
    case "ream":
      return holed(making as Parameters<typeof holed>[0]);
    case "tap":
    case "die":
      return threaded(making as Parameters<typeof threaded>[0]);
    case "hold":
    case "turn round":
      return heldAnew(making as Parameters<typeof heldAnew>[0]);
  }
}
