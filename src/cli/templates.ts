import { closest } from "../machine/closest.js";
import { builtIn } from "../sheets/builtIn.generated.js";
import type { Template } from "../sheets/template.js";
import { otherTongues } from "../words/say.js";
import { Refusal, readText } from "./io.js";
import { stemOf } from "./stem.js";

/** The sheets asked for: by name, or from a template file of the user's own where its name ends so. Where none is asked for,
 *  all that come with the program but those made only on request. `warn`: takes what may be a slip in a file. */
export async function readTemplates(
  wanted: readonly string[] | undefined,
  warn: (line: string) => void = () => {},
): Promise<readonly Template[]> {
  const names = namesOf(wanted);
  if (names === undefined) return builtIn.filter(({ onRequest }) => !onRequest);
  const templates: Template[] = [];
  for (const name of names) templates.push(isFile(name) ? await ownTemplate(name, warn) : builtInTemplate(name));
  return templates;
}

/** Refuses sheets that no file can bring. */
export function refuseUnknownSheets(wanted: readonly string[] | undefined): void {
  for (const name of namesOf(wanted) ?? []) if (!isFile(name)) builtInTemplate(name);
}

const namesOf = (wanted: readonly string[] | undefined): string[] | undefined =>
  wanted?.flatMap((name) => name.split(",")).filter((name) => name !== "");

export const isFile = (name: string): boolean => /\.ya?ml$/.test(name);

/** Which of the sheets asked for come from files of the user's own, and from which. */
export const templateFiles = (wanted: readonly string[] | undefined): Readonly<Record<string, string>> =>
  Object.fromEntries((namesOf(wanted) ?? []).filter(isFile).map((file) => [stemOf(file), file]));

export function builtInTemplate(name: string): Template {
  const template = builtIn.find((other) => other.name === name) ?? titled(name);
  if (template !== undefined) return template;
  const known = builtIn.map((other) => other.name);
  const nearest = closest(name, known);
  throw new Refusal(
    `there is no sheet "${name}"; ${nearest ? `did you mean ${nearest}?` : `there are ${known.join(", ")}`}`,
  );
}

/** The only one whose printed title, in any language, is this. */
function titled(name: string): Template | undefined {
  const same = (title: string) => title.toLowerCase() === name.trim().toLowerCase();
  const found = builtIn.filter(({ title }) => [title, ...otherTongues(title)].some(same));
  return found.length === 1 ? found[0] : undefined;
}

async function ownTemplate(file: string, warn: (line: string) => void): Promise<Template> {
  const { readTemplate } = await import("../sheets/readTemplate.js");
  const {
    template,
    problems,
    doubts = [],
  } = readTemplate(readText(file, "name a sheet template; begin with one of: witnessmark sheets --copy"), stemOf(file));
  if (template === undefined) throw new Refusal(problems.map((problem) => `${file}:${problem}`).join("\n"));
  for (const line of doubts) warn(`${file}:${line}`);
  return template;
}
