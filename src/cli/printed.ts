import { existsSync } from "node:fs";
import type { Print } from "../drawing/page.js";
import type { Findings } from "../findings/findings.js";
import { dialChange } from "../findings/printedDial.js";
import type { Job } from "../job/job.js";
import { pack } from "../sheets/pack.js";
import type { Io } from "./io.js";
import { contentDigest, type PrintedSheet, type PrintRecord, printerDigest } from "./record.js";
import { readTemplates } from "./templates.js";

/** What was printed before and is out of date by what the machine file says now. */
export type OutOfDate = {
  readonly dials: readonly {
    readonly wheel: string;
    readonly revision: string | null;
    readonly replace: boolean;
    readonly why: string;
  }[];
  readonly sheets: readonly { readonly name: string; readonly revision: string | null; readonly why: string }[];
  /** The same in words. */
  readonly lines: readonly string[];
};

/** Every sheet is laid out again with the revision and date that it bears: what then differs has other numbers. */
export async function outOfDate(
  record: PrintRecord,
  findings: Findings,
  version: string,
  place: string,
): Promise<OutOfDate> {
  const dials: OutOfDate["dials"][number][] = [];
  const sheets: OutOfDate["sheets"][number][] = [];
  for (const sheet of record.sheets) {
    const revision = sheet.revision ?? null;
    for (const was of sheet.dials ?? []) {
      const now = findings.handwheels.find(({ handwheel }) => handwheel.name === was.wheel);
      const change = dialChange(was, now, findings.machine.units);
      if (change) dials.push({ wheel: was.wheel, revision, ...change });
    }
    const why = await whyAgain(sheet, findings, version);
    if (why !== undefined) sheets.push({ name: nameOf(sheet), revision, why });
  }
  return { dials, sheets, lines: linesOf({ dials, sheets }, place) };
}

export const nameOf = ({ sheet, of, handwheels }: PrintedSheet): string =>
  `${sheet}${of === undefined ? "" : ` of ${of}`}${handwheels === undefined ? "" : ` (${handwheels.join(", ")})`}`;

async function whyAgain(sheet: PrintedSheet, findings: Findings, version: string): Promise<string | undefined> {
  const [template] = await readTemplates([sheet.template]).catch(() => []);
  if (template === undefined) return `its template ${sheet.template} is not there any more`;
  let job: Job | undefined;
  if (sheet.job !== undefined) {
    if (!existsSync(sheet.job)) return `its job file ${sheet.job} is not there: it cannot be told`;
    const { loadJob } = await import("./load.js");
    job = await loadJob(sheet.job, silent);
    if (job === undefined) return `its job file ${sheet.job} has a fault`;
  }
  const then = {
    ...asPrinted(findings, sheet),
    ...(sheet.handwheels && { handwheels: only(findings, sheet.handwheels) }),
  };
  const { prints, absent } = pack(then, [template], job && sheet.of !== undefined ? [{ name: sheet.of, job }] : []);
  const [print] = prints as readonly (Print | undefined)[];
  if (print === undefined) return `it can no longer be made: ${absent[0]?.why ?? "the file holds nothing for it"}`;
  if (contentDigest(print) !== sheet.content)
    return sheet.version === version
      ? "what is shown there has changed"
      : `witnessmark ${version} shows it otherwise than ${sheet.version}`;
  if (template.checkBars && sheet.printer !== printerDigest(findings.machine))
    return "the printer's correction has changed: measure its check bars";
  return undefined;
}

const silent: Io = { out: () => undefined, err: () => undefined, colour: false };

const only = ({ handwheels }: Findings, names: readonly string[]) =>
  handwheels.filter(({ handwheel }) => names.includes(handwheel.name));

function asPrinted(findings: Findings, { revision, measured }: PrintedSheet): Findings {
  const { revision: _, measured: __, ...machine } = findings.machine;
  return {
    ...findings,
    machine: { ...machine, ...(revision !== undefined && { revision }), ...(measured !== undefined && { measured }) },
  };
}

function linesOf({ dials, sheets }: Omit<OutOfDate, "lines">, place: string): string[] {
  const bears = (revision: string | null) => (revision === null ? "" : `, printed at revision ${revision}`);
  const stuckOn = dials.map(
    ({ wheel, revision, replace, why }) =>
      `  ${wheel}${bears(revision)}: ${why}${replace ? ". Print it again and take the old one off" : ""}.`,
  );
  // Sheets with one and the same reason share a line.
  const names = new Map<string, string[]>();
  for (const { name, revision, why } of sheets) {
    const reason = `${bears(revision).replace(", ", "")}: ${why}.`;
    names.set(reason, [...(names.get(reason) ?? []), name]);
  }
  const again = [...names].map(
    ([reason, list]) => `  ${list.join(", ")}${reason.startsWith(":") ? "" : "; "}${reason}`,
  );
  return [
    ...(stuckOn.length === 0 ? [] : ["", "Dials that are stuck on", ...stuckOn]),
    ...(again.length === 0 ? [] : ["", `To be printed again (by ${place})`, ...again]),
  ];
}
