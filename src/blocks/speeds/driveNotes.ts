import type { SpeedFinding, StageSlip } from "../../drive/finding.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import { veeWords } from "../../findings/veeWords.js";
import type { Drive, Step, Units } from "../../machine/machine.js";
import { formatFixed, trimmed, trimmedSize } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { block } from "../shared/block.js";
import { size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";

/** One line on what the speeds were made from: motor, stages without a choice, slip, limits. */
export const driveNotes = block({}, ({ findings, width }) => {
  const { drive, limits } = findings.machine;
  if (drive === undefined || findings.drive === undefined) return [];
  const { slip } = findings.drive;
  const parts = [
    motorText(drive),
    ...drive.stages
      .filter(({ crossed }) => crossed)
      .map(({ name }) => `${name} is crossed: its shaft turns the other way`),
    ...drive.stages
      .filter(({ steps }) => steps.length === 1)
      .map(({ name, steps }) => `${name} ${stepText(steps[0], findings.machine.units)}`),
    ...veeWords(findings.machine),
    slip === undefined
      ? findings.drive.astray
        ? "slip not known"
        : `slip not measured: true speeds are a little lower${riseText(findings.drive.speeds)}`
      : slipText(slip, findings.drive.stageSlips ?? []),
    ...(limits.chuckRpm === undefined
      ? ["chuck limit not given: see the marking on the chuck"]
      : [`never above ${formatFixed(limits.chuckRpm, 0)} rpm with the chuck`]),
    ...(limits.spindleRpm === undefined ? [] : [`nor ${formatFixed(limits.spindleRpm, 0)} rpm at the spindle`]),
  ];
  return [
    ...speedDoubt(findings).flatMap((words) =>
      paragraph(words, width, { size: size.small, weight: "bold", ink: "accent", gap: 1 }),
    ),
    ...paragraph(`${parts.join(" · ")}.`, width, { size: size.tiny, gap: 1 }),
  ];
});

/** By how much more than by ratio the limits are held against. */
function riseText(speeds: readonly SpeedFinding[]): string {
  const own = speeds.filter(({ doubtful }) => doubtful === undefined);
  const rise = Math.max(0, ...own.map(({ highestRpm, byRatioRpm }) => highestRpm / byRatioRpm - 1));
  if (rise < 1e-9) return "";
  return `, or with the motor unloaded up to ${formatFixed(100 * rise, 1)} % higher, which the limits are tested against`;
}

function motorText({ motor }: Drive): string {
  const rpm = rpmWords({ rpm: motor.fastestRpm, slowestRpm: motor.slowestRpm });
  const by = { motor: "Motor", treadle: "Treadle: wheel", hand: "By hand: wheel" }[motor.by ?? "motor"];
  return `${by} ${rpm} rpm${motor.hertz === undefined ? "" : ` at ${motor.hertz} Hz`}`;
}

/** What pulleys measured by a rule leave open. Common practice. */
const FASTER = 0.02;

/** Belt by belt where the readings tell them apart. */
function slipText(mean: number, stages: readonly StageSlip[]): string {
  const percent = (slip: number) => `${formatFixed(slip * 100, 1)} %`;
  if (mean < -FASTER)
    return `${percent(-mean)} faster than the motor's plate and the pulleys give: it runs unloaded, or a pulley is not what the file says`;
  if (stages.length < 2) return `mean slip ${percent(mean)}`;
  return `slip: ${stages.map(({ stages, slip }) => `${stages.join(" and ")} ${percent(slip)}`).join(", ")}`;
}

function stepText(step: Step | undefined, units: Units): string {
  if (step?.kind === "belt") return `${trimmed(fromMm(step.driver, units), 3)} to ${trimmedSize(step.driven, units)}`;
  if (step?.kind === "gears")
    return step.pairs
      .map(({ driver, driven, idlers }) => `${driver}:${driven}${idlers ? " over an idler" : ""}`)
      .join(" × ");
  return "direct";
}
