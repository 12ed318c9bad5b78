import type { CsvReadings } from "./csvReadings.js";
import type { FeedText, LengthText } from "./fields.js";
import type { Units } from "./machine.js";
import type { Path, Remark } from "./problem.js";
import type { MachineFile } from "./schema.js";

/** Readings of CSV files by the name that the machine file gives them; undefined for one whose own faults are told. */
export type CsvFiles = ReadonlyMap<string, CsvReadings | undefined>;

export type Report = (remark: Remark) => void;
export type Raw<K extends keyof MachineFile> = NonNullable<MachineFile[K]>;

/** What the assembling functions share: the file's unit, and where to tell a fault. */
export type Context = {
  readonly units: Units;
  readonly mm: (length: LengthText) => number;
  readonly feedMm: (feed: FeedText) => number;
  /** A length in words, in the file's unit: "38 mm", "1.5 in". */
  readonly said: (mm: number, mmPlaces?: number) => string;
  readonly csv: CsvFiles;
  readonly error: (path: Path, code: string, what: string, remedy: string) => void;
  readonly warn: (path: Path, code: string, what: string, remedy: string) => void;
};
