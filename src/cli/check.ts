import type { Findings } from "../findings/findings.js";
import type { Io } from "./io.js";
import { load } from "./load.js";
import { overview } from "./overview.js";
import { report } from "./report.js";
import { summary } from "./summary.js";

/** Reports every problem of a file, and shows what follows from it. Exit status 1 when it holds an error. */
export async function check(
  path: string,
  options: { json: boolean; whatIf?: readonly string[] },
  io: Io,
): Promise<number> {
  const { findings, problems } = await load(path);
  const wishes = options.whatIf ?? [];
  const after =
    findings === undefined || wishes.length === 0
      ? undefined
      : (await import("./whatIf.js")).whatIf(findings, wishes, path);
  if (options.json) {
    const then = after && { changes: after.changes, speeds: summary({ ...findings, ...after } as Findings, []).speeds };
    io.out(JSON.stringify({ ...summary(findings, problems), ...(then && { whatIf: then }) }, null, 2));
  } else {
    report(problems, path, io);
    if (findings) io.out(overview(findings).join("\n"));
    if (findings && after) io.out((await import("./whatIf.js")).whatIfLines(findings, after).join("\n"));
  }
  return findings ? 0 : 1;
}
