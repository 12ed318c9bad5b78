import type { JobStep } from "../job/job.js";
import { diameterAt } from "../part/outline.js";
import { begun, type Making, type Step } from "./making.js";

type Hold = Extract<JobStep, { do: "hold" | "turn round" }>;

/** The work is held anew: what holds it, how it is set, and what that does to the zeros. */
export function heldAnew(making: Making<Hold>): Step {
  const { stage, step, bench, job, findings, show } = making;
  const { before, holding } = stage;
  const round = step.do === "turn round";
  const gripped = diameterAt(before.outside, holding.jaws, 1);
  const inChuck = `in the chuck${gripped > 0 ? ` by its ${show(gripped)}` : ""}`;
  const by = {
    chuck: inChuck,
    "chuck and centre": `${inChuck}, its free end on a greased centre`,
    "between centres": "between greased centres, driven by a carrier",
  }[step.held];
  const turned = gripped > 0 && (job.bar === undefined || gripped < job.bar.diameter - 1e-6);
  const out = findings.machine.units === "mm" ? "a few hundredths of a millimetre" : "a few thousandths of an inch";
  return {
    made: {
      ...begun(`${round ? "turn it round" : "hold it anew"}: ${show(step.out)} out, ${by}`, "no tool"),
      byHand: true,
      notes: [
        "Machine stopped and isolated; key out of the chuck before anything else.",
        ...(turned
          ? [
              step.held === "between centres"
                ? "Lay thin sheet brass or copper under the carrier's screw: it sits on a finished surface."
                : `Lay thin sheet brass or copper between jaws and the finished surface, and prove it on an indicator: a chuck is out by ${out} each time.`,
            ]
          : []),
        ...(step.held === "chuck and centre"
          ? [
              "Tailstock and barrel locked, the centre greased and just without shake; try it again when the work gets warm.",
            ]
          : []),
        ...(step.held === "between centres"
          ? [
              "Centres clean and in line: a light cut at both ends must measure the same. The one in the tailstock is greased, and just without shake; try it again when the work gets warm.",
            ]
          : []),
        ...(round && job.parts > 1 ? ["First all parts up to here; then all of them from here on, turned round."] : []),
        ...(round && job.spindleStop && step.held !== "between centres"
          ? ["The stop in the spindle is set anew for this end: all parts against it stand out alike."]
          : []),
        ...(round ? ["Lengths count from the new end's finished face from here on."] : []),
      ],
    },
    // The tool stands where it stood, and so does its diameter; the work does not.
    bench: {
      ...(bench.tool !== undefined && { tool: bench.tool }),
      ...(bench.across && { across: bench.across }),
    },
  };
}
