import { roundedUp } from "../../dial/bandRoom.js";
import type { DialFinding } from "../../dial/finding.js";
import { overOnDial } from "../../dial/overOnDial.js";
import { withinATurn } from "../../dial/reading.js";
import { dialGears, lowestTerms } from "../../dial/reductionGears.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Machine, Units } from "../../machine/machine.js";
import { formatFixed, formatSize, sizeAmount, sizeFigure, trimmedSize, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { Run } from "./block.js";
import { paragraph } from "./paragraph.js";
import { heading, kept } from "./runs.js";
import { size } from "./style.js";
import { type Cell, type Column, table } from "./table.js";

/** Whether each turn of a wheel begins at a reading of its own: none does where the travel holds no whole turn. */
export const hasStartReadings = ({ dial, reading }: HandwheelFinding): boolean =>
  dial?.chosen.beginsAgain === true && !withinATurn(reading);

/** Rows that would do without start readings, on a wheel whose turn is no round number; nothing for one that needs none. `column`: over
 *  the start readings of its sheet. */
export const rowsInstead = (finding: HandwheelFinding, { units }: Machine, column: string, width: number): Run[] =>
  finding.dial && hasStartReadings(finding)
    ? paragraph(rowsWords(finding.dial, units, column), width, { size: size.text, gap: 1.5 })
    : [];

function rowsWords({ choices, rowsWithoutRoom }: DialFinding, units: Units, column: string): string {
  const rows = choices.find(({ closure, rows }) => closure === "rows" && rows > 1) ?? rowsWithoutRoom?.choice;
  if (rows === undefined) return say("start readings.no rows", { column });
  const cost =
    rows.errorPerTurn === 0
      ? say("start readings.rows exact")
      : say("start readings.rows out", {
          each: sizeAmount(rows.errorPerTurn, units),
          over: sizeAmount(rows.errorOverTravel, units),
          travel: overOnDial(rows, (mm) => trimmedSize(mm, units, 1)),
        });
  const told = { rows: rows.rows, division: trimmedSize(rows.divisionValue, rows.unit, 5), cost };
  const width = rowsWithoutRoom?.width;
  return width === undefined
    ? say("start readings.rows", told)
    : say("start readings.rows too low", { ...told, width: formatSize(roundedUp(width, units), units), column });
}

/** Gears that would do the same with a dial on a shaft of its own; a pair that is out by less than the feed may be stands behind "~". */
export function gearsInstead(finding: HandwheelFinding, { gears: teeth, units }: Machine, width: number): Run[] {
  if (!hasStartReadings(finding)) return [];
  const { feed, reading } = finding;
  if (teeth === undefined) return paragraph(say("start readings.no gears"), width, { size: size.text, gap: 1.5 });
  if (feed === undefined || reading === undefined) return [];
  const { factor } = reading;
  const found = dialGears(feed.perTurn, teeth, units);
  if (found.length === 0) return paragraph(say("start readings.no pair"), width, { size: size.text, gap: 1.5 });
  const within = found.map(
    ({ error, perDialTurn }) =>
      feed.uncertainty !== undefined && Math.abs(error / perDialTurn) < feed.uncertainty / feed.perTurn,
  );
  const columns: Column[] = [
    { heading: [say("start readings.on wheel")], align: "decimal" },
    { heading: [say("start readings.on dial")], align: "decimal" },
    { heading: [say("start readings.ratio")], align: "middle" },
    { heading: [say("start readings.dial turn"), unitName(units)], align: "decimal" },
    { heading: [say("start readings.dial turn out"), unitName(units)], align: "end" },
  ];
  const rows = found.map(({ driver, driven, perDialTurn, error }, index): Cell[] => [
    { text: String(driver), weight: "bold" },
    { text: String(driven), weight: "bold" },
    { text: lowestTerms(driver, driven) },
    { text: sizeFigure(perDialTurn * factor, units, units === "mm" ? 1 : 2), weight: "bold" },
    { text: outBy(error * factor, units, within[index] === true) },
  ]);
  const notes = [...(within.some(Boolean) ? [say("start readings.within")] : []), say("start readings.idler")];
  return [
    ...heading(say("start readings.gears"), width, 3, size.text),
    ...kept(table(columns, rows, { width })),
    ...paragraph(notes.join(" "), width, { size: size.source, gap: 0.8 }),
  ];
}

function outBy(error: number, units: Units, within: boolean): string {
  if (Math.abs(error) < 5e-5) return say("start readings.exact");
  const off = formatFixed(fromMm(error, units), units === "mm" ? 4 : 5);
  return `${within ? "~" : ""}${error > 0 ? "+" : ""}${off}`;
}
