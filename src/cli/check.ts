import type { Findings } from "../findings/findings.js";
import type { Io } from "./io.js";
import { load } from "./load.js";
import { overview } from "./overview.js";
import { packageVersion } from "./packageFiles.js";
import type { OutOfDate } from "./printed.js";
import { mayDiffer, readRecord, recordPath, upToDate } from "./record.js";
import { report } from "./report.js";
import { summary } from "./summary.js";

/** Reports every problem of a file, and shows what follows from it. Exit status 1 when it holds an error. */
export async function check(
  path: string,
  options: { json: boolean; whatIf?: readonly string[]; out: string },
  io: Io,
): Promise<number> {
  const { findings, problems } = await load(path);
  const wishes = options.whatIf ?? [];
  const after =
    findings === undefined || wishes.length === 0
      ? undefined
      : (await import("./whatIf.js")).whatIf(findings, wishes, path);
  const stale = findings && (await sincePrinted(findings, path, options.out));
  if (options.json) {
    const then = after && { changes: after.changes, speeds: summary({ ...findings, ...after } as Findings, []).speeds };
    io.out(
      JSON.stringify(
        {
          ...summary(findings, problems),
          ...(stale?.sheets && { printed: { dials: stale.dials, sheets: stale.sheets } }),
          ...(then && { whatIf: then }),
        },
        null,
        2,
      ),
    );
  } else {
    report(problems, path, io);
    if (findings) io.out(overview(findings).join("\n"));
    for (const line of stale?.lines ?? []) io.out(line);
    if (findings && after) io.out((await import("./whatIf.js")).whatIfLines(findings, after).join("\n"));
  }
  return findings ? 0 : 1;
}

/** What was printed before and is out of date now, in words too. Pages are laid out for it only where something can have
 *  changed. Without lists where nothing is recorded: silence would be taken for all is well. */
async function sincePrinted(
  findings: Findings,
  path: string,
  out: string,
): Promise<Partial<OutOfDate> & Pick<OutOfDate, "lines">> {
  const place = recordPath(out, path);
  const record = readRecord(place);
  if (record === "none") return { lines: ["", `Nothing printed is recorded in ${out}.`] };
  if (record === "unreadable")
    return { lines: ["", `${place} cannot be understood: print again what is to be compared.`] };
  const version = packageVersion();
  if (mayDiffer(record, findings, version, place))
    return (await import("./printed.js")).outOfDate(record, findings, version, place);
  return { dials: [], sheets: [], lines: upToDate(record) };
}
