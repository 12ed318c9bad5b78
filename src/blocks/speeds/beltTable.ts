import { type BeltFinding, beltFinding, cutLength, LEAST_WRAP } from "../../drive/beltFinding.js";
import type { Drive, Machine, Stage } from "../../machine/machine.js";
import { toDegrees } from "../../quantity/angle.js";
import { formatFixed } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
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
    ...heading("Belts", width, 4),
    ...belts.flatMap((stage) => stageRuns(stage, drive, machine, width)),
    ...paragraph(
      "A belt left loose on purpose slips before something breaks, but at what load nobody can compute from these numbers: do not trust it to save a finger or a cutter.",
      width,
      { size: size.text, gap: 1.5 },
    ),
  ];
});

function stageRuns(stage: Stage, drive: Drive, { units }: Machine, width: number): Run[] {
  const found = beltFinding(stage);
  if (found === undefined) {
    const why = stage.idler
      ? "an idler presses on this belt: measure its length by a string"
      : "centres not given in the file, so no belt length";
    return paragraph(`${stage.name}: ${why}.`, width, { size: size.text, gap: 1 });
  }
  const unit = mmPer[units];
  const places = units === "mm" ? 1 : 3;
  const fixed = (mm: number) => formatFixed(mm / unit, places);
  const columns: Column[] = [
    { heading: ["step"], align: "start" },
    { heading: ["driver", units], align: "decimal" },
    { heading: ["driven", units], align: "decimal" },
    { heading: ["belt length", units], align: "decimal" },
    { heading: ["wrap on the small pulley", "degrees"], align: "decimal" },
    { heading: ["move the shafts", `${units}, − closer`], align: "decimal" },
  ];
  const rows = found.steps.map((step): Cell[] => [
    { text: step.label === "" ? "only" : step.label, weight: "bold" },
    { text: fixed(step.driver) },
    { text: fixed(step.driven) },
    { text: fixed(step.length), weight: "bold" },
    { text: formatFixed(toDegrees(step.wrap), 0), ink: step.wrap < LEAST_WRAP ? "accent" : "black" },
    { text: fixed(step.move) },
  ]);
  return [
    ...heading(`${stage.name}, ${found.run} belt, centres ${fixed(found.centres)} ${units}`, width, 1.5, size.text),
    ...table(columns, rows, { width, size: size.text }),
    ...paragraph(verdict(found, stage.belt ?? drive.belt, fixed, units), width, { size: size.source, gap: 0.6 }),
  ];
}

function verdict(found: BeltFinding, belt: Drive["belt"], fixed: (mm: number) => string, units: string): string {
  const stretch = belt?.stretch;
  const serves =
    found.steps.length === 1
      ? ""
      : found.oneServesAll
        ? `One belt serves every step: the lengths differ by ${fixed(found.longest - found.shortest)} ${units}.`
        : `One belt does not serve every step: the lengths differ by ${fixed(found.longest - found.shortest)} ${units}; move the shafts as shown for a belt of ${fixed(found.shortest)} ${units}, or fit a tightener.`;
  const cut =
    belt?.kind === "toothed"
      ? "A toothed belt is bought by its teeth, not cut."
      : stretch === undefined
        ? `A belt joined end to end: ${fixed(found.shortest)} ${units} on its neutral line, less the stretch its maker states (drive.stretch in the file).`
        : `Cut a belt joined end to end to ${fixed(cutLength(found.shortest, stretch))} ${units}: it then drives stretched by ${formatFixed(stretch * 100, 1)} %. Add what the joint eats.`;
  const slack = found.steps.some(({ wrap }) => wrap < LEAST_WRAP)
    ? " Less than 120° of wrap slips easily: more distance or an idler helps."
    : "";
  return `${serves} ${cut}${slack}`.trim();
}
