import type { SpeedFinding, StageSlip } from "../drive/finding.js";
import { stepRatio } from "../drive/ratio.js";
import type { Findings } from "../findings/findings.js";
import { speedDoubt } from "../findings/speedDoubt.js";
import { veeWords } from "../findings/veeWords.js";
import type { Drive, Step, Units } from "../machine/machine.js";
import { motorPath, stepPath } from "../machine/stagePath.js";
import { formatFixed, formatSize, sizeFigure } from "../quantity/format.js";
import type { Input, Source, Subject } from "./working.js";

/** Spindle speed of every position. */
export function explainSpeed({ machine, drive }: Findings): Subject[] {
  const { drive: parts } = machine;
  if (drive === undefined || parts === undefined) return [];
  return drive.speeds.map((speed) => ({
    name: speed.position.name,
    explain: () => ({
      title: `Spindle speed at ${speed.position.name}`,
      formula: {
        measured: "mean of the tachometer readings at this position",
        slip: "motor speed × ratio of every stage × (1 − slip) of every belt in use",
        ratio: "motor speed × ratio of every stage",
        unknown: "motor speed × ratio of every stage, which every reading contradicts",
      }[speed.from],
      inputs: [
        ...(speed.from === "measured" ? readingsAt(speed, parts) : []),
        motorSpeed(parts),
        ...ratios(speed, parts, machine.units),
        { name: "by ratio alone", value: speed.byRatioRpm, unit: "rpm", source: computed("motor speed × ratios") },
        ...(speed.from === "slip" ? slipsInUse(speed, parts, drive.stageSlips ?? []) : []),
      ],
      result: { name: "spindle speed", value: speed.rpm, unit: "rpm" },
      notes: [
        ...(parts.motor.slowestRpm < parts.motor.fastestRpm
          ? [`the motor is variable: at its slowest this position turns ${formatFixed(speed.slowestRpm, 0)} rpm`]
          : []),
        ...veeWords(machine),
        ...(speed.from === "ratio" ? ["no speed was measured: a belt that slips turns the spindle slower"] : []),
        ...(speed.doubtful
          ? [
              `the reading of ${speed.doubtful.map((rpm) => formatFixed(rpm, 0)).join(", ")} rpm here is doubtful and not used`,
            ]
          : []),
        ...(speed.highestRpm > speed.rpm * (1 + 1e-9)
          ? [`limits are tested against ${formatFixed(speed.highestRpm, 0)} rpm, the highest that may be true`]
          : []),
        ...(speed.from === "unknown" ? ["do not take it for the speed: measure first"] : []),
        ...(speed.from === "slip" ? ["the slip was measured at other positions; this one may slip differently"] : []),
      ],
    }),
  }));
}

/** Slip of every position that was measured, and their mean. */
export function explainSlip({ machine, drive }: Findings): Subject[] {
  const { drive: parts } = machine;
  if (drive === undefined || parts === undefined) return [];
  const measured = drive.speeds.filter(({ slip }) => slip !== undefined);
  if (measured.length === 0) {
    const missing = drive.doubtful
      ? speedDoubt({ drive, machine }).join(" ")
      : "no spindle speed was measured: give drive.tachometer a position and its speed";
    return [{ name: "mean", explain: () => ({ missing }) }];
  }
  const each = measured.map(
    (speed): Subject => ({
      name: speed.position.name,
      explain: () => ({
        title: `Slip at ${speed.position.name}`,
        formula: "slip = 1 − measured speed ÷ speed by ratio",
        inputs: [
          ...readingsAt(speed, parts),
          { name: "speed by ratio", value: speed.byRatioRpm, unit: "rpm", source: computed("motor speed × ratios") },
        ],
        result: { name: "slip", value: 100 * (speed.slip ?? 0), unit: "%" },
      }),
    }),
  );
  return [
    ...each,
    {
      name: "mean",
      explain: () => ({
        title: "Mean slip of the drive",
        formula: "mean of the slips at the measured positions",
        inputs: measured.map(({ position, slip }) => ({
          name: `slip at ${position.name}`,
          value: 100 * (slip ?? 0),
          unit: "%",
          source: computed("1 − measured ÷ by ratio"),
        })),
        result: { name: "mean slip", value: 100 * (drive.slip ?? 0), unit: "%" },
        notes: [
          "it only sums up: at a position that was not measured the slip of each belt in use is taken off",
          ...(drive.stageSlips ?? []).map(
            ({ stages, slip }) =>
              `${stages.join(" and ")}: ${formatFixed(100 * slip, 2)} %, by least squares over the positions`,
          ),
        ],
      }),
    },
  ];
}

const computed = (how: string): Source => ({ from: "computed", how });

/** Slip of the belts that carry the power at this position, as far as readings tell them apart. */
const slipsInUse = ({ position }: SpeedFinding, { stages }: Drive, slips: readonly StageSlip[]): Input[] =>
  slips
    .filter((group) =>
      stages.some(({ name }, at) => group.stages.includes(name) && position.steps[at]?.kind === "belt"),
    )
    .map((group) => ({
      name: `slip of ${group.stages.join(" and ")}`,
      value: 100 * group.slip,
      unit: "%",
      source: computed("least squares of ln(measured ÷ by ratio) over the measured positions"),
    }));

const motorSpeed = ({ motor }: Drive): Input => ({
  name: "motor speed",
  value: motor.fastestRpm,
  unit: "rpm",
  source: { from: "stated", path: motorPath },
});

function readingsAt({ position }: SpeedFinding, { tachometer }: Drive): Input[] {
  return tachometer.flatMap((reading, index): Input[] =>
    reading.labels.join("\n") === position.labels.join("\n")
      ? [
          {
            name: "tachometer",
            value: reading.rpm,
            unit: "rpm",
            source: { from: "measured", path: ["drive", "tachometer", index, "speed"] },
          },
        ]
      : [],
  );
}

function ratios({ position }: SpeedFinding, { stages }: Drive, units: Units): Input[] {
  return position.steps.map((step, index): Input => {
    const stage = stages[index];
    const place = Math.max(0, stage?.steps.indexOf(step) ?? 0);
    return {
      name: `ratio of ${stage?.name ?? `stage ${index + 1}`} (${stepWords(step, units)})`,
      value: stepRatio(step),
      unit: "",
      source: { from: "stated", path: stepPath(stages, index, place) },
    };
  });
}

function stepWords(step: Step, units: Units): string {
  switch (step.kind) {
    case "belt":
      return `pulley ${sizeFigure(step.driver, units, 1)} drives ${formatSize(step.driven, units, 1)}`;
    case "gears":
      return step.pairs.map(({ driver, driven }) => `${driver} drives ${driven} teeth`).join(", ");
    case "direct":
      return "straight through";
    case "motor":
      return `${formatFixed(step.factor, 3)} of the motor's fastest`;
  }
}
