import type { Print } from "../drawing/page.js";
import { compute } from "../findings/compute.js";
import type { Findings } from "../findings/findings.js";
import { dialChange } from "../findings/printedDial.js";
import { pack } from "../sheets/pack.js";
import { inLanguage } from "../words/language.js";
import {
  asRecorded,
  contentDigest,
  type PrintedSheet,
  type PrintRecord,
  printerDigest,
  sourcePath,
  upToDate,
} from "./record.js";
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

type StuckOn = OutOfDate["dials"][number] & { readonly gone?: true };

/** Every sheet is laid out again with the revision and date that it bears: what then differs has other numbers. */
export async function outOfDate(
  record: PrintRecord,
  findings: Findings,
  version: string,
  place: string,
): Promise<OutOfDate> {
  const dials = record.dials.flatMap(({ revision = null, ...was }): StuckOn[] => {
    const now = findings.handwheels.find(({ handwheel }) => asRecorded(handwheel.name) === was.wheel);
    const change = dialChange(was, now, findings.machine.units);
    return change ? [{ wheel: was.wheel, revision, ...change }] : [];
  });
  const sheets: OutOfDate["sheets"][number][] = [];
  for (const sheet of record.sheets) {
    const why = await whyAgain(sheet, findings, version, place);
    if (why !== undefined) sheets.push({ name: nameOf(sheet), revision: sheet.revision ?? null, why });
  }
  const fine = dials.length === 0 && sheets.length === 0;
  return {
    dials: dials.map(({ gone: _, ...told }) => told),
    sheets,
    lines: fine ? upToDate(record) : linesOf(dials, sheets, place),
  };
}

export const nameOf = ({ sheet, of, handwheels }: PrintedSheet): string =>
  `${sheet}${of === undefined ? "" : ` of ${of}`}${handwheels === undefined ? "" : ` (${handwheels.join(", ")})`}`;

async function whyAgain(
  sheet: PrintedSheet,
  findings: Findings,
  version: string,
  place: string,
): Promise<string | undefined> {
  const gone = [sheet.template, sheet.job].find((source) => source && sourcePath(source, place) === undefined);
  if (gone !== undefined) return `${gone.path}, which it was made from, is not there any more: it cannot be told`;
  const own = sheet.template && sourcePath(sheet.template, place);
  const [template] = await readTemplates([own ?? sheet.sheet]).catch(() => []);
  if (template === undefined)
    return own === undefined ? "there is no sheet of this name any more" : `its template ${own} has a fault`;
  const file = sheet.job && sourcePath(sheet.job, place);
  const job = file === undefined ? undefined : (await import("./jobs.js")).readJobFile(file).job;
  if (file !== undefined && job === undefined) return `its job file ${file} has a fault`;
  const jobs = job && sheet.of !== undefined ? [{ name: sheet.of, job }] : [];
  const { language = "en" } = sheet;
  const { prints, absent } = inLanguage(language, () => {
    const told = language === "en" ? findings : compute(findings.machine);
    const handwheels = sheet.handwheels ? only(told, sheet.handwheels) : told.handwheels;
    return pack({ ...asPrinted(told, sheet), handwheels }, [template], jobs);
  });
  const [print] = prints as readonly (Print | undefined)[];
  if (print === undefined) return `it can no longer be made: ${absent[0]?.why ?? "the file holds nothing for it"}`;
  if (contentDigest(print) !== sheet.content)
    return sheet.version === version
      ? "what is shown there has changed"
      : `witnessmark ${version} shows it otherwise than ${sheet.version}`;
  if (template.checkBars && sheet.printer !== printerDigest(findings.machine))
    return "the printer's correction has changed: measure its check bars, and what is stuck on with verify";
  return undefined;
}

const only = ({ handwheels }: Findings, names: readonly string[]) =>
  handwheels.filter(({ handwheel }) => names.includes(asRecorded(handwheel.name)));

function asPrinted(findings: Findings, { revision, measured }: PrintedSheet): Findings {
  const { revision: _, measured: __, ...machine } = findings.machine;
  return {
    ...findings,
    machine: { ...machine, ...(revision !== undefined && { revision }), ...(measured !== undefined && { measured }) },
  };
}

function linesOf(dials: readonly StuckOn[], sheets: OutOfDate["sheets"], place: string): string[] {
  const bears = (revision: string | null) => (revision === null ? "" : `, printed at revision ${revision}`);
  const stuckOn = dials.map(
    ({ wheel, revision, replace, why, gone }) =>
      `  ${wheel}${bears(revision)}: ${why}${replace && !gone ? ". Print it again and take the old one off" : ""}.`,
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
