import { createHash } from "node:crypto";
import { copyFileSync, linkSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { dirname, join } from "node:path";
import { makeFolder, Refusal, reason } from "./io.js";
import { unbroken } from "./signals.js";

export type Output = { readonly path: string; readonly bytes: Uint8Array | string };

/** Writes all files under temporary names beside their places, then renames them, so that each appears whole or not at all, and all of
 *  them or none: when one cannot be put in its place, those before it are put back. */
export function writeWhole(outputs: readonly Output[]): void {
  unbroken(() => writeAll(outputs));
}

/** One file on its way to its place: what it is written as, and under which name what stood there is kept until all is done. */
type Placing = {
  readonly path: string;
  readonly temporary: string;
  readonly before: string;
  placed?: boolean;
  kept?: boolean;
};

function writeAll(outputs: readonly Output[]): void {
  const placings: Placing[] = [];
  let at = "";
  try {
    for (const folder of new Set(outputs.map(({ path }) => dirname(path)))) {
      at = folder;
      makeFolder(folder);
      clearLeftovers(folder);
    }
    for (const { path, bytes } of outputs) {
      at = path;
      const there = statSync(path, { throwIfNoEntry: false });
      if (there?.isDirectory()) throw new Error("a folder of this name is there");
      const placing = { path, temporary: temporaryIn(dirname(path)), before: temporaryIn(dirname(path)) };
      placings.push(placing);
      writeFileSync(placing.temporary, bytes, { flag: "wx" });
    }
    for (const placing of placings) {
      at = placing.path;
      placing.kept = keepAs(placing.path, placing.before);
      renameSync(placing.temporary, placing.path);
      placing.placed = true;
    }
  } catch (error) {
    const stuck = putBack(placings);
    const state =
      stuck.length === 0 ? "nothing written" : `these are new and could not be put back: ${stuck.join(", ")}`;
    throw new Refusal(`${at}: cannot be written (${reason(error)}); ${state}; name another place with --out`);
  }
  for (const { before, kept } of placings) if (kept) rmSync(before, { force: true });
}

/** Keeps what stands at a path under a second name, by a link where the disk knows them. False where nothing stands there. */
function keepAs(path: string, before: string): boolean {
  if (statSync(path, { throwIfNoEntry: false }) === undefined) return false;
  try {
    linkSync(path, before);
  } catch {
    copyFileSync(path, before);
  }
  return true;
}

/** As it was before; the paths where that failed. */
function putBack(placings: readonly Placing[]): string[] {
  const stuck: string[] = [];
  for (const { path, temporary, before, placed, kept } of placings) {
    try {
      if (placed && kept) renameSync(before, path);
      else if (placed) rmSync(path, { force: true });
      rmSync(before, { force: true });
      rmSync(temporary, { force: true });
    } catch {
      if (placed) stuck.push(path);
    }
  }
  return stuck;
}

// Names of our own, short whatever the page's is: the machine, the process, and a count.
const host = createHash("sha256").update(hostname()).digest("hex").slice(0, 8);
const pattern = /^\.witnessmark-([0-9a-f]{8})-(\d+)-[0-9a-z]+\.part$/;
const temporaryIn = (folder: string): string =>
  join(folder, `.witnessmark-${host}-${process.pid}-${process.hrtime.bigint().toString(36)}.part`);

/** Removes what a print left here that was killed while it wrote: files of processes of this machine that are no more. */
function clearLeftovers(folder: string): void {
  for (const name of readdirSync(folder)) {
    const [, of, pid] = pattern.exec(name) ?? [];
    if (of === host && !isRunning(Number(pid))) rmSync(join(folder, name), { force: true });
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
