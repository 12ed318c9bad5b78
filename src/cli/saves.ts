import { type BigIntStats, type FSWatcher, statSync, watch } from "node:fs";
import { dirname } from "node:path";

/** Files, each with what tells one save of it from the next. */
export type Seen = ReadonlyMap<string, string>;

const GONE = "gone";

export const look = (paths: Iterable<string>): Seen => new Map([...paths].map((path) => [path, stateOf(path)]));

/** Which file it is, how long, when it was written and when put there: a file renamed into the place of another may be older. */
function stateOf(path: string): string {
  let found: BigIntStats | undefined;
  try {
    found = statSync(path, { bigint: true, throwIfNoEntry: false });
  } catch {
    // A part of its path is no folder, or closed to this user: as good as gone.
  }
  return found === undefined ? GONE : [found.ino, found.size, found.mtimeNs, found.ctimeNs].join(" ");
}

const savedSince = (seen: Seen): string[] => [...seen].flatMap(([path, was]) => (stateOf(path) === was ? [] : [path]));

/** How often the files are looked at where no folder tells of a save (ms): shares in a network and full tables of the system do
 *  not. A file is looked at by its place in the folder, so that it may be written over, replaced, or come back. */
const EVERY = 500;
/** No save for so long: writing has come to rest. */
const REST = 50;
/** Editors that take a file away put the new one there within this. */
const AWAY = 250;
/** What is saved again and again is printed all the same after this. */
const LONGEST = 400;

/** Resolves to the files that were saved since they were `seen`; to none where it was ended. */
export async function nextSave(seen: Seen, ended: AbortSignal): Promise<string[]> {
  const bell = bellOf(new Set([...seen.keys()].map((path) => dirname(path))), ended);
  try {
    while (!ended.aborted) {
      if (savedSince(seen).length > 0) {
        await rest(seen, ended);
        const saved = savedSince(seen);
        if (saved.length > 0 && !ended.aborted) return saved;
      }
      await bell.rung(EVERY);
    }
    return [];
  } finally {
    bell.takeDown();
  }
}

/** Waits until nothing was saved for a while, and a file that was taken away is back or surely gone. */
async function rest(seen: Seen, ended: AbortSignal): Promise<void> {
  const silent = bellOf([], ended);
  try {
    let now = look(seen.keys());
    for (let waited = REST; waited <= LONGEST && !ended.aborted; waited += REST) {
      await silent.rung(REST);
      const still = savedSince(now).length === 0;
      now = look(seen.keys());
      const away = [...now].some(([path, state]) => state === GONE && seen.get(path) !== GONE);
      if (still && (!away || waited >= AWAY)) return;
    }
  } finally {
    silent.takeDown();
  }
}

type Bell = {
  /** Resolves when a folder tells of a change, and at the latest after `most` ms. */
  readonly rung: (most: number) => Promise<void>;
  readonly takeDown: () => void;
};

/** Rings when anything happens in one of the folders, or when it is ended. What happened is for the files themselves to say. */
function bellOf(folders: Iterable<string>, ended: AbortSignal): Bell {
  let answer: (() => void) | undefined;
  let missed = false;
  const ring = () => {
    missed = answer === undefined;
    answer?.();
  };
  const watchers = [...folders].flatMap((folder): FSWatcher[] => {
    try {
      const watcher = watch(folder, ring);
      watcher.on("error", () => watcher.close());
      return [watcher];
    } catch {
      return []; // looked at all the same, only later
    }
  });
  ended.addEventListener("abort", ring);
  return {
    rung: (most) =>
      new Promise((resolve) => {
        const timer = setTimeout(ring, missed || ended.aborted ? 0 : most);
        answer = () => {
          clearTimeout(timer);
          answer = undefined;
          resolve();
        };
        missed = false;
      }),
    takeDown() {
      ended.removeEventListener("abort", ring);
      for (const watcher of watchers) watcher.close();
    },
  };
}
