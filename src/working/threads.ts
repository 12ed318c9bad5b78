import { formatFixed, trimmed } from "../quantity/format.js";
import { type ThreadSystem, threads } from "../thread/data.js";
import { threadSource } from "../thread/sources.js";
import {
  depthOnDiameter,
  dieBlank,
  type Thread,
  tappingHole,
  threadNamed,
  turnsFor,
  USUAL_ENGAGEMENT,
} from "../thread/thread.js";
import type { Source, Subject, Working } from "./working.js";

/** The hole for a tap, for every thread of the tables. */
export const explainTappingHole = (): Subject[] =>
  threads.map(({ name, system }) => ({
    name,
    explain: () => {
      const thread = threadNamed(name);
      return thread === undefined ? { missing: `there is no thread ${name}` } : working(thread, system);
    },
  }));

function working(thread: Thread, system: ThreadSystem): Working {
  const source: Source = thread.fromMemory
    ? { from: "assumed", why: "size from memory, not seen in print: measure the tap" }
    : { from: "looked up", source: thread.sources.map(threadSource).join("; ") };
  const published =
    thread.publishedDrill === undefined || thread.publishedEngagement === undefined
      ? []
      : [
          `the published drill, ${trimmed(thread.publishedDrill, 3)} mm${thread.drillName ? ` (${thread.drillName})` : ""}, leaves ${formatFixed(thread.publishedEngagement * 100, 0)} %`,
        ];
  return {
    title: `${thread.name}: hole for the tap`,
    formula: "hole = D − e k p, where k p is what the full thread takes off the diameter",
    inputs: [
      { name: "major diameter D", value: thread.major, unit: "mm", source },
      { name: "pitch p", value: thread.pitch, unit: "mm", source },
      {
        name: "k, full depth on diameter in pitches",
        value: depthOnDiameter[system],
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
      `the rod for a die is ${formatFixed(dieBlank(thread), 2)} mm, the major diameter less a tenth of the pitch`,
      `${formatFixed(turnsFor(10, thread.pitch), 1)} turns go 10 mm`,
    ],
  };
}
