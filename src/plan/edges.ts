import { largestDrill } from "../findings/drills.js";
import type { JobStep } from "../job/job.js";
import { diameterAt } from "../part/outline.js";
import { boreOver, outsideOver } from "../part/workpiece.js";
import { roundIn } from "../quantity/length.js";
import { say } from "../words/say.js";
import { clamped } from "./holes.js";
import { begun, fedStep, type Making, placeAlong, type Step } from "./making.js";
import { isOnTheTable } from "./onTheTable.js";
import type { Zero } from "./zero.js";

/** A larger countersink than this, mm, is not at hand, and grabs. Common practice. */
const LARGEST_COUNTERSINK = 13;

/** A broken edge wider than this, mm, is cut in several goes: the whole slant is in the metal at once. Common practice. */
const WIDE_EDGE = roundIn(0.5, 0.02);

export function chamfered(making: Making<Extract<JobStep, { do: "chamfer" }>>): Step {
  const { stage, step, wheels, show } = making;
  const { from, to } = stage.shaping;
  const inside = step.side === "bore";
  const diameter = inside ? boreOver(stage.after, from, to) : outsideOver(stage.before, from, to);
  const clampedDown = isOnTheTable(making.job, making.findings.machine);
  const bore =
    inside && (clampedDown || diameter <= Math.min(LARGEST_COUNTERSINK, largestDrill(making.findings.machine.limits)));
  const tool = bore ? say("plan.countersink") : inside ? say("plan.boring tool at 45°") : say("plan.45° tool");
  const wheel = bore ? wheels.barrel : wheels.along;
  // So small an edge is cut like any other turning; the whole width of a forming tool is not in it.
  const { fed, chips } = fedStep(making, { operation: bore ? "countersinking" : "turning", diameter }, wheel);
  const sense = to > step.at + 1e-9 ? 1 : -1;
  const zero: Zero | undefined = wheel && { wheel, of: "corner", at: step.at };
  // From where a countersink touches: the edge may be broken a little already.
  const deep = inside ? Math.max(0, (diameter - diameterAt(stage.before.bore, step.at, 1)) / 2) : step.size;
  const goes = Math.max(1, Math.ceil(deep / WIDE_EDGE[making.job.units] - 1e-9));
  const edge = step.at === 0 ? say("plan.edge at the end") : say("plan.edge at", { at: show(step.at) });
  return {
    made: {
      ...begun(
        inside
          ? say("plan.chamfer in bore", { size: show(step.size), edge })
          : say("plan.chamfer", { size: show(step.size), edge }),
        tool,
      ),
      ...fed,
      zeros: zero ? [zero] : [],
      places: Array.from({ length: goes }, (_, go) =>
        placeAlong(zero, "stop", step.at + (sense * deep * (go + 1)) / goes),
      ).flat(),
      notes: [
        ...(clampedDown ? [clamped()] : []),
        bore
          ? say("plan.countersink note", { mouth: show(diameter, 2) })
          : sense > 0
            ? say("plan.chamfer towards chuck")
            : say("plan.chamfer from chuck"),
        ...chips,
      ],
      stroke: step.size,
    },
    // A countersink in the tailstock leaves what stands in the post alone.
    bench: bore ? making.bench : { tool },
  };
}
