import type { JobStep } from "../job/job.js";
import { openOver, outsideOver } from "../part/workpiece.js";
import { say } from "../words/say.js";
import { kept } from "./bench.js";
import { wetWords } from "./chips.js";
import { begun, benchFor, endZero, fedStep, type Making, placeAlong, type Step, zeroOr } from "./making.js";
import { dialSize, lengthSize, wantedWords } from "./reached.js";
import { readingAt } from "./zero.js";

/** How far a blade goes on into a hole, mm on the radius. */
const OVERRUN = 0.5;

export function parted(making: Making<Extract<JobStep, { do: "part" }>>): Step {
  const { stage, step, wheels, job, show, findings } = making;
  const { before } = stage;
  const [from, to] = [step.length, step.length + step.blade];
  const tool = say("plan.blade", { width: show(step.blade) });
  const bench = benchFor(making, tool);
  const diameter = outsideOver(before, from, to);
  const across = zeroOr(bench.across, wheels.across && { wheel: wheels.across, of: "diameter", at: diameter });
  const along = zeroOr(bench.along, endZero(making));
  const { fed, chips } = fedStep(making, { operation: "parting", diameter, fed: "parting" }, wheels.across);
  const hole = openOver(before, from, to);
  // A little into the hole, or a skin is left.
  const inTo = Math.max(0, hole - 2 * OVERRUN);
  const through = across.zero && readingAt(across.zero.wheel, (across.zero.at - inTo) / 2);
  return {
    made: {
      ...begun(say("plan.part off", { length: show(step.length) }), tool),
      ...fed,
      zeros: [...across.touched, ...along.touched],
      places: [
        ...placeAlong(along.zero, "plunge", to),
        ...(across.zero && through
          ? [{ what: "depth" as const, wheel: across.zero.wheel, at: inTo, reading: through }]
          : []),
      ],
      sizes: [lengthSize(step.length, along.zero, to, findings.machine.units)],
      notes: [say("plan.part note", { diameter: show(diameter), wet: wetWords(job) }), ...chips],
      stroke: (diameter - hole) / 2,
    },
    bench: kept(bench, across.zero, along.zero),
  };
}

export function grooved(making: Making<Extract<JobStep, { do: "groove" }>>): Step {
  const { stage, step, wheels, job, show, findings } = making;
  const tool = say("plan.blade", { width: show(step.blade) });
  const bench = benchFor(making, tool);
  const begins = outsideOver(stage.before, step.at, step.at + step.width);
  const across = zeroOr(bench.across, wheels.across && { wheel: wheels.across, of: "diameter", at: begins });
  const along = zeroOr(bench.along, endZero(making));
  const { fed, chips } = fedStep(making, { operation: "parting", diameter: begins, fed: "parting" }, wheels.across);
  const plunges = Math.max(1, Math.ceil(step.width / step.blade - 1e-9));
  const stepBy = plunges === 1 ? 0 : (step.width - step.blade) / (plunges - 1);
  const bottom = across.zero && readingAt(across.zero.wheel, (across.zero.at - step.to.aim) / 2);
  return {
    made: {
      ...begun(
        say("plan.groove", {
          width: show(step.width),
          size: wantedWords(step.to, show),
          from: show(step.at),
          to: show(step.at + step.width),
        }),
        tool,
      ),
      ...fed,
      zeros: [...across.touched, ...along.touched],
      places: [
        ...Array.from({ length: plunges }, (_, index) =>
          placeAlong(along.zero, "plunge", step.at + step.blade + index * stepBy),
        ).flat(),
        ...(across.zero && bottom
          ? [{ what: "depth" as const, wheel: across.zero.wheel, at: step.to.aim, reading: bottom }]
          : []),
      ],
      sizes: [
        dialSize(
          step.to,
          across.zero?.wheel,
          across.zero && (across.zero.at - step.to.aim) / 2,
          findings.machine.units,
        ),
      ],
      notes: [say("plan.groove note", { wet: wetWords(job) }), ...chips],
      stroke: ((begins - step.to.aim) / 2) * plunges,
    },
    bench: kept(bench, across.zero, along.zero),
  };
}
