import type { Drawing } from "../../drawing/drawing.js";
import { beyondTheDrillLimit, largestDrill } from "../../findings/drills.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, trimmed, trimmedSize, unitName } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import type { ThreadSystem } from "../../thread/data.js";
import { nearestInchDrill, nextDrill } from "../../thread/nextDrill.js";
import { threadOnPaper } from "../../thread/onPaper.js";
import { threadSource } from "../../thread/sources.js";
import {
  dieBlank,
  engagementOf,
  isSold,
  isTight,
  type Thread,
  TIGHT_ENGAGEMENT,
  tappingHole,
  threadsOf,
  turnsFor,
  turnsWritten,
  USUAL_ENGAGEMENT,
} from "../../thread/thread.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, joined, keyed, keyOf } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { measure, widthOf } from "../shared/tableWidths.js";

const systems: readonly ThreadSystem[] = ["metric coarse", "metric fine", "UNC", "UNF", "BA", "BSW", "BSF", "ME"];
/** Defined in mm. */
const metric: readonly ThreadSystem[] = ["metric coarse", "metric fine", "BA"];
const places: Readonly<Record<Units, number>> = { mm: 2, in: 4 };

/** Between columns, above a series; mm. */
const listGap = 1.2;
const above = 6;
/** A title stands over so many rows at least. */
const LEAST_ROWS = 5;

/** A series as a table that may stand beside others. */
type Series = {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Cell[][];
  /** Of each row. */
  readonly keys: readonly (readonly Drawing[])[];
};

/** A column, and its cell for each thread. */
type Part = { readonly shown?: boolean; readonly column: Column; readonly cell: (thread: Drilled) => Cell };

/** Sizes, tapping drills at a stated engagement, rods for dies, and turns for a depth: series by series, those of the machine's own
 *  unit first. */
