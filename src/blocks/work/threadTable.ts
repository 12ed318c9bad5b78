import type { Units } from "../../machine/machine.js";
import { formatFixed, trimmed, trimmedSize, unitName } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import type { ThreadSystem } from "../../thread/data.js";
import { threadSource } from "../../thread/sources.js";
import {
  dieBlank,
  isTight,
  type Thread,
  TIGHT_ENGAGEMENT,
  tappingHole,
  threadsOf,
  turnsFor,
  USUAL_ENGAGEMENT,
} from "../../thread/thread.js";
import { inDecimals, say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, joined } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { measure, widthOf } from "../shared/tableWidths.js";

const systems: readonly ThreadSystem[] = ["metric coarse", "metric fine", "UNC", "UNF", "BA", "BSW", "BSF", "ME"];
/** Defined in mm. */
const metric: readonly ThreadSystem[] = ["metric coarse", "metric fine", "BA"];
const places: Readonly<Record<Units, number>> = { mm: 2, in: 4 };

/** Between columns, above a series; mm. */
const listGap = 5;
const above = 6;
/** A title stands over so many rows at least. */
const LEAST_ROWS = 3;

/** A series as a table that may stand beside others. */
type Series = { readonly title: string; readonly columns: readonly Column[]; readonly rows: readonly Cell[][] };

/** A column, and its cell for each thread. */
type Part = { readonly shown?: boolean; readonly column: Column; readonly cell: (thread: Thread) => Cell };

/** Sizes, tapping drills at a stated engagement, rods for dies, and turns for a depth: series by series, those of the machine's own
 *  unit first. */
export const threadTable = block(
  { systems: [...systems] as string[], engagement: 100 * USUAL_ENGAGEMENT, depth: 10, largest: 13 },
  ({ findings, settings, width }): Run[] => {
    const { units } = findings.machine;
    // Half an inch stands for the usual 10 mm.
    const depth = units === "mm" ? settings.depth : inMm(Math.max(1, Math.round(settings.depth / 12.5)) / 2, units);
    const wanted = ownUnitFirst(settings.systems as ThreadSystem[], units);
    const threads = wanted.map((system) => threadsOf(system).filter(({ major }) => major <= settings.largest));
    const series = threads
      .filter((rows) => rows.length > 0)
      .map((rows) => seriesOf(rows, settings.engagement / 100, depth, units));
    return [...sideBySide(series, width), ...notes(threads.flat(), settings.engagement, width)];
  },
  { systems },
);

const ownUnitFirst = (wanted: readonly ThreadSystem[], units: Units): ThreadSystem[] => {
  const isOwn = (system: ThreadSystem) => metric.includes(system) === (units === "mm");
  return [...wanted.filter(isOwn), ...wanted.filter((system) => !isOwn(system))];
};

/** Neighbours of which equally many fit beside each other run down one column and on to the next. */
function sideBySide(all: readonly Series[], width: number): Run[] {
  let open: Run["list"];
  return all.flatMap((one): Run[] => {
    const { series, count } = fitted(one, width);
    const own = (width - (count - 1) * listGap) / count;
    if (count === 1) open = undefined;
    else if (open?.columns !== count) open = { columns: count, step: own + listGap };
    const list = open;
    return list === undefined
      ? [
          ...heading(series.title, width, above),
          ...table(series.columns, series.rows, { width }).map((run, index) =>
            index < LEAST_ROWS - 1 ? { ...run, keepWithNext: true } : run,
          ),
        ]
      : listed(series, own).map((run) => ({ ...run, list }));
  });
}

/** How many tables as wide as this stand beside each other without a word broken; one column more where what is optional makes
 *  room for it. */
function fitted(series: Series, width: number): { readonly series: Series; readonly count: number } {
  const beside = ({ columns, rows }: Series) => {
    const own = widthOf(measure(columns, rows, Number.POSITIVE_INFINITY, size.text));
    return Math.max(1, Math.floor((width + listGap) / (own + listGap)));
  };
  const kept = series.columns.flatMap(({ optional }, index) => (optional ? [] : [index]));
  const lean: Series = {
    ...series,
    columns: kept.map((index) => series.columns[index] as Column),
    rows: series.rows.map((row) => kept.map((index) => row[index] as Cell)),
  };
  const [all, fewer] = [beside(series), beside(lean)];
  return fewer > all ? { series: lean, count: fewer } : { series, count: all };
}

/** Its title, head and first rows never part, nor its last rows; title and head come again at the top of the next column. */
function listed({ title, columns, rows }: Series, width: number): Run[] {
  const runs = table(columns, rows, { width });
  const titled = heading(title, width, 0);
  const [first, rest] = [runs.slice(0, LEAST_ROWS), runs.slice(LEAST_ROWS)];
  const last = rest.splice(-LEAST_ROWS);
  const below = [...rest, ...(last.length > 0 ? [{ ...last[0], drawing: joined(last, width) }] : [])];
  return [
    { drawing: joined([...titled, ...first], width), gap: above },
    ...below.map((run) => ({
      ...run,
      ...(run.heading && { heading: joined([...titled, { drawing: run.heading }], width) }),
    })),
  ];
}

