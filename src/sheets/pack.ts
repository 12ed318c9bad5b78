import type { Print } from "../drawing/page.js";
import type { Findings } from "../findings/findings.js";
import { arrange } from "./arrange.js";
import type { Template } from "./template.js";

/** A sheet that could not be made, and what is missing in the machine file to make it. */
export type Absent = { readonly name: string; readonly title: string; readonly why: string };

/** Every sheet that a machine has the data for, in the order of the templates. Pure. */
export function pack(
  findings: Findings,
  templates: readonly Template[],
): { readonly prints: readonly Print[]; readonly absent: readonly Absent[] } {
  const prints: Print[] = [];
  const absent: Absent[] = [];
  for (const template of templates) {
    const result = arrange(findings, template);
    if ("missing" in result) absent.push({ name: template.name, title: template.title, why: result.missing });
    else prints.push(result.print);
  }
  return { prints, absent };
}
