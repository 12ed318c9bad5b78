import type { Zone } from "../../feed/alongTravel.js";
import type { Budget } from "../../feed/budget.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, formatUncertain, placesOf, sizeFigure, trimmed, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";

/** Thousandths of a millimetre, or millionths of an inch. */
const smallUnit = (units: Units) =>
  units === "mm"
    ? { name: "µm", parts: 1e3, places: 3 }
    : { name: say("measured report.millionths"), parts: 1e6, places: 1 };

/** Where the ± of a turn comes from. `runs`: the places were read more than once. */
export function budgetTable(found: Budget, runs: boolean, units: Units, width: number): Run[] {
  const { contributions, combined, coverageFactor, expanded, degreesOfFreedom } = found;
  const { name, parts, places } = smallUnit(units);
  const micro = (mm: number) => formatFixed(fromMm(mm, units) * parts, places);
  const degrees = (value: number) => (Number.isFinite(value) ? formatFixed(value, 0) : say("measured report.known"));
  const columns: Column[] = [
    { heading: [say("measured report.off by")], align: "start" },
    { heading: [say("measured report.standard"), name], align: "decimal" },
    { heading: [say(runs ? "measured report.degrees of runs" : "measured report.degrees")], align: "middle" },
  ];
  const rows = contributions.map(({ source, standard, degreesOfFreedom, counts }): Cell[] => {
    const how =
      source === "scatter" && runs
        ? say("measured report.how scatter of runs")
        : source === "graduation" && counts
          ? say("measured report.how graduation counts")
          : say(`measured report.how ${source}`);
    const what = say(`measured report.source ${source}`);
    return [
      { text: counts ? what : `(${what})`, note: how },
      { text: micro(standard) },
      { text: degrees(degreesOfFreedom) },
    ];
  });
  // Of several reasons together Welch's degrees of freedom count neither readings nor places: they only choose the factor.
  const mixed = contributions.filter(({ counts }) => counts).length > 1;
  const factor = formatFixed(coverageFactor, 3);
  const sum: Cell[] = [
    {
      text: say("measured report.together"),
      weight: "bold",
      note: [
        say("measured report.expanded", {
          factor:
            mixed && Number.isFinite(degreesOfFreedom)
              ? say("measured report.factor as of", { factor, degrees: degrees(degreesOfFreedom) })
              : factor,
          half: `${formatUncertain(0, fromMm(expanded, units) * parts).uncertainty} ${name}`,
        }),
        ...(units === "in" ? [say("measured report.millionths meant")] : []),
      ].join(". "),
    },
    { text: micro(combined), weight: "bold" },
    { text: mixed ? "" : degrees(degreesOfFreedom) },
  ];
  return table(columns, [...rows, sum], { width, ruled: true });
}

/** What to add to the dial's word in each stretch. */
export function zoneTable(zones: readonly Zone[], units: Units, width: number): Run[] {
  const columns: Column[] = [
    { heading: [say("measured report.from turn")], align: "decimal" },
    { heading: [say("measured report.to turn")], align: "decimal" },
    { heading: [say("measured report.turn here"), unitName(units)], align: "decimal" },
    { heading: ["±"], align: "decimal" },
    { heading: [say("measured report.ahead"), unitName(units)], align: "decimal" },
    { heading: ["±"], align: "decimal" },
  ];
  const rows = zones.map((zone): Cell[] => [
    { text: formatFixed(zone.fromTurn, 2), weight: "bold" },
    { text: formatFixed(zone.toTurn, 2), weight: "bold" },
    { text: sizeFigure(zone.perTurn, units, 4) },
    { text: sizeFigure(zone.uncertainty, units, 4) },
    { text: sizeFigure(zone.aheadAtEnd, units, 4) },
    { text: sizeFigure(zone.aheadUncertainty, units, 4) },
  ]);
  return table(columns, rows, { width });
}

/** Thousandths of a millimetre, or hundredths of a thou. */
const offLine = (mm: number, units: Units): string =>
  units === "mm" ? formatFixed(mm * 1e3, 1) : sizeFigure(mm, units, 4);

/** The readings as they were written down, those that do not belong in bold, each with how far it lies off the line. */
export function readingsList(
  { handwheel, feed: known, miscounted, study }: HandwheelFinding,
  units: Units,
  width: number,
  most: number,
): Run[] {
  const feed = known ?? miscounted;
  if (feed?.fit === undefined || handwheel.feed?.from !== "readings") return [];
  const { turns, travel, back } = handwheel.feed;
  const { residuals, slope } = feed.fit;
  const sense = Math.sign(slope) || 1;
  const wild = new Set([...(study?.wild ?? []), ...(study?.back?.wild ?? [])].map(({ index }) => index));
  const unit = unitName(units);
  // As fine as the finest of them was written down.
  const places = [...travel, ...(back ?? [])].reduce((most, mm) => Math.max(most, placesOf(fromMm(mm, units), 4)), 0);
  const columns: Column[] = [
    { heading: [say("measured report.number")], align: "end" },
    { heading: [say("measured report.turns")], align: "decimal", key: true },
    { heading: [say("measured report.out"), unit], align: "decimal" },
    ...(back ? [{ heading: [say("measured report.return"), unit], align: "decimal" as const }] : []),
    { heading: [say("measured report.line"), units === "mm" ? "µm" : unit], align: "decimal" },
  ];
  const rows = turns.slice(0, most).map((turn, index): Cell[] => {
    const weight = wild.has(index) ? ("bold" as const) : ("regular" as const);
    const reading = (mm: number | undefined) => ({
      text: mm === undefined ? "" : formatFixed(fromMm(mm, units), places),
      weight,
    });
    return [
      { text: String(index + 1), weight },
      { text: trimmed(turn, 4), weight },
      reading(travel[index]),
      ...(back ? [reading(back[index])] : []),
      { text: offLine(sense * (residuals[index] ?? 0), units), weight },
    ];
  });
  const rest = turns.length - rows.length;
  return [
    ...heading(say("measured report.as read"), width, 4, size.text),
    ...lowered(inColumns(columns, rows, width), 1),
    ...(rest > 0 ? lowered(paragraph(say("measured report.more readings", { n: rest }), width), 1) : []),
  ].map((run, index, all) => (index === all.length - 1 && rest > 0 ? { ...run, keepWithPrevious: true } : run));
}

/** Without their numbers where that is what two columns of them want: a page more is a worse loss. */
function inColumns(columns: readonly Column[], rows: readonly (readonly Cell[])[], width: number): Run[] {
  const all = table(columns, rows, { width, list: true });
  if (all[0]?.list !== undefined || rows.length < LONG) return all;
  const fewer = table(
    columns.slice(1),
    rows.map((row) => row.slice(1)),
    { width, list: true },
  );
  return fewer[0]?.list === undefined ? all : fewer;
}

/** Readings. */
const LONG = 12;
