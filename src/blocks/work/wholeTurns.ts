import type { HandwheelFinding } from "../../findings/findings.js";
import { doubtToRead, farthestTold } from "../../findings/settings.js";
import type { Units } from "../../machine/machine.js";
import { unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Cell, Column } from "../shared/table.js";
import { show, showDoubt, type Table } from "./turnFigures.js";
import { turnsTold } from "./turnsTold.js";

/** On a dial that does not run on past zero every turn is wanted: its start reading is added to what the dial shows. */
const mostStartReadings = 400;

/** Whether turning on past zero makes a dial wrong, so that whole turns are counted. */
export const isOpen = ({ dial }: HandwheelFinding): boolean => dial !== undefined && dial.chosen.closes === false;

/** Whole turns to distances over the entire travel. What the dial reads there is bold; on a dial that does not close it is what its zero
 *  then stands for. Undefined where the travel is less than a turn. */
export function wholeTurns(finding: HandwheelFinding, usual: number, units: Units): Table | undefined {
  const { feed, reading } = finding;
  if (feed === undefined || reading === undefined) return undefined;
  const { factor } = reading;
  const open = isOpen(finding);
  const onDiameter = factor === 2;
  const other: Units = units === "mm" ? "in" : "mm";
  const [own, foreign] = [unitName(units), unitName(other)];
  const { nominal } = feed;
  const read = (words: string): Column => ({
    heading: [open ? say("turns.zero is") : words, own],
    align: "decimal",
  });
  const columns: Column[] = [
    { heading: [say("turns.whole")], align: "decimal", key: true },
    ...(onDiameter
      ? [{ heading: [say("turns.of travel"), own], align: "decimal" } as const, read(say("turns.of diameter"))]
      : [read(say("turns.of travel"))]),
    // What stands on a dial of diameters is no distance that a drawing in the other unit gives.
    ...(onDiameter ? [] : [{ heading: [say("turns.of travel"), foreign], align: "decimal" } as const]),
    ...(nominal === undefined ? [] : [{ heading: [say("turns.maker out"), own], align: "decimal" } as const]),
    ...(feed.uncertainty === undefined
      ? []
      : [{ heading: [onDiameter ? say("turns.on diameter") : "±", own], align: "decimal" } as const]),
  ];
  const rows = turnsTold(finding, usual, 1, open ? mostStartReadings : undefined).map((turns): Cell[] => {
    const travel = turns * feed.perTurn;
    const told = travel <= farthestTold(finding);
    const bold: Cell = { text: show(travel * factor, units), weight: "bold" };
    return [
      { text: String(turns), weight: "bold" },
      ...(onDiameter ? [{ text: show(travel, units) }, bold] : [bold]),
      ...(onDiameter ? [] : [{ text: show(travel, other) }]),
      ...(nominal === undefined ? [] : [{ text: told ? show(turns * (nominal - feed.perTurn) * factor, units) : "–" }]),
      ...(feed.uncertainty === undefined
        ? []
        : [{ text: told ? showDoubt(doubtToRead(finding, travel * factor) ?? 0, units) : "–" }]),
    ];
  });
  return rows.length === 0 ? undefined : { columns, rows };
}
