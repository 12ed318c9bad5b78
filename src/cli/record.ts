import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import * as z from "zod/mini";
import { mark } from "../drawing/ours.js";
import type { Print } from "../drawing/page.js";
import type { Findings } from "../findings/findings.js";
import type { Machine } from "../machine/machine.js";
import { languages } from "../words/languages.generated.js";
import { readIfThere, readText } from "./io.js";
import { stemOf } from "./stem.js";
import type { Output } from "./wholeFiles.js";

/** What was printed last of a machine: a small file beside its pages, so that `check` can tell which of them are out of date. No
 *  page is read for it and nothing of it is trusted: it is compared with what would be printed now. */

/** Made only where there is a record to read: most prints are the first. */
function recordShape() {
  /** Shown on a terminal, so without control characters. */
  const text = z.string().check(z.maxLength(LONGEST), z.regex(/^\P{Cc}*$/u));
  const number = z.number().check(z.minimum(-1e9), z.maximum(1e9));
  /** A file that the sheet was made from besides the machine's: where it lies from here, and what was in it. */
  const source = z.object({ path: text, digest: text });
  const dial = z.object({
    wheel: text,
    marks: text,
    perTurn: number,
    readsPerTurn: number,
    length: z.nullable(number),
    revision: z.optional(text),
  });
  const sheet = z.object({
    sheet: text,
    template: z.optional(source),
    /** Of a plan: the job's name and its file. */
    of: z.optional(text),
    job: z.optional(source),
    handwheels: z.optional(z.array(text)),
    revision: z.optional(text),
    measured: z.optional(text),
    /** English where it does not say. */
    language: z.optional(z.enum(languages)),
    /** Of the program, of the machine file, and of the printer's correction that it was printed with. */
    version: text,
    machine: text,
    printer: text,
    content: text,
  });
  const record = z.object({
    [mark]: z.literal(WHAT),
    sheets: z.array(sheet).check(z.maxLength(500)),
    /** Each handwheel's as it was printed last, whichever print it was in. */
    dials: z.array(dial).check(z.maxLength(500)),
  });
  return { sheet, dial, record };
}
type Shape = ReturnType<typeof recordShape>;

export type PrintedSheet = z.output<Shape["sheet"]>;
export type PrintedDial = z.output<Shape["dial"]>;
export type PrintRecord = z.output<Shape["record"]>;

const WHAT = "what was printed; witnessmark check compares it with the machine file";
const LONGEST = 1000;
/** No true record is larger; it would only keep the user waiting. */
const LARGEST = 1_000_000;

export const recordPath = (out: string, machineFile: string): string =>
  join(out, `${stemOf(machineFile)}-printed.json`);

/** "none" where there is no such file, "unreadable" where it cannot be understood. */
export function readRecord(path: string): PrintRecord | "none" | "unreadable" {
  const bytes = readIfThere(path);
  if (bytes === undefined) return "none";
  if (bytes.length > LARGEST) return "unreadable";
  try {
    return z.safeParse(recordShape().record, JSON.parse(new TextDecoder().decode(bytes))).data ?? "unreadable";
  } catch {
    return "unreadable";
  }
}

/** What was recorded before, with what was printed now in place of it: pages of the same names, dials of the same wheels. */
export function recordOutput(
  path: string,
  before: PrintRecord | undefined,
  now: Pick<PrintRecord, "sheets" | "dials">,
): Output {
  const merged = <T>(old: readonly T[] | undefined, fresh: readonly T[], key: (one: T) => string): T[] =>
    [...new Map([...(old ?? []), ...fresh].map((one) => [key(one), one])).values()].sort((a, b) =>
      key(a) < key(b) ? -1 : 1,
    );
  const whole: PrintRecord = {
    [mark]: WHAT,
    sheets: merged(before?.sheets, now.sheets, ({ sheet, of = "" }) => `${sheet} ${of}`),
    dials: merged(before?.dials, now.dials, ({ wheel }) => wheel),
  };
  const kept = (_: string, value: unknown) => (typeof value === "string" ? asRecorded(value) : value);
  return { path, bytes: `${JSON.stringify(whole, kept, 1)}\n` };
}

/** A name as the record holds it. */
export const asRecorded = (words: string): string => words.replace(/\p{Cc}/gu, " ").slice(0, LONGEST);

/** Of what the pages show, but for the note on the printer's correction. */
export const contentDigest = ({ pages }: Print): string => digest(JSON.stringify(pages.map(({ drawing }) => drawing)));

/** Of all that the machine file says but for revision and date, which stand on every page and change none of its numbers. */
export function machineDigest({ revision: _, measured: __, written, ...rest }: Machine): string {
  return digest(JSON.stringify([rest, [...(written ?? [])]]));
}

export const printerDigest = ({ paper, printers }: Machine): string =>
  digest(JSON.stringify(paper.printer === undefined ? {} : (printers[paper.printer] ?? {})));

const digest = (words: string): string => createHash("sha256").update(words).digest("hex").slice(0, 24);

/** A file that a sheet was made from. `record`: the record's path, from which it is named wherever one stands. */
export const sourceOf = (file: string, record: string): NonNullable<PrintedSheet["job"]> => ({
  path: relative(resolve(dirname(record)), resolve(file)),
  digest: digest(readText(file)),
});

/** Where such a file lies; undefined where it is gone. */
export function sourcePath({ path }: NonNullable<PrintedSheet["job"]>, record: string): string | undefined {
  const file = relative(".", resolve(dirname(record), path));
  return existsSync(file) ? file : undefined;
}

/** Said where nothing is out of date. */
export const upToDate = ({ sheets }: PrintRecord): string[] => [
  "",
  sheets.length === 1
    ? "What was printed is up to date."
    : `All ${sheets.length} sheets that were printed are up to date.`,
];

/** Whether anything at all can have changed since: a look at digests alone. */
export function mayDiffer({ sheets }: PrintRecord, { machine }: Findings, version: string, record: string): boolean {
  const [now, printer] = [machineDigest(machine), printerDigest(machine)];
  const changed = (source: PrintedSheet["job"]) => {
    if (source === undefined) return false;
    const file = sourcePath(source, record);
    return file === undefined || digest(readText(file)) !== source.digest;
  };
  return sheets.some(
    (sheet) =>
      sheet.machine !== now ||
      sheet.printer !== printer ||
      sheet.version !== version ||
      changed(sheet.template) ||
      changed(sheet.job),
  );
}
