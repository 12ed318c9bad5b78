import type { DialFinding, Graduation } from "../../dial/finding.js";
import { gatheredError } from "../../dividing/compound.js";
import { writeDegrees } from "../../dividing/degrees.js";
import {
  positionsOf,
  type RingIndexing,
  readingError,
  ringIndexing,
  turnsWritten,
} from "../../dividing/ringCutting.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Machine, Units } from "../../machine/machine.js";
import { TURN } from "../../quantity/angle.js";
import { formatFixed, plural } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept, lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";

/** Lengths of the three ranks of mark cut in metal (common practice: long twice the short). */
const markLength = { mm: ["4", "3", "2"], in: ["0.16", "0.12", "0.08"] } as const;
/** Side by side, so that a ring of a hundred marks takes a page. */
const columnsAcross = 3;

/** For who cuts a dial in metal: how to index it with what is at hand, and every mark with its angle, length and number. */
export const ringCutting = block({ secondsPlaces: 0 }, ({ handwheels, findings, settings, width }) =>
  handwheels.flatMap((finding): Run[] => {
    const { handwheel, dial } = finding;
    if (dial === undefined) return [];
    const { machine } = findings;
    return dial.rows.flatMap((row, index) => {
      const name = dial.rows.length > 1 ? `${handwheel.name}, row ${index + 1} of ${dial.rows.length}` : handwheel.name;
      const indexing = ringIndexing(row, equalDivisions(dial, row), machine.dividing, machine.gears ?? []);
      return [
        ...heading(name, width, 5),
        ...kept(
          indexingWords(finding, dial, row, indexing, machine).flatMap((words) =>
            paragraph(words, width, { size: size.small, gap: 0.4 }),
          ),
        ),
        ...markTable(row, indexing, machine.units, width, settings.secondsPlaces),
      ];
    });
  }),
);

/** Rows may begin between marks; only equal divisions of the whole circle that begin at zero are indexed as such. */
function equalDivisions({ chosen }: DialFinding, row: readonly Graduation[]): number | undefined {
  return chosen.closure !== "rows" && !chosen.beginsAgain ? row.length : undefined;
}

