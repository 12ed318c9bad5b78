import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { basename, extname, join } from "node:path";
import * as z from "zod/mini";
import { mark } from "../drawing/ours.js";
import type { Print } from "../drawing/page.js";
import type { Findings } from "../findings/findings.js";
import type { Machine } from "../machine/machine.js";
import { type Output, readIfThere, readText } from "./io.js";

/** What was printed last of a machine: a small file beside its pages, so that `check` can tell which of them are out of date. No
 *  page is read for it and nothing of it is trusted: it is compared with what would be printed now. */

/** Made only where there is a record to read: most prints are the first. */
function recordShape() {
  /** Shown on a terminal, so without control characters. */
  const text = z.string().check(z.maxLength(1000), z.regex(/^\P{Cc}*$/u));
  const number = z.number().check(z.minimum(-1e9), z.maximum(1e9));
  const dial = z.object({
    wheel: text,
    marks: text,
    perTurn: number,
    doubt: z.nullable(number),
    readsPerTurn: number,
    length: z.nullable(number),
  });
  const sheet = z.object({
    sheet: text,
    /** Where its template is from: a name, or a file of the user's own. */
    template: text,
    /** Of a plan: the job's name and its file. */
    of: z.optional(text),
    job: z.optional(text),
    jobDigest: z.optional(text),
    handwheels: z.optional(z.array(text)),
    revision: z.optional(text),
    measured: z.optional(text),
    /** Of the program, of the machine file, and of the printer's correction that it was printed with. */
    version: text,
    machine: text,
    printer: text,
    content: text,
    dials: z.optional(z.array(dial)),
  });
  const record = z.object({
    [mark]: z.literal("what was printed; witnessmark check compares it with the machine file"),
    sheets: z.array(sheet).check(z.maxLength(500)),
  });
  return { sheet, record };
}
type Shape = ReturnType<typeof recordShape>;

export type PrintedSheet = z.output<Shape["sheet"]>;
export type PrintRecord = z.output<Shape["record"]>;

/** No true record is larger; it would only keep the user waiting. */
const LARGEST = 1_000_000;

export const recordPath = (out: string, machineFile: string): string =>
  join(out, `${basename(machineFile, extname(machineFile))}-printed.json`);

/** Undefined where there is none, or none that can be understood. */
export function readRecord(path: string): PrintRecord | undefined {
  const bytes = readIfThere(path);
  if (bytes === undefined || bytes.length > LARGEST) return undefined;
  try {
    return z.safeParse(recordShape().record, JSON.parse(new TextDecoder().decode(bytes))).data;
  } catch {
    return undefined;
  }
}

/** What was recorded before with what was printed now in place of what it replaces. */
export function recordOutput(path: string, before: PrintRecord | undefined, now: readonly PrintedSheet[]): Output {
  const kept = (before?.sheets ?? []).filter((old) => !now.some((one) => keyOf(one) === keyOf(old)));
  const whole: PrintRecord = {
    [mark]: "what was printed; witnessmark check compares it with the machine file",
    sheets: [...kept, ...now].sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1)),
  };
  return { path, bytes: `${JSON.stringify(whole, null, 1)}\n` };
}

const keyOf = ({ sheet, of = "", handwheels = [] }: PrintedSheet): string =>
  JSON.stringify([sheet, of, [...handwheels].sort()]);

/** Of what the pages show, but for the note on the printer's correction. */
export const contentDigest = ({ pages }: Print): string => digest(JSON.stringify(pages.map(({ drawing }) => drawing)));

/** Of all that the machine file says but for revision and date, which stand on every page and change none of its numbers. */
export function machineDigest({ revision: _, measured: __, written, ...rest }: Machine): string {
  return digest(JSON.stringify([rest, [...(written ?? [])]]));
}

export const printerDigest = ({ paper, printers }: Machine): string =>
  digest(JSON.stringify(paper.printer === undefined ? {} : (printers[paper.printer] ?? {})));

export const digest = (words: string): string => createHash("sha256").update(words).digest("hex").slice(0, 24);

/** Whether anything at all can have changed since: a look at digests alone. */
export const mayDiffer = ({ sheets }: PrintRecord, { machine }: Findings, version: string): boolean => {
  const [now, printer] = [machineDigest(machine), printerDigest(machine)];
  return sheets.some(
    (sheet) =>
      sheet.machine !== now ||
      sheet.printer !== printer ||
      sheet.version !== version ||
      (sheet.job !== undefined && jobDigest(sheet.job) !== sheet.jobDigest),
  );
};

export const jobDigest = (path: string): string | undefined => (existsSync(path) ? digest(readText(path)) : undefined);
