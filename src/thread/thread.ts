import { trimmed } from "../quantity/format.js";
import type { LengthUnit } from "../quantity/length.js";
import { pitchOf } from "../quantity/thread.js";
import { type PublishedThread, type ThreadSystem, threads } from "./data.js";

/** A thread with everything that follows from its major diameter, pitch and form; mm. */
export type Thread = {
  readonly system: ThreadSystem;
  readonly name: string;
  /** What tells it from all others: its name, with its system where two share that. */
  readonly designation: string;
  readonly major: number;
  readonly pitch: number;
  /** Share of the full thread depth that the published drill leaves in the hole; absent without one. */
  readonly publishedEngagement?: number;
  readonly publishedDrill?: number;
  readonly drillName?: string;
  readonly sources: readonly string[];
  readonly fromMemory: boolean;
};

/** What a full thread takes off the diameter, in pitches: the basis of "100 %" here and in the tables that this was checked
 *  against. 60° forms: twice 3/4 H = 1.299038 p; Whitworth 55°: twice 0.640327 p; BA 47.5°: twice 0.6 p. */
export const depthOnDiameter: Readonly<Record<ThreadSystem, number>> = {
  "metric coarse": 1.299038,
  "metric fine": 1.299038,
  UNC: 1.299038,
  UNF: 1.299038,
  BSW: 1.280655,
  BSF: 1.280655,
  ME: 1.280655,
  BA: 1.2,
};

/** Share of the full depth that holes for hand taps leave. Common practice. */
export const USUAL_ENGAGEMENT = 0.75;

/** A hole that leaves more than this is hard on a tap turned by hand. Common practice. */
export const TIGHT_ENGAGEMENT = 0.8;
export const isTight = (engagement = 0): boolean => engagement > TIGHT_ENGAGEMENT + 5e-4;

/** Hole for a tap, mm: major − engagement · depth · pitch; engagement as a fraction of full depth. */
export const tappingHole = (
  thread: { system: ThreadSystem; major: number; pitch: number },
  engagement: number,
): number => thread.major - engagement * depthOnDiameter[thread.system] * thread.pitch;

/** Share of the full depth that a hole leaves, the inverse of `tappingHole`. */
export const engagementOf = (thread: { system: ThreadSystem; major: number; pitch: number }, hole: number): number =>
  (thread.major - hole) / (depthOnDiameter[thread.system] * thread.pitch);

/** Rod for a die, mm: the major diameter less a tenth of the pitch, since the die raises the crests. Common practice. */
export const dieBlank = ({ major, pitch }: { major: number; pitch: number }): number => major - pitch / 10;

/** Turns of tap or die for a depth of thread, mm. */
export const turnsFor = (depth: number, pitch: number): number => depth / pitch;

/** Turns as they are counted at the work, where a quarter is one: 6.25, not 6.3. */
export const turnsWritten = (turns: number): string => trimmed(turns, 2);

/** BA by formula (BS 93 as commonly quoted): pitch 0.9ⁿ mm, major 6 p^1.2 mm. */
export function baByFormula(number: number): { pitch: number; major: number } {
  const pitch = 0.9 ** number;
  return { pitch, major: 6 * pitch ** 1.2 };
}

const shared = new Set(threads.map(({ name }) => name).filter((name, index, all) => all.indexOf(name) !== index));

/** A thread's name, with its system where two of them share it: "M6", but "1/4-20 UNC" and "1/4-20 BSW". */
export const designationOf = ({ name, system }: PublishedThread): string =>
  shared.has(name) ? `${name} ${system}` : name;

/** Without case, spaces, signs for "number" and "times", noughts behind a point, or a comma for one: M8×1, M8x1.0 and m8 x 1,0
 *  are one. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll("×", "x")
    .replaceAll(/(?<=\d),(?=\d)/g, ".")
    .replace(/\s/g, "")
    .replace(/^(?:no\.?|#)(?=\d)/, "")
    .replace(/(\.\d*?)0+(?!\d)/g, "$1")
    .replace(/\.(?!\d)/g, "");

/** Size and system, where they leave no doubt: 1/4 BSF. */
const bySize = ({ name, system }: PublishedThread): string => plain(name.split("-")[0] + system);

/** A coarse thread with its pitch, which its name leaves out and drawings often do not: M10x1.5. */
const writtenOut = ({ name, system, pitch }: PublishedThread): string[] =>
  system === "metric coarse" ? [plain(`${name}x${pitch}`)] : [];

/** Designations of the threads that a name written by hand may mean, whatever its case and spaces; its system may stand
 *  behind it. Several where it does not tell them apart. */
export const threadsMeant = (text: string): string[] =>
  threads
    .filter((row) =>
      [plain(row.name), plain(row.name + row.system), bySize(row), ...writtenOut(row)].includes(plain(text)),
    )
    .map(designationOf);

/** What a name says before its pitch or its threads to the inch. */
const sizeIn = (text: string): string => plain(text).replace(/(?<=\d)[x-].*$/, "");

/** Designations of all threads of the size that a name written by hand begins with. */
export const threadsOfSize = (text: string): string[] =>
  threads.filter(({ name }) => sizeIn(name) === sizeIn(text)).map(designationOf);

let rows: ReadonlyMap<string, PublishedThread> | undefined;

/** By its designation. */
export function threadNamed(designation: string): Thread | undefined {
  rows ??= new Map(threads.map((row) => [plain(designationOf(row)), row]));
  const row = rows.get(plain(designation));
  return row && complete(row);
}

export const threadsOf = (system: ThreadSystem): Thread[] =>
  threads.filter((row) => row.system === system).map(complete);

/** "M8x1.0" as a drawing writes it: "M8 × 1". */
const spaced = (name: string): string => name.replace("x", " × ").replace(/\.0$/, "");

function complete(row: PublishedThread): Thread {
  const pitch = row.tpi === undefined ? (row.pitch ?? 0) : pitchOf(row.tpi);
  const { system, name, major, drill, drillName } = row;
  return {
    system,
    name: spaced(name),
    designation: spaced(designationOf(row)),
    major,
    pitch,
    ...(drill !== undefined && {
      publishedDrill: drill,
      publishedEngagement: engagementOf({ system, major, pitch }, drill),
    }),
    // Bare figures are drill numbers.
    ...(drillName !== undefined && { drillName: /^\d+$/.test(drillName) ? `No. ${drillName}` : drillName }),
    sources: row.source.split(" "),
    fromMemory: row.memory === true,
  };
}

/** Whether the published drill is in the shop's box: on an inch machine one of millimetres is there for metric threads alone. */
export const isSold = ({ system, drillName }: Pick<Thread, "system" | "drillName">, units: LengthUnit): boolean =>
  units === "mm" || drillName !== undefined || system.startsWith("metric");
