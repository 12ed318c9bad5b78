import { rpmWords } from "../../drive/rpmWords.js";
import type { PulleyMeasure } from "../../machine/effectiveDiameter.js";
import type { Machine, Stage, Step, Units } from "../../machine/machine.js";
import { formatFixed, trimmed, trimmedSize, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say, translated } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { goingOn, heading, heightOf, kept, lowered } from "../shared/runs.js";
import { type Blank, blanks } from "./blanks.js";
import { drivePictures, driveSteps } from "./drivePictures.js";
import { type FormColumn, formGrid } from "./formGrid.js";
import { numbered } from "./numbered.js";

/** A page for pulleys, centres and spindle speeds, filled from what the file holds; blank rows where it holds no drive. */
export const driveForm = block({ blankRows: 6 }, ({ findings, settings, width, height }): Run[] => {
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
  const head: Run[] = [
    ...heading(say("measuring form.drive"), width, 0),
    ...held(findings.machine, width),
    ...blanks(toWrite(findings.machine), width, 0.5),
    { drawing: drivePictures(width), gap: 2 },
    { drawing: numbered(driveSteps(findings.machine), width, width >= 150 ? 2 : 1), gap: 1.5 },
  ];
  const foot: Run[] = [
    ...paragraph(say("measuring form.into the file"), width, { gap: 2.5 }),
    ...driveEntry().flatMap((entry) => paragraph(entry, width, { weight: "bold" })),
  ];
  const grids = (high: number): Run[] => [
    ...lowered(formGrid(pulleyColumns(units, drive), pulleys, width, high), 3),
    ...lowered(formGrid(speedColumns(drive !== undefined), speeds, width, high), 4),
  ];
  // What is left of the page goes to the rows.
  const spare = height - heightOf([...head, ...foot, ...grids(leastRow)]);
  const rowHeight = Math.max(leastRow, Math.min(mostRow, leastRow + spare / (pulleys.length + speeds.length)));
  const runs = [...head, ...grids(rowHeight), ...kept(foot)];
  return goingOn(runs, say("measuring form.drive"), width).map((run, index) =>
    index === 0 ? { ...run, startsPage: "always" } : run,
  );
});

const leastRow = 5;
const mostRow = 8;

/** What the file holds of motor, belt and chuck. */
function held({ drive, units, limits }: Machine, width: number): Run[] {
  const motor = drive && rpmWords({ rpm: drive.motor.fastestRpm, slowestRpm: drive.motor.slowestRpm });
  const belt = drive?.belt;
  const said = [
    ...(motor === undefined ? [] : [say("measuring form.motor held", { rpm: motor })]),
    ...(belt === undefined
      ? []
      : [
          say("measuring form.belt held", {
            belt: [
              say(`measuring form.belt ${belt.kind}`),
              belt.section,
              belt.size === undefined ? undefined : trimmedSize(belt.size, units, 3),
            ]
              .filter((part) => part !== undefined)
              .join(", "),
          }),
        ]),
    ...(limits.chuckRpm === undefined
      ? []
      : [say("measuring form.chuck held", { rpm: formatFixed(limits.chuckRpm, 0) })]),
  ];
  return said.length === 0 ? [] : paragraph(said.join(" "), width);
}

/** Of what the file holds nothing is asked again but the chuck's mark, which may be another's by now. */
const toWrite = ({ drive }: Machine): Blank[] => [
  { before: say("measuring form.date") },
  { before: say("measuring form.by"), room: 30 },
  { before: say("measuring form.tachometer"), room: 26 },
  { before: say("measuring form.chuck mark"), behind: say("measuring form.rpm"), room: 16 },
  ...(drive
    ? []
    : [
        { before: say("measuring form.motor plate"), behind: say("measuring form.rpm"), room: 16 },
        { before: say("measuring form.mains"), behind: "Hz", room: 10 },
      ]),
  ...(drive?.belt ? [] : [{ before: say("measuring form.belt"), room: 40 }]),
];

/** What to write into the file, figures left open. */
export const driveEntry = (figure = "…", name = "…"): string[] => [
  `drive: { motor: { speed: ${figure} rpm }, belt: "round, ${figure}", stages: [{ name: ${name}, centres: ${figure}, steps: [{ label: A, driver: { overBelt: ${figure} }, driven: { stringOver: ${figure} } }, { label: B, driver: ${figure}, driven: ${figure} }] }], tachometer: [{ position: [A], speed: ${figure} rpm }] }`,
  `limits: { chuck: ${figure} rpm }`,
];

/** With what the file holds of each. A long name of a step gets more of the width, so that its row does not fill a page. */
const pulleyColumns = (units: Units, drive: Machine["drive"]): FormColumn[] => {
  const known = drive !== undefined;
  const labels = drive?.stages.flatMap(({ steps }) => steps.map(({ label }) => label.length)) ?? [];
  const stepShare = Math.min(2.4, Math.max(0.8, ...labels.map((letters) => letters / 12)));
  const unit = unitName(units);
  const driver = say("measuring form.driver");
  const driven = say("measuring form.driven");
  const inFile = say("measuring form.in file");
  const measured = say("measuring form.measured");
  return [
    { heading: [say("measuring form.stage")], share: 1.4 },
    ...(known ? [{ heading: [say("measuring form.centres"), inFile], share: 1.2 }] : []),
    { heading: [say("measuring form.centres"), measured, unit], share: 1.2 },
    { heading: [say("measuring form.step")], share: stepShare },
    ...(known ? [{ heading: [driver, inFile], share: 1.1 }] : []),
    { heading: [driver, measured, unit], share: 1.2 },
    ...(known ? [{ heading: [driven, inFile], share: 1.1 }] : []),
    { heading: [driven, measured, unit], share: 1.2 },
  ];
};

const speedColumns = (known: boolean): FormColumn[] => {
  const rpm = say("measuring form.rpm");
  return [
    { heading: [say("measuring form.position")], share: 1.8 },
    ...(known
      ? [
          { heading: [say("measuring form.by ratio"), rpm], share: 1 },
          { heading: [say("measuring form.in file"), rpm], share: 1 },
        ]
      : []),
    { heading: [say("measuring form.measured"), rpm], share: 1.3 },
    { heading: [say("measuring form.again"), rpm], share: 1.3 },
  ];
};

/** The stage and its centres stand in the first row alone. */
function stageRows(stage: Stage, units: Units): string[][] {
  return stage.steps.map((step, index) => {
    const [driver, driven] = wheels(step, units);
    return [
      index === 0 ? translated(stage.name) : "",
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
    return [teethOf(step.pairs.map(({ driver }) => driver)), teethOf(step.pairs.map(({ driven }) => driven))];
  return step.kind === "direct"
    ? [say("measuring form.direct"), say("measuring form.direct")]
    : [say("measuring form.motor"), `× ${trimmed(step.factor, 3)}`];
}

/** "20, 18 teeth". */
const teethOf = (wheels: readonly number[]): string =>
  wheels.map((n, index) => (index === wheels.length - 1 ? teeth(n) : String(n))).join(", ");

const teeth = (n: number): string => say("measuring form.teeth", { n });

/** As it was measured, with the file's own word for how. */
function measure(by: PulleyMeasure | undefined, effective: number, units: Units): string {
  if (by === undefined || by.by === "effective") return trimmed(fromMm(effective, units), 3);
  return by.by === "teeth" ? teeth(by.size) : `${by.by} ${trimmed(fromMm(by.size, units), 3)}`;
}
