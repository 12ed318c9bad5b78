import type { DialFinding, Graduation } from "../../dial/finding.js";
import { writeDegrees } from "../../dividing/degrees.js";
import { positionsOf, type RingIndexing, ringIndexing } from "../../dividing/ringCutting.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, sizeAmount, trimmedSize, unitName } from "../../quantity/format.js";
import { inDecimals, say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { goingOn, heading, kept, lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { indexingLines } from "./indexingLines.js";

/** Lengths of the three ranks of mark cut in metal, in the unit itself (common practice: long twice the short). */
const markLength: Readonly<Record<Units, readonly [number, number, number]>> = {
  mm: [4, 3, 2],
  in: [0.16, 0.12, 0.08],
};
const markText = (rank: 1 | 2 | 3, units: Units): string =>
  formatFixed(markLength[units][(rank - 1) as 0 | 1 | 2], units === "mm" ? 0 : 2);

/** For who cuts a dial in metal: how to index it with what is at hand, and every mark with its angle, length and number. */
export const ringCutting = block({ secondsPlaces: 0 }, ({ handwheels, findings, settings, width }) => {
  const { machine } = findings;
  const rings = handwheels.flatMap((finding) =>
    (finding.dial?.rows ?? []).map((row, index) => ({ finding, dial: finding.dial as DialFinding, row, index })),
  );
  return rings.flatMap(({ finding, dial, row, index }, ring): Run[] => {
    const { name: wheel } = finding.handwheel;
    const rows = dial.rows.length;
    const equal = equalDivisions(dial, row);
    const indexing = ringIndexing(row, equal, machine.dividing, machine.gears ?? []);
    const line = (words: string, weight: "bold" | "regular" = "regular") =>
      paragraph(words, width, { size: size.text, weight, gap: 0.4 });
    const name = rows > 1 ? say("ring cutting.one row", { wheel, row: index + 1, rows }) : wheel;
    const runs = [
      ...heading(name, width, 7),
      ...kept([
        ...line(marksWords(dial, row), "bold"),
        ...line([...lastWords(dial), ...stampWords(dial, row)].join(" ")),
        ...line(lengthWords(machine.units)),
        ...indexingLines(finding, equal, indexing, machine).flatMap((words) => line(words)),
      ]),
      ...markTable(row, indexing, machine.units, width, settings.secondsPlaces),
    ];
    return goingOn(runs, name, width).map((run, place) =>
      place === 0 && ring > 0 ? { ...run, startsPage: "unless it fits" as const } : run,
    );
  });
});

/** Rows may begin between marks; only equal divisions of the whole circle that begin at zero are indexed as such. */
function equalDivisions({ chosen }: DialFinding, row: readonly Graduation[]): number | undefined {
  return chosen.closure !== "rows" && !chosen.beginsAgain ? row.length : undefined;
}

const marksWords = ({ chosen }: DialFinding, row: readonly Graduation[]): string =>
  say("ring cutting.marks", { n: row.length, size: trimmedSize(chosen.divisionValue, chosen.unit, 5) });

/** Whoever cuts by the table would take the last gap for one of the others. */
const lastWords = ({ chosen }: DialFinding): string[] =>
  chosen.last === undefined
    ? []
    : [
        say("ring cutting.last", {
          last: sizeAmount(chosen.last, chosen.unit),
          division: chosen.divisionLabel,
        }),
      ];

/** Stamps hold figures alone, which may count something else than whole units. */
function stampWords({ chosen }: DialFinding, row: readonly Graduation[]): string[] {
  const first = row.find(({ label, value }) => label !== undefined && value > 1e-9);
  return first?.label === undefined
    ? []
    : [say("ring cutting.stamped", { figure: first.label, value: trimmedSize(first.value, chosen.unit, 5) })];
}

function lengthWords(units: Units): string {
  const unit = unitName(units);
  return say("ring cutting.lengths", {
    long: `${markText(1, units)} ${unit}`,
    middle: markText(2, units),
    short: markText(3, units),
  });
}

function markTable(
  row: readonly Graduation[],
  indexing: RingIndexing,
  units: Units,
  width: number,
  places: number,
): Run[] {
  const move = indexing.simple[0];
  const positions = move ? positionsOf(move, row.length) : indexing.nearest?.moves;
  const circle = positions?.[0]?.circle;
  const columns: Column[] = [
    { heading: [say("ring cutting.mark")], align: "end" },
    { heading: [say("ring cutting.angle")], align: "end" },
    ...(circle === undefined
      ? []
      : [{ heading: [say("ring cutting.turns"), say("ring cutting.of circle", { circle })], align: "end" } as const]),
    { heading: ["", unitName(units)], align: "middle" },
    { heading: [say("ring cutting.stamp")], align: "end" },
  ];
  const rows = row.map((mark, index): Cell[] => {
    const at = positions?.[index];
    return [
      { text: String(index) },
      { text: inDecimals(writeDegrees(mark.angle, places)) },
      ...(circle === undefined ? [] : [{ text: at ? `${at.turns} + ${at.holes}` : "" }]),
      { text: markText(mark.rank, units) },
      { text: mark.label ?? "", weight: "bold" },
    ];
  });
  return lowered(table(columns, rows, { width, list: true }), 2);
}
