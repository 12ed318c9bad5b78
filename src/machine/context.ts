import type { Units } from "./machine.js";
import type { Path, Remark } from "./problem.js";
import type { FeedText, LengthText, MachineFile } from "./schema.js";

export type Report = (remark: Remark) => void;
export type Raw<K extends keyof MachineFile> = NonNullable<MachineFile[K]>;

/** What the assembling functions share: the file's unit, and where to tell a fault. */
export type Context = {
  readonly units: Units;
  readonly mm: (length: LengthText) => number;
  readonly feedMm: (feed: FeedText) => number;
  readonly error: (path: Path, code: string, what: string, remedy: string) => void;
  readonly warn: (path: Path, code: string, what: string, remedy: string) => void;
};
