import type { JobStep } from "../job/job.js";
import { outsideOver } from "../part/workpiece.js";
import { say } from "../words/say.js";
import { kept } from "./bench.js";
import { begun, benchFor, endZero, fedStep, type Making, placeAlong, type Step, zeroOr } from "./making.js";

/** A knurl of a pitch stands about half of it above the diameter that it was rolled on, on diameter. Common practice. */
const knurlRise = (pitch: number): number => pitch / 2;

export function knurled(making: Making<Extract<JobStep, { do: "knurl" }>>): Step {
  const { stage, step, wheels, show } = making;
  const tool = step.pinched ? say("plan.pinching knurling tool") : say("plan.knurling tool");
  const bench = benchFor(making, tool);
  const diameter = outsideOver(stage.before, step.at, step.at + step.length);
  const { fed, chips } = fedStep(making, { operation: "knurling", diameter }, wheels.along);
  const along = zeroOr(bench.along, endZero(making));
  return {
    made: {
      ...begun(
        step.at > 0
          ? say("plan.knurl from to", { pitch: show(step.pitch), from: show(step.at), to: show(step.at + step.length) })
          : say("plan.knurl long", { pitch: show(step.pitch), length: show(step.length) }),
        tool,
      ),
      ...fed,
      zeros: along.touched,
      places: [
        ...(step.wheel !== undefined && step.wheel < step.length
          ? placeAlong(along.zero, "begin", step.at + step.wheel)
          : []),
        ...placeAlong(along.zero, "stop", step.at + step.length),
      ],
      notes: [
        step.wheel === undefined ? say("plan.knurl places, begin", { at: show(step.at) }) : say("plan.knurl places"),
        say("plan.knurl rise", { rise: show(knurlRise(step.pitch)) }),
        say("plan.knurl oil"),
        ...chips,
      ],
      stroke: step.length,
    },
    bench: kept(bench, undefined, along.zero),
  };
}
