import { rpmWords } from "../../drive/rpmWords.js";
import type { PulleyMeasure } from "../../machine/effectiveDiameter.js";
import type { Stage, Step, Units } from "../../machine/machine.js";
import { formatFixed, trimmed } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { type FormColumn, formGrid } from "./formGrid.js";

const rowHeight = 6.5;

/** A page for pulleys, centres and spindle speeds, filled from what the file holds; blank rows where it holds no drive. */
export const driveForm = block({ blankRows: 6 }, ({ findings, settings, width }): Run[] => {
  const { drive, units } = findings.machine;
  const blank = Array.from({ length: settings.blankRows }, () => [""]);
  const pulleys = drive ? drive.stages.flatMap((stage) => stageRows(stage, units)) : blank;
  const speeds = findings.drive
    ? findings.drive.speeds.map(({ position, from, rpm, byRatioRpm }) => [
        position.name,
        formatFixed(byRatioRpm, 0),
        from === "measured" ? formatFixed(rpm, 0) : "",
      ])
    : blank;
  const small = (words: string, gap: number) => paragraph(words, width, { size: size.small, gap });
  const motor = drive
    ? `Motor in the file: ${rpmWords({ rpm: drive.motor.fastestRpm, slowestRpm: drive.motor.slowestRpm }, " to ")} rpm.`
    : "Motor, from its plate: __________ rpm, __________ Hz.";
  const belt = drive?.belt
    ? ` Belt in the file: ${drive.belt.kind}${drive.belt.section ? ` ${drive.belt.section}` : ""}${drive.belt.size === undefined ? "" : `, ${trimmed(fromMm(drive.belt.size, units), 4)} ${units}`}.`
    : " Belt (round, flat, vee or toothed; its size or section): ______________________";
  return [
    {
      ...first(paragraph("Pulleys, centres and speeds", width, { size: size.title, weight: "bold" })),
      startsPage: true,
    },
    ...small(
      "Date: __________________   Measured by: __________________________   Tachometer: __________________________",
      3,
    ),
    ...small(`${motor}${belt}`, 2.5),
    ...small(
      "1.  Plug out before a hand goes near a belt or pulley. Measure each pulley with the belt's neutral line in mind, and write down what you measured: across the rim (outside), over the belt as it lies (overBelt), a string once round (string) or once round over the belt (stringOver), teeth, or the effective diameter itself.",
      2.5,
    ),
    ...small("2.  Centres: from shaft to shaft, with the belt as tight as it runs.", 0.6),
    ...lowered(formGrid(pulleyColumns(units), pulleys, width, rowHeight), 2.5),
    ...small(
      "3.  Speeds: covers closed, nothing in the chuck but what it holds fast, belt warmed up for some minutes. Hold the tachometer at arm's length to the mark, never touch what turns; read each position twice, with no load.",
      5,
    ),
    ...lowered(formGrid(speedColumns, speeds, width, rowHeight), 2.5),
    ...small(
      "Into the file: drive: stages: with centres: and steps: { driver: …, driven: … }, and tachometer: - { position: [A, open], speed: … rpm }.",
      2.5,
    ),
  ];
});

const first = (runs: readonly Run[]): Run => runs[0] as Run;

const pulleyColumns = (units: Units): FormColumn[] => [
  { heading: ["stage"], share: 1.6 },
  { heading: ["centres,", units], share: 0.9 },
  { heading: ["centres", "measured"], share: 1.1 },
  { heading: ["step"], share: 0.8 },
  { heading: ["driver,", "in the file"], share: 1.3 },
  { heading: ["driver", "measured"], share: 1.3 },
  { heading: ["driven,", "in the file"], share: 1.3 },
  { heading: ["driven", "measured"], share: 1.3 },
];

const speedColumns: FormColumn[] = [
  { heading: ["position"], share: 1.4 },
  { heading: ["by ratio,", "rpm"], share: 0.9 },
  { heading: ["in the file,", "rpm"], share: 0.9 },
  { heading: ["measured,", "rpm"], share: 1.3 },
  { heading: ["again,", "rpm"], share: 1.3 },
];

/** The stage and its centres stand in the first row alone. */
function stageRows(stage: Stage, units: Units): string[][] {
  return stage.steps.map((step, index) => {
    const [driver, driven] = wheels(step, units);
    return [
      index === 0 ? stage.name : "",
      index === 0 && stage.centres !== undefined ? trimmed(fromMm(stage.centres, units), 3) : "",
      "",
      step.label,
      driver,
      step.kind === "direct" || step.kind === "motor" ? "–" : "",
      driven,
      step.kind === "direct" || step.kind === "motor" ? "–" : "",
    ];
  });
}

function wheels(step: Step, units: Units): [string, string] {
  if (step.kind === "belt")
    return [measure(step.driverBy, step.driver, units), measure(step.drivenBy, step.driven, units)];
  if (step.kind === "gears")
    return [
      step.pairs.map(({ driver }) => `${driver} teeth`).join(", "),
      step.pairs.map(({ driven }) => `${driven} teeth`).join(", "),
    ];
  return step.kind === "direct" ? ["direct", "direct"] : ["motor", `× ${trimmed(step.factor, 3)}`];
}

/** As it was measured, with the file's own word for how. */
function measure(by: PulleyMeasure | undefined, effective: number, units: Units): string {
  if (by === undefined || by.by === "effective") return trimmed(fromMm(effective, units), 3);
  return by.by === "teeth" ? `${by.size} teeth` : `${by.by} ${trimmed(fromMm(by.size, units), 3)}`;
}
