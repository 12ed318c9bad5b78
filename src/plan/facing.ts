import { onDial } from "../findings/onDial.js";
import type { JobStep } from "../job/job.js";
import { endsOf, outsideOver } from "../part/workpiece.js";
import { roundIn } from "../quantity/length.js";
import { say } from "../words/say.js";
import { lastCut } from "./chips.js";
import { atMost, MEASURED } from "./doubt.js";
import { begun, benchFor, fedStep, type Making, type Step, zeroOr } from "./making.js";
import { passes } from "./passes.js";
import type { PlannedSize } from "./plannedStep.js";
import { depthOfFace } from "./shape.js";
import { knife } from "./toolPost.js";
import type { Zero } from "./zero.js";

/** Cuts of a face leave this much for the last, mm. Common practice. */
const lastFacingCut = roundIn(0.1, 0.004);

export function faced(making: Making<Extract<JobStep, { do: "face" }>>): Step {
  const { stage, step, wheels, job, show } = making;
  const { before, after } = stage;
  const start = endsOf(before).from;
  const to = endsOf(after).from;
  const depth = depthOfFace(step, before);
  const bench = benchFor(making, knife());
  const { facing, along, across } = wheels;
  const parted = facing !== along;
  // The slide that sets the depth begins at the raw end, whatever else was zeroed there before.
  const { zero, touched } = zeroOr(
    parted ? undefined : bench.along,
    facing && { wheel: facing, of: "raw end", at: start },
  );
  const diameter = step.diameter ?? outsideOver(before, start, to);
  const { fed, chips } = fedStep(making, { operation: "facing", diameter, fed: "finishing" }, across);
  const cuts = { from: start - (zero?.at ?? start), to: to - (zero?.at ?? start), cut: step.cut };
  const made = passes({ ...cuts, finish: lastCut(lastFacingCut[job.units], job), spring: false }, facing);
  // With the slide of the depth locked where it stands, the other's zero is this face.
  const lengths: Zero | undefined = parted && along ? { wheel: along, of: "end", at: to } : zero;
  const held = parted ? bench.along : undefined;
  return {
    made: {
      ...begun(
        step.length === undefined
          ? say("plan.face off", { depth: show(depth) })
          : say("plan.face to length", { length: show(step.length) }),
        knife(),
      ),
      ...fed,
      zeros: touched,
      zerosAfter: parted && lengths && held === undefined ? [lengths] : [],
      ...(facing && { depthWheel: facing }),
      ...(zero && { depthZero: zero }),
      passes: made.map((pass) => ({ ...pass, size: (zero?.at ?? start) + pass.travel })),
      sizes: step.length === undefined ? [] : [facedSize(step.length, making, made)],
      notes: [
        parted && along
          ? held
            ? say("plan.face with slide back", { wheel: along.handwheel.name, facing: facing?.handwheel.name ?? "" })
            : say("plan.face with slide close", { wheel: along.handwheel.name, facing: facing?.handwheel.name ?? "" })
          : say("plan.face and lock"),
        say("plan.face counts"),
        ...(step.length === undefined ? [] : [leftToFace(making)]),
        ...chips,
      ],
      stroke: diameter / 2,
    },
    bench: { ...bench, ...(lengths && { along: lengths }) },
  };
}

/** By the measured length the last cut is set, whatever the dial of the slide counts in. */
function leftToFace({ wheels: { facing }, findings: { machine } }: Making): string {
  const reckoned = facing && onDial(facing, "length", machine.units);
  return reckoned === undefined ? say("plan.face measured") : say("plan.face measured, reckoned", reckoned);
}

/** A whole length is measured before the last cut, as a diameter is. */
function facedSize(
  aim: number,
  { wheels: { facing }, findings }: Making,
  list: ReturnType<typeof passes>,
): PlannedSize {
  const last = list.findLast(({ kind }) => kind === "finish");
  const over = facing && last && atMost(facing, last.depth);
  return {
    ...{ what: "length", aim },
    ...(over !== undefined && { doubt: MEASURED[findings.machine.units] + over }),
  };
}
