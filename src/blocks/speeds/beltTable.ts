import { type BeltFinding, beltFinding, cutLength, LEAST_WRAP } from "../../drive/beltFinding.js";
import type { Drive, Machine, Stage } from "../../machine/machine.js";
import { toDegrees } from "../../quantity/angle.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";

/** Belt length, wrap and shift of the shafts for every step of every belt, and what to cut a joined belt to. */
export const beltTable = block({}, ({ findings, width }): Run[] => {
  const { machine } = findings;
  const { drive } = machine;
  if (drive === undefined) return [];
  const belts = drive.stages.filter(({ steps }) => steps.some(({ kind }) => kind === "belt"));
  if (belts.length === 0) return [];
  return [
    ...heading(say("speed tree.belts"), width, 4),
    ...belts.flatMap((stage) => stageRuns(stage, drive, machine, width)),
    ...paragraph(say("speed tree.loose belt"), width, { size: size.text, gap: 1.5 }),
  ];
});

function stageRuns(stage: Stage, drive: Drive, { units }: Machine, width: number): Run[] {
  const found = beltFinding(stage);
  if (found === undefined) {
    const why = say(stage.idler ? "speed tree.belt with idler" : "speed tree.no centres", { belt: stage.name });
    return paragraph(why, width, { size: size.text, gap: 1 });
  }
  const unit = mmPer[units];
  const places = units === "mm" ? 1 : 3;
  const fixed = (mm: number) => formatFixed(mm / unit, places);
  const columns: Column[] = [
    { heading: [say("speed tree.step")], align: "start" },
    { heading: [say("speed tree.driver"), unitName(units)], align: "decimal" },
    { heading: [say("speed tree.driven"), unitName(units)], align: "decimal" },
    { heading: [say("speed tree.belt length"), unitName(units)], align: "decimal" },
    { heading: [say("speed tree.wrap"), say("speed tree.degrees")], align: "decimal" },
    {
      heading: [say("speed tree.move shafts"), say("speed tree.minus closer", { unit: unitName(units) })],
      align: "decimal",
    },
  ];
  const rows = found.steps.map((step): Cell[] => [
    { text: step.label === "" ? say("speed tree.only position") : step.label, weight: "bold" },
    { text: fixed(step.driver) },
    { text: fixed(step.driven) },
    { text: fixed(step.length), weight: "bold" },
    {
      text: formatFixed(toDegrees(step.wrap), 0),
      ...(step.wrap < LEAST_WRAP && { weight: "bold" as const }),
    },
    { text: fixed(step.move) },
  ]);
  return [
    ...heading(
      say(`speed tree.belt run ${found.run}`, {
        belt: stage.name,
        centres: `${fixed(found.centres)} ${unitName(units)}`,
      }),
      width,
      1.5,
      size.text,
    ),
    ...table(columns, rows, { width, size: size.text }),
    ...paragraph(
      verdict(found, stage.belt ?? drive.belt, (mm) => `${fixed(mm)} ${unitName(units)}`),
      width,
      { size: size.source, gap: 0.6 },
    ),
  ];
}

function verdict(found: BeltFinding, belt: Drive["belt"], show: (mm: number) => string): string {
  const apart = show(found.longest - found.shortest);
  const shortest = show(found.shortest);
  return [
    ...(found.steps.length === 1
      ? []
      : [
          found.oneServesAll
            ? say("speed tree.one serves", { apart })
            : say("speed tree.one does not serve", { apart, shortest }),
        ]),
    howToGet(found, belt, show),
    ...(found.steps.some(({ wrap }) => wrap < LEAST_WRAP) ? [say("speed tree.little wrap")] : []),
  ].join(" ");
}

/** Round and flat belts are cut and joined; the others are endless. */
function howToGet({ shortest }: BeltFinding, belt: Drive["belt"], show: (mm: number) => string): string {
  if (belt?.kind === "toothed") return say("speed tree.toothed");
  if (belt?.kind === "vee") return say("speed tree.vee", { shortest: show(shortest) });
  return belt?.stretch === undefined
    ? say("speed tree.stretch not given", { shortest: show(shortest) })
    : say("speed tree.cut", {
        length: show(cutLength(shortest, belt.stretch)),
        percent: formatFixed(belt.stretch * 100, 1),
      });
}