function seriesOf(rows: readonly Thread[], share: number, depth: number, units: Units): Series {
  const { system } = rows[0] as Thread;
  const figure = (mm: number) => formatFixed(fromMm(mm, units), places[units]);
  const unit = unitName(units);
  // A metric thread's name is its size in mm, a fine one's its pitch too; every inch thread's name holds its threads per inch.
  const sized = !(units === "mm" && system.startsWith("metric"));
  const pitched = system === "metric coarse" || system === "BA";
  const named = rows.some((thread) => drillName(thread, units) !== "");
  const published = rows.some(({ publishedDrill }) => publishedDrill !== undefined);
  const all: readonly Part[] = [
    {
      column: { heading: [say("threads.thread")], align: "start", key: true },
      cell: ({ name, fromMemory }) => ({ text: inDecimals(fromMemory ? `${name}*` : name), weight: "bold" }),
    },
    {
      shown: sized,
      column: { heading: [say("threads.size"), unit], align: "decimal" },
      cell: ({ major }) => ({ text: figure(major) }),
    },
    {
      shown: pitched,
      column: { heading: [say("threads.pitch"), unitName("mm")], align: "decimal", optional: units === "in" },
      cell: ({ pitch }) => ({ text: formatFixed(pitch, 2) }),
    },
    {
      column: { heading: [say("threads.drill for", { percent: trimmed(share * 100, 0) }), unit], align: "decimal" },
      cell: (thread) => ({ text: figure(tappingHole(thread, share)), weight: "bold" }),
    },
    {
      shown: named,
      // Whoever measures in mm finds the drill by its mm, whoever measures in inches by what is stamped on it.
      column: { heading: [say("threads.drill")], align: "end", optional: units === "mm" },
      cell: (thread) => signed(drillName(thread, units), thread),
    },
    {
      shown: published,
      column: { heading: [say("threads.drill"), unit], align: "decimal", optional: units === "in" },
      cell: ({ publishedDrill }) => ({ text: publishedDrill === undefined ? "" : figure(publishedDrill) }),
    },
    {
      shown: published,
      column: { heading: [say("threads.full"), "%"], align: "start", optional: units === "in" },
      cell: (thread) =>
        signed(
          thread.publishedEngagement === undefined ? "" : formatFixed(thread.publishedEngagement * 100, 0),
          thread,
        ),
    },
    {
      column: { heading: [say("threads.rod"), unit], align: "decimal" },
      cell: (thread) => ({ text: figure(dieBlank(thread)) }),
    },
    {
      column: { heading: [say("threads.turns"), trimmedSize(depth, units, 1)], align: "decimal" },
      cell: ({ pitch }) => ({ text: formatFixed(turnsFor(depth, pitch), 1) }),
    },
  ];
  const shown = all.filter(({ shown = true }) => shown);
  const columns = shown.map(({ column }) => column);
  const cells = rows.map((thread) => shown.map(({ cell }) => cell(thread)));
  return { title: say(`threads.series ${system}`), columns, rows: cells };
}

/** With a sign behind it where the hole is tight; the note below says what it means. */
const signed = (text: string, thread: Thread): Cell =>
  text !== "" && isTight(thread) ? { text: `${text}!`, weight: "bold", ink: "accent" } : { text };

/** What is stamped on the drill: its number, letter or fraction; a metric one is called by its millimetres. */
function drillName({ drillName, publishedDrill }: Thread, units: Units): string {
  const number = /^No\. (\d+)$/.exec(drillName ?? "")?.[1];
  if (number !== undefined) return say("threads.number drill", { number });
  if (drillName !== undefined) return drillName;
  return units === "mm" || publishedDrill === undefined ? "" : `${trimmed(publishedDrill, 2)} mm`;
}

/** The signs, then where the numbers come from. */
function notes(threads: readonly Thread[], engagement: number, width: number): Run[] {
  const percent = trimmed(engagement, 1);
  const sources = [...new Set(threads.flatMap(({ sources }) => sources))];
  const signs = [
    ...(threads.some(isTight) ? [say("threads.tight", { percent, most: trimmed(TIGHT_ENGAGEMENT * 100, 0) })] : []),
    ...(threads.some(({ fromMemory }) => fromMemory) ? [say("threads.from memory")] : []),
  ];
  const origins = [
    say("threads.how", { percent, share: trimmed(engagement / 100, 3) }),
    say("threads.sources", { sources: sources.map(threadSource).join("; ") }),
  ];
  return [
    ...signs.flatMap((sign, index) => paragraph(sign, width, { gap: index === 0 ? 3 : 0 })),
    ...origins.flatMap((words, index) => paragraph(words, width, { size: size.source, gap: index === 0 ? 2 : 0 })),
  ];
}
