import { closeSync, constants, existsSync, fstatSync, mkdirSync, openSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { MOST } from "../machine/bounds.js";

/** A refusal the user can act on: what went wrong, and what to do instead. Never shown with a stack trace. */
export class Refusal extends Error {
  constructor(
    what: string,
    readonly exitCode: 1 | 2 = 1,
  ) {
    super(what);
  }
}

/** Runs a command to its exit status; what it cannot do is told, never thrown. `about`: the file at work, where there are many. */
export async function told(io: Io, command: () => number | Promise<number>, about?: string): Promise<number> {
  try {
    return await command();
  } catch (error) {
    for (const line of error instanceof Refusal ? [error.message] : faultLines(error, about)) io.err(line);
    return error instanceof Refusal ? error.exitCode : 1;
  }
}

/** What is shown of an error that is ours, not the user's. */
export function faultLines(error: unknown, about?: string): string[] {
  const { message, stack } = error instanceof Error ? error : new Error(String(error));
  return [
    about === undefined
      ? `witnessmark stopped on a fault of its own (${message}). Nothing was written.`
      : `${about}: witnessmark stopped on a fault of its own (${message}). Nothing of this file was written.`,
    "Please report it with the machine file; WITNESSMARK_TRACE=1 shows where it happened.",
    ...(process.env.WITNESSMARK_TRACE && stack ? [stack] : []),
  ];
}

/** Everything of the outside world that the commands touch. */
export type Io = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly colour: boolean;
};

const say = (stream: NodeJS.WriteStream, text: string) => void (stream.writable && stream.write(`${text}\n`));

export const processIo: Io = {
  out: (text) => say(process.stdout, text),
  err: (text) => say(process.stderr, text),
  // What is coloured goes to standard error: it may be a file while the other is a terminal.
  colour: process.stderr.isTTY === true && !process.env.NO_COLOR,
};

/** Text of a user's file. Throws a Refusal that says what to do when it cannot be read. */
export function readText(path: string, remedy = "name a machine file, or make one with: witnessmark new"): string {
  try {
    return new TextDecoder("utf-8", { ignoreBOM: true }).decode(readPlain(path, 4 * MOST.letters));
  } catch (error) {
    const whole = unquotedPath(path, process.argv);
    throw new Refusal(
      whole === undefined
        ? `${path}: cannot be read (${reason(error)}); ${remedy}`
        : `${path}: there is no such file; a path with a space needs quotes: "${whole}"`,
    );
  }
}

/** Bytes of a file, no more than `most`, or undefined when there is none. */
export function readIfThere(path: string, most = LARGEST_PAGE): Uint8Array | undefined {
  try {
    return readPlain(path, most);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    // A page's place is looked at before it is written there.
    const remedy =
      (error as NodeJS.ErrnoException).code === "ENOTDIR" ? `; ${dirname(path)} is a file: name a folder` : "";
    throw new Refusal(`${path}: cannot be read (${reason(error)})${remedy}`);
  }
}

/** No page that we make is larger, bytes. */
const LARGEST_PAGE = 200_000_000;

/** Bytes of a plain file: a pipe that nobody writes to, or a device without end, would be read for ever. */
function readPlain(path: string, most: number): Uint8Array {
  const file = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    const about = fstatSync(file);
    if (about.isDirectory()) throw Object.assign(new Error(), { code: "EISDIR" });
    if (!about.isFile()) throw new Error("it is no plain file, but a pipe or a device: save it as a file");
    if (about.size > most) throw new Error(`it is larger than ${most / 1e6} MB`);
    return readFileSync(file);
  } finally {
    closeSync(file);
  }
}

/** A folder with those above it, one at a time: where a parent cannot hold folders (as under /proc), Node's own recursive
 *  mkdir tries for ever. */
export function makeFolder(path: string): void {
  if (path === dirname(path) || existsSync(path)) return;
  makeFolder(dirname(path));
  try {
    mkdirSync(path);
  } catch (error) {
    // Another file of the same run may just have made it.
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
  }
}

/** Makes a file that must not exist yet. */
export function writeNew(path: string, text: string): void {
  try {
    makeFolder(dirname(path));
    writeFileSync(path, text, { flag: "wx" });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST")
      throw new Refusal(`${path} is there already and was left as it is; name another file, or move that one away`);
    throw new Refusal(`${path}: cannot be written (${reason(error)})`);
  }
}

/** A file whose path the shell cut at its spaces, that this word is a part of; undefined where there is none. */
export function unquotedPath(word: string, argv: readonly string[]): string | undefined {
  const at = argv.indexOf(word);
  for (let from = Math.max(0, at - 3); from <= at; from++)
    for (let to = at + 1; to <= Math.min(argv.length, at + 4); to++) {
      const path = argv.slice(from, to).join(" ");
      if (at >= 0 && to - from > 1 && existsSync(path)) return path;
    }
  return undefined;
}

/** The usual reasons in our own words. */
const reasons: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EISDIR: "it is a folder",
  ENOTDIR: "a part of its path is no folder",
  EACCES: "this user may not open it",
  EPERM: "this user may not open it",
  ENOSPC: "the disk is full",
  EROFS: "the disk is read-only",
  ENAMETOOLONG: "its name is too long: give the machine file a shorter one",
};

/** Why a file could not be read or written; what is not usual in Node's words, without the code and the system call. */
export function reason(error: unknown): string {
  const known = reasons[(error as NodeJS.ErrnoException).code ?? ""];
  if (known !== undefined) return known;
  const message = error instanceof Error ? error.message : String(error);
  return message.replace(/^[A-Z]+: /, "").replace(/, (open|mkdir|rename|read|scandir|stat).*$/, "");
}
