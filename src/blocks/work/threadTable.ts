import { formatFixed, trimmed } from "../../quantity/format.js";
import { fromMm, MM_PER_INCH } from "../../quantity/length.js";
import type { ThreadSystem } from "../../thread/data.js";
import { threadSource } from "../../thread/sources.js";
import { dieBlank, type Thread, tappingHole, threadsOf, turnsFor, USUAL_ENGAGEMENT } from "../../thread/thread.js";
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
  ({ settings, width }): Run[] => {
    const wanted = systems.filter((system) => settings.systems.includes(system));
    const share = settings.engagement / 100;
    const tables = wanted.flatMap((system) => {
      const rows = threadsOf(system).filter(({ major }) => major <= settings.largest);
      return rows.length === 0
        ? []
        : [...heading(titles[system], width, 4), ...systemTable(rows, share, settings.depth, width)];
    });
    const sources = [...new Set(wanted.flatMap((system) => threadsOf(system).flatMap((row) => row.sources)))];
    return [
      ...tables,
      ...paragraph(
        `Drill for ${settings.engagement} % = major − ${trimmed(share, 2)} × full depth on diameter, which is 1.299 pitches (60°), 1.281 (Whitworth) or 1.2 (BA); take the nearest drill, the larger for hard material. Rod for a die = major − pitch ÷ 10 (common practice). Sizes and drills from: ${sources.map(threadSource).join("; ")}.`,
        width,
        { size: size.tiny, gap: 2 },
      ),
    ];
  },
  { systems },
);

function systemTable(rows: readonly Thread[], share: number, depth: number, width: number): Run[] {
  const columns: Column[] = [
    { heading: ["thread"], align: "start" },
    { heading: ["major", "mm"], align: "decimal" },
    { heading: ["major", "in"], align: "decimal" },
    { heading: ["pitch", "mm"], align: "decimal" },
    { heading: ["threads", "per inch"], align: "decimal" },
    { heading: [`drill for ${trimmed(share * 100, 0)} %`, "mm"], align: "decimal" },
    { heading: ["published drill", "mm"], align: "decimal" },
    { heading: ["leaves", "%"], align: "decimal" },
    { heading: ["rod for die", "mm"], align: "decimal" },
    { heading: [`turns for ${trimmed(depth, 1)} mm`], align: "decimal" },
  ];
  const cells = rows.map((thread): Cell[] => [
    { text: thread.fromMemory ? `${thread.name} *` : thread.name, weight: "bold" },
    { text: formatFixed(thread.major, 2) },
    { text: formatFixed(fromMm(thread.major, "in"), 4) },
    { text: formatFixed(thread.pitch, 3) },
    { text: trimmed(MM_PER_INCH / thread.pitch, 1) },
    { text: formatFixed(tappingHole(thread, share), 2), weight: "bold" },
    {
      text: thread.publishedDrill === undefined ? "" : formatFixed(thread.publishedDrill, 2),
      ...(thread.drillName && { note: thread.drillName }),
    },
    { text: thread.publishedEngagement === undefined ? "" : formatFixed(thread.publishedEngagement * 100, 0) },
    { text: formatFixed(dieBlank(thread), 2) },
    { text: formatFixed(turnsFor(depth, thread.pitch), 1) },
  ]);
  const note = rows.some(({ fromMemory }) => fromMemory)
    ? paragraph("* size from memory, not seen in print: measure the tap", width, { size: size.tiny })
    : [];
  return [...table(columns, cells, { width, size: size.small, ruleEvery: 5 }), ...note];
}
