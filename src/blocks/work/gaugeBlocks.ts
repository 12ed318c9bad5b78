import { group } from "../../drawing/shapes.js";
import { settingToMove } from "../../findings/settings.js";
import { repeats } from "../../findings/stops.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, joined, kept, whole } from "../shared/runs.js";
import { type Cell, type Column, table, tableWidth } from "../shared/table.js";
import { headingOf, turnsAndReading } from "./turnsAndReading.js";

/** A block or drill shank of known size between stop and slide shortens the travel by just that: the turns it stands for. Of the
 *  wheels that the file's stops are for, or of all. */
export const gaugeBlocks = block(
  { mm: [1, 2, 3, 5, 6, 8, 10, 12, 20], in: [0.0625, 0.125, 0.25, 0.375, 0.5, 0.75] },
  ({ findings, settings, width, height }): Run[] => {
    const { units } = findings.machine;
    const fed = findings.handwheels.filter(({ feed }) => feed !== undefined);
    const stopped = repeats(findings).map(({ wheel }) => wheel);
    const wheels = fed.some((wheel) => stopped.includes(wheel)) ? fed.filter((one) => stopped.includes(one)) : fed;
    if (wheels.length === 0) return [];
    const sizes = settings[units].map((value) => inMm(value, units));
    const columns: Column[] = [
      { heading: [say("stops.between"), unitName(units)], align: "decimal", key: true },
      ...wheels.map(
        (wheel): Column => ({
          heading: [wheel.handwheel.name, headingOf(wheel)],
          align: "middle",
        }),
      ),
    ];
    const rows = sizes.map((mm): Cell[] => [
      { text: formatFixed(fromMm(mm, units), units === "mm" ? 1 : 4), weight: "bold" },
      ...wheels.map((wheel): Cell => {
        const setting = settingToMove(wheel, mm);
        return { text: setting === undefined ? "" : turnsAndReading(wheel, setting) };
      }),
    ]);
    return [
      ...heading(say("stops.blocks"), width, 6),
      ...kept(paragraph(say("stops.blocks how"), width)),
      ...whole(unbroken(columns, rows, width), height),
    ];
  },
);

const listGap = 8;

/** A short table, in columns side by side where there is room, that no page breaks. */
function unbroken(columns: readonly Column[], rows: readonly Cell[][], width: number): Run[] {
  const runs = table(columns, rows, { width });
  const step = tableWidth(columns, rows, { width }) + listGap;
  const across = Math.floor((width + listGap) / step);
  if (across < 2 || runs.length !== rows.length) return runs;
  const each = Math.ceil(runs.length / across);
  const drawings = Array.from({ length: Math.ceil(runs.length / each) }, (_, index) => {
    const own = runs.slice(index * each, (index + 1) * each);
    const head = own[0]?.heading;
    return joined([...(head ? [{ drawing: head }] : []), ...own.map(({ drawing }) => ({ drawing }))], step);
  });
  const marks = drawings.map((drawing, index) => group({ x: index * step, y: 0 }, drawing.marks));
  return [{ drawing: { width, height: Math.max(...drawings.map(({ height }) => height)), marks } }];
}