function indexingWords(
  { reading }: HandwheelFinding,
  dial: DialFinding,
  row: readonly Graduation[],
  indexing: RingIndexing,
  { dividing, gears, units }: Machine,
): string[] {
  const equal = equalDivisions(dial, row);
  const said = [
    `${plural(row.length, "mark")}, one division ${dial.chosen.divisionLabel}, cut from zero in the order in which the reading grows. Long marks ${markLength[units][0]} ${units}, middling ${markLength[units][1]}, short ${markLength[units][2]}; all from the edge beside the index.`,
  ];
  if (dividing && reading) {
    const reads = (crank: number) =>
      `${formatFixed(Math.abs(readingError(crank, dividing.ratio, reading.perTurn)) / mmPer[units], units === "mm" ? 5 : 6)} ${units}`;
    const ratio = `Crank at ${dividing.ratio} to 1`;
    if (equal !== undefined)
      said.push(
        indexing.simple.length > 0
          ? `${ratio}: ${turnsWritten(dividing.ratio, equal)} turns a division, exactly: ${indexing.simple.map(({ turns, holes, circle }) => `${turns > 0 ? `${plural(turns, "turn")} + ` : ""}${holes} of ${circle}`).join(", or ")}.`
          : `${ratio}: no circle has ${turnsWritten(dividing.ratio, equal)} turns exactly.`,
      );
    for (const move of indexing.compound.slice(0, 2)) {
      const { first, second, divisionsAtOnce, error } = move;
      const all = gatheredError(move, equal ?? 1);
      said.push(
        `Compound: ${first.holes} of ${first.circle} forward, then crank and plate ${Math.abs(second.holes)} of ${second.circle} ${second.holes > 0 ? "forward" : "back"}${divisionsAtOnce > 1 ? `, which goes on by ${divisionsAtOnce} divisions: round ${divisionsAtOnce} times` : ""}: ${error === 0 ? "exact" : `${writeDegrees(Math.abs((error / dividing.ratio) * TURN))} out each time, ${reads(all)} of reading when all are cut`}.`,
      );
    }
    for (const { circle, holes, ratio, drivers, driven } of indexing.differential.slice(0, 1))
      said.push(
        `Differential, exact: ${holes} of ${circle}; gears from spindle to plate ${drivers.join(" and ")} driving ${driven.join(" and ")}, with idlers so that the plate turns ${ratio.numerator > 0 ? "with" : "against"} the crank.`,
      );
    if (indexing.nearest)
      said.push(
        `Nearest holes, counted from zero on the ${indexing.nearest.circle} circle (in the table): no mark further out than ${writeDegrees((indexing.nearest.worst / dividing.ratio) * TURN)}, ${reads(indexing.nearest.worst)} of reading; no error gathers.`,
      );
  }
  for (const { teeth, step, detents } of indexing.gears.slice(0, 2))
    said.push(
      detents === 1
        ? `Gear of ${teeth} as an index: a detent in every ${step === 1 ? "tooth space" : `${ordinal(step)} tooth space`}.`
        : `Gear of ${teeth} with ${detents} detents, each set 1/${detents} tooth further than the last: they part a tooth, go on ${plural(step, "step")} of 1/${detents} tooth.`,
    );
  for (const { gears: pair, first, second } of indexing.gearPairs.slice(0, 1))
    said.push(
      `Gears of ${pair[0]} and ${pair[1]} on one arbor, the second carrying the first's detent: one division is ${plural(Math.abs(first), "tooth", "teeth")} of ${pair[0]} ${first < 0 ? "back" : "forward"} and ${plural(Math.abs(second), "tooth", "teeth")} of ${pair[1]} ${second < 0 ? "back" : "forward"}.`,
    );
  if (dividing === undefined && indexing.gears.length === 0)
    said.push(
      gears === undefined
        ? "Give dividing: (ratio and plates) or gears: in the file for the holes and teeth to count; the angles below serve any other way, such as a degree plate on the spindle."
        : "No gear of the list, alone or with detents, divides this ring; use the angles, or a degree plate on the spindle.",
    );
  return said;
}

const ordinal = (count: number) => (count === 2 ? "second" : count === 3 ? "third" : `${count}th`);

function markTable(
  row: readonly Graduation[],
  indexing: RingIndexing,
  units: Units,
  width: number,
  places: number,
): Run[] {
  const move = indexing.simple[0];
  const positions = move ? positionsOf(move, row.length) : indexing.nearest?.moves;
  const crank: Column[] = positions
    ? [{ heading: ["turns +", `of ${positions[0]?.circle}`], align: "end", stretch: 0 }]
    : [];
  const columns: Column[] = [
    { heading: ["mark"], align: "end", stretch: 0.2 },
    { heading: ["angle"], align: "end", stretch: 0 },
    ...crank,
    { heading: ["long", units], align: "middle", stretch: 0 },
    { heading: ["stamp"], align: "end", stretch: 0 },
  ];
  const cells = (mark: Graduation, index: number): Cell[] => {
    const at = positions?.[index];
    const weight = mark.label === undefined ? "regular" : "bold";
    return [
      { text: String(index) },
      { text: writeDegrees(mark.angle, places) },
      ...(at ? [{ text: `${at.turns} + ${at.holes}` }] : []),
      { text: markLength[units][(mark.rank - 1) as 0 | 1 | 2] },
      { text: mark.label ?? "", weight },
    ];
  };
  const down = Math.ceil(row.length / columnsAcross);
  const empty: Cell[] = columns.map(() => ({ text: "" }));
  const rows = Array.from({ length: down }, (_, line) =>
    Array.from({ length: columnsAcross }, (_, column) => {
      const mark = row[column * down + line];
      return mark ? cells(mark, column * down + line) : empty;
    }).flat(),
  );
  const across = Array.from({ length: columnsAcross }, () => columns).flat();
  return lowered(table(across, rows, { width, size: size.small, ruleEvery: 5 }), 2);
}
