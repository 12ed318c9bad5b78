import type { Drive, Step } from "../machine/machine.js";
import { formatFixed, trimmed } from "../quantity/format.js";
import { block } from "./block.js";
import { size } from "./style.js";
import { paragraph } from "./table.js";

/** One line on what the speeds were made from: motor, stages without a choice, slip, limits. */
export const driveNotes = block({}, ({ findings, width }) => {
  const { drive, limits } = findings.machine;
  if (drive === undefined || findings.drive === undefined) return [];
  const { slip } = findings.drive;
  const parts = [
    `Motor ${motorText(drive)}`,
    ...drive.stages.filter(({ steps }) => steps.length === 1).map(({ name, steps }) => `${name} ${stepText(steps[0])}`),
    slip === undefined
      ? "slip not measured: true speeds are a little lower"
      : `mean slip ${formatFixed(slip * 100, 1)} %`,
    ...(limits.chuckRpm === undefined
      ? ["chuck limit not given: see the marking on the chuck"]
      : [`never above ${formatFixed(limits.chuckRpm, 0)} rpm with the chuck`]),
    ...(limits.spindleRpm === undefined ? [] : [`nor ${formatFixed(limits.spindleRpm, 0)} rpm at the spindle`]),
  ];
  return paragraph(`${parts.join(" · ")}.`, width, { size: size.tiny, gap: 1 });
});

const motorText = ({ motor }: Drive): string =>
  motor.slowestRpm === motor.fastestRpm
    ? `${formatFixed(motor.fastestRpm, 0)} rpm`
    : `${formatFixed(motor.slowestRpm, 0)}–${formatFixed(motor.fastestRpm, 0)} rpm`;

function stepText(step: Step | undefined): string {
  if (step?.kind === "belt") return `${trimmed(step.driver, 2)} to ${trimmed(step.driven, 2)} mm`;
  if (step?.kind === "gears") return step.pairs.map(({ driver, driven }) => `${driver}:${driven}`).join(" × ");
  return "direct";
}
