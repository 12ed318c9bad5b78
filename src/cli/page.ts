import { basename, dirname, join } from "node:path";
import { MOST } from "../machine/bounds.js";
import { csvNames } from "../machine/read.js";
import { isPage, type Kept, withInside } from "../page/inside.js";
import { type Io, Refusal, readIfThere, readText } from "./io.js";
import { packageText } from "./packageFiles.js";
import { writeWhole } from "./wholeFiles.js";

export type PageArgs = {
  readonly file: string | undefined;
  readonly jobs: readonly string[] | undefined;
  /** Templates of the user's own. */
  readonly sheets: readonly string[] | undefined;
  readonly out: string;
  readonly replace: boolean;
};

/** Writes the page for a browser, with these files inside. What is wrong in them the page itself tells. */
export function page({ file, jobs = [], sheets = [], out, replace }: PageArgs, io: Io): number {
  const standing = readIfThere(out);
  if (standing !== undefined && !replace && !isPage(new TextDecoder().decode(standing)))
    throw new Refusal(
      `${out} is there already and no page of witnessmark's; name another place with --out, or --replace it`,
    );
  const inside: Kept = [
    ...(file === undefined ? [] : machineFiles(file)),
    ...jobs.map((path) => ({ kind: "job" as const, name: basename(path), text: readText(path, "name a job file") })),
    ...sheets.map((path) => ({
      kind: "sheet" as const,
      name: basename(path),
      text: readText(path, "name a sheet template"),
    })),
  ];
  writeWhole([{ path: out, bytes: withInside(packageText("dist", "page.html"), inside) }]);
  io.out(out);
  return 0;
}

/** A machine's file, and the readings beside it that it names. */
function machineFiles(path: string): Kept {
  const text = readText(path);
  return [
    { kind: "machine", name: basename(path), text },
    ...csvNames(text).flatMap((name) => {
      const bytes = readIfThere(join(dirname(path), name), MOST.csvBytes);
      return bytes === undefined ? [] : [{ kind: "readings" as const, name, text: new TextDecoder().decode(bytes) }];
    }),
  ];
}
