import type { Units } from "../../machine/machine.js";
import { formatFixed, trimmed, trimmedSize } from "../../quantity/format.js";
import { fromMm, inMm, MM_PER_INCH } from "../../quantity/length.js";
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
import { block, type Run } from "../shared/block.js";
import { heading } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";

const systems: readonly ThreadSystem[] = ["metric coarse", "metric fine", "UNC", "UNF", "BA", "BSW", "BSF", "ME"];
const titles: Readonly<Record<ThreadSystem, string>> = {
  "metric coarse": "Metric coarse",
  "metric fine": "Metric fine",
  UNC: "Unified coarse, UNC",
  UNF: "Unified fine, UNF",
  BA: "British Association, BA",
  BSW: "British Standard Whitworth, BSW",
  BSF: "British Standard Fine, BSF",
  ME: "32 and 40 threads per inch, Whitworth form",
};

/** Sizes, tapping drills at a stated engagement, rods for dies, and turns for a depth. */
export const threadTable = block(
  { systems: [...systems] as string[], engagement: 100 * USUAL_ENGAGEMENT, depth: 10, largest: 13 },
  ({ findings, settings, width }): Run[] => {
    const { units } = findings.machine;
    // Half an inch stands for the usual 10 mm.
    const depth = units === "mm" ? settings.depth : inMm(Math.max(1, Math.round(settings.depth / 12.5)) / 2, units);
    const wanted = systems.filter((system) => settings.systems.includes(system));
    const share = settings.engagement / 100;
    const tables = wanted.flatMap((system) => {
      const rows = threadsOf(system).filter(({ major }) => major <= settings.largest);
      return rows.length === 0
        ? []
        : [...heading(titles[system], width, 4), ...systemTable(rows, share, depth, units, width)];
    });
    const sources = [...new Set(wanted.flatMap((system) => threadsOf(system).flatMap((row) => row.sources)))];
    return [
      ...tables,
      ...paragraph(
        `Drill for ${settings.engagement} % = major − ${trimmed(share, 2)} × full depth on diameter, which is 1.299 pitches (60°), 1.281 (Whitworth) or 1.2 (BA); take the nearest drill, the larger for hard material. Tight: a published drill that leaves over ${TIGHT_ENGAGEMENT * 100} % is hard on a tap turned by hand (common practice); drill for ${settings.engagement} % instead. Rod for a die = major − pitch ÷ 10 (common practice). Sizes and drills from: ${sources.map(threadSource).join("; ")}.`,
        width,
        { size: size.tiny, gap: 2 },
      ),
    ];
  },
  { systems },
);

function systemTable(rows: readonly Thread[], share: number, depth: number, units: Units, width: number): Run[] {
  const other: Units = units === "mm" ? "in" : "mm";
  const metric = rows.every(({ system }) => ["metric coarse", "metric fine", "BA"].includes(system));
  // Threads that are defined in mm keep their pitch in mm.
  const pitchIn: Units = metric ? "mm" : units;
  const majorPlaces: Record<Units, number> = { mm: 2, in: 4 };
  const major = (mm: number, unit: Units) => formatFixed(fromMm(mm, unit), majorPlaces[unit]);
  const hole = (mm: number) => formatFixed(fromMm(mm, units), majorPlaces[units]);
  const columns: Column[] = [
    { heading: ["thread"], align: "start" },
    { heading: ["major", units], align: "decimal" },
    { heading: ["major", other], align: "decimal" },
    { heading: ["pitch", pitchIn], align: "decimal" },
    { heading: ["threads", "per inch"], align: "decimal" },
    { heading: [`drill for ${trimmed(share * 100, 0)} %`, units], align: "decimal" },
    { heading: ["published drill", units], align: "decimal" },
    { heading: ["leaves", "%"], align: "decimal" },
    { heading: ["rod for die", units], align: "decimal" },
    { heading: [`turns for ${trimmedSize(depth, units, 1)}`], align: "decimal" },
  ];
  const cells = rows.map((thread): Cell[] => [
    { text: thread.fromMemory ? `${thread.name} *` : thread.name, weight: "bold" },
    { text: major(thread.major, units) },
    { text: major(thread.major, other) },
    { text: formatFixed(fromMm(thread.pitch, pitchIn), pitchIn === "mm" ? 3 : 5) },
    { text: trimmed(MM_PER_INCH / thread.pitch, 1) },
    { text: hole(tappingHole(thread, share)), weight: "bold" },
    {
      text: thread.publishedDrill === undefined ? "" : hole(thread.publishedDrill),
      ...drillNote(thread, units),
    },
    engagementCell(thread),
    { text: hole(dieBlank(thread)) },
    { text: formatFixed(turnsFor(depth, thread.pitch), 1) },
  ]);
  const note = rows.some(({ fromMemory }) => fromMemory)
    ? paragraph("* size from memory, not seen in print: measure the tap", width, { size: size.tiny })
    : [];
  return [...table(columns, cells, { width, size: size.small, ruleEvery: 5 }), ...note];
}

function engagementCell(thread: Thread): Cell {
  if (thread.publishedEngagement === undefined) return { text: "" };
  const text = formatFixed(thread.publishedEngagement * 100, 0);
  return isTight(thread) ? { text, note: "tight", weight: "bold", ink: "accent" } : { text };
}

/** The name that is stamped on the drill: its number, letter or fraction; a metric one is called by its millimetres. */
function drillNote({ drillName, publishedDrill }: Thread, units: Units): { note?: string } {
  if (drillName !== undefined) return { note: drillName };
  return units === "mm" || publishedDrill === undefined ? {} : { note: `${trimmed(publishedDrill, 2)} mm` };
}
