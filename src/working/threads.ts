import type { Findings } from "../findings/findings.js";
import type { Units } from "../machine/machine.js";
import { formatFixed, formatSize, trimmedSize } from "../quantity/format.js";
import { inMm } from "../quantity/length.js";
import { threads } from "../thread/data.js";
import { threadSource } from "../thread/sources.js";
import {
  depthOnDiameter,
  designationOf,
  dieBlank,
  isSold,
  isTight,
  type Thread,
  TIGHT_ENGAGEMENT,
  tappingHole,
  threadNamed,
  turnsFor,
  turnsWritten,
  USUAL_ENGAGEMENT,
} from "../thread/thread.js";
import type { Source, Subject, Working } from "./working.js";

/** The hole for a tap, for every thread of the tables. */
export const explainTappingHole = ({ machine }: Findings): Subject[] =>
  threads.map((row) => ({
    name: designationOf(row),
    explain: () => {
      const thread = threadNamed(designationOf(row));
      return thread === undefined ? { missing: `there is no thread ${row.name}` } : working(thread, machine.units);
    },
  }));

function working(thread: Thread, units: Units): Working {
  const source: Source = thread.fromMemory
    ? { from: "assumed", why: "size from memory, not seen in print: measure the tap" }
    : { from: "looked up", source: thread.sources.map(threadSource).join("; ") };
  const published =
    thread.publishedDrill === undefined || thread.publishedEngagement === undefined || !isSold(thread, units)
      ? []
      : [
          `the published drill, ${trimmedSize(thread.publishedDrill, units)}${thread.drillName ? ` (${thread.drillName})` : ""}, leaves ${formatFixed(thread.publishedEngagement * 100, 0)} %${isTight(thread.publishedEngagement) ? `: over ${TIGHT_ENGAGEMENT * 100} % is hard on a tap turned by hand (common practice); rather the hole above` : ""}`,
        ];
  const reach = units === "mm" ? 10 : inMm(0.5, units);
  return {
    title: `${thread.designation}: hole for the tap`,
    formula: "hole = D − e k p, where k p is what the full thread takes off the diameter",
    inputs: [
      { name: "major diameter D", value: thread.major, unit: "mm", source },
      { name: "pitch p", value: thread.pitch, unit: "mm", source },
      {
        name: "k, full depth on diameter in pitches",
        value: depthOnDiameter[thread.system],
        unit: "",
        source: { from: "computed", how: "from the thread's form: 1.299 for 60°, 1.281 for Whitworth, 1.2 for BA" },
      },
      {
        name: "engagement e",
        value: USUAL_ENGAGEMENT,
        unit: "",
        source: { from: "assumed", why: "common practice for hand taps" },
      },
    ],
    result: { name: "hole", value: tappingHole(thread, USUAL_ENGAGEMENT), unit: "mm" },
    notes: [
      ...published,
      `the rod for a die is ${formatSize(dieBlank(thread), units)}, the major diameter less a tenth of the pitch`,
      `${turnsWritten(turnsFor(reach, thread.pitch))} turns go ${trimmedSize(reach, units)}`,
    ],
  };
}
