import type { DialFinding } from "../../dial/finding.js";
import { startReadings } from "../../dial/reading.js";
import { dialGears, lowestTerms } from "../../dial/reductionGears.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Machine, Units } from "../../machine/machine.js";
import { formatFixed, formatLength } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept, lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";
import { turnAndClosings } from "./dialChoices.js";
import { costWords } from "./dialWords.js";

/** Turns side by side, so that a long bed takes few lines. */
const across = 4;

/** For a wheel whose turn is no round number (rack and pinion, or a screw of the other system): what to add on each whole
 *  turn, the rows that would run on, and the gears that would make a dial round. */
export const startReadingTables = block({ most: 400 }, ({ handwheels, findings, settings, width }) =>
  handwheels.flatMap((finding): Run[] => {
    const { handwheel, reading, dial } = finding;
    if (reading === undefined || dial === undefined || !dial.chosen.beginsAgain) return [];
    const { machine } = findings;
    const { units } = machine;
    const travel = reading.overTravel ?? dial.chosen.overTravel * reading.factor;
    return [
      ...heading(handwheel.name, width, 5),
      ...kept(
        paragraph(
          `${turnAndClosings(finding, units)} The dial begins again at zero: count whole turns, and add the start reading of the turn to what the dial shows.`,
          width,
          { size: size.small, gap: 0.3 },
        ),
      ),
      ...turnTable(startReadings(reading.perTurn, travel, settings.most), units, width),
      ...paragraph(rowsWords(dial, units), width, { size: size.small, gap: 2.5 }),
      ...paragraph(gearWords(finding, machine), width, { size: size.small, gap: 1 }),
    ];
  }),
);

function turnTable(readings: readonly number[], units: Units, width: number): Run[] {
  const columns: Column[] = Array.from({ length: across }, () => [
    { heading: ["turn"], align: "end", stretch: 0.4 } as const,
    { heading: ["begins at", units], align: "decimal" } as const,
  ]).flat();
  const down = Math.ceil(readings.length / across);
  const rows = Array.from({ length: down }, (_, line) =>
    Array.from({ length: across }, (_, column): Cell[] => {
      const turn = column * down + line;
      const reading = readings[turn];
      if (reading === undefined) return [{ text: "" }, { text: "" }];
      return [
        { text: String(turn), weight: "bold" },
        { text: formatFixed(reading / mmPer[units], units === "mm" ? 2 : 4) },
      ];
    }).flat(),
  );
  return lowered(table(columns, rows, { width, size: size.body, ruleEvery: 5 }), 2);
}

function rowsWords({ choices }: DialFinding, units: Units): string {
  const rows = choices.find(({ closure, rows }) => closure === "rows" && rows > 1);
  if (rows === undefined) return "No rows of a round division close within six turns: keep to the start readings.";
  return `Instead, ${rows.rows} rows of ${rows.divisionLabel}, one a turn, run on: ${costWords(rows, units)}. Force them with closure: rows and divisions: ${rows.divisionLabel}.`;
}

function gearWords({ feed, reading }: HandwheelFinding, { gears, units }: Machine): string {
  if (gears === undefined)
    return "List the gears at hand under gears: to see which pair, one on the wheel's shaft and one under a dial of its own, would make the dial round.";
  if (feed === undefined || reading === undefined) return "";
  const { factor } = reading;
  const found = dialGears(feed.perTurn, gears, units);
  if (found.length === 0) return "No pair of the listed gears makes this dial round.";
  const pairs = found.map(({ driver, driven, perDialTurn, error }) => {
    const off = Math.abs(error * factor);
    const out =
      off < 5e-5
        ? "exact"
        : `${formatLength(off, units, units === "mm" ? 4 : 5)} ${error > 0 ? "too much" : "too little"} each dial turn`;
    const over =
      feed.uncertainty !== undefined && Math.abs(error / perDialTurn) < feed.uncertainty / feed.perTurn
        ? ", within the feed's doubt"
        : "";
    return `${driver} driving ${driven} (${lowestTerms(driver, driven)}): ${formatLength(perDialTurn * factor, units, units === "mm" ? 1 : 3)} a dial turn, ${out}${over}`;
  });
  return `Gears for a dial on a shaft of its own, wheel driving dial: ${pairs.join("; ")}. Count an idler in where the sense must stay.`;
}
