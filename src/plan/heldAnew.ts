import type { JobStep } from "../job/job.js";
import { endsOf } from "../part/workpiece.js";
import { say } from "../words/say.js";
import { gripOf } from "./grip.js";
import { begun, type Making, type Step } from "./making.js";
import { standingStill } from "./start.js";

type Hold = Extract<JobStep, { do: "hold" | "turn round" }>;

/** The work is held anew: what holds it, how it is set, and what that does to the zeros. */
export function heldAnew(making: Making<Hold>): Step {
  const { stage, step, bench, job, findings, show } = making;
  const { before, holding } = stage;
  const round = step.do === "turn round";
  const grip = gripOf(before, holding.jaws);
  const gripped = grip?.diameter ?? 0;
  const bridged = grip !== undefined && grip.from > holding.jaws + 1e-6 && step.held !== "between centres";
  const inChuck = gripped > 0 ? say("plan.in the chuck by", { size: show(gripped) }) : say("plan.in the chuck");
  const by = {
    chuck: inChuck,
    "chuck and centre": say("plan.in chuck and centre", { chuck: inChuck }),
    "between centres": say("plan.between greased centres"),
  }[step.held];
  const turned = gripped > 0 && (job.bar === undefined || gripped < job.bar.diameter - 1e-6);
  const out = say(`plan.few ${findings.machine.units}`);
  return {
    made: {
      ...begun(say(round ? "plan.turn round" : "plan.hold anew", { out: show(step.out), by }), say("plan.no tool")),
      byHand: true,
      notes: [
        say("plan.hold safely", { still: standingStill(findings.machine) }),
        ...(bridged ? [say("plan.jaws bridge", { from: show(grip.from - endsOf(before).from, 2) })] : []),
        ...(turned
          ? [step.held === "between centres" ? say("plan.carrier sheet") : say("plan.jaws sheet", { out })]
          : []),
        ...(step.held === "chuck and centre" ? [say("plan.centre greased")] : []),
        ...(step.held === "between centres" ? [say("plan.centres in line")] : []),
        ...(round && job.parts > 1 ? [say("plan.turn round batch")] : []),
        ...(round && job.spindleStop && step.held !== "between centres" ? [say("plan.turn round stop")] : []),
        ...(round ? [say("plan.turn round lengths")] : []),
      ],
    },
    // The tool stands where it stood, and so does its diameter; the work does not.
    bench: {
      ...(bench.tool !== undefined && { tool: bench.tool }),
      ...(bench.across && { across: bench.across }),
    },
  };
}
