import type { Print } from "../drawing/page.js";
import type { Findings } from "../findings/findings.js";
import type { Job } from "../job/job.js";
import { translated } from "../words/say.js";
import { type Arranged, arrange } from "./arrange.js";
import type { Template } from "./template.js";

/** A sheet that could not be made, and what is missing in the machine file to make it. */
export type Absent = {
  readonly name: string;
  readonly title: string;
  readonly why: string;
  /** The job that it is about. */
  readonly of?: string;
  /** Where in the template, when that is what is wrong. */
  readonly at?: string;
};

/** A job under the name that its plan is filed by. */
export type NamedJob = { readonly name: string; readonly job: Job };

/** Every sheet that a machine has the data for, in the order of the templates; of a sheet that is about a job one
 *  for each job. Pure. */
export function pack(
  findings: Findings,
  templates: readonly Template[],
  jobs: readonly NamedJob[] = [],
): { readonly prints: readonly Print[]; readonly absent: readonly Absent[] } {
  const prints: Print[] = [];
  const absent: Absent[] = [];
  for (const template of templates) {
    const { name } = template;
    const title = translated(template.title);
    const add = (result: Arranged, of?: string) => {
      if ("missing" in result)
        absent.push({
          ...{ name, title, why: result.missing },
          ...(result.at !== undefined && { at: result.at }),
          ...(of !== undefined && { of }),
        });
      else prints.push(of === undefined ? result.print : { ...result.print, of });
    };
    if (jobs.length > 0 && isAboutJob(template))
      for (const one of jobs) add(arrange({ ...findings, job: one.job }, template), one.name);
    else add(arrange(findings, template));
  }
  return { prints, absent };
}

export const isAboutJob = ({ needs, blocks }: Template): boolean =>
  needs === "job" || blocks.some(({ block }) => block === "plan steps");