export const threadTable = block(
  { systems: [...systems] as string[], engagement: 100 * USUAL_ENGAGEMENT, depth: 10, largest: 25.4 },
  ({ findings, settings, width }): Run[] => {
    const { units, limits } = findings.machine;
    // Half an inch stands for the usual 10 mm.
    const depth = units === "mm" ? settings.depth : inMm(Math.max(1, Math.round(settings.depth / 12.5)) / 2, units);
    const wanted = ownUnitFirst(settings.systems as ThreadSystem[], units);
    const all = wanted.map((system) =>
      threadsOf(system)
        .filter(({ major }) => major <= settings.largest)
        .map((thread) => drilled(thread, settings.engagement / 100, units)),
    );
    // No hole is told that the machine's largest drill does not make.
    const threads = all.map((rows) => rows.filter(({ drill, hole }) => !beyondTheDrillLimit(drill ?? hole, limits)));
    const left = all.flat().length - threads.flat().length;
    const told =
      left === 0
        ? []
        : paragraph(
            say("threads.left out", {
              n: left,
              largest: trimmedSize(largestDrill(limits), units),
            }),
            width,
          );
    const signs = signKeys(settings.engagement, width);
    const series = threads.filter((rows) => rows.length > 0).map((rows) => seriesOf(rows, depth, units, signs));
    return [...told, ...sideBySide(series, width), ...origins(threads.flat(), settings.engagement, units, width)];
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
          ...keyedTable(series, width).map((run, index) =>
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
  const without = (gone: ReadonlySet<number>): Series => {
    const stays = (_: unknown, index: number) => !gone.has(index);
    return { ...series, columns: series.columns.filter(stays), rows: series.rows.map((row) => row.filter(stays)) };
  };
  const optional = series.columns.flatMap((column, index) => (column.optional ? [index] : []));
  const [all, fewer] = [beside(series), beside(without(new Set(optional)))];
  if (fewer <= all) return { series, count: all };
  // Of the optional ones as many as there is width for all the same, the last first.
  const gone = new Set(optional);
  for (const index of [...optional].reverse()) {
    gone.delete(index);
    if (beside(without(gone)) < fewer) gone.add(index);
  }
  return { series: without(gone), count: fewer };
}

/** Its title, head and first rows never part, nor its last rows; title and head come again at the top of the next column, which says that it goes on. */
function listed(series: Series, width: number): Run[] {
  const runs = keyedTable(series, width);
  const titled = heading(series.title, width, 0);
  const again = heading(say("page.goes on", { name: series.title }), width, 0);
  const keysIn = (some: readonly Run[]) => some.flatMap(({ keys = [] }) => keys);
  const [first, rest] = [runs.slice(0, LEAST_ROWS), runs.slice(LEAST_ROWS)];
  const last = rest.splice(-LEAST_ROWS);
  const below = [
    ...rest,
    ...(last.length > 0 ? [{ ...last[0], drawing: joined(last, width), keys: keysIn(last) }] : []),
  ];
  return [
    { drawing: joined([...titled, ...first], width), gap: above, keys: keysIn(first) },
    ...below.map((run) => ({
      ...run,
      ...(run.heading && { heading: joined([...again, { drawing: run.heading }], width) }),
    })),
  ];
}

const keyedTable = ({ columns, rows, keys }: Series, width: number): Run[] =>
  keyed(table(columns, rows, { width }), (row) => keys[row % rows.length] ?? []);

/** A thread with the hole that is asked for, and the drill: the published one, on an inch machine the nearest to it that is sold in
 *  inches; where none is published the next usual one above that hole. */
type Drilled = Thread & {
  readonly hole: number;
  readonly share: number;
  readonly drill: number | undefined;
  readonly stamped: string;
  readonly engaged: number | undefined;
};

function drilled(thread: Thread, share: number, units: Units): Drilled {
  const hole = tappingHole(thread, share);
  const { publishedDrill, publishedEngagement } = thread;
  if (publishedDrill !== undefined && isSold(thread, units))
    return {
      ...{ ...thread, hole, share },
      ...{ drill: publishedDrill, stamped: drillName(thread, units), engaged: publishedEngagement },
    };
  const usual = publishedDrill === undefined ? nextDrill(hole, units) : nearestInchDrill(publishedDrill);
  const engaged = usual && engagementOf(thread, usual.diameter);
  return { ...thread, hole, share, drill: usual?.diameter, stamped: stampedOn(usual?.name ?? ""), engaged };
}

function seriesOf(rows: readonly Drilled[], depth: number, units: Units, signs: readonly SignKey[]): Series {
  const { system, share } = rows[0] as Drilled;
  const figure = (mm: number) => formatFixed(fromMm(mm, units), places[units]);
  const unit = unitName(units);
  // A metric thread's name is its size in mm, a fine one's its pitch too; every inch thread's name holds its threads per inch.
  const sized = !(units === "mm" && system.startsWith("metric"));
  const pitched = system === "metric coarse" || system === "BA";
  const named = {
    drill: rows.some(({ stamped }) => stamped !== ""),
    size: system.startsWith("metric") || rows.every(({ name }) => /^\d+(\/\d+)?-/.test(name)),
  };
  const all: readonly Part[] = [
    {
      column: { heading: [say("threads.thread")], align: "start", key: true },
      cell: ({ name, fromMemory }) => ({ text: `${threadOnPaper(name)}${fromMemory ? "*" : ""}`, weight: "bold" }),
    },
    {
      shown: sized,
      // Where there is no room beside, what the name says goes: the size, and turns of those called by their turns to the inch.
      column: { heading: [say("threads.size"), unit], align: "decimal", optional: units === "in" && named.size },
      cell: ({ major }) => ({ text: figure(major) }),
    },
    {
      shown: pitched,
      column: { heading: [say("threads.pitch"), unitName("mm")], align: "decimal", optional: units === "in" },
      cell: ({ pitch }) => ({ text: formatFixed(pitch, 2) }),
    },
    {
      column: { heading: [say("threads.drill for", { percent: trimmed(share * 100, 0) }), unit], align: "decimal" },
      cell: ({ hole }) => ({ text: figure(hole), weight: "bold" }),
    },
    {
      shown: named.drill,
      // Whoever measures in mm finds the drill by its mm, whoever measures in inches by what is stamped on it.
      column: { heading: [say("threads.drill")], align: "end", optional: units === "mm" },
      cell: (thread) => signed(thread.stamped, thread),
    },
    {
      column: { heading: [say("threads.drill"), unit], align: "decimal" },
      cell: ({ drill }) => ({ text: drill === undefined ? "" : figure(drill) }),
    },
    {
      column: { heading: [say("threads.full"), "%"], align: "start", optional: units === "in" },
      cell: (thread) => signed(thread.engaged === undefined ? "" : formatFixed(thread.engaged * 100, 0), thread),
    },
    {
      column: { heading: [say("threads.rod"), unit], align: "decimal" },
      cell: (thread) => ({ text: figure(dieBlank(thread)) }),
    },
    {
      column: {
        heading: [say("threads.turns"), trimmedSize(depth, units, 1)],
        align: "decimal",
        optional: units === "in" && !named.size && !metric.includes(system),
      },
      cell: ({ pitch }) => ({ text: turnsWritten(turnsFor(depth, pitch)) }),
    },
  ];
  const shown = all.filter(({ shown = true }) => shown);
  const columns = shown.map(({ column }) => column);
  const cells = rows.map((thread) => shown.map(({ cell }) => cell(thread)));
  const keys = rows.map((thread) => signs.flatMap(({ borne, key }) => (borne(thread) ? [key] : [])));
  return { title: say(`threads.series ${system}`), columns, rows: cells, keys };
}

/** With a sign behind it where the hole is tight or the drill is not a published one; the page's foot says what they mean. */
function signed(text: string, thread: Drilled): Cell {
  if (text === "") return { text };
  if (isTight(thread.engaged)) return { text: `${text}!`, weight: "bold" };
  return { text: thread.publishedDrill === undefined ? `${text}+` : text };
}

/** What is stamped on the drill: its number, letter or fraction; a metric one is called by its millimetres. */
function drillName({ drillName, publishedDrill }: Thread, units: Units): string {
  if (drillName !== undefined) return stampedOn(drillName);
  return units === "mm" || publishedDrill === undefined ? "" : `${trimmed(publishedDrill, 2)} mm`;
}

/** A number drill in the words of the paper. */
function stampedOn(name: string): string {
  const number = /^No\. (\d+)$/i.exec(name)?.[1];
  return number === undefined ? name.replace(/ in$/, "") : say("threads.number drill", { number });
}

/** What a sign means, and which threads bear it. */
type SignKey = { readonly borne: (thread: Drilled) => boolean; readonly key: Drawing };

function signKeys(engagement: number, width: number): SignKey[] {
  const percent = trimmed(engagement, 1);
  const key = (words: string) => keyOf(words, width);
  return [
    {
      borne: ({ engaged }) => isTight(engaged),
      key: key(say("threads.tight", { percent, most: trimmed(TIGHT_ENGAGEMENT * 100, 0) })),
    },
    {
      borne: ({ publishedDrill, engaged }) => publishedDrill === undefined && !isTight(engaged),
      key: key(say("threads.next drill", { percent })),
    },
    { borne: ({ fromMemory }) => fromMemory === true, key: key(say("threads.from memory")) },
  ];
}

/** Where the numbers come from. */
function origins(threads: readonly Drilled[], engagement: number, units: Units, width: number): Run[] {
  const percent = trimmed(engagement, 1);
  const sources = [...new Set(threads.flatMap(({ sources }) => sources))];
  const words = [
    say("threads.how", { percent, share: trimmed(engagement / 100, 3) }),
    ...(threads.some((thread) => thread.publishedDrill !== undefined && !isSold(thread, units))
      ? [say("threads.nearest in inches")]
      : []),
    say("threads.sources", { sources: sources.map(threadSource).join("; ") }),
  ];
  return words.flatMap((one, index) => paragraph(one, width, { size: size.source, gap: index === 0 ? 2 : 0 }));
}
