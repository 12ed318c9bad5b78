import { startReadings } from "../../dial/reading.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { goingOn, heading, kept, lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { gearsInstead, hasStartReadings, rowsInstead } from "../shared/withoutStartReadings.js";
import { comesRound, turnLine } from "./comesRound.js";

/** For a wheel whose turn is no round number (rack and pinion, or a screw of the other system): what to add on each whole
 *  turn, the rows that would run on, and the gears that would make a dial round. */
export const startReadingTables = block({ most: 400 }, ({ handwheels, findings, settings, width }) =>
  handwheels.filter(hasStartReadings).flatMap((finding, index): Run[] => {
    const { handwheel, reading, dial } = finding;
    if (reading === undefined || dial === undefined) return [];
    const { machine } = findings;
    const { units } = machine;
    const travel = reading.overTravel ?? dial.chosen.overTravel * reading.factor;
    const runs = [
      ...heading(handwheel.name, width, 7),
      ...turnLine(finding, units, width),
      ...kept(paragraph(say("start readings.add"), width, { size: size.text })),
      ...turnList(startReadings(reading.perTurn, travel, settings.most), units, width),
      ...comesRound(finding, units, width),
      ...rowsInstead(finding, machine, say("start readings.begins at"), width),
      ...gearsInstead(finding, machine, width),
    ];
    return goingOn(runs, handwheel.name, width).map((run, place) =>
      place === 0 && index > 0 ? { ...run, startsPage: "unless it fits" as const } : run,
    );
  }),
);

function turnList(readings: readonly number[], units: Units, width: number): Run[] {
  const columns: Column[] = [
    { heading: [say("start readings.turn")], align: "decimal" },
    { heading: [say("start readings.begins at"), unitName(units)], align: "decimal" },
  ];
  const rows = readings.map((reading, turn): Cell[] => [
    { text: String(turn) },
    { text: formatFixed(fromMm(reading, units), units === "mm" ? 2 : 4), weight: "bold", size: size.card },
  ]);
  return lowered(table(columns, rows, { width, list: true }), 2);
}
