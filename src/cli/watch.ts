import { dirname, join } from "node:path";
import { csvNames } from "../machine/read.js";
import { type Io, readIfThere, readText, told } from "./io.js";
import { look, nextSave, type Seen } from "./saves.js";
import { refuseUnknownSheets, templateFiles } from "./templates.js";

/** What of a print's command line names files. */
type Named = {
  readonly files: readonly string[];
  readonly jobs?: readonly string[] | undefined;
  readonly sheets: readonly string[] | undefined;
};

/** `print --watch`: prints, then again after each save, one print after the other, until the user ends it; what is wrong is told
 *  and waited upon. Resolves to the exit status. */
export async function printAgain(args: Named, io: Io, printOnce: (io: Io) => Promise<number>): Promise<number> {
  // What no save can mend ends it at once, as it does every print.
  refuseUnknownSheets(args.sheets);
  for (const path of named(args)) readText(path, "name a file that is there");
  const ended = new AbortController();
  const end = () => ended.abort();
  // Heard once: a print under way is finished, so that nothing is left half written. A second Ctrl-C does not wait.
  process.once("SIGINT", end).once("SIGTERM", end);
  const known = new Set<string>();
  let saved: readonly string[] = [];
  try {
    do {
      const seen = filesBehind(args);
      let count = 0;
      const quiet: Io = {
        ...io,
        out(path) {
          count++;
          if (!known.has(path)) io.out(path);
          known.add(path);
        },
      };
      await told(quiet, () => printOnce(quiet));
      io.err(
        saved.length > 0
          ? savedWords(saved, count)
          : `Printed again after each save of ${listed([...seen.keys()])}; Ctrl-C ends it.`,
      );
      saved = await nextSave(seen, ended.signal);
    } while (saved.length > 0);
  } finally {
    process.off("SIGINT", end).off("SIGTERM", end);
  }
  return 0;
}

/** Files that the command line names. */
const named = ({ files, jobs = [], sheets }: Named): string[] => [
  ...files,
  ...jobs,
  ...Object.values(templateFiles(sheets)),
];

/** Every file that the pages come from, as it is now: also the readings that a machine file names by now. A file is looked at
 *  before it is read, so that a save in between is a new one. */
function filesBehind(args: Named): Seen {
  const seen = look(named(args));
  const readings = args.files.flatMap((path) => csvNames(textOf(path)).map((name) => join(dirname(path), name)));
  return new Map([...seen, ...look(readings)]);
}

function textOf(path: string): string {
  try {
    return new TextDecoder().decode(readIfThere(path) ?? new Uint8Array());
  } catch {
    return ""; // told when it is printed
  }
}

const MOST_NAMED = 4;
const listed = (paths: readonly string[]): string =>
  paths.length <= MOST_NAMED
    ? paths.join(", ")
    : `${paths.slice(0, MOST_NAMED - 1).join(", ")} and ${paths.length - MOST_NAMED + 1} more`;

const savedWords = (saved: readonly string[], count: number): string =>
  `${listed(saved)} ${saved.length === 1 ? "was" : "were"} saved: ${count === 0 ? "nothing is printed until that is mended" : `${count} ${count === 1 ? "file" : "files"} printed again`}`;
