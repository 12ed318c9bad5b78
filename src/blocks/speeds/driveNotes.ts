import type { SpeedFinding, StageSlip } from "../../drive/finding.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import { veeWords } from "../../findings/veeWords.js";
import type { Drive, Step, Units } from "../../machine/machine.js";
import { formatFixed, trimmed, trimmedSize } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { size } from "../shared/style.js";

/** One line on what the speeds were made from: motor, stages without a choice, slip, limits. */
export const driveNotes = block({}, ({ findings, width }) => {
  const { drive, limits } = findings.machine;
  if (drive === undefined || findings.drive === undefined) return [];
  const { slip } = findings.drive;
  const parts = [
    motorText(drive),
    ...drive.stages.filter(({ crossed }) => crossed).map(({ name }) => say("drive notes.crossed", { stage: name })),
    ...drive.stages
      .filter(({ steps }) => steps.length === 1)
      .map(({ name, steps }) => `${name} ${stepText(steps[0], findings.machine.units)}`),
    ...veeWords(findings.machine),
    slip === undefined
      ? findings.drive.astray
        ? say("drive notes.slip not known")
        : `${say("drive notes.slip not measured")}${riseText(findings.drive.speeds)}`
      : slipText(slip, findings.drive.stageSlips ?? []),
    ...(limits.chuckRpm === undefined
      ? [say("drive notes.no chuck limit")]
      : [say("drive notes.chuck limit", { rpm: formatFixed(limits.chuckRpm, 0) })]),
    ...(limits.spindleRpm === undefined
      ? []
      : [say("drive notes.spindle limit", { rpm: formatFixed(limits.spindleRpm, 0) })]),
  ];
  return [
    ...speedDoubt(findings).flatMap((words) => paragraph(words, width, { size: size.text, weight: "bold", gap: 1 })),
    ...paragraph(`${parts.join(" · ")}.`, width, { size: size.source, gap: 1 }),
  ];
});

/** By how much more than by ratio the limits are held against. */
function riseText(speeds: readonly SpeedFinding[]): string {
  const own = speeds.filter(({ doubtful }) => doubtful === undefined);
  const rise = Math.max(0, ...own.map(({ highestRpm, byRatioRpm }) => highestRpm / byRatioRpm - 1));
  if (rise < 1e-9) return "";
  return say("drive notes.unloaded", { percent: formatFixed(100 * rise, 1) });
}

function motorText({ motor }: Drive): string {
  const rpm = rpmWords({ rpm: motor.fastestRpm, slowestRpm: motor.slowestRpm });
  const by = motor.by ?? "motor";
  const speed = say(`drive notes.by ${by}`, { rpm });
  return motor.hertz === undefined ? speed : say("drive notes.at mains", { speed, hertz: motor.hertz });
}

/** What pulleys measured by a rule leave open. Common practice. */
const FASTER = 0.02;

/** Belt by belt where the readings tell them apart. */
function slipText(mean: number, stages: readonly StageSlip[]): string {
  const percent = (slip: number) => `${formatFixed(slip * 100, 1)} %`;
  if (mean < -FASTER) return say("drive notes.faster", { percent: percent(-mean) });
  if (stages.length < 2) return say("drive notes.mean slip", { percent: percent(mean) });
  return say("drive notes.slips", {
    slips: stages.map(({ stages, slip }) => `${stages.join(" + ")} ${percent(slip)}`).join(", "),
  });
}

function stepText(step: Step | undefined, units: Units): string {
  if (step?.kind === "belt")
    return say("drive notes.pulleys", {
      driver: trimmed(fromMm(step.driver, units), 3),
      driven: trimmedSize(step.driven, units),
    });
  if (step?.kind === "gears")
    return step.pairs
      .map(({ driver, driven, idlers }) => `${driver}:${driven}${idlers ? say("drive notes.idler") : ""}`)
      .join(" × ");
  return say("drive notes.direct");
}
