import type { Print } from "../drawing/page.js";
import type { Findings } from "../findings/findings.js";
import { dialChange, dialFacts } from "../findings/printedDial.js";
import type { Template } from "../sheets/template.js";
import type { LanguageCode } from "../words/languages.generated.js";
import {
  asRecorded,
  contentDigest,
  machineDigest,
  type PrintedDial,
  type PrintedSheet,
  printerDigest,
  readRecord,
  recordOutput,
  recordPath,
  sourceOf,
} from "./record.js";
import type { Output } from "./wholeFiles.js";

/** What was asked for, as far as the record holds it. */
export type Recorded = {
  readonly out: string;
  readonly version: string;
  readonly handwheels: readonly string[] | undefined;
  readonly language?: LanguageCode | undefined;
  readonly templates: readonly Template[];
  /** Files of the templates that are the user's own, by their sheets. */
  readonly templateFiles: Readonly<Record<string, string>>;
  readonly jobs: readonly { readonly name: string; readonly file: string }[];
};

/** What `check` will compare with. `tell`: which dials that are stuck on are no longer what is printed now. */
export function recorded(
  prints: readonly Print[],
  findings: Findings,
  path: string,
  { out, handwheels, jobs, templates, templateFiles, version, language = "en" }: Recorded,
  tell: (line: string) => void,
): Output {
  const { machine } = findings;
  const place = recordPath(out, path);
  const found = readRecord(place);
  const before = typeof found === "string" ? undefined : found;
  const revision = machine.revision === undefined ? {} : { revision: machine.revision };
  const same = { version, machine: machineDigest(machine), printer: printerDigest(machine), ...revision };
  const sheets = prints.map((print): PrintedSheet => {
    const { sheet, of } = print;
    const template = Object.hasOwn(templateFiles, sheet) ? templateFiles[sheet] : undefined;
    const job = jobs.find(({ name }) => name === of)?.file;
    return {
      ...{ sheet, ...same, content: contentDigest(print) },
      ...(template !== undefined && { template: sourceOf(template, place) }),
      ...(language !== "en" && { language }),
      ...(of !== undefined && { of }),
      ...(job !== undefined && { job: sourceOf(job, place) }),
      ...(handwheels && { handwheels: findings.handwheels.map(({ handwheel }) => handwheel.name) }),
      ...(machine.measured !== undefined && { measured: machine.measured }),
    };
  });
  const bearing = templates.filter(({ blocks }) =>
    blocks.some(({ block }) => block === "dial pieces" || block === "pieces"),
  );
  const stuckOn = prints.some(({ sheet }) => bearing.some(({ name }) => name === sheet));
  const wheels = stuckOn ? findings.handwheels : [];
  for (const wheel of wheels) {
    const was = before?.dials.find((one) => one.wheel === asRecorded(wheel.handwheel.name));
    const change = was && dialChange(was, wheel, machine.units);
    if (change?.replace)
      tell(`${path}: ${wheel.handwheel.name}: take off the dial that was printed before; ${change.why}`);
  }
  const dials = wheels.flatMap((wheel): PrintedDial[] => {
    const facts = dialFacts(wheel);
    return facts === undefined ? [] : [{ ...facts, ...revision }];
  });
  return recordOutput(place, before, { sheets, dials });
}
